// SPDX-License-Identifier: GPL-2.0-or-later
#include "registration.h"

#include "provider.h"

#include <QPointer>
#include <qgsapplication.h>
#include <qgsprocessingregistry.h>

namespace {
int registrations = 0;
// The registry owns the provider and deletes it when it closes or refuses it.
QPointer<brushline::Provider> provider;

QgsProcessingRegistry *registry() {
  return QgsApplication::instance() ? QgsApplication::processingRegistry() : nullptr;
}
} // namespace

int brushline_register() {
  QgsProcessingRegistry *const host = registry();
  if (!host)
    return 1;
  if (!host->providerById(QStringLiteral("brushline"))) {
    auto *const made = new brushline::Provider();
    if (!host->addProvider(made)) // deletes it
      return 2;
    provider = made;
  }
  ++registrations;
  return 0;
}

void brushline_unregister() {
  if (registrations == 0 || --registrations > 0)
    return;
  QgsProcessingRegistry *const host = registry();
  if (host && provider && !QCoreApplication::closingDown())
    host->removeProvider(provider);
}

int brushline_abi() { return 1; }

const char *brushline_built_for() { return BRUSHLINE_BUILT_FOR; }
