// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/parameter_reader_host.h"
#include "shared/shapes.h"

class QgsCoordinateTransformContext;

namespace brushline {

/**
 * Adds a layer's features to shapes; curves become lines, collections their parts. Features without a usable geometry
 * are passed over, counted and told. Throws Cancelled, and QgsProcessingException for a layer without coordinate system.
 *
 * \param key of the parameter, for messages. \param nameField its index, or -1. \param sourceNumber goes into
 * Shape::source.
 */
void addShapes(std::vector<Shape> &shapes, const QString &key, const QgsProcessingFeatureSource &source, int nameField,
               size_t sourceNumber, const QgsCoordinateTransformContext &transforms, QgsProcessingFeedback *feedback);

//! How many polygons of a layer cross or touch themselves. \param key of its parameter. Throws Cancelled.
int invalidShapes(const QString &key, const QgsProcessingFeatureSource &source, const QgsFeedback *feedback);

} // namespace brushline
