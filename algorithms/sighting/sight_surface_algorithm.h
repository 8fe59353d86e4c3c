// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/base_algorithm.h"
#include "sighting/cover_parameters.h"

#include <qgsrectangle.h>

#include <set>

namespace brushline {

//! The wrapper of extinctionRow(): cover or stands in, a raster of sight distances out.
class SightSurfaceAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::SightSurfaceAlgorithm)

public:
  QString name() const override;
  QString displayName() const override;
  QString group() const override;
  QString groupId() const override;
  QStringList tags() const override;
  QString shortDescription() const override;
  QgsProcessingAlgorithm *createInstance() const override;
  void initAlgorithm(const QVariantMap &configuration) override;

protected:
  void check(const ParameterReader &reader) const override;
  void prepare(const ParameterReader &reader, QgsProcessingFeedback *feedback) override;
  QVariantMap run(const ParameterReader &reader, QgsProcessingFeedback *feedback) override;

private:
  //! A raster looked up at the centres of cells.
  struct Lookup {
    TiledGrid grid;
    Project from_surface;
  };
  //! What one thread looks things up in.
  struct Lookups {
    std::optional<Lookup> codes, sights;
    // What was met.
    std::set<long> unknown_codes;
    bool bad_sights = false, known = false;
  };
  std::optional<Lookup> lookup(const std::optional<RasterInput> &raster) const;
  //! What is read from features, and what is made of it.
  void readRest(const ParameterReader &reader, QgsProcessingFeedback *feedback);
  void fillRow(int row, int columns, Lookups &lookups, std::vector<double> &values) const;

  CoverSetting mCover;                   //!< its map may be one of stands
  std::vector<double> mExtinctions;      //!< of the map's classes or stands
  std::vector<double> mClassExtinctions; //!< of the table's classes
  std::vector<Lookups> mLookups; //!< one for each thread
  QgsCoordinateReferenceSystem mCrs;
  QgsRectangle mExtent;
  double mCell = 0; //!< in the surface's units
};

} // namespace brushline
