// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/effort_grid.h"
#include "planning/pairs_host.h"
#include "shared/raster_host.h"
#include "sighting/cover_parameters.h"

#include <qgscoordinatereferencesystem.h>
#include <qgsrectangle.h>

#include <functional>
#include <memory>
#include <unordered_map>
#include <vector>

namespace brushline {

//! What the ground for a plan is made of.
struct GroundInput {
  const std::optional<RasterInput> *dem;
  const CoverSetting *cover;
  double most_slope;    //!< rise over run
  double unknown_speed; //!< speed factor where no cover is known; 0: nobody is sent there
  double cell_m;        //!< 0: of the terrain model, or what the area asks for
  double margin_m;      //!< round the pairs; 0: half the longest pair's distance, at least 300 m
};

/**
 * The grid that routes are planned on, in a projected system in metres: the terrain model's, when its metres are
 * metres on the ground at all starts and ends within 1 percent, in whatever direction, else the UTM zone of the first
 * start.
 */
class PlanGround {
  Q_DECLARE_TR_FUNCTIONS(brushline::PlanGround)

public:
  //! Settles system, cell and extent. \throws QgsProcessingException when it would take too much memory.
  PlanGround(const ParameterReader &reader, const GroundInput &input, const std::vector<PlacePair> &pairs);

  //! Fills the grid. \param told the share done. Throws Cancelled.
  void fill(QgsProcessingFeedback *feedback, const std::function<void(double share)> &told);
  //! Bars lines and polygons. Throws Cancelled.
  void bar(const ParameterReader &reader, const QString &key, QgsProcessingFeedback *feedback);
  //! Why a place cannot be a start or an end; empty: it can, and its cell is open for legs from now on.
  QString refusal(const Place &place);

  const EffortGrid &grid() const { return *mGrid; }
  CellPosition cellOf(const Place &place) const;
  Place placeOf(CellPosition at) const;
  std::vector<QgsPointXY> mapped(const std::vector<CellPosition> &points,
                                 const QgsCoordinateReferenceSystem &crs) const;
  QgsRectangle extent() const;
  const QgsCoordinateReferenceSystem &crs() const { return mCrs; }
  //! A kind of ground in words: "water", "ground steeper than 30°".
  QString inWords(int kind) const;

private:
  void fillHeights(int64_t row, TiledGrid &dem, const Project &project);
  void fillCover(QgsProcessingFeedback *feedback, const std::function<void(double)> &told);
  void coverAlongLine(bool alongRow, int64_t line, std::vector<int> &kinds, std::vector<bool> &closes);
  std::vector<CoverStretch> coverAlong(MapPoint from, MapPoint to, CellPosition codesFrom, CellPosition codesTo);
  int classOfCode(double value);
  int kindOf(int cover) const { return mKindOfClass[size_t(cover + 1)]; }

  GroundInput mInput;
  QgsCoordinateTransformContext mTransforms;
  QgsCoordinateReferenceSystem mCrs;
  Project mToGrid;
  double mLeft = 0, mTop = 0, mCell = 1;
  int64_t mColumns = 0, mRows = 0;
  std::unique_ptr<EffortGrid> mGrid;
  std::vector<int> mKindOfClass; // by class + 1
  std::vector<std::vector<std::vector<CellPosition>>> mBarredAreas;
  std::unique_ptr<TiledGrid> mDem, mCodes;
  Project mToCodes;
  std::unordered_map<long, int> mClassOfCode;
  std::unique_ptr<CoverSource> mSource;
};

} // namespace brushline
