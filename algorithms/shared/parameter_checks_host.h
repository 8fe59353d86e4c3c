// SPDX-License-Identifier: GPL-2.0-or-later
// What the host lets pass, refused. All throw QgsProcessingException.
#pragma once

#include "shared/parameter_reader_host.h"

namespace brushline {

//! A number that has to be whole; the host would cut it off.
int wholeNumber(const ParameterReader &reader, const QString &key, const Limits &limits);

//! Throws for a layer without coordinate system, or of other features than points: the corners of a polygon would pass
//! for places. \param key of its parameter, for the message.
void checkPoints(const QString &key, const QgsProcessingFeatureSource &source);
//! The same for polygons.
void checkPolygons(const QString &key, const QgsProcessingFeatureSource &source);

//! Throws for a raster that cannot be read, and for one of several layers that cannot: the host would take the others.
//! Main thread.
void checkLayers(const ParameterReader &reader);

//! Throws for an output layer whose file's name has a “|”: the host would read it as a layer of another file, which is
//! perhaps there.
void checkOutputNames(const ParameterReader &reader);

} // namespace brushline
