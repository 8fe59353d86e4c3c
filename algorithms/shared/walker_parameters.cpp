// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/walker_parameters.h"

#include "shared/compass.h"
#include "shared/source_features_host.h"

#include <QSet>
#include <qgsexception.h>

#include <cmath>

namespace brushline::walker_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::WalkerParameters)
};
const QString countKey = QStringLiteral("PACES_PER_100M"), kindKey = QStringLiteral("PACE_KIND"),
              paceErrorKey = QStringLiteral("PACE_ERROR"), slopeKey = QStringLiteral("SLOPE_RULE"),
              timeKey = QStringLiteral("TIME_RULE"), eyeKey = QStringLiteral("EYE_HEIGHT"),
              walkersKey = QStringLiteral("WALKERS");

QString ambiguousCount(const QString &where, double count) {
  return Text::tr("%1: %2 over 100 m, counted in double paces, can be read two ways. Give the number of single steps "
                  "(twice the double paces).")
      .arg(where, plain(count));
}

// One column of the walkers table, told by its name.
class Column {
public:
  Column(const QgsProcessingFeatureSource &table, const char *name)
      : mTable(table), mName(QString::fromLatin1(name)), mIndex(table.fields().lookupField(mName)) {}

  bool present() const { return mIndex >= 0; }

  QVariant value(const QgsFeature &row) const {
    if (mIndex < 0)
      return QVariant();
    const QVariant value = row.attribute(mIndex);
    return value.isNull() || value.toString().trimmed().isEmpty() ? QVariant() : value;
  }

  double number(const QgsFeature &row, const Limits &limits, double otherwise) const {
    const QVariant given = value(row);
    if (!given.isValid())
      return otherwise;
    bool ok = false;
    const double number = given.toDouble(&ok);
    if (!ok || !limits.contains(number))
      throw QgsProcessingException(
          Text::tr("%1: table “%2”, feature %3: %4 is “%5”; give a number from %6 to %7, with a decimal point.")
              .arg(walkersKey, mTable.sourceName(), QString::number(row.id()), mName, given.toString(),
                   plain(limits.least), plain(limits.most)));
    return number;
  }

private:
  const QgsProcessingFeatureSource &mTable;
  QString mName;
  int mIndex;
};

// refusal: why a walker needs a count of their own; empty: they take the usual one.
std::vector<Walker> readTable(const QgsProcessingFeatureSource &table, const Walker &usual, const QString &refusal,
                              QgsProcessingFeedback *feedback) {
  const Column name(table, "walker"), count(table, "paces_100m"), kind(table, "pace_kind"),
      paceError(table, "pace_err"), bearingError(table, "brg_err"), eye(table, "eye_m"), speed(table, "speed_f");
  if (!name.present()) {
    QStringList names;
    for (const QgsField &field : table.fields())
      names << field.name();
    throw QgsProcessingException(
        Text::tr("%1: table “%2” has no column “walker”. It needs one, and may have paces_100m, pace_kind, pace_err, "
                 "brg_err, eye_m and speed_f; its columns are: %3.")
            .arg(walkersKey, table.sourceName(), names.join(QLatin1String(", "))));
  }
  std::vector<Walker> walkers;
  QSet<QString> seen;
  int empty = 0;
  QgsFeature row;
  SourceFeatures rows(walkersKey, table, feedback);
  while (rows.next(row)) {
    const QString walkerName = name.value(row).toString().trimmed();
    if (walkerName.isEmpty()) {
      const bool anything = count.value(row).isValid() || kind.value(row).isValid() || paceError.value(row).isValid() ||
                            bearingError.value(row).isValid() || eye.value(row).isValid() || speed.value(row).isValid();
      if (anything)
        throw QgsProcessingException(
            Text::tr("%1: table “%2”, feature %3 has numbers but no name. Fill its column “walker”, or delete the row.")
                .arg(walkersKey, table.sourceName(), QString::number(row.id())));
      ++empty;
      continue;
    }
    if (seen.contains(walkerName))
      throw QgsProcessingException(Text::tr("%1: table “%2” has the walker “%3” twice (second time in feature %4). "
                                            "Give each walker a name of their own.")
                                       .arg(walkersKey, table.sourceName(), walkerName, QString::number(row.id())));
    seen.insert(walkerName);
    Walker walker = usual;
    walker.name = walkerName.toStdString();
    const double kindNumber = kind.number(row, {0, 1, 0}, double(int(usual.kind)));
    if (kindNumber != 0 && kindNumber != 1)
      throw QgsProcessingException(
          Text::tr("%1: table “%2”, feature %3: pace_kind is %4; give 0 (single steps) or 1 (double paces).")
              .arg(walkersKey, table.sourceName(), QString::number(row.id()), plain(kindNumber)));
    walker.kind = static_cast<PaceKind>(int(kindNumber));
    if (count.value(row).isValid()) {
      const double paces = count.number(row, Walker::countLimits, 0);
      const auto steps = singleSteps(paces, walker.kind);
      if (!steps)
        throw QgsProcessingException(ambiguousCount(
            Text::tr("%1: table “%2”, walker “%3”").arg(walkersKey, table.sourceName(), walkerName), paces));
      walker.steps_per_100m = *steps;
    } else if (!refusal.isEmpty()) {
      throw QgsProcessingException(refusal);
    }
    walker.pace_error_percent = paceError.number(row, Walker::paceErrorLimits, usual.pace_error_percent);
    walker.bearing_error =
        Angle::degrees(bearingError.number(row, Compass::errorLimits, usual.bearing_error.degrees()));
    walker.eye_height = Length::metres(eye.number(row, Walker::eyeLimits, usual.eye_height.metres()));
    walker.speed_factor = speed.number(row, Walker::speedLimits, usual.speed_factor);
    walkers.push_back(walker);
  }
  if (empty > 0 && feedback)
    feedback->pushWarning(
        Text::tr("%1: %n empty row(s) of table “%2” passed over.", nullptr, empty).arg(walkersKey, table.sourceName()));
  if (walkers.empty())
    throw QgsProcessingException(
        Text::tr("%1: table “%2” has no walkers. Give it a row for each, or leave the parameter empty.")
            .arg(walkersKey, table.sourceName()));
  return walkers;
}
} // namespace

QgsProcessingParameterDefinition *kindDefinition() {
  const QStringList kinds = {Text::tr("Single steps"), Text::tr("Double paces (every second step)")};
  return helped(new QgsProcessingParameterEnum(kindKey, Text::tr("What the walker counts"), kinds, false, 0),
                Text::tr("Every step, or every second one (each time the same foot comes down)."));
}

PaceKind readKind(const ParameterReader &reader) { return static_cast<PaceKind>(reader.choice(kindKey, 2)); }

Definitions definitions() {
  const QStringList slopes = {Text::tr("None"), Text::tr("Slope table")};
  const QStringList times = {Text::tr("Off-trail speed function"), Text::tr("Hiking function, off the path"),
                             Text::tr("Distance and climb")};
  return {
      helped(numberDefinition(countKey, Text::tr("Steps over 100 m, on level ground"), Walker::countLimits),
             Text::tr("Single steps the walker takes over 100 m of level ground. Also for one who counts double paces, "
                      "unless the number is under 90: that can only be double paces already. (90 to 110 could be "
                      "either and is refused.)")),
      kindDefinition(),
      advanced(
          helped(numberDefinition(paceErrorKey, Text::tr("Error of the pace count (percent, 1 sigma)"),
                                  Walker::paceErrorLimits),
                 Text::tr("How far a paced distance strays, as a standard deviation in percent. 3 or less on level "
                          "ground by a practised walker, 5 and more in brush."))),
      helped(new QgsProcessingParameterEnum(slopeKey, Text::tr("Effect of slope on paces"), slopes, false, 1),
             Text::tr("Slope table: steps get shorter uphill and, less so, downhill, by a table of 1917 (Moss, Manual "
                      "of Military Training); the steps are counted along the ground. Needs a terrain model; without "
                      "one paces are those of level ground.")),
      helped(new QgsProcessingParameterEnum(timeKey, Text::tr("Rule for minutes"), times, false, 0),
             Text::tr("Off-trail speed function: measured on people finding their way in hilly woods (Irmischer and "
                      "Clarke 2018). Hiking function: Tobler 1993, times 0.6 off the path. Distance and climb: 12 "
                      "minutes a kilometre, 10 for 100 m of climb, less or more for descents (Naismith, Langmuir). "
                      "Without a terrain model the minutes are those of level ground.")),
      advanced(helped(numberDefinition(eyeKey, Text::tr("Height of the eyes (m)"), Walker::eyeLimits),
                      Text::tr("Height of the walker's eyes above the ground, in metres."))),
      helped(
          new QgsProcessingParameterFeatureSource(walkersKey, Text::tr("Walkers (table, one row each)"),
                                                  QList<int>() << host::anyTable, QVariant(), true),
          Text::tr("Every leg comes once for each walker of this table. Columns: walker (a name), and where they "
                   "differ from the parameters paces_100m (single steps over 100 m), pace_kind (0 single, 1 double), "
                   "pace_err (percent), brg_err (degrees), eye_m, speed_f (1 is the rule's own speed)."))};
}

std::vector<Walker> read(const ParameterReader &reader, Angle bearingError, QgsProcessingFeedback *feedback) {
  Walker usual;
  const double count = reader.number(countKey, Walker::countLimits);
  usual.kind = readKind(reader);
  usual.pace_error_percent = reader.number(paceErrorKey, Walker::paceErrorLimits);
  usual.slope_rule = static_cast<SlopeRule>(reader.choice(slopeKey, 2));
  usual.time_rule = static_cast<TimeRule>(reader.choice(timeKey, 3));
  usual.eye_height = Length::metres(reader.number(eyeKey, Walker::eyeLimits));
  usual.bearing_error = bearingError;
  QString refusal;
  if (const auto steps = singleSteps(count, usual.kind)) // of the parameter's own kind, whatever the walkers count
    usual.steps_per_100m = *steps;
  else
    refusal = ambiguousCount(Text::tr("%1 (%2)").arg(countKey, reader.definition(countKey)->description()), count);
  if (const auto table = reader.source(walkersKey))
    return readTable(*table, usual, refusal, feedback);
  if (!refusal.isEmpty())
    throw QgsProcessingException(refusal);
  return {usual};
}

} // namespace brushline::walker_parameters
