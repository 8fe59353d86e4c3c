// SPDX-License-Identifier: GPL-2.0-or-later
#include "planning/features_parameters.h"

#include "shared/place_reader_host.h"
#include "shared/shapes_reader_host.h"

#include <qgsexception.h>
#include <qgsvectorlayer.h>

namespace brushline::features_parameters {

namespace {
struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::FeaturesParameters)
};
const QString nameKey = QStringLiteral("FEATURE_NAME");

QList<QgsVectorLayer *> layersOf(const ParameterReader &reader, const QString &key) {
  QList<QgsVectorLayer *> layers;
  if (!reader.given(key))
    return layers;
  for (QgsMapLayer *layer :
       QgsProcessingParameters::parameterAsLayerList(reader.definition(key), reader.parameters(), reader.context())) {
    auto *vector = qobject_cast<QgsVectorLayer *>(layer);
    if (!vector || !vector->isValid() || !vector->isSpatial())
      throw QgsProcessingException(Text::tr("%1: “%2” is no layer with geometries. Give layers of points, lines or polygons.")
                                       .arg(key, layer ? layer->name() : reader.shown(key)));
    layers << vector;
  }
  if (layers.isEmpty())
    throw QgsProcessingException(
        Text::tr("%1 (%2): none of the layers can be read. Give layers of the project or paths of files.")
            .arg(key, reader.definition(key)->description()));
  return layers;
}
} // namespace

Definitions definitions(const QString &key, const QString &label, const QString &help, bool optional) {
  return {helped(new QgsProcessingParameterMultipleLayers(key, label, host::anyGeometryLayers, QVariant(), optional),
                 help)};
}

Definitions nameDefinitions() {
  return {helped(new QgsProcessingParameterString(nameKey, Text::tr("Field with the features' names"),
                                                  QStringLiteral("name"), false, true),
                 Text::tr("Taken from each layer that has such a field; elsewhere the layer's name stands for it."))};
}

QString nameField(const ParameterReader &reader) { return reader.text(nameKey); }

void check(const ParameterReader &reader, const QString &key) {
  for (const QgsVectorLayer *layer : layersOf(reader, key))
    if (!layer->crs().isValid())
      throw QgsProcessingException(
          Text::tr("%1: layer “%2” has no coordinate reference system. Set it in the layer's properties.")
              .arg(key, layer->name()));
}

FeaturesInput read(const ParameterReader &reader, const QString &key, const QString &nameField,
                   QgsProcessingFeedback *feedback) {
  FeaturesInput input;
  for (QgsVectorLayer *layer : layersOf(reader, key)) {
    const QgsProcessingFeatureSource source(layer, reader.context(), false);
    const int field = nameField.isEmpty() ? -1 : layer->fields().lookupField(nameField);
    addShapes(input.shapes, key, source, field, size_t(input.layers.size()), reader.context().transformContext(),
              feedback);
    input.layers << layer->name();
  }
  return input;
}

} // namespace brushline::features_parameters
