// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "quantities/place.h"
#include "shared/geodesic_chords.h"
#include "shared/parameter_reader_host.h"

#include <qgscoordinatereferencesystem.h>
#include <qgscoordinatetransform.h>
#include <qgsgeometry.h>

#include <functional>
#include <optional>
#include <vector>

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

/**
 * Turns places into a layer's points, beside what is drawn there already: where the layer's system goes on round the
 * Earth (longitudes, Mercator), a line across the 180th meridian goes on as well, and not back round the Earth.
 */
class FromPlaces {
public:
  FromPlaces(const QgsCoordinateReferenceSystem &to, const QgsCoordinateTransformContext &transforms);
  //! \param near_x of what is drawn. \returns NaN for what the system does not reach.
  QgsPointXY operator()(const Place &place, double near_x) const;
  //! The first beside what is drawn, if anything is, each other one beside the one before it.
  QgsPolylineXY operator()(const std::vector<Place> &places, std::optional<double> near_x) const;
  //! As geometries; null where the system does not reach all of it.
  QgsGeometry point(const Place &place, double near_x) const;
  QgsGeometry line(const std::vector<Place> &places, double near_x) const;
  //! The same x, or the one that is whole worlds aside, within half a world of another.
  double beside(double x, double near_x) const;
  //! Of the whole Earth, in the system's units; 0 where it does not go on round it.
  double worldWidth() const { return mWorldWidth; }

private:
  Project mProject;
  double mWorldWidth;
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
