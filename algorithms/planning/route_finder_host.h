// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/effort_grid_host.h"
#include "planning/effort_surface.h"
#include "planning/plan_legs.h"
#include "planning/planned_routes_host.h"
#include "shared/place_reader_host.h"
#include "shared/raster_output_host.h"

#include <functional>
#include <memory>
#include <vector>

namespace brushline {

/**
 * Finds the routes of pairs over one ground, and says why there is none.
 */
class RouteFinder {
  Q_DECLARE_TR_FUNCTIONS(brushline::RouteFinder)

public:
  using Told = std::function<void(double share)>;

  struct Setting {
    const PlanGround &ground;
    const PaceTable &pace;
    LegRule rule;
    const std::vector<Place> &places;                                                  //!< recognisable
    std::function<std::optional<Duration>(const Place &from, const Place &to)> walked; //!< a leg's exact time
    QgsCoordinateReferenceSystem crs;                                                  //!< of the routes
    FromPlaces from_places;                                                            //!< into it
  };

  explicit RouteFinder(Setting setting)
      : mSetting(std::move(setting)), mSurface(mSetting.ground.grid(), mSetting.pace, allowed()) {}

  //! \param everywhere the surface is searched to its ends, for EFFORT. Throws Cancelled.
  FoundRoute find(const PlacePair &pair, bool everywhere, const Progress &progress, const Told &told);

  //! Writes the least minutes from the starts. \returns the raster, yet to be finished. Throws Cancelled.
  std::unique_ptr<RasterOutput> writeEffort(const ParameterReader &reader, const QString &key,
                                            const std::vector<PlacePair> &pairs, QgsProcessingFeedback *feedback,
                                            const Told &told);

private:
  //! Whether a leg may be walked, by its exact time.
  EffortSurface::Allowed allowed() const {
    return [this](CellPosition from, CellPosition to) {
      return mSetting.walked(mSetting.ground.placeOf(from), mSetting.ground.placeOf(to)).has_value();
    };
  }
  QString whyNoWay(CellPosition start, CellPosition end, const Progress &progress);
  QString described(const EffortSurface::Enclosure &enclosure) const;

  Setting mSetting;
  EffortSurface mSurface;
  bool mEverywhere = false; // the surface is that of the only pair, searched to its ends
};

} // namespace brushline
