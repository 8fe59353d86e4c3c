// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "records/planned_courses_host.h"
#include "records/tracks_parameters.h"
#include "records/walk_errors.h"
#include "shared/place_reader_host.h"
#include "shared/vector_output_host.h"

#include <QCoreApplication>

#include <memory>
#include <vector>

namespace brushline {

/**
 * Writes walked legs (OUTPUT), on request their profiles (PROFILE) and the common errors (GROUPS). Begun with the first
 * track.
 */
class WalkedLegsWriter {
  Q_DECLARE_TR_FUNCTIONS(brushline::WalkedLegsWriter)

public:
  //! \param planned is borrowed.
  WalkedLegsWriter(const ParameterReader &reader, const PlannedCourses &planned, QgsProcessingFeedback *feedback);

  //! OUTPUT, PROFILE, GROUPS.
  static Definitions definitions();

  //! \param match with a course. \param walker its name, or empty.
  void write(const TrackInput &track, const TrackMatch &match, const QString &walker);

  //! Ends the outputs and tells the common errors. \returns the algorithm's results.
  QVariantMap finish();

private:
  void begin();
  void writeLeg(const TrackInput &track, const TrackMatch &match, const QString &walker, size_t leg);
  void writeProfile(const QString &track, const QString &walker, const QString &route, const PlannedLegInfo &info,
                    const WalkedLeg &walked);
  void writeGroup(const GroupErrors &group);

  const ParameterReader mReader;
  const PlannedCourses &mPlanned;
  FromPlaces mFromPlaces;
  QgsProcessingFeedback *mFeedback;
  std::unique_ptr<VectorOutput> mLegs, mProfile, mGroups;
  std::vector<WalkedErrors> mErrors;
  QStringList mTracks;
};

} // namespace brushline
