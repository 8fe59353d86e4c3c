// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/kept_styles_host.h"

#include <QFile>
#include <QFileInfo>
#include <qgsexpressioncontextutils.h>
#include <qgsfeatureiterator.h>
#include <qgsprocessingutils.h>
#include <qgsvectorlayer.h>

namespace brushline {

namespace {
const QString keepKey = QStringLiteral("KEEP_STYLE");

// Legs that come for several walkers wear the labels of one, with the name: the first, or whom the user writes into the
// layer's variable brushline_walker. It is empty where there is only one walker. A variable, since labels are drawn in
// threads of their own: the host's aggregate functions (minimum, count, concatenate) read layer and project, which is
// not safe there, and QGIS 3.22 was seen to crash.
void chooseWalker(QgsVectorLayer *layer) {
  const int walker = layer ? layer->fields().lookupField(QStringLiteral("walker")) : -1;
  if (walker < 0)
    return;
  QgsFeature first;
  layer->getFeatures(QgsFeatureRequest().setLimit(1)).nextFeature(first);
  const bool several = layer->uniqueValues(walker, 2).size() > 1;
  QgsExpressionContextUtils::setLayerVariable(layer, QStringLiteral("brushline_walker"),
                                              several ? first.attribute(walker).toString() : QString());
}

// Into a GeoPackage. Nothing is read of the layer: a reader that is still open while the style is written has left the
// file unreadable. So the labels are those of all walkers until somebody sets the variable brushline_walker.
QString keepInside(const QString &destination, const QString &resource, QgsProcessingContext &context) {
  auto *layer = qobject_cast<QgsVectorLayer *>(QgsProcessingUtils::mapLayerFromString(destination, context));
  if (!layer)
    return QCoreApplication::translate("brushline::KeptStyles", "it cannot be opened");
  bool ok = false;
  QString message = layer->loadNamedStyle(resource, ok);
  if (!ok)
    return message;
  message.clear();
  layer->saveStyleToDatabase(layer->name(), QString(), true, QString(), message);
  return message;
}

// Beside any other file, which is not opened for it: that takes long with large ones.
QString keepBeside(const QFileInfo &file, const QString &resource) {
  QFile style(resource), side(file.path() + QLatin1Char('/') + file.completeBaseName() + QStringLiteral(".qml"));
  if (!style.open(QIODevice::ReadOnly))
    return style.errorString();
  const QByteArray words = style.readAll();
  if (!side.open(QIODevice::WriteOnly) || side.write(words) != words.size() || !side.flush())
    return side.errorString();
  return QString();
}
} // namespace

QString KeptStyles::dress(QgsMapLayer &layer, const QString &resource) {
  bool ok = false;
  const QString message = layer.loadNamedStyle(resource, ok);
  chooseWalker(qobject_cast<QgsVectorLayer *>(&layer));
  return ok ? QString() : message.isEmpty() ? resource : message;
}

Definitions KeptStyles::definitions() {
  auto *keep = new QgsProcessingParameterBoolean(keepKey, tr("Keep the look of the results in their files"), true);
  return {advanced(helped(keep, tr("In a GeoPackage as the default style of the layer, for other files as a file .qml "
                                   "beside it.")))};
}

bool KeptStyles::wanted(const ParameterReader &reader) { return reader.has(keepKey) && reader.flag(keepKey); }

void KeptStyles::keep(QgsProcessingContext &context, QgsProcessingFeedback *feedback) const {
  for (const Layer &each : mLayers) {
    const QString path = each.destination.section(QLatin1Char('|'), 0, 0);
    const QFileInfo file(path);
    if (!file.isFile())
      continue;
    const bool inside = file.suffix().compare(QLatin1String("gpkg"), Qt::CaseInsensitive) == 0;
    const QString failure =
        inside ? keepInside(each.destination, each.resource, context) : keepBeside(file, each.resource);
    if (!failure.isEmpty())
      feedback->pushWarning(tr("The look of %1 could not be kept with it: %2").arg(path, failure));
  }
}

} // namespace brushline
