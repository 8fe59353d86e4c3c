// SPDX-License-Identifier: GPL-2.0-or-later
#include "shared/kept_styles_host.h"

#include <QFileInfo>
#include <qgsprocessingutils.h>
#include <qgsvectorlayer.h>

namespace brushline {

namespace {
const QString keepKey = QStringLiteral("KEEP_STYLE");

// What went wrong; empty: nothing.
QString keepWith(QgsVectorLayer &layer, const QString &path, const QString &resource) {
  bool ok = false;
  QString message = layer.loadNamedStyle(resource, ok);
  if (!ok)
    return message;
  if (QFileInfo(path).suffix().compare(QLatin1String("gpkg"), Qt::CaseInsensitive) == 0) {
    message.clear();
    layer.saveStyleToDatabase(layer.name(), QString(), true, QString(), message);
    return message;
  }
  message = host::saveDefaultStyle(layer, ok);
  return ok ? QString() : message;
}
} // namespace

Definitions KeptStyles::definitions() {
  auto *keep = new QgsProcessingParameterBoolean(keepKey, tr("Keep the look of the results in their files"), true);
  return {advanced(helped(keep, tr("In a GeoPackage as the default style of the layer, for other files as a file .qml "
                                   "beside it.")))};
}

bool KeptStyles::wanted(const ParameterReader &reader) { return reader.has(keepKey) && reader.flag(keepKey); }

void KeptStyles::keep(QgsProcessingContext &context, QgsProcessingFeedback *feedback) const {
  for (const Layer &each : mLayers) {
    const QString path = each.destination.section(QLatin1Char('|'), 0, 0);
    if (!QFileInfo(path).isFile())
      continue;
    auto *layer = qobject_cast<QgsVectorLayer *>(QgsProcessingUtils::mapLayerFromString(each.destination, context));
    const QString failure = layer ? keepWith(*layer, path, each.resource) : tr("it cannot be opened");
    if (!failure.isEmpty())
      feedback->pushWarning(tr("The look of %1 could not be kept with it: %2").arg(path, failure));
  }
}

} // namespace brushline
