// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/place.h"
#include "shared/parameter_reader_host.h"

#include <qgscoordinatereferencesystem.h>
#include <qgscoordinatetransform.h>

#include <functional>
#include <optional>

namespace brushline {

//! The system of places: longitudes and latitudes on WGS84, in degrees.
const QgsCoordinateReferenceSystem &wgs84();

//! Turns a layer's points into places.
class ToPlaces {
public:
  ToPlaces() = default;
  ToPlaces(const QgsCoordinateReferenceSystem &from, const QgsCoordinateTransformContext &transforms)
      : mTransform(from, wgs84(), transforms) {}
  //! None for what is no place on the Earth. Longitudes may run on past 180 degrees, up to two turns; metres taken
  //! for degrees are no place.
  std::optional<Place> operator()(double x, double y) const;

private:
  QgsCoordinateTransform mTransform;
};

//! Throws when a point layer has no coordinate system. \param key of its parameter, for the message.
void checkPlaces(const QString &key, const QgsProcessingFeatureSource &source);

/**
 * Reads the points of a layer as places on the WGS84 ellipsoid, in the layer's order; a point of several parts gives
 * several places.
 *
 * \param nameField its index, or -1. \param take called with each place and its name (empty without).
 * Points without a usable place are passed over, counted and told. Throws Cancelled.
 */
void readPlaces(const QString &key, const QgsProcessingFeatureSource &source, int nameField,
                const QgsCoordinateTransformContext &transforms, QgsProcessingFeedback *feedback,
                const std::function<void(const Place &place, const QString &name)> &take);

} // namespace brushline
