// SPDX-License-Identifier: GPL-2.0-or-later
#include "registration.h"

#include "expressions.h"
#include "provider.h"

#include <QLocale>
#include <QPointer>
#include <QTranslator>
#include <qgsapplication.h>
#include <qgsprocessingregistry.h>
#include <qgsproject.h>

namespace {
int registrations = 0;
// The registry owns the provider and deletes it when it closes or refuses it.
QPointer<brushline::Provider> provider;

// The host loads the words of its own language for itself and for Python plugins, not for us. English has its plurals
// there, which serve where no other language does: the last one installed is asked first.
QPointer<QTranslator> plurals, translator;

void installTranslators() {
  if (translator)
    return;
  const QString prefix = QStringLiteral("brushline"), separator = QStringLiteral("_"),
                folder = QStringLiteral(":/brushline/translations");
  plurals = new QTranslator(QCoreApplication::instance());
  if (plurals->load(QLocale(QLocale::English), prefix, separator, folder))
    QCoreApplication::installTranslator(plurals);
  translator = new QTranslator(QCoreApplication::instance());
  if (translator->load(QLocale(QgsApplication::locale()), prefix, separator, folder))
    QCoreApplication::installTranslator(translator);
}

// Goes when the host begins to end. From then on its expressions must not be touched: their list is no more.
QPointer<QgsProject> project;
bool projectKnown = false;

bool expressionsLive() {
  if (!projectKnown)
    project = QgsProject::instance();
  projectKnown = true;
  return project;
}

QgsProcessingRegistry *registry() {
  return QgsApplication::instance() ? QgsApplication::processingRegistry() : nullptr;
}
} // namespace

int brushline_register() {
  QgsProcessingRegistry *const host = registry();
  if (!host)
    return 1;
  installTranslators();
  if (!host->providerById(QStringLiteral("brushline"))) {
    auto *const made = new brushline::Provider();
    if (!host->addProvider(made)) // deletes it
      return 2;
    provider = made;
  }
  if (registrations++ == 0 && expressionsLive())
    brushline::registerExpressions();
  return 0;
}

void brushline_unregister() {
  if (registrations == 0 || --registrations > 0)
    return;
  QgsProcessingRegistry *const host = registry();
  if (!host || QCoreApplication::closingDown())
    return;
  if (expressionsLive())
    brushline::unregisterExpressions();
  if (provider)
    host->removeProvider(provider);
}

int brushline_abi() { return 1; }

const char *brushline_built_for() { return BRUSHLINE_BUILT_FOR; }
