// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/vector_output_host.h"

#include <QFile>
#include <QFileInfo>
#include <qgsexception.h>
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

} // namespace

VectorOutput::VectorOutput(const ParameterReader &reader, const QString &key, const QgsFields &fields,
                           host::WkbType type, const QgsCoordinateReferenceSystem &crs, QgsFeatureSink::SinkFlags flags)
    : mContext(reader.context()), mKey(key), mStyles(KeptStyles::wanted(reader) ? reader.styles() : nullptr),
      mWalkerField(fields.lookupField(QStringLiteral("walker"))) {
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
  if (!mSink->addFeature(feature, QgsFeatureSink::FastInsert))
    fail(mSink->lastError());
}

QString VectorOutput::finish(const QString &styleResource) {
  if (!host::finalize(*mSink))
    fail(mSink->lastError());
  mSink.reset();
  mFinished = true;
  const Look look{styleResource, mWalker};
  if (!styleResource.isEmpty() && mContext.willLoadLayerOnCompletion(mDestination))
    mContext.layerToLoadOnCompletionDetails(mDestination).setPostProcessor(new StylePostProcessor(look));
  if (mStyles && !styleResource.isEmpty())
    mStyles->add(mDestination, look);
  return mDestination;
}

} // namespace brushline
