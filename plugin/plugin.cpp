// SPDX-License-Identifier: GPL-2.0-or-later
#include "registration.h"

#include <QCoreApplication>
#include <QObject>
#include <qgisplugin.h>

namespace {

struct Text {
  Q_DECLARE_TR_FUNCTIONS(brushline::Plugin)
};

const QString &pluginName() {
  static const QString text = QStringLiteral("Brushline");
  return text;
}
const QString &pluginDescription() {
  static const QString text = Text::tr("Turns planned routes into legs to walk by compass and pace count");
  return text;
}
const QString &pluginCategory() {
  static const QString text = QStringLiteral("Processing");
  return text;
}
const QString &pluginVersion() {
  static const QString text = QStringLiteral(BRUSHLINE_VERSION);
  return text;
}
const QString &pluginIcon() {
  static const QString text = QStringLiteral(":/brushline/icon.svg");
  return text;
}

//! What the desktop loads. No windows: it registers the provider, and takes it back.
class Plugin final : public QObject, public QgisPlugin {
public:
  Plugin() : QgisPlugin(pluginName(), pluginDescription(), pluginCategory(), pluginVersion(), QgisPlugin::UI) {}

  void initGui() override { mRegistered = brushline_register() == 0; }
  void unload() override {
    if (mRegistered)
      brushline_unregister();
    mRegistered = false;
  }

private:
  bool mRegistered = false;
};

} // namespace

QGISEXTERN QgisPlugin *classFactory(QgisInterface *) { return new Plugin(); }
QGISEXTERN const QString *name() { return &pluginName(); }
QGISEXTERN const QString *description() { return &pluginDescription(); }
QGISEXTERN const QString *category() { return &pluginCategory(); }
QGISEXTERN int type() { return QgisPlugin::UI; }
QGISEXTERN const QString *version() { return &pluginVersion(); }
QGISEXTERN const QString *icon() { return &pluginIcon(); }
QGISEXTERN void unload(QgisPlugin *plugin) { delete plugin; }
