// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/traverse_parameters.h"

#include "shared/parameter_checks_host.h"
#include "shared/place_reader_host.h"

#include <qgscoordinatetransform.h>
#include <qgsexception.h>

#include <cmath>

namespace brushline {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::TraverseParameters)
};
const QString startKey = QStringLiteral("START"), startsKey = QStringLiteral("STARTS"),
              nameKey = QStringLiteral("START_NAME"), endKey = QStringLiteral("END"),
              closeKey = QStringLiteral("CLOSE"), adjustKey = QStringLiteral("ADJUST");
constexpr int closeCount = 3;

QgsCoordinateReferenceSystem crsOf(const ParameterReader &reader, const QString &key) {
  return QgsProcessingParameters::parameterAsPointCrs(reader.definition(key), reader.parameters(), reader.context());
}

// A point parameter as a place; throws for what is none.
Place placeOf(const ParameterReader &reader, const QString &key) {
  const QgsCoordinateReferenceSystem crs = crsOf(reader, key);
  if (!crs.isValid())
    throw QgsProcessingException(
        Text::tr("%1: “%2” does not say its coordinate reference system. Write it like 632300,5407100 [EPSG:32621].")
            .arg(key, reader.shown(key)));
  const QgsPointXY point =
      QgsProcessingParameters::parameterAsPoint(reader.definition(key), reader.parameters(), reader.context());
  const auto place = ToPlaces(crs, reader.context().transformContext())(point.x(), point.y());
  if (!place)
    throw QgsProcessingException(
        Text::tr(
            "%1: “%2” is no place on the Earth in %3. The first number is the easting or longitude, the second the "
            "northing or latitude.")
            .arg(key, reader.shown(key), crs.authid()));
  return *place;
}

int nameField(const ParameterReader &reader, const QgsProcessingFeatureSource &starts) {
  int index = reader.fieldIndex(nameKey, starts);
  for (const char *usual : {"route", "name"})
    if (index < 0)
      index = starts.fields().lookupField(QString::fromLatin1(usual));
  if (index < 0)
    throw QgsProcessingException(Text::tr("%1: layer “%2” of %3 has no field “route” or “name”. Name the one that says "
                                          "which route starts there.")
                                     .arg(nameKey, starts.sourceName(), startsKey));
  return index;
}
} // namespace

std::optional<Place> TraverseEnds::startOf(const QString &route, QString &reason) const {
  if (start)
    return start;
  const QList<Place> found = starts.value(route);
  if (found.size() == 1)
    return found.first();
  if (found.size() > 1) {
    reason = Text::tr("%1 has %n points of that name. Leave the one where it starts.", nullptr, int(found.size()))
                 .arg(startsKey);
    return std::nullopt;
  }
  QStringList names = starts.keys();
  names.sort();
  constexpr int shown = 10;
  reason = Text::tr("%1 has no point of that name; it has: %2.")
               .arg(startsKey, QStringList(names.mid(0, shown)).join(QLatin1String(", ")) +
                                   (names.size() > shown ? QStringLiteral(" …") : QString()));
  return std::nullopt;
}

std::optional<Place> TraverseEnds::targetOf(const Place &start) const {
  switch (close) {
  case CloseOn::Nothing:
    return std::nullopt;
  case CloseOn::Start:
    return start;
  case CloseOn::End:
    return end;
  }
  return std::nullopt;
}

namespace traverse_parameters {

Definitions definitions() {
  const QStringList closes = {Text::tr("Nowhere in particular (open)"), Text::tr("Where it starts"),
                              Text::tr("At the end point")};
  return {
      helped(new QgsProcessingParameterPoint(startKey, Text::tr("Start of all routes"), QVariant(), true),
             Text::tr(
                 "Easting and northing with their system: 632300,5407100 [EPSG:32621]. This or the layer with starts; "
                 "the legs come in the same system.")),
      helped(new QgsProcessingParameterFeatureSource(startsKey, Text::tr("Starts (points named by route)"),
                                                     QList<int>() << host::pointLayers, QVariant(), true),
             Text::tr("A point for each route, with the route's name.")),
      helped(new QgsProcessingParameterField(nameKey, Text::tr("Field of the starts with the route's name"), QVariant(),
                                             startsKey, host::anyField, false, true),
             Text::tr("Empty: the field called “route”, else the one called “name”.")),
      helped(new QgsProcessingParameterPoint(endKey, Text::tr("End point"), QVariant(), true),
             Text::tr("A known place where the routes should end; used when they close there.")),
      helped(new QgsProcessingParameterEnum(closeKey, Text::tr("Where a route should end"), closes, false, 0),
             Text::tr("How far a route misses that place is told, and tells of blunders.")),
      helped(
          new QgsProcessingParameterBoolean(adjustKey, Text::tr("Spread the miss over the legs (compass rule)"), false),
          Text::tr("Moves each leg's end by its share of the miss, in proportion to the length walked. Off: the legs "
                   "come as they were read."))};
}

void check(const ParameterReader &reader) {
  const CloseOn close = static_cast<CloseOn>(reader.choice(closeKey, closeCount));
  if (reader.given(startKey) == reader.given(startsKey))
    throw QgsProcessingException(
        (reader.given(startKey)
             ? Text::tr("%1 and %2 are both given: leave one, since a route could start at either.")
             : Text::tr("%1 or %2: give the point where the routes start, or a layer with one for each."))
            .arg(startKey, startsKey));
  if (reader.given(startKey))
    placeOf(reader, startKey);
  if (const auto starts = reader.source(startsKey)) {
    checkPoints(startsKey, *starts);
    nameField(reader, *starts);
  }
  if (close == CloseOn::End) {
    if (!reader.given(endKey))
      throw QgsProcessingException(
          Text::tr("%1 is 2, so %2 is needed: give the point where the routes should end.").arg(closeKey, endKey));
    placeOf(reader, endKey);
  }
  if (close == CloseOn::Nothing && reader.flag(adjustKey))
    throw QgsProcessingException(
        Text::tr("%1: an open route has no miss to spread. Set %2 to 1 (it ends at its start) or 2 (at %3).")
            .arg(adjustKey, closeKey, endKey));
}

TraverseEnds read(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  TraverseEnds ends;
  ends.close = static_cast<CloseOn>(reader.choice(closeKey, closeCount));
  ends.adjust = reader.flag(adjustKey);
  if (reader.given(startKey)) {
    ends.start = placeOf(reader, startKey);
    ends.crs = crsOf(reader, startKey);
  } else {
    const auto starts = reader.source(startsKey);
    ends.crs = starts->sourceCrs();
    int unnamed = 0;
    readPlaces(startsKey, *starts, nameField(reader, *starts), reader.context().transformContext(), feedback,
               [&](const Place &place, const QString &name) {
                 if (name.isEmpty())
                   ++unnamed;
                 else
                   ends.starts[name].append(place);
               });
    if (unnamed > 0)
      feedback->pushWarning(Text::tr("%1: %n point(s) of layer “%2” without a name passed over.", nullptr, unnamed)
                                .arg(startsKey, starts->sourceName()));
  }
  if (ends.close == CloseOn::End)
    ends.end = placeOf(reader, endKey);
  else if (reader.given(endKey))
    feedback->pushWarning(
        Text::tr("%1 is given but not used: set %2 to 2 to close the routes on it.").arg(endKey, closeKey));
  return ends;
}

} // namespace traverse_parameters
} // namespace brushline
