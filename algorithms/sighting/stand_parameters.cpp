// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/stand_parameters.h"

#include "shared/feedback_progress_host.h"
#include "sighting/cover_patches_host.h"
#include "sighting/extinction.h"

#include <qgsexception.h>

namespace brushline::stand_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::StandParameters)
};
const QString layerKey = QStringLiteral("COVER"), stemsKey = QStringLiteral("STEMS_FIELD"),
              diameterKey = QStringLiteral("DIAMETER_FIELD"), understoreyKey = QStringLiteral("UNDERSTOREY_FIELD");
constexpr Limits stemsLimits{0, 1e6, 0}, diameterLimits{0, 5, 0}, understoreyLimits{0, 10, 0};
} // namespace

Definitions definitions() {
  const auto field = [](const QString &key, const QString &label, const QString &help) {
    return helped(new QgsProcessingParameterField(key, label, QVariant(), layerKey, host::anyField, false, true), help);
  };
  return {
      field(stemsKey, Text::tr("Stands: field with stems per hectare"),
            Text::tr("For polygons that are forest stands: the number of stems per hectare. Sight then comes from "
                     "stems and diameter, not from a class. It is an upper bound: what grows between the stems counts "
                     "only through the understorey.")),
      field(diameterKey, Text::tr("Stands: field with the mean diameter (m)"),
            Text::tr("Mean diameter of the stems in metres.")),
      field(understoreyKey, Text::tr("Stands: field with the understorey (1/m)"),
            Text::tr("Extinction by what grows between the stems, per metre; ln 2 divided by the distance at which "
                     "half the marks are clear in it. Empty: none."))};
}

bool given(const ParameterReader &reader) {
  return reader.given(stemsKey) || reader.given(diameterKey) || reader.given(understoreyKey);
}

void check(const ParameterReader &reader) {
  if (!given(reader))
    return;
  const auto source = reader.source(layerKey);
  if (!source)
    throw QgsProcessingException(Text::tr("%1: give the layer with the stands.").arg(layerKey));
  for (const QString &key : {stemsKey, diameterKey})
    if (reader.fieldIndex(key, *source) < 0)
      throw QgsProcessingException(Text::tr("%1: stands need both the stems per hectare and their diameter.").arg(key));
  reader.fieldIndex(understoreyKey, *source);
}

StandMap read(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  const auto source = reader.source(layerKey);
  const int stems = reader.fieldIndex(stemsKey, *source), diameter = reader.fieldIndex(diameterKey, *source),
            understorey = reader.fieldIndex(understoreyKey, *source);
  StandMap result;
  int incomplete = 0;
  const auto number = [&](const QgsFeature &feature, int index, const Limits &limits) -> std::optional<double> {
    const QVariant value = index < 0 ? QVariant() : feature.attribute(index);
    if (value.isNull())
      return std::nullopt;
    bool ok = false;
    const double number = value.toDouble(&ok);
    if (!ok || !limits.contains(number))
      throw QgsProcessingException(Text::tr("%1: layer “%2”, feature %3: %4 is “%5”; give a number from %6 to %7.")
                                       .arg(layerKey, source->sourceName(), QString::number(feature.id()),
                                            source->fields().at(index).name(), value.toString(), plain(limits.least),
                                            plain(limits.most)));
    return number;
  };
  const auto standOf = [&](const QgsFeature &feature) {
    const auto n = number(feature, stems, stemsLimits), d = number(feature, diameter, diameterLimits);
    if (!n || !d) {
      ++incomplete;
      return -1;
    }
    result.extinctions.push_back(
        standExtinction(*n, Length::metres(*d), number(feature, understorey, understoreyLimits).value_or(0)));
    return int(result.extinctions.size()) - 1;
  };
  QgsAttributeList fields{stems, diameter};
  if (understorey >= 0)
    fields << understorey;
  result.map =
      std::make_shared<CoverMap>(readPatches(layerKey, *source, fields, standOf, feedback), FeedbackProgress(feedback));
  if (incomplete > 0)
    feedback->pushWarning(
        Text::tr("%1: %n stand(s) of layer “%2” without stems or diameter passed over; what else is given of the cover "
                 "there counts.",
                 nullptr, incomplete)
            .arg(layerKey, source->sourceName()));
  return result;
}

} // namespace brushline::stand_parameters
