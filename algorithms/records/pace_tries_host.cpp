// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/pace_tries_host.h"

#include "quantities/progress.h"
#include "shared/source_features_host.h"

#include <QHash>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>

#include <cmath>

namespace brushline::pace_tries {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::PaceTries)
};
const QString inputKey = QStringLiteral("INPUT"), walkerKey = QStringLiteral("WALKER_FIELD"),
              distanceKey = QStringLiteral("DISTANCE_FIELD"), countKey = QStringLiteral("COUNT_FIELD"),
              slopeKey = QStringLiteral("SLOPE_FIELD");
constexpr double mostMetres = 1e6, mostCounted = 1e7; // more is no walk

// Why a row tells no try.
struct NoTryHere {
  QString reason;
};

struct Fields {
  int walker, distance, count, slope;
};

Fields fieldsOf(const ParameterReader &reader, const QgsProcessingFeatureSource &table) {
  const auto needed = [&](const QString &key) {
    const int index = reader.fieldIndex(key, table);
    if (index < 0)
      throw QgsProcessingException(Text::tr("%1 (%2): give a field of the table “%3”.")
                                       .arg(key, reader.definition(key)->description(), table.sourceName()));
    return index;
  };
  return {needed(walkerKey), needed(distanceKey), needed(countKey), reader.fieldIndex(slopeKey, table)};
}

std::unique_ptr<QgsProcessingFeatureSource> tableOf(const ParameterReader &reader) {
  auto table = reader.source(inputKey);
  if (!table)
    throw QgsProcessingException(Text::tr("%1: give a table with a row for each try.").arg(inputKey));
  return table;
}

// What a value is as a number. Throws NoTryHere.
double numberOf(const QVariant &value, const QString &what) {
  const QString text = value.isNull() ? QString() : value.toString().trimmed();
  if (text.isEmpty())
    throw NoTryHere{Text::tr("%1 is empty.").arg(what)};
  bool ok = false;
  const double number = value.type() == QVariant::String ? text.toDouble(&ok) : value.toDouble(&ok);
  if (!ok && text.contains(QLatin1Char(',')))
    throw NoTryHere{Text::tr("%1 is “%2”: write numbers with a decimal point and without separators.").arg(what, text)};
  if (!ok || !std::isfinite(number))
    throw NoTryHere{Text::tr("%1 is “%2”, which is no number.").arg(what, text)};
  return number;
}

// Throws NoTryHere.
PaceTry tryOf(const QgsFeature &row, const Fields &fields) {
  const auto positive = [](double number, double most, const QString &what) {
    if (!(number > 0) || !(number <= most))
      throw NoTryHere{
          Text::tr("%1 is %2: give a number above 0, of %3 at most.").arg(what, plain(number), plain(most))};
    return number;
  };
  PaceTry each;
  const QString distance = Text::tr("its distance"), count = Text::tr("its count"), slope = Text::tr("its slope");
  each.distance = Length::metres(positive(numberOf(row.attribute(fields.distance), distance), mostMetres, distance));
  each.count = positive(numberOf(row.attribute(fields.count), count), mostCounted, count);
  if (fields.slope < 0)
    return each;
  const QVariant given = row.attribute(fields.slope);
  if (given.isNull() || given.toString().trimmed().isEmpty())
    throw NoTryHere{Text::tr("its slope is empty: write 0 for level ground.")};
  const double degrees = numberOf(given, slope);
  if (!(std::abs(degrees) < 90))
    throw NoTryHere{Text::tr("its slope is %1: give degrees, not percent, between -90 and 90.").arg(plain(degrees))};
  each.slope = Angle::degrees(degrees);
  return each;
}
} // namespace

Definitions definitions() {
  const auto field = [](const QString &key, const QString &label, const QString &help, bool optional = false) {
    return helped(new QgsProcessingParameterField(key, label, QVariant(), inputKey, host::anyField, false, optional),
                  help);
  };
  return {
      helped(new QgsProcessingParameterFeatureSource(inputKey, Text::tr("Tries (table, one row each)"),
                                                     QList<int>() << host::anyTable),
             Text::tr("A row for each time somebody walked a known distance and counted.")),
      field(walkerKey, Text::tr("Field with the walker's name"),
            Text::tr("Who walked. Names that differ in blanks, or in small and capital letters, are one walker's.")),
      field(distanceKey, Text::tr("Field with the distance (m, along the ground)"),
            Text::tr("In metres (a foot is 0.3048 m), as a tape on the ground measures it. A distance off a map or "
                     "by satellite is shorter on a slope: divide it by the slope's cosine.")),
      field(countKey, Text::tr("Field with the count"),
            Text::tr("What was counted over the distance: single steps, or double paces. Halves are welcome.")),
      field(slopeKey, Text::tr("Field with the slope (degrees, uphill positive)"),
            Text::tr("The even slope of the ground as it was walked: degrees, not percent; uphill positive, downhill "
                     "negative. Without the field all tries are taken as level."),
            true)};
}

void check(const ParameterReader &reader) { fieldsOf(reader, *tableOf(reader)); }

std::vector<WalkerTries> read(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  const auto table = tableOf(reader);
  const Fields fields = fieldsOf(reader, *table);
  QgsAttributeList wanted{fields.walker, fields.distance, fields.count};
  if (fields.slope >= 0)
    wanted << fields.slope;
  QgsFeatureRequest request;
  request.setSubsetOfAttributes(wanted);

  constexpr long toldEach = 20;
  std::vector<WalkerTries> walkers;
  QHash<QString, size_t> known;
  long rows = 0, passedOver = 0;
  QString first;
  const double expected = double(table->featureCount());
  QgsFeature row;
  SourceFeatures features(inputKey, *table, feedback, request);
  while (features.next(row)) {
    if (++rows % 1024 == 0 && expected > 0)
      feedback->setProgress(50 * std::min(1.0, double(rows) / expected));
    try {
      const QVariant given = row.attribute(fields.walker);
      const QString name = given.isNull() ? QString() : given.toString().simplified();
      if (name.isEmpty())
        throw NoTryHere{Text::tr("it names no walker.")};
      const PaceTry each = tryOf(row, fields);
      const QString key = name.normalized(QString::NormalizationForm_KC).toCaseFolded();
      const auto found = known.constFind(key);
      const size_t index = found == known.constEnd() ? walkers.size() : *found;
      if (found == known.constEnd()) {
        known.insert(key, index);
        walkers.emplace_back().name = name;
      }
      WalkerTries &walker = walkers[index];
      const QString spelling = given.toString();
      if (spelling != walker.name && !walker.spellings.contains(spelling))
        walker.spellings << spelling;
      walker.tries.push_back(each);
      walker.features.push_back(row.id());
    } catch (const NoTryHere &none) {
      const QString message = Text::tr("%1: table “%2”, feature %3 passed over: %4")
                                  .arg(inputKey, table->sourceName(), QString::number(row.id()), none.reason);
      if (passedOver == 0)
        first = message;
      if (++passedOver <= toldEach)
        feedback->pushWarning(message);
    }
  }
  if (walkers.empty() && rows == 0)
    throw QgsProcessingException(
        Text::tr("%1: table “%2” has no rows. Give it one for each try.").arg(inputKey, table->sourceName()));
  if (walkers.empty())
    throw QgsProcessingException(Text::tr("None of the %n row(s) tells a try. %1", nullptr, int(rows)).arg(first));
  if (passedOver > 0)
    feedback->pushWarning(Text::tr("%1: %n row(s) of table “%2” passed over in all.", nullptr, int(passedOver))
                              .arg(inputKey, table->sourceName()));
  return walkers;
}

} // namespace brushline::pace_tries
