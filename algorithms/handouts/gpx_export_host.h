// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/leg_sheets_host.h"

class QIODevice;

namespace brushline {

//! What a file of legs says about itself, and how it is made.
struct GpxSettings {
  QString creator;
  QString title;          //!< empty: the route's name, if there is one route
  QString time;           //!< of writing, as "2026-06-20T07:30:00Z"
  bool one_route = false; //!< for all walkers of a course
};

struct GpxCounts {
  long routes = 0, points = 0, waypoints = 0;
};

//! Makes all texts of sheets, and a title, fit to stand in XML; tells how many had to be changed. Throws
//! Cancelled.
void makeFitForXml(std::vector<LegSheet> &sheets, QString &title, QgsProcessingFeedback *feedback);

/**
 * Writes sheets, fit for XML, as routes, and their marks as waypoints. Stops early when the device takes no more, which
 * closing it will tell. Throws Cancelled.
 */
GpxCounts writeGpx(QIODevice &device, const std::vector<LegSheet> &sheets, const GpxSettings &settings,
                   QgsProcessingFeedback *feedback);

} // namespace brushline
