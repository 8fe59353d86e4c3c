// SPDX-License-Identifier: GPL-2.0-or-later
#include "legs/leg_layer_host.h"

#include "shared/compatibility_host.h"
#include "shared/parameter_reader_host.h"

#include <cmath>

namespace brushline {

namespace {
QVariant text(const std::string &value) { return QVariant(QString::fromStdString(value)); }
QVariant orNull(double value) { return std::isfinite(value) ? QVariant(value) : QVariant(); }
QVariant orNull(const std::optional<double> &value) { return value ? QVariant(*value) : QVariant(); }
} // namespace

QgsFields LegLayer::fields() {
  using host::FieldType;
  static const std::pair<const char *, FieldType> all[] = {
      {"route", FieldType::Text},      {"leg", FieldType::Integer},   {"walker", FieldType::Text},
      {"direction", FieldType::Text},  {"from_name", FieldType::Text}, {"to_name", FieldType::Text},
      {"true_brg", FieldType::Real},   {"grid_brg", FieldType::Real}, {"mag_brg", FieldType::Real},
      {"converg", FieldType::Real},    {"decl", FieldType::Real},     {"decl_err", FieldType::Real},
      {"date", FieldType::Date},       {"dial", FieldType::Real},     {"dial_text", FieldType::Text},
      {"back_dial", FieldType::Real},  {"compass_pt", FieldType::Text}, {"dist_m", FieldType::Real},
      {"slope_m", FieldType::Real},    {"climb_m", FieldType::Real},  {"drop_m", FieldType::Real},
      {"paces", FieldType::Integer},   {"walk_min", FieldType::Real}, {"cover", FieldType::Text},
      {"sight_m", FieldType::Real},    {"spacing_m", FieldType::Real}, {"marks", FieldType::Integer},
      {"drift_m", FieldType::Real},    {"along_m", FieldType::Real},  {"warnings", FieldType::Text}};
  QgsFields fields;
  for (const auto &[name, type] : all)
    fields.append(host::field(QString::fromLatin1(name), type));
  return fields;
}

LegLayer::LegLayer(const Compass &compass, const std::vector<Walker> &walkers, const QDate &date)
    : mCompass(compass), mDate(date), mOut(QStringLiteral("out")), mBack(QStringLiteral("back")) {
  for (const Walker &walker : walkers)
    mWalkerNames.push_back(walker.name.empty() ? QVariant() : text(walker.name));
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
  QVariant warnings;
  if (!leg.warnings.empty()) {
    QStringList words;
    for (const LegWarning &warning : leg.warnings)
      words << inWords(warning);
    warnings = words.join(QLatin1Char(' '));
  }
  const LegPaces &paces = leg.by_walker[walker];
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
                           int(paces.paces),
                           paces.time.minutes(),
                           none, // cover
                           none, // sight_m
                           none, // spacing_m
                           none, // marks
                           none, // drift_m
                           none, // along_m
                           warnings};
}

QString LegLayer::inWords(const LegWarning &warning) {
  switch (warning.remark) {
  case LegRemark::CompassBlackout:
    return tr("No compass works here: too near the magnetic pole.");
  case LegRemark::CompassCaution:
    return tr("The needle is weak here, near the magnetic pole: do not rely on it.");
  case LegRemark::NoTerrain:
    return tr("No heights on %1 m of this leg: paces and minutes are those of level ground.")
        .arg(QString::number(std::round(warning.value)));
  case LegRemark::GapBefore:
    return tr("Starts %1 m from where the leg before ends.").arg(QString::number(std::round(warning.value)));
  }
  return QString();
}

} // namespace brushline
