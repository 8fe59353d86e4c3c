// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/vector_output_host.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QRegularExpression>
#include <qgsdataprovider.h>
#include <qgsdatasourceuri.h>
#include <qgsexception.h>
#include <qgsproviderregistry.h>
#include <qgsvectorfilewriter.h>
#include <qgsvectorlayer.h>

namespace brushline {

namespace {

//! Gives a layer our own look when the host shows it. Main thread.
class StylePostProcessor final : public QgsProcessingLayerPostProcessorInterface {
  Q_DECLARE_TR_FUNCTIONS(brushline::StylePostProcessor)

public:
  explicit StylePostProcessor(const QString &resource) : mResource(resource) {}

  void postProcessLayer(QgsMapLayer *layer, QgsProcessingContext &, QgsProcessingFeedback *feedback) override {
    bool ok = false;
    const QString message = layer->loadNamedStyle(mResource, ok);
    if (!ok)
      feedback->pushWarning(tr("The layer's style could not be applied: %1").arg(message));
    layer->triggerRepaint();
  }

private:
  QString mResource;
};

// Removes a file output that was begun, with the side files of its format.
void removeFiles(const QString &destination) {
  const QString path = destination.section(QLatin1Char('|'), 0, 0);
  const QFileInfo file(path);
  if (!file.isFile())
    return;
  if (file.suffix().compare(QLatin1String("shp"), Qt::CaseInsensitive) == 0) {
    QgsVectorFileWriter::deleteShapeFile(path);
    return;
  }
  QFile::remove(path);
  for (const char *side : {"-wal", "-shm", "-journal"})
    QFile::remove(path + QLatin1String(side));
  if (file.suffix().compare(QLatin1String("csv"), Qt::CaseInsensitive) == 0)
    QFile::remove(path + QLatin1Char('t')); // column types
}

// A file, and the layer in it where one is named.
struct FilePlace {
  QString file; // empty: no file
  QString layer;

  // Whether writing the one changes the other.
  bool meets(const FilePlace &other) const {
    return !file.isEmpty() && file == other.file && (layer.isEmpty() || other.layer.isEmpty() || layer == other.layer);
  }
};

// The one path of a file, whether or not it is there yet.
QString onePath(const QString &path) {
  if (path.isEmpty())
    return QString();
  const QFileInfo file(path);
  if (file.exists())
    return file.canonicalFilePath();
  const QString folder = file.absoluteDir().canonicalPath();
  return folder.isEmpty() ? QDir::cleanPath(file.absoluteFilePath()) : folder + QLatin1Char('/') + file.fileName();
}

// Where a layer is read from.
FilePlace sourceOf(const QgsMapLayer &layer) {
  const QVariantMap parts = QgsProviderRegistry::instance()->decodeUri(layer.dataProvider()->name(), layer.source());
  return {onePath(parts.value(QStringLiteral("path")).toString()), parts.value(QStringLiteral("layerName")).toString()};
}

// Where the host writes an output to.
FilePlace targetOf(const ParameterReader &reader, const QString &key) {
  const QString destination = reader.shown(key);
  if (destination == QgsProcessing::TEMPORARY_OUTPUT)
    return {};
  if (destination.startsWith(QLatin1String("ogr:"))) { // a layer in a file that stays
    const QgsDataSourceUri uri(destination.mid(4));
    return {onePath(uri.database()), uri.table()};
  }
  static const QRegularExpression elsewhere(QStringLiteral("^[a-zA-Z]{2,}:"));
  if (destination.contains(elsewhere))
    return {};
  QString path = destination.section(QLatin1Char('|'), 0, 0);
  if (reader.definition(key)->type() == QgsProcessingParameterFeatureSink::typeName() &&
      QgsVectorFileWriter::driverForExtension(QFileInfo(path).suffix()).isEmpty())
    path += QLatin1String(".gpkg"); // as the host does for an ending it does not know
  return {onePath(path), QString()};
}

} // namespace

void refuseInputFile(const ParameterReader &reader, const QString &key) {
  const FilePlace target = targetOf(reader, key);
  for (const QgsProcessingParameterDefinition *definition : reader.definitions()) {
    const QString &other = definition->name();
    if (other == key || !reader.given(other))
      continue;
    if (definition->isDestination()) {
      if (target.meets(targetOf(reader, other)))
        throw QgsProcessingException(
            QCoreApplication::translate("brushline::VectorOutput", "%1: “%2” is given for %3 too. Give each a file of its own.")
                .arg(key, reader.shown(key), other));
      continue;
    }
    const QgsMapLayer *layer = nullptr;
    if (definition->type() == QgsProcessingParameterFeatureSource::typeName())
      layer = QgsProcessingParameters::parameterAsVectorLayer(definition, reader.parameters(), reader.context());
    else if (definition->type() == QgsProcessingParameterRasterLayer::typeName())
      layer = QgsProcessingParameters::parameterAsRasterLayer(definition, reader.parameters(), reader.context());
    if (layer && layer->dataProvider() && target.meets(sourceOf(*layer)))
      throw QgsProcessingException(
          QCoreApplication::translate("brushline::VectorOutput", "%1: “%2” is the file that %3 is read from. Give another file.")
              .arg(key, reader.shown(key), other));
  }
}

VectorOutput::VectorOutput(const ParameterReader &reader, const QString &key, const QgsFields &fields,
                           host::WkbType type, const QgsCoordinateReferenceSystem &crs)
    : mContext(reader.context()), mKey(key) {
  QString reason;
  try {
    mSink.reset(QgsProcessingParameters::parameterAsSink(reader.definition(key), reader.parameters(), fields, type, crs,
                                                         reader.context(), mDestination));
  } catch (const QgsProcessingException &error) {
    reason = error.what();
  }
  if (!mSink)
    throw QgsProcessingException(tr("%1 (%2): “%3” cannot be written. Is its folder there, may it be written to, and "
                                    "does the host know the format by that ending?")
                                     .arg(key, reader.definition(key)->description(), reader.shown(key)) +
                                 (reason.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(reason)));
}

VectorOutput::~VectorOutput() {
  if (mFinished)
    return;
  mSink.reset(); // closes the file
  removeFiles(mDestination);
}

void VectorOutput::fail(const QString &reason) {
  throw QgsProcessingException(tr("%1: a feature could not be written to %2 (%3). Is the disk full, or the file "
                                  "opened elsewhere?")
                                   .arg(mKey, mDestination, reason));
}

void VectorOutput::add(QgsFeature &feature) {
  if (!mSink->addFeature(feature, QgsFeatureSink::FastInsert))
    fail(mSink->lastError());
}

QString VectorOutput::finish(const QString &styleResource) {
  if (!host::finalize(*mSink))
    fail(mSink->lastError());
  mSink.reset();
  mFinished = true;
  if (mContext.willLoadLayerOnCompletion(mDestination))
    mContext.layerToLoadOnCompletionDetails(mDestination).setPostProcessor(new StylePostProcessor(styleResource));
  return mDestination;
}

} // namespace brushline
