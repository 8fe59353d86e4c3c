// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/records_parameters.h"

#include "quantities/progress.h"
#include "shared/routes_parameters.h"
#include "shared/source_features_host.h"

#include <QHash>
#include <qgsexception.h>
#include <qgsfeatureiterator.h>

#include <algorithm>
#include <cmath>

namespace brushline::records_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::RecordsParameters)
};
const QString inputKey = QStringLiteral("INPUT"), routeKey = QStringLiteral("ROUTE_FIELD"),
              orderKey = QStringLiteral("ORDER_FIELD"), bearingKey = QStringLiteral("BEARING_FIELD"),
              pacesKey = QStringLiteral("PACES_FIELD"), distanceKey = QStringLiteral("DISTANCE_FIELD"),
              walkerKey = QStringLiteral("WALKER_FIELD");
// A hand's breadth is no leg, and nobody walks a day on one bearing: the number is a slip.
constexpr Limits legLimits{0.1, 100000, 100}; // metres

// A cell as somebody wrote it; empty for none.
QString textOf(const QVariant &value) {
  if (value.isNull())
    return QString();
  if (static_cast<int>(value.type()) != static_cast<int>(QMetaType::Double))
    return value.toString().trimmed();
  const double number = value.toDouble();
  if (!std::isfinite(number))
    return QStringLiteral("NaN");
  // Never with an exponent, and the same in every locale.
  QString text = QString::number(number + 0.0, 'f', 10);
  while (text.endsWith(QLatin1Char('0')))
    text.chop(1);
  if (text.endsWith(QLatin1Char('.')))
    text.chop(1);
  return text;
}

// What the readers get. A field of numbers says of itself that the point of 1.25 is that of decimals: with more than
// three of them nobody takes it for one between thousands.
std::string toRead(const QVariant &value) {
  const QString text = textOf(value);
  const bool number = static_cast<int>(value.type()) == static_cast<int>(QMetaType::Double);
  return (number && text.contains(QLatin1Char('.')) ? text + QLatin1String("000") : text).toStdString();
}

// Why a text cannot be read, and what can.
QString bearingFault(TextFault fault, const QString &text) {
  const QString accepted =
      Text::tr("Write 042, 42.5 or 42,5 (in the dial's unit), 42°, 42°30', N 42 E, S68-05-35W, NE, "
               "0747 mil or 47 gon.");
  switch (fault) {
  case TextFault::Empty:
    return Text::tr("has no bearing.") + QLatin1Char(' ') + accepted;
  case TextFault::Negative:
    return Text::tr("has the bearing “%1”; bearings count clockwise from 0.").arg(text);
  case TextFault::BeyondCircle:
    return Text::tr("has the bearing “%1”, more than a full circle. Is it in another unit than the dial's (DIAL_UNIT)?")
        .arg(text);
  case TextFault::BeyondQuarter:
    return Text::tr("has the bearing “%1”; from north or south towards east or west it is 90 degrees at most.")
        .arg(text);
  case TextFault::BeyondSixty:
    return Text::tr("has the bearing “%1”; minutes and seconds are below 60.").arg(text);
  case TextFault::NeedsUnit:
    return Text::tr("has the bearing “%1”: degrees, or the dial's unit? Write N 42° E or N 47 gon E.").arg(text);
  case TextFault::Thousands:
    return Text::tr("has the bearing “%1”: thousands or decimals? Write 1600 for thousands; for decimals a point, and "
                    "not three of them: 1.6.")
        .arg(text);
  default:
    return Text::tr("has the bearing “%1”, which cannot be read.").arg(text) + QLatin1Char(' ') + accepted;
  }
}

QString amountFault(TextFault fault, const QString &text, bool paced) {
  const QString what = paced ? Text::tr("paces") : Text::tr("distance");
  const QString accepted = paced ? Text::tr("Write a number above 0: 62, 62.5, 62,5 or 62 paces.")
                                 : Text::tr("Write metres above 0: 47, 47.5, 47,5 m or 0.12 km.");
  if (fault == TextFault::Empty)
    return Text::tr("has no %1.").arg(what) + QLatin1Char(' ') + accepted;
  if (fault == TextFault::Thousands)
    return Text::tr("has the %1 “%2”: thousands or decimals? Write 1250 for thousands; for decimals a point, and not "
                    "three of them: 1.25.")
        .arg(what, text);
  return Text::tr("has the %1 “%2”.").arg(what, text) + QLatin1Char(' ') + accepted;
}

// Where the numbers of a row stand.
struct Columns {
  int route, order, bearing, amount, walker;
  bool paced;

  Columns(const ParameterReader &reader, const QgsProcessingFeatureSource &source)
      : route(reader.fieldIndex(routeKey, source)), order(reader.fieldIndex(orderKey, source)),
        bearing(reader.fieldIndex(bearingKey, source)), amount(reader.fieldIndex(pacesKey, source)),
        walker(reader.fieldIndex(walkerKey, source)), paced(amount >= 0) {
    if (bearing < 0)
      throw QgsProcessingException(Text::tr("%1: name the field with the bearings.").arg(bearingKey));
    const int distance = reader.fieldIndex(distanceKey, source);
    if (paced == (distance >= 0))
      throw QgsProcessingException(
          (paced ? Text::tr("%1 and %2 are both given: name one, since nobody could tell which to believe.")
                 : Text::tr("%1 or %2: name the field with the paces or the one with the distances."))
              .arg(pacesKey, distanceKey));
    if (!paced)
      amount = distance;
  }
};

// Fills a leg from a row; returns why not, or nothing.
QString fill(RecordedLeg &leg, const QgsFeature &row, const Columns &columns, const std::vector<Walker> &walkers,
             DialUnit unit) {
  if (columns.order >= 0) {
    const QVariant value = row.attribute(columns.order);
    const auto order = routes_parameters::orderOf(value);
    if (!order)
      return textOf(value).isEmpty()
                 ? Text::tr("has no order. Number the legs of each route in the order they are walked.")
                 : Text::tr("has the order “%1”, which is no number. Number the legs of each route in the order they "
                            "are walked.")
                       .arg(textOf(value));
    leg.order = *order;
  }
  leg.text = textOf(row.attribute(columns.bearing));
  const auto bearing = readBearing(toRead(row.attribute(columns.bearing)), unit);
  if (const auto *fault = std::get_if<TextFault>(&bearing))
    return bearingFault(*fault, leg.text);
  leg.bearing = std::get<WrittenBearing>(bearing);

  if (columns.walker >= 0) {
    const QString name = textOf(row.attribute(columns.walker));
    const auto found = std::find_if(walkers.begin(), walkers.end(),
                                    [&](const Walker &walker) { return walker.name == name.toStdString(); });
    if (found != walkers.end())
      leg.walker = int(found - walkers.begin());
    else if (!name.isEmpty())
      return Text::tr("was counted by “%1”, whom the table of walkers (WALKERS) does not have.").arg(name);
    else if (walkers.size() > 1)
      return Text::tr("does not say who counted. Fill its field for that, or leave one walker.");
  }
  if (leg.walker < 0 && walkers.size() == 1)
    leg.walker = 0;

  const QString text = textOf(row.attribute(columns.amount));
  const auto amount =
      readAmount(toRead(row.attribute(columns.amount)), columns.paced ? AmountKind::Paces : AmountKind::Metres);
  if (const auto *fault = std::get_if<TextFault>(&amount))
    return amountFault(*fault, text, columns.paced);
  leg.amount = std::get<double>(amount);
  double metres = leg.amount;
  if (columns.paced) {
    const Walker &walker = walkers.at(size_t(leg.walker));
    metres = leg.amount * (walker.kind == PaceKind::Double ? 2 : 1) * 100 / walker.steps_per_100m;
  }
  if (!legLimits.contains(metres))
    return Text::tr("is %1 m long; a leg has %2 to %3 m. Mend the number, or delete the row.")
        .arg(plain(metres), plain(legLimits.least), plain(legLimits.most));
  leg.length = Length::metres(metres);
  return QString();
}

bool isEmpty(const QgsFeature &row, const Columns &columns) {
  for (const int field : {columns.route, columns.order, columns.bearing, columns.amount, columns.walker})
    if (field >= 0 && !textOf(row.attribute(field)).isEmpty())
      return false;
  return true;
}

void sortLegs(RecordedRoute &route, const QString &layer) {
  auto &legs = route.legs;
  std::stable_sort(legs.begin(), legs.end(),
                   [](const RecordedLeg &a, const RecordedLeg &b) { return a.order < b.order; });
  const auto same = std::adjacent_find(legs.begin(), legs.end(),
                                       [](const RecordedLeg &a, const RecordedLeg &b) { return a.order == b.order; });
  if (same != legs.end() && route.fault.isEmpty())
    route.fault = Text::tr("%1: layer “%2”, rows %3 and %4 have the same order in route “%5”, so which comes first is "
                           "not known. Give each leg of a route its own number.")
                      .arg(orderKey, layer, QString::number(same->row), QString::number((same + 1)->row), route.name);
}
} // namespace

Definitions definitions() {
  const auto fieldOf = [](const QString &key, const QString &label, const QString &help, bool optional = true) {
    return helped(new QgsProcessingParameterField(key, label, QVariant(), inputKey, host::anyField, false, optional),
                  help);
  };
  return {
      helped(new QgsProcessingParameterFeatureSource(inputKey, Text::tr("Bearings and paces (table)"),
                                                     QList<int>() << host::anyTable),
             Text::tr("A row for each leg, as it was written down in the field. Any table, also a CSV file.")),
      fieldOf(routeKey, Text::tr("Field with the route's name"),
              Text::tr("Rows with the same value make one route, also when they do not stand together. Empty: all rows "
                       "make one route, called 1.")),
      fieldOf(orderKey, Text::tr("Field with the order of legs"),
              Text::tr("Numbers (also as text) or times in the order the legs are walked, no two of a route alike. "
                       "Empty: as the rows stand in the table.")),
      fieldOf(bearingKey, Text::tr("Field with the bearing"),
              Text::tr("Numbers in the dial's unit (042, 42.5, 42,5), or text: 42°, 42°30', N 42 E, S68-05-35W, NE, "
                       "0747 mil, 47 gon."),
              false),
      fieldOf(pacesKey, Text::tr("Field with the paces"),
              Text::tr("What the walker counted, in their kind of paces. This or the field with the distance.")),
      fieldOf(distanceKey, Text::tr("Field with the distance (m)"),
              Text::tr("Horizontal metres, where they were measured and not paced.")),
      fieldOf(walkerKey, Text::tr("Field with who counted"),
              Text::tr("A name from the table of walkers; needed when that has several and paces are given."))};
}

void check(const ParameterReader &reader, const std::vector<Walker> &walkers) {
  const auto source = reader.source(inputKey);
  if (!source)
    throw QgsProcessingException(Text::tr("%1: give a table with bearings.").arg(inputKey));
  const Columns columns(reader, *source);
  if (columns.paced && columns.walker < 0 && walkers.size() > 1)
    throw QgsProcessingException(
        Text::tr(
            "%1: %2 has %n walkers, and their paces are not the same. Name the field of “%3” that says who counted, "
            "or give a table with that one walker.",
            nullptr, int(walkers.size()))
            .arg(walkerKey, QStringLiteral("WALKERS"), source->sourceName()));
}

FieldRecords read(const ParameterReader &reader, const std::vector<Walker> &walkers, DialUnit unit,
                  QgsProcessingFeedback *feedback) {
  const auto source = reader.source(inputKey);
  const Columns columns(reader, *source);
  FieldRecords records;
  records.paced = columns.paced;
  QHash<QString, size_t> byName;
  SourceFeatures rows(inputKey, *source, feedback);
  QgsFeature row;
  long number = 0;
  int empty = 0;
  while (rows.next(row)) {
    ++number;
    if (isEmpty(row, columns)) {
      ++empty;
      continue;
    }
    const QString where =
        Text::tr("%1: layer “%2”, row %3").arg(inputKey, source->sourceName(), QString::number(number));
    const QString name = columns.route >= 0 ? textOf(row.attribute(columns.route)) : QStringLiteral("1");
    if (name.isEmpty())
      throw QgsProcessingException(
          Text::tr(
              "%1 names no route in its field “%2”, so that some route would be a leg short. Name it, or delete the "
              "row.")
              .arg(where, source->fields().at(columns.route).name()));
    if (!byName.contains(name)) {
      byName.insert(name, records.routes.size());
      records.routes.push_back({name, {}, {}});
    }
    RecordedRoute &route = records.routes[byName.value(name)];
    RecordedLeg leg;
    leg.row = number;
    leg.order = double(number);
    const QString fault = fill(leg, row, columns, walkers, unit);
    if (!fault.isEmpty() && route.fault.isEmpty())
      route.fault = Text::tr("%1 (route “%2”) %3").arg(where, name, fault);
    route.legs.push_back(std::move(leg));
  }
  for (RecordedRoute &route : records.routes)
    sortLegs(route, source->sourceName());
  if (empty > 0)
    feedback->pushWarning(
        Text::tr("%1: %n empty row(s) of “%2” passed over.", nullptr, empty).arg(inputKey, source->sourceName()));
  if (records.routes.empty())
    feedback->pushWarning(Text::tr("%1: “%2” has no rows, so there are no legs.").arg(inputKey, source->sourceName()));
  return records;
}

} // namespace brushline::records_parameters
