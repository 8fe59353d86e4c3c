// SPDX-License-Identifier: GPL-2.0-or-later
#include "legs/leg_layer_host.h"

#include "shared/compatibility_host.h"
#include "shared/parameter_reader_host.h"
#include "shared/vector_output_host.h"

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {
constexpr double driftShare = 0.95; // of the walks that end inside the ellipse

QVariant text(const std::string &value) { return QVariant(QString::fromStdString(value)); }
} // namespace

QgsFields LegLayer::fields() {
  using host::FieldType;
  return fieldsOf({{"route", FieldType::Text},     {"leg", FieldType::Integer},     {"walker", FieldType::Text},
                   {"direction", FieldType::Text}, {"from_name", FieldType::Text},  {"to_name", FieldType::Text},
                   {"true_brg", FieldType::Real},  {"grid_brg", FieldType::Real},   {"mag_brg", FieldType::Real},
                   {"converg", FieldType::Real},   {"decl", FieldType::Real},       {"decl_err", FieldType::Real},
                   {"date", FieldType::Date},      {"dial", FieldType::Real},       {"dial_text", FieldType::Text},
                   {"back_dial", FieldType::Real}, {"compass_pt", FieldType::Text}, {"dist_m", FieldType::Real},
                   {"slope_m", FieldType::Real},   {"climb_m", FieldType::Real},    {"drop_m", FieldType::Real},
                   {"paces", FieldType::Integer},  {"walk_min", FieldType::Real},   {"cover", FieldType::Text},
                   {"sight_m", FieldType::Real},   {"spacing_m", FieldType::Real},  {"marks", FieldType::Integer},
                   {"drift_m", FieldType::Real},   {"along_m", FieldType::Real},    {"warnings", FieldType::Text}});
}

QgsFields LegLayer::markFields() {
  using host::FieldType;
  return fieldsOf({{"route", FieldType::Text},
                   {"leg", FieldType::Integer},
                   {"walker", FieldType::Text},
                   {"direction", FieldType::Text},
                   {"mark", FieldType::Integer},
                   {"name", FieldType::Text},
                   {"at_m", FieldType::Real},
                   {"paces", FieldType::Integer},
                   {"run_paces", FieldType::Integer},
                   {"sight_m", FieldType::Real},
                   {"offset_m", FieldType::Real}});
}

QgsFields LegLayer::driftFields() {
  using host::FieldType;
  return fieldsOf({{"route", FieldType::Text},
                   {"leg", FieldType::Integer},
                   {"walker", FieldType::Text},
                   {"direction", FieldType::Text},
                   {"share", FieldType::Real},
                   {"major_m", FieldType::Real},
                   {"minor_m", FieldType::Real},
                   {"major_brg", FieldType::Real}});
}

LegLayer::LegLayer(const Compass &compass, const std::vector<Walker> &walkers, const QDate &date,
                   std::shared_ptr<const CoverTable> table)
    : mCompass(compass), mDate(date), mTable(std::move(table)), mOut(QStringLiteral("out")),
      mBack(QStringLiteral("back")) {
  for (const Walker &walker : walkers)
    mWalkerNames.push_back(orNull(walker.name));
}

QgsAttributes LegLayer::markRow(const QVariant &route, const AnnotatedLeg &leg, size_t walker, size_t mark,
                                long pacesBefore) const {
  const LegMark &here = leg.by_walker[walker].marks[mark];
  const bool last = mark + 1 == leg.by_walker[walker].marks.size();
  return QVector<QVariant>{route,
                           leg.number,
                           mWalkerNames[walker],
                           leg.back ? mBack : mOut,
                           int(mark + 1),
                           last && leg.to ? text(leg.to->name) : QVariant(),
                           here.at_m,
                           int(here.paces),
                           int(pacesBefore + here.paces),
                           orNull(here.sight_m),
                           0.0};
}

QgsAttributes LegLayer::driftRow(const QVariant &route, const AnnotatedLeg &leg, size_t walker) const {
  const DriftEllipse &drift = leg.by_walker[walker].drift;
  const double sigmas = sigmasHolding(driftShare);
  return QVector<QVariant>{route,
                           leg.number,
                           mWalkerNames[walker],
                           leg.back ? mBack : mOut,
                           driftShare,
                           sigmas * drift.semi_major.metres(),
                           sigmas * drift.semi_minor.metres(),
                           drift.major_axis.degrees()};
}

QgsAttributes LegLayer::row(const QVariant &route, const AnnotatedLeg &leg, size_t walker) {
  QVariant dialWords, point;
  if (leg.dial) {
    QVariant &words = mDialTexts[*leg.dial];
    if (!words.isValid())
      words = text(dialText(*leg.dial, mCompass));
    dialWords = words;
    point = QString::fromLatin1(compassPoint(dialBearing(*leg.dial, mCompass.unit)));
  }
  QVariant slope, climb, drop;
  if (leg.profile) {
    slope = leg.profile->slope_length.metres();
    climb = leg.profile->climb.metres();
    drop = leg.profile->drop.metres();
  }
  const LegForWalker &walked = leg.by_walker[walker];
  QStringList words;
  for (const auto *warnings : {&leg.warnings, &walked.warnings})
    for (const LegWarning &warning : *warnings)
      words << inWords(warning);
  const QVariant none;
  return QVector<QVariant>{route,
                           leg.number,
                           mWalkerNames[walker],
                           leg.back ? mBack : mOut,
                           leg.from ? text(leg.from->name) : none,
                           leg.to ? text(leg.to->name) : none,
                           leg.true_bearing.degrees(),
                           orNull(leg.grid_bearing.degrees()),
                           leg.magnetic_bearing ? QVariant(leg.magnetic_bearing->degrees()) : none,
                           orNull(leg.convergence.east.degrees()),
                           leg.field.declination.east.degrees(),
                           leg.field.declination_error ? orNull(leg.field.declination_error->degrees()) : none,
                           mDate,
                           orNull(leg.dial),
                           dialWords,
                           orNull(leg.back_dial),
                           point,
                           leg.length.metres(),
                           slope,
                           climb,
                           drop,
                           int(walked.paces),
                           walked.time ? QVariant(walked.time->minutes()) : none,
                           leg.cover >= 0 && mTable ? text(mTable->at(leg.cover).name) : none,
                           orNull(walked.sight_m),
                           orNull(walked.spacing_m),
                           int(walked.sightings),
                           walked.drift.across.metres(),
                           walked.drift.along.metres(),
                           words.isEmpty() ? none : QVariant(words.join(QLatin1Char(' ')))};
}

QString LegLayer::inWords(const LegWarning &warning) const {
  const QString metres = QString::number(std::max(1.0, std::round(warning.metres)));
  switch (warning.remark) {
  case LegRemark::CompassBlackout:
    return tr("No compass works here: too near the magnetic pole.");
  case LegRemark::CompassCaution:
    return tr("The needle is weak here, near the magnetic pole: do not rely on it.");
  case LegRemark::NoTerrain:
    return tr("No heights on %1 m of this leg: paces and minutes are those of level ground.").arg(metres);
  case LegRemark::GapBefore:
    return tr("Starts %1 m from where the leg before ends.").arg(metres);
  case LegRemark::NoCover:
    return tr("The cover of %1 m of this leg is not known: look before you trust the marks.").arg(metres);
  case LegRemark::NotWalked:
    return tr("Crosses %1 m of %2, which cannot be walked.")
        .arg(metres,
             warning.cover >= 0 && mTable ? QString::fromStdString(mTable->at(warning.cover).label) : QString());
  case LegRemark::Blind:
    return tr("On %1 m (%2 paces) not even the next mark can be seen: go from hand to hand.")
        .arg(metres)
        .arg(warning.paces);
  }
  return QString();
}

} // namespace brushline
