// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/vector_output_host.h"

#include "quantities/progress.h"
#include "shared/gdal_errors_host.h"
#include "shared/input_files_host.h"
#include "shared/layer_files_host.h"

#include <QFileInfo>
#include <qgsabstractdatabaseproviderconnection.h>
#include <qgsexception.h>
#include <qgsfeedback.h>
#include <qgsmessagelog.h>
#include <qgsprovidermetadata.h>
#include <qgsproviderregistry.h>
#include <qgsvectorlayer.h>

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {
// Whether one of a feature's texts is longer than a shapefile's fields can be.
bool isCut(const QgsFeature &feature) {
  constexpr int most = 254; // bytes; ESRI Shapefile Technical Description (1998), dBASE fields
  const QgsAttributes values = feature.attributes();
  return std::any_of(values.begin(), values.end(), [](const QVariant &value) {
    return value.type() == QVariant::String && value.toString().toUtf8().size() > most;
  });
}
} // namespace

QgsFields fieldsOf(std::initializer_list<std::pair<const char *, host::FieldType>> all, QgsFields before) {
  for (const auto &[name, type] : all)
    before.append(host::field(QString::fromLatin1(name), type));
  return before;
}

QVariant orNull(double value) { return std::isfinite(value) ? QVariant(value) : QVariant(); }
QVariant orNull(const std::optional<double> &value) { return value ? orNull(*value) : QVariant(); }
QVariant orNull(const QString &text) { return text.isEmpty() ? QVariant() : QVariant(text); }
QVariant orNull(const std::string &text) { return text.empty() ? QVariant() : QVariant(QString::fromStdString(text)); }

VectorOutput::VectorOutput(const ParameterReader &reader, const QString &key, const QgsFields &fields,
                           host::WkbType type, const QgsCoordinateReferenceSystem &crs, QgsFeatureSink::SinkFlags flags)
    : mContext(reader.context()), mKey(key), mGiven(reader.shown(key)), mStyles(reader.styles()),
      mCutsTexts(QFileInfo(mGiven).suffix().compare(QLatin1String("shp"), Qt::CaseInsensitive) == 0),
      mIndexLeftOut(isIndexLeftOut(mGiven, type)), mWalkerField(fields.lookupField(QStringLiteral("walker"))) {
  // GDAL passes over features without geometry when it writes the format's index, without a word.
  if (type == host::noGeometry && QFileInfo(mGiven).suffix().compare(QLatin1String("fgb"), Qt::CaseInsensitive) == 0)
    throw QgsProcessingException(tr("%1 (%2): “%3” cannot be written, since a FlatGeobuf keeps no table without "
                                    "geometries. Give a name that ends in .gpkg or .csv.")
                                     .arg(key, reader.definition(key)->description(), mGiven));
  QString reason;
  try {
    mSink.reset(QgsProcessingParameters::parameterAsSink(reader.definition(key), reader.parameters(), fields, type, crs,
                                                         reader.context(), mDestination, flags, {}, {},
                                                         layerOptions(mGiven, type)));
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
    removeLayerFiles(mDestination);
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
  if (mCutsTexts && isCut(feature))
    ++mCut;
}

// The host's writers tell nobody when the end of a file could not be written, and GDAL's for GeoJSON not even GDAL.
void VectorOutput::close(const QgsFeedback *feedback) {
  const GdalErrors errors;
  if (!host::finalize(*mSink))
    fail(mSink->lastError());
  mSink.reset();
  if (errors.any())
    fail(errors.firstOr(QString()));
  if (const auto there = featuresIn(mDestination); there && *there != mAdded)
    fail(errors.firstOr(tr("%1 of %2 features are in it").arg(*there).arg(mAdded)));
  if (mIndexLeftOut)
    if (const QString reason = makeIndex(mDestination, feedback); !reason.isEmpty())
      fail(reason);
  if (feedback && feedback->isCanceled())
    throw Cancelled();
}

QString VectorOutput::keep(const QString &styleResource, QgsProcessingFeedback *feedback) {
  mFinished = true;
  if (mCut > 0 && feedback)
    feedback->pushWarning(tr("%1: “%2” is a shapefile, which keeps 254 bytes of a text: the texts of %n feature(s) are "
                             "cut, warnings perhaps among them. Give a name that ends in .gpkg.",
                             nullptr, int(mCut))
                              .arg(mKey, mDestination));
  const Look look{styleResource, mWalker};
  if (!styleResource.isEmpty())
    mStyles->give(mContext, mDestination, look);
  return mDestination;
}

QVariantMap VectorOutput::finishAll(std::initializer_list<Styled> outputs, QgsProcessingFeedback *feedback) {
  for (const auto &[output, style] : outputs)
    if (output)
      output->close(feedback);
  QVariantMap results;
  for (const auto &[output, style] : outputs)
    if (output)
      results.insert(output->mKey, output->keep(style, feedback));
  return results;
}

QString VectorOutput::finish(const QString &styleResource, QgsProcessingFeedback *feedback) {
  close(feedback);
  return keep(styleResource, feedback);
}

} // namespace brushline
