// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/walked_legs_host.h"

#include "records/walk_words_host.h"

#include <qgsgeometry.h>

#include <cmath>

namespace brushline {

namespace {
using host::FieldType;
const QString outputKey = QStringLiteral("OUTPUT"), profileKey = QStringLiteral("PROFILE"),
              groupsKey = QStringLiteral("GROUPS");

QVariant direction(bool back) { return back ? QStringLiteral("back") : QStringLiteral("out"); }
} // namespace

WalkedLegsWriter::WalkedLegsWriter(const ParameterReader &reader, const PlannedCourses &planned,
                                   QgsProcessingFeedback *feedback)
    : mReader(reader), mPlanned(planned), mFromPlaces(planned.crs, reader.context().transformContext()),
      mFeedback(feedback) {}

Definitions WalkedLegsWriter::definitions() {
  return {new QgsProcessingParameterFeatureSink(outputKey, tr("Walked legs"), host::lineOutput),
          helped(new QgsProcessingParameterFeatureSink(profileKey, tr("Profile off the planned line"),
                                                       host::pointOutput, QVariant(), true, false),
                 tr("Each recorded point with how far along the planned leg it lies and how far off its line, in "
                    "metres, right positive.")),
          helped(new QgsProcessingParameterFeatureSink(groupsKey, tr("Common errors"), host::tableOutput, QVariant(),
                                                       true, false),
                 tr("A row for each track, each walker and all of them: the error that all legs share in bearing "
                    "(degrees) and length (percent), with standard errors, and what may lie behind it."))};
}

void WalkedLegsWriter::begin() {
  if (mLegs)
    return;
  const auto real = FieldType::Real;
  const auto text = FieldType::Text;
  mLegs = std::make_unique<VectorOutput>(
      mReader, outputKey,
      fieldsOf({{"route", text},     {"leg", FieldType::Integer}, {"walker", text},     {"direction", text},
                {"track", text},     {"true_brg", real},          {"mag_brg", real},    {"decl", real},
                {"dist_m", real},    {"walked_m", real},          {"walked_brg", real}, {"walked_mag", real},
                {"brg_diff", real},  {"dist_diff", real},         {"dist_pct", real},   {"miss_m", real},
                {"own_m", real},     {"cross_m", real},           {"wander_m", real},   {"minutes", real},
                {"stand_min", real}, {"brg_sigma", real},         {"dist_sigma", real}, {"remark", text}}),
      host::lineString, mPlanned.crs);
  if (mReader.given(profileKey))
    mProfile = std::make_unique<VectorOutput>(mReader, profileKey,
                                              fieldsOf({{"route", text},
                                                        {"leg", FieldType::Integer},
                                                        {"walker", text},
                                                        {"direction", text},
                                                        {"track", text},
                                                        {"at_m", real},
                                                        {"cross_m", real},
                                                        {"at_min", real}}),
                                              host::point, mPlanned.crs);
  if (mReader.given(groupsKey))
    mGroups = std::make_unique<VectorOutput>(mReader, groupsKey,
                                             fieldsOf({{"group", text},
                                                       {"walker", text},
                                                       {"track", text},
                                                       {"legs", FieldType::Integer},
                                                       {"brg_err", real},
                                                       {"brg_se", real},
                                                       {"brg_ci", real},
                                                       {"dist_legs", FieldType::Integer},
                                                       {"dist_err", real},
                                                       {"dist_se", real},
                                                       {"dist_ci", real},
                                                       {"pace_scale", real},
                                                       {"paces_100m", real},
                                                       {"hint", text}}),
                                             host::noGeometry, QgsCoordinateReferenceSystem());
}

void WalkedLegsWriter::write(const TrackInput &track, const TrackMatch &match, const QString &walker) {
  begin();
  mTracks << track.name;
  const PlannedCourse &course = mPlanned.courses[*match.course];
  for (size_t leg = 0; leg < course.legs.size(); ++leg)
    if (!course.legs[leg].any_way)
      writeLeg(track, match, walker, leg);
}

void WalkedLegsWriter::writeLeg(const TrackInput &track, const TrackMatch &match, const QString &walker, size_t leg) {
  const PlannedCourse &course = mPlanned.courses[*match.course];
  const PlannedLeg &planned = course.legs[leg];
  const PlannedLegInfo &info = mPlanned.info[*match.course][leg];
  const WalkedLeg &walked = match.legs[leg];
  const QString route = mPlanned.routes.at(int(course.route));
  const double meant_m = planned.geodesic.length.metres();
  const auto magnetic = [&](TrueBearing bearing) -> QVariant {
    if (!info.declination)
      return QVariant();
    return toMagnetic(bearing, Declination{Angle::degrees(*info.declination)}).degrees();
  };
  std::optional<double> percent;
  if (walked.dist_diff)
    percent = 100 * *walked.dist_diff / meant_m;

  const bool told = walked.share != LegShare::None;
  QgsFeature feature;
  if (told)
    feature.setGeometry(mFromPlaces.line({walked.start, walked.end}, info.start_x));
  feature.setAttributes(QVector<QVariant>{route,
                                          info.number,
                                          orNull(walker),
                                          direction(info.back),
                                          track.name,
                                          planned.geodesic.departure.degrees(),
                                          magnetic(planned.geodesic.departure),
                                          orNull(info.declination),
                                          meant_m,
                                          orNull(walked.walked_m),
                                          walked.walked ? QVariant(walked.walked->degrees()) : QVariant(),
                                          walked.walked ? magnetic(*walked.walked) : QVariant(),
                                          orNull(walked.brg_diff),
                                          orNull(walked.dist_diff),
                                          orNull(percent),
                                          orNull(walked.miss_m),
                                          orNull(walked.own_m),
                                          orNull(walked.cross_m),
                                          orNull(walked.wander_m),
                                          orNull(walked.minutes),
                                          orNull(walked.stand_min),
                                          walked.walked ? QVariant(walked.brg_sigma) : QVariant(),
                                          walked.walked_m ? QVariant(walked.length_sigma) : QVariant(),
                                          orNull(WalkWords::remark(walked, match.track.times))});
  mLegs->add(feature);
  if (mProfile && told)
    writeProfile(track.name, walker, route, info, walked);
  if (!told || !walked.like)
    return;
  WalkedErrors errors;
  errors.track = size_t(mTracks.size() - 1);
  errors.walker = walker.toStdString();
  if (walked.brg_diff)
    errors.bearing = LegError{*walked.brg_diff, walked.brg_sigma};
  if (percent)
    errors.length = LegError{*percent, 100 * walked.length_sigma / meant_m};
  errors.declination = info.declination;
  errors.convergence = info.convergence;
  errors.meant_m = meant_m;
  // Whose paces they are must be known, unless there is only one count.
  if (info.paces.contains(walker))
    errors.paces = info.paces.value(walker);
  else if (info.paces.size() == 1 && (walker.isEmpty() || info.paces.contains(QString())))
    errors.paces = info.paces.begin().value();
  mErrors.push_back(errors);
}

void WalkedLegsWriter::writeProfile(const QString &track, const QString &walker, const QString &route,
                                    const PlannedLegInfo &info, const WalkedLeg &walked) {
  for (const ProfilePoint &point : walked.profile) {
    if (mFeedback->isCanceled())
      throw Cancelled();
    QgsFeature feature;
    feature.setGeometry(mFromPlaces.point(point.place, info.start_x));
    feature.setAttributes(QVector<QVariant>{route, info.number, orNull(walker), direction(info.back), track, point.at_m,
                                            point.cross_m, orNull(point.at_min)});
    mProfile->add(feature);
  }
}

void WalkedLegsWriter::writeGroup(const GroupErrors &group) {
  static const char *const names[] = {"track", "walker", "all"};
  const auto mean = [](const std::optional<CommonError> &error) { return error ? QVariant(error->mean) : QVariant(); };
  const auto se = [](const std::optional<CommonError> &error) { return error ? orNull(error->se) : QVariant(); };
  const auto width = [](const std::optional<CommonError> &error) {
    return error ? orNull(error->half_width) : QVariant();
  };
  QgsFeature feature;
  feature.setAttributes(QVector<QVariant>{
      QString::fromLatin1(names[static_cast<int>(group.of)]), orNull(QString::fromStdString(group.walker)),
      group.of == GroupOf::Track ? QVariant(mTracks.at(int(group.track))) : QVariant(), int(group.legs),
      mean(group.bearing), se(group.bearing), width(group.bearing), int(group.length_legs), mean(group.length),
      se(group.length), width(group.length), group.of == GroupOf::All ? QVariant() : orNull(group.pace_scale),
      group.of == GroupOf::All ? QVariant() : orNull(group.paces_100m), WalkWords::hint(group)});
  mGroups->add(feature);
}

QVariantMap WalkedLegsWriter::finish() {
  begin();
  constexpr int toldEach = 20;
  int told = 0;
  for (const GroupErrors &group : groupErrors(mErrors)) {
    if (mGroups)
      writeGroup(group);
    const QString who = group.of == GroupOf::All      ? tr("All")
                        : group.of == GroupOf::Walker ? tr("Walker “%1”").arg(QString::fromStdString(group.walker))
                                                      : tr("Track “%1”").arg(mTracks.at(int(group.track)));
    if (group.of == GroupOf::All || ++told <= toldEach)
      mFeedback->pushInfo(who + QStringLiteral(": ") + WalkWords::numbers(group) + QLatin1Char(' ') +
                          WalkWords::hint(group));
  }
  return VectorOutput::finishAll({{mLegs.get(), QStringLiteral(":/brushline/styles/walked_legs.qml")},
                                  {mProfile.get(), QStringLiteral(":/brushline/styles/track_profile.qml")},
                                  {mGroups.get(), QString()}},
                                 mFeedback);
}

} // namespace brushline
