// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/kept_styles_host.h"

#include "shared/unfinished_files_host.h"

#include <QDomDocument>
#include <QFile>
#include <QFileInfo>
#include <qgsexpressioncontextutils.h>
#include <qgsobjectcustomproperties.h>
#include <qgsprocessingutils.h>
#include <qgsvectorlayer.h>

namespace brushline {

namespace {
const QString keepKey = QStringLiteral("KEEP_STYLE");

// A variable and no expression that looks for the first walker: labels are drawn in threads of their own, where the
// host's aggregate functions (minimum, count, concatenate) read layer and project. That is not safe, and QGIS 3.22 was
// seen to crash.
const QString walkerVariable = QStringLiteral("brushline_walker");

// Gives a layer a look. \returns what went wrong; empty: nothing.
QString dress(QgsMapLayer &layer, const Look &look) {
  bool ok = false;
  const QString message = layer.loadNamedStyle(look.resource, ok);
  if (look.walker)
    QgsExpressionContextUtils::setLayerVariable(&layer, walkerVariable, *look.walker);
  return ok ? QString() : message.isEmpty() ? look.resource : message;
}

//! Gives a layer our own look when the host shows it. Main thread.
class StylePostProcessor final : public QgsProcessingLayerPostProcessorInterface {
  Q_DECLARE_TR_FUNCTIONS(brushline::StylePostProcessor)

public:
  explicit StylePostProcessor(const Look &look) : mLook(look) {}

  void postProcessLayer(QgsMapLayer *layer, QgsProcessingContext &, QgsProcessingFeedback *feedback) override {
    if (const QString failure = dress(*layer, mLook); !failure.isEmpty())
      feedback->pushWarning(tr("The layer's style could not be applied: %1").arg(failure));
    layer->triggerRepaint();
  }

private:
  Look mLook;
};

// The style that a run before kept under this name. The host would ask whether to replace it, and qgis_process would
// wait for ever for an answer to a question that nobody sees.
void dropKept(QgsVectorLayer &layer) {
  QStringList ids, names, descriptions;
  QString message;
  const int own = layer.listStylesInDatabase(ids, names, descriptions, message); // others' come behind them
  for (int k = 0; k < own; ++k)
    if (names.at(k) == layer.name())
      layer.deleteStyleFromDatabase(ids.at(k), message);
}

// Into a GeoPackage. Nothing is read of the layer: a reader that is still open while the style is written has left the
// file unreadable.
QString keepInside(const QString &destination, const Look &look, QgsProcessingContext &context) {
  auto *layer = qobject_cast<QgsVectorLayer *>(QgsProcessingUtils::mapLayerFromString(destination, context));
  if (!layer)
    return QCoreApplication::translate("brushline::KeptStyles", "it cannot be opened");
  QString message = dress(*layer, look);
  if (!message.isEmpty())
    return message;
  dropKept(*layer);
  QT_WARNING_PUSH
  QT_WARNING_DISABLE_DEPRECATED // on late 3.44; what takes its place is not in all of that series
  layer->saveStyleToDatabase(layer->name(), QString(), true, QString(), message);
  QT_WARNING_POP
  layer->reload(); // by the connection it has, the file cannot be read any more
  return message;
}

// The style's text with the layer's variable, as the host writes it.
QByteArray written(const QByteArray &style, const Look &look) {
  QDomDocument document;
  if (!look.walker || !document.setContent(style))
    return style;
  QgsObjectCustomProperties properties;
  QDomElement root = document.documentElement();
  properties.setValue(QStringLiteral("variableNames"), QStringList{walkerVariable});
  properties.setValue(QStringLiteral("variableValues"), QStringList{*look.walker});
  properties.writeXml(root, document);
  return document.toByteArray();
}

// Beside any other file, which is not opened for it: that takes long with large ones.
QString keepBeside(const QFileInfo &file, const Look &look) {
  QFile style(look.resource);
  const QString name = file.completeBaseName() + QStringLiteral(".qml");
  QFile part(unfinishedFile(file.path(), QStringLiteral("qml")));
  if (!style.open(QIODevice::ReadOnly))
    return style.errorString();
  const QByteArray words = written(style.readAll(), look);
  QString failure;
  if (!part.open(QIODevice::WriteOnly) || part.write(words) != words.size() || !part.flush())
    failure = part.errorString();
  part.close();
  if (failure.isEmpty())
    failure = moveOver(part.fileName(), file.path() + QLatin1Char('/') + name);
  if (!failure.isEmpty())
    part.remove();
  return failure;
}
} // namespace

Definitions KeptStyles::definitions() {
  auto *keep = new QgsProcessingParameterBoolean(keepKey, tr("Keep the look of the results in their files"), true,
                                                 true); // models of before it was there hold on
  return {advanced(helped(keep, tr("In a GeoPackage as the default style of the layer, for other files as a file .qml "
                                   "beside it.")))};
}

KeptStyles::KeptStyles(const ParameterReader &reader) : mKeep(reader.has(keepKey) && reader.flag(keepKey)) {}

void KeptStyles::give(QgsProcessingContext &context, const QString &destination, const Look &look) {
  if (context.willLoadLayerOnCompletion(destination))
    context.layerToLoadOnCompletionDetails(destination).setPostProcessor(new StylePostProcessor(look));
  if (mKeep)
    mLayers.push_back({destination, look});
}

void KeptStyles::keep(QgsProcessingContext &context, QgsProcessingFeedback *feedback) const {
  for (const Layer &each : mLayers) {
    const QString path = each.destination.section(QLatin1Char('|'), 0, 0);
    const QFileInfo file(path);
    if (!file.isFile())
      continue;
    const bool inside = file.suffix().compare(QLatin1String("gpkg"), Qt::CaseInsensitive) == 0;
    const QString failure = inside ? keepInside(each.destination, each.look, context) : keepBeside(file, each.look);
    if (!failure.isEmpty())
      feedback->pushWarning(tr("The look of %1 could not be kept with it: %2").arg(path, failure));
  }
}

} // namespace brushline
