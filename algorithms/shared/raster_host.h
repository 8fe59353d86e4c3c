// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/geodesic_chords.h"
#include "shared/parameter_reader_host.h"
#include "shared/tiled_grid.h"

#include <qgscoordinatereferencesystem.h>
#include <qgscoordinatetransformcontext.h>
#include <qgsrectangle.h>

#include <cmath>
#include <memory>

class QgsError;
class QgsRasterDataProvider;

namespace brushline {

//! The host's reason in its words, or that it gives none. (QgsError::summary() crashes when it is empty.)
QString reasonOf(const QgsError &error);

//! From one coordinate system into another.
Project projectBetween(const QgsCoordinateReferenceSystem &from, const QgsCoordinateReferenceSystem &to,
                       const QgsCoordinateTransformContext &transforms);
//! From the WGS84 ellipsoid into a coordinate system.
Project projectInto(const QgsCoordinateReferenceSystem &crs, const QgsCoordinateTransformContext &transforms);

/**
 * A band of a raster parameter, from which grids are made, one for each thread.
 */
class RasterInput {
public:
  /**
   * \param bandKey the parameter with the band's number, or empty for the first.
   * \returns nothing when the raster is not given. Main thread.
   * \throws QgsProcessingException for a raster without coordinate system, fixed cells or such a band.
   */
  static std::optional<RasterInput> read(const ParameterReader &reader, const QString &key, const QString &bandKey);

  RasterInput(const QString &key, std::shared_ptr<QgsRasterDataProvider> provider, int band,
              const QgsCoordinateReferenceSystem &crs, const QgsCoordinateTransformContext &transforms);

  //! Values beyond these count as missing in grids that are made from then on.
  void setLimits(double least, double most) {
    mLeast = least;
    mMost = most;
  }
  //! A grid with a provider of its own, used from one thread at a time. All grids of a raster share what they read,
  //! 64 MiB of it.
  TiledGrid grid() const;
  Project project() const { return projectInto(mCrs, mTransforms); }
  //! From another coordinate system into the raster's.
  Project projectFrom(const QgsCoordinateReferenceSystem &crs) const;
  const QgsCoordinateReferenceSystem &crs() const { return mCrs; }
  QgsRectangle extent() const;

private:
  QString mKey;
  std::shared_ptr<QgsRasterDataProvider> mProvider;
  int mBand;
  double mLeast = -HUGE_VAL, mMost = HUGE_VAL;
  QgsCoordinateReferenceSystem mCrs;
  QgsCoordinateTransformContext mTransforms;
  std::shared_ptr<TileStore> mTiles;
};

} // namespace brushline
