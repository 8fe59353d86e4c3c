// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "shared/parameter_reader_host.h"
#include "shared/raster_host.h"
#include "sighting/cover_map.h"
#include "sighting/cover_source.h"
#include "sighting/cover_table.h"
#include "sighting/land.h"
#include "sighting/mark_spacing.h"

#include <memory>
#include <set>

namespace brushline {

//! The cover group of a run: what is known of the cover, and how marks are set in it.
struct CoverSetting {
  Season season = Season::InLeaf;
  double clear_sight = SpacingRule::clearLimits.usual;
  SpacingRule spacing;
  std::shared_ptr<const CoverTable> table;
  std::shared_ptr<const CoverMap> map; //!< null without polygons
  Project map_project;
  std::optional<RasterInput> codes, sights;

  bool given() const { return map || codes || sights; }
  //! A source for one thread of several; null when no cover is given.
  std::unique_ptr<CoverSource> source() const;
  //! The terrain, where there is one, and the cover for each of several threads.
  std::vector<Land> lands(size_t threads, const std::optional<RasterInput> &terrain) const;
};

//! Ground of planned legs on which no cover is known.
struct UnknownCover {
  int legs = 0;
  double metres = 0;

  void add(double ofLeg) {
    legs += ofLeg > 0;
    metres += ofLeg;
  }
};

namespace cover_parameters {

//! Cover and season, and how marks are set in it.
Definitions definitions();
//! What is known of the cover, and the clear sight, only.
Definitions coverDefinitions();
double readClearSight(const ParameterReader &reader);
//! UNKNOWN_SPEED, where legs are planned.
Definitions unknownDefinitions();
//! The speed factor of ground without known cover; 0: nobody is sent there.
double readUnknownSpeed(const ParameterReader &reader);
//! Throws for values that are of no use; reads tables, no polygons or rasters.
void check(const ParameterReader &reader);
//! All but the polygons. Main thread.
CoverSetting read(const ParameterReader &reader);
//! Reads the polygons, if there are any, by their classes. Those that are of no use are passed over, counted and told.
//! Throws Cancelled.
void readPolygons(CoverSetting &setting, const ParameterReader &reader, QgsProcessingFeedback *feedback);
//! Tells what the sources met on their way: codes that the table lacks, sights of no use. Null ones met nothing.
void report(const std::vector<const CoverSource *> &sources, QgsProcessingFeedback *feedback);
void report(const std::vector<Land> &lands, QgsProcessingFeedback *feedback);
void report(const std::set<long> &unknownCodes, bool badSights, QgsProcessingFeedback *feedback);
//! Warns of planned legs over ground that nobody has looked at, if there are any.
void report(const UnknownCover &unknown, QgsProcessingFeedback *feedback);

} // namespace cover_parameters
} // namespace brushline
