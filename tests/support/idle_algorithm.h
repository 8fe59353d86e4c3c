// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <qgsprocessingalgorithm.h>

namespace brushline::test {

//! Has parameters and does nothing: for what reads them.
class IdleAlgorithm final : public QgsProcessingAlgorithm {
public:
  //! Takes the definitions.
  explicit IdleAlgorithm(const QList<QgsProcessingParameterDefinition *> &definitions) {
    for (QgsProcessingParameterDefinition *definition : definitions)
      addParameter(definition);
  }
  QString name() const override { return QStringLiteral("idle"); }
  QString displayName() const override { return name(); }
  void initAlgorithm(const QVariantMap &) override {}
  QgsProcessingAlgorithm *createInstance() const override { return new IdleAlgorithm({}); }
  QVariantMap processAlgorithm(const QVariantMap &, QgsProcessingContext &, QgsProcessingFeedback *) override {
    return {};
  }
};

} // namespace brushline::test
