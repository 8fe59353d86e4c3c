// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/named_places_parameters.h"

#include "shared/feedback_progress_host.h"
#include "shared/parameter_checks_host.h"
#include "shared/place_reader_host.h"

#include <qgsexception.h>

namespace brushline::named_places_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::NamedPlacesParameters)
};
const QString pointsKey = QStringLiteral("POINTS"), nameKey = QStringLiteral("POINT_NAME"),
              snapKey = QStringLiteral("SNAP");
constexpr Limits snapLimits{0, 1000, 10};

// The field with the names: the one asked for, else one called "name".
int nameField(const ParameterReader &reader, const QgsProcessingFeatureSource &points) {
  const int asked = reader.fieldIndex(nameKey, points);
  const int index = asked >= 0 ? asked : points.fields().lookupField(QStringLiteral("name"));
  if (index < 0)
    throw QgsProcessingException(Text::tr("%1: layer “%2” has no field “name”: give the field that holds the names.")
                                     .arg(nameKey, points.sourceName()));
  return index;
}
} // namespace

Definitions definitions() {
  auto snap = new QgsProcessingParameterNumber(snapKey, Text::tr("Reach of a named point (m)"), host::doubleNumber,
                                               snapLimits.usual, false, snapLimits.least, snapLimits.most);
  return {
      helped(new QgsProcessingParameterFeatureSource(pointsKey, Text::tr("Named points"),
                                                     QList<int>() << host::pointLayers, QVariant(), true),
             Text::tr("Camp, lone pine, boulder: legs that start or end at one of these say so.")),
      helped(new QgsProcessingParameterField(nameKey, Text::tr("Field with the point's name"), QVariant(), pointsKey,
                                             host::anyField, false, true),
             Text::tr("Empty: the field called “name”.")),
      advanced(helped(snap, Text::tr("A leg's end takes the name of the nearest named point that is no farther than "
                                     "this, in metres.")))};
}

void check(const ParameterReader &reader) {
  reader.number(snapKey, snapLimits);
  const auto points = reader.source(pointsKey);
  if (!points)
    return;
  checkPoints(pointsKey, *points);
  nameField(reader, *points);
}

std::unique_ptr<NamedPlaces> read(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  const auto points = reader.source(pointsKey);
  if (!points)
    return nullptr;
  const int field = nameField(reader, *points);
  std::vector<NamedPlace> places;
  int nameless = 0;
  readPlaces(pointsKey, *points, field, reader.context().transformContext(), feedback,
             [&](const Place &place, const QString &name) {
               if (name.isEmpty())
                 ++nameless;
               else
                 places.push_back({place, name.toStdString()});
             });
  if (nameless > 0)
    feedback->pushWarning(Text::tr("%1: %n point(s) of layer “%2” without a name passed over.", nullptr, nameless)
                              .arg(pointsKey, points->sourceName()));
  return std::make_unique<NamedPlaces>(std::move(places), Length::metres(reader.number(snapKey, snapLimits)),
                                       FeedbackProgress(feedback));
}

} // namespace brushline::named_places_parameters
