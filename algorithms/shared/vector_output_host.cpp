// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/vector_output_host.h"

#include "shared/gdal_errors_host.h"
#include "shared/input_files_host.h"

#include <QFile>
#include <QFileInfo>
#include <gdal.h>
#include <ogr_api.h>
#include <qgsabstractdatabaseproviderconnection.h>
#include <qgsexception.h>
#include <qgsmessagelog.h>
#include <qgsprovidermetadata.h>
#include <qgsproviderregistry.h>
#include <qgsvectorfilewriter.h>
#include <qgsvectorlayer.h>

#include <cmath>

namespace brushline {

QgsFields fieldsOf(std::initializer_list<std::pair<const char *, host::FieldType>> all, QgsFields before) {
  for (const auto &[name, type] : all)
    before.append(host::field(QString::fromLatin1(name), type));
  return before;
}

QVariant orNull(double value) { return std::isfinite(value) ? QVariant(value) : QVariant(); }
QVariant orNull(const std::optional<double> &value) { return value ? orNull(*value) : QVariant(); }
QVariant orNull(const QString &text) { return text.isEmpty() ? QVariant() : QVariant(text); }
QVariant orNull(const std::string &text) { return text.empty() ? QVariant() : QVariant(QString::fromStdString(text)); }

namespace {

//! Gives a layer our own look when the host shows it. Main thread.
class StylePostProcessor final : public QgsProcessingLayerPostProcessorInterface {
  Q_DECLARE_TR_FUNCTIONS(brushline::StylePostProcessor)

public:
  explicit StylePostProcessor(const Look &look) : mLook(look) {}

  void postProcessLayer(QgsMapLayer *layer, QgsProcessingContext &, QgsProcessingFeedback *feedback) override {
    if (const QString failure = KeptStyles::dress(*layer, mLook); !failure.isEmpty())
      feedback->pushWarning(tr("The layer's style could not be applied: %1").arg(failure));
    layer->triggerRepaint();
  }

private:
  Look mLook;
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

// How a text file ends.
QByteArray endOf(const QString &path) {
  QFile file(path);
  return file.open(QIODevice::ReadOnly) && file.seek(std::max<qint64>(0, file.size() - 8)) ? file.readAll()
                                                                                           : QByteArray();
}

// How many features a file holds, where the format is one that gives back what was put in; 0: it cannot be read to its
// end.
std::optional<long> featuresIn(const QString &destination) {
  const QString path = destination.section(QLatin1Char('|'), 0, 0);
  const QString ending = QFileInfo(path).suffix().toLower();
  if (ending == QLatin1String("geojson")) // counting would read a large one into memory
    return endOf(path).trimmed().endsWith('}') ? std::nullopt : std::optional<long>(0);
  static const QStringList sure{QStringLiteral("gpkg"), QStringLiteral("shp"), QStringLiteral("fgb"),
                                QStringLiteral("csv")};
  if (!sure.contains(ending) || !QFileInfo(path).isFile())
    return std::nullopt;
  const std::unique_ptr<void, decltype(&GDALClose)> data(
      GDALOpenEx(path.toUtf8().constData(), GDAL_OF_VECTOR | GDAL_OF_READONLY, nullptr, nullptr, nullptr), &GDALClose);
  if (!data)
    return 0;
  const QString layer = destination.section(QLatin1String("layername="), 1, 1).section(QLatin1Char('|'), 0, 0);
  OGRLayerH rows = layer.isEmpty() ? GDALDatasetGetLayer(data.get(), 0)
                                   : GDALDatasetGetLayerByName(data.get(), layer.toUtf8().constData());
  const GIntBig count = rows ? OGR_L_GetFeatureCount(rows, TRUE) : 0;
  if (ending == QLatin1String("fgb") && count > 0) { // its head tells
    const OGRFeatureH last = OGR_L_GetFeature(rows, count - 1);
    OGR_F_Destroy(last);
    return last ? long(count) : 0;
  }
  if (ending == QLatin1String("csv") && !endOf(path).endsWith('\n'))
    return 0;
  return long(count);
}

} // namespace

VectorOutput::VectorOutput(const ParameterReader &reader, const QString &key, const QgsFields &fields,
                           host::WkbType type, const QgsCoordinateReferenceSystem &crs, QgsFeatureSink::SinkFlags flags)
    : mContext(reader.context()), mKey(key), mGiven(reader.shown(key)),
      mStyles(KeptStyles::wanted(reader) ? reader.styles() : nullptr),
      mWalkerField(fields.lookupField(QStringLiteral("walker"))) {
  // GDAL passes over features without geometry when it writes the format's index, without a word.
  if (type == host::noGeometry && QFileInfo(mGiven).suffix().compare(QLatin1String("fgb"), Qt::CaseInsensitive) == 0)
    throw QgsProcessingException(tr("%1 (%2): “%3” cannot be written, since a FlatGeobuf keeps no table without "
                                    "geometries. Give a name that ends in .gpkg or .csv.")
                                     .arg(key, reader.definition(key)->description(), mGiven));
  QString reason;
  try {
    mSink.reset(QgsProcessingParameters::parameterAsSink(reader.definition(key), reader.parameters(), fields, type, crs,
                                                         reader.context(), mDestination, flags));
  } catch (const QgsProcessingException &error) {
    reason = error.what();
  }
  if (!mSink)
    throw QgsProcessingException(tr("%1 (%2): “%3” cannot be written. Is its folder there, may it be written to, and "
                                    "does the host know the format by that ending?")
                                     .arg(key, reader.definition(key)->description(), mGiven) +
                                 (reason.isEmpty() ? QString() : QStringLiteral(" (%1)").arg(reason)));
}

VectorOutput::~VectorOutput() {
  if (mFinished)
    return;
  const GdalErrors unheard;                   // of what goes away
  mSink.reset();                              // closes the file
  if (const auto table = tableTarget(mGiven)) // among others, which stay
    removeTable(*table);
  else
    removeFiles(mDestination);
}

void VectorOutput::removeTable(const TableTarget &target) const {
  QgsProviderMetadata *metadata = QgsProviderRegistry::instance()->providerMetadata(target.provider);
  if (!metadata)
    return;
  const bool file = target.provider != QLatin1String("postgres");
  try {
    const std::unique_ptr<QgsAbstractProviderConnection> connection(
        metadata->createConnection(file ? target.uri.database() : target.uri.connectionInfo(true), QVariantMap()));
    if (const auto *database = dynamic_cast<QgsAbstractDatabaseProviderConnection *>(connection.get()))
      database->dropVectorTable(target.uri.schema(), target.uri.table());
  } catch (const QgsProviderConnectionException &error) {
    QgsMessageLog::logMessage(tr("The unfinished table %1 is left: %2").arg(mGiven, error.what()));
  }
}

void VectorOutput::fail(const QString &reason) {
  throw QgsProcessingException(tr("%1: “%2” could not be written whole (%3), so it was left out. Is the disk full, or "
                                  "the file opened elsewhere?")
                                   .arg(mKey, mDestination, reason));
}

void VectorOutput::seeWalker(const QgsFeature &feature) {
  const QString walker = feature.attribute(mWalkerField).toString();
  if (!mWalker) {
    mFirstWalker = walker;
    mWalker.emplace(); // only one so far
  } else if (walker != mFirstWalker) {
    mWalker = mFirstWalker;
  }
}

void VectorOutput::add(QgsFeature &feature) {
  if (mWalkerField >= 0 && (!mWalker || mWalker->isEmpty()))
    seeWalker(feature);
  const GdalErrors errors;
  if (!mSink->addFeature(feature, QgsFeatureSink::FastInsert) || errors.any())
    fail(errors.firstOr(mSink->lastError()));
  ++mAdded;
}

// The host's writers tell nobody when the end of a file could not be written, and GDAL's for GeoJSON not even GDAL.
void VectorOutput::close() {
  const GdalErrors errors;
  if (!host::finalize(*mSink))
    fail(mSink->lastError());
  mSink.reset();
  if (errors.any())
    fail(errors.firstOr(QString()));
  if (const auto there = featuresIn(mDestination); there && *there != mAdded)
    fail(errors.firstOr(tr("%1 of %2 features are in it").arg(*there).arg(mAdded)));
}

QString VectorOutput::finish(const QString &styleResource) {
  close();
  mFinished = true;
  const Look look{styleResource, mWalker};
  if (!styleResource.isEmpty() && mContext.willLoadLayerOnCompletion(mDestination))
    mContext.layerToLoadOnCompletionDetails(mDestination).setPostProcessor(new StylePostProcessor(look));
  if (mStyles && !styleResource.isEmpty())
    mStyles->add(mDestination, look);
  return mDestination;
}

} // namespace brushline
