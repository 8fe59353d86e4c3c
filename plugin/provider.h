// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <QCoreApplication>
#include <qgsprocessingprovider.h>

namespace brushline {

//! The provider "brushline". It asks each subject for its list of algorithms.
class Provider final : public QgsProcessingProvider {
  Q_DECLARE_TR_FUNCTIONS(brushline::Provider)

public:
  QString id() const override;
  QString name() const override;
  QString longName() const override;
  QString versionInfo() const override;
  QIcon icon() const override;
  QString svgIconPath() const override;
  void loadAlgorithms() override;
};

} // namespace brushline
