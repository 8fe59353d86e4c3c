// SPDX-License-Identifier: GPL-2.0-or-later
#include "provider.h"

#include "handouts/algorithms.h"
#include "legs/algorithms.h"
#include "magnetics/algorithms.h"
#include "planning/algorithms.h"
#include "records/algorithms.h"
#include "sighting/algorithms.h"

#include <QIcon>
#include <qgsprocessingalgorithm.h>

namespace brushline {

QString Provider::id() const { return QStringLiteral("brushline"); }
QString Provider::name() const { return QStringLiteral("Brushline"); }
QString Provider::longName() const { return tr("Brushline: compass legs through cover"); }
QString Provider::versionInfo() const { return QStringLiteral(BRUSHLINE_VERSION); }
QIcon Provider::icon() const { return QIcon(svgIconPath()); }
QString Provider::svgIconPath() const { return QStringLiteral(":/brushline/icon.svg"); }

void Provider::loadAlgorithms() {
  for (const auto &subject : {legs::algorithms(), sighting::algorithms(), planning::algorithms(), records::algorithms(),
                              magnetics::algorithms(), handouts::algorithms()})
    for (QgsProcessingAlgorithm *algorithm : subject)
      addAlgorithm(algorithm);
}

} // namespace brushline
