// SPDX-License-Identifier: GPL-2.0-or-later
#include "sighting/candidates_parameters.h"

#include "shared/parameter_checks_host.h"
#include "shared/place_reader_host.h"

#include <qgsexception.h>

namespace brushline::candidates_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::CandidatesParameters)
};
const QString candidatesKey = QStringLiteral("CANDIDATES"), nameKey = QStringLiteral("MARK_NAME"),
              offsetKey = QStringLiteral("MAX_OFFSET");
constexpr Limits offsetLimits{0, 1000, 10};
} // namespace

Definitions definitions() {
  return {helped(new QgsProcessingParameterFeatureSource(candidatesKey, Text::tr("Candidates for marks (points)"),
                                                         QList<int>() << host::pointLayers),
                 Text::tr("Trees, boulders, stumps: what can be told from its surroundings and sighted at.")),
          helped(new QgsProcessingParameterField(nameKey, Text::tr("Field with the candidate's name"), QVariant(),
                                                 candidatesKey, host::anyField, false, true),
                 Text::tr("Empty: the field called “name”, if there is one.")),
          helped(numberDefinition(offsetKey, Text::tr("Farthest a mark may lie from the line (m)"), offsetLimits),
                 Text::tr("Marks beside the line are fine, since each has its own bearing; in metres, to either side."))};
}

void check(const ParameterReader &reader) {
  reader.number(offsetKey, offsetLimits);
  const auto source = reader.source(candidatesKey);
  if (!source)
    throw QgsProcessingException(Text::tr("%1: give a layer with points.").arg(candidatesKey));
  checkPoints(candidatesKey, *source);
  reader.fieldIndex(nameKey, *source);
}

CandidateInput read(const ParameterReader &reader, QgsProcessingFeedback *feedback) {
  CandidateInput result;
  result.offset = Length::metres(reader.number(offsetKey, offsetLimits));
  const auto source = reader.source(candidatesKey);
  int field = reader.fieldIndex(nameKey, *source);
  if (field < 0)
    field = source->fields().lookupField(QStringLiteral("name"));
  readPlaces(candidatesKey, *source, field, reader.context().transformContext(), feedback,
             [&](const Place &place, const QString &name) {
               result.places.push_back(place);
               result.names.push_back(name);
             });
  return result;
}

} // namespace brushline::candidates_parameters
