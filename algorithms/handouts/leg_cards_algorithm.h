// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "handouts/leg_cards_parameters.h"
#include "shared/base_algorithm.h"
#include "shared/terrain.h"

namespace brushline {

//! The wrapper of the leg cards: annotated legs in, one PDF for each route and walker out.
class LegCardsAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::LegCardsAlgorithm)

public:
  QString name() const override;
  QString displayName() const override;
  QString group() const override;
  QString groupId() const override;
  QStringList tags() const override;
  QString shortDescription() const override;
  //! Layouts are bound to the main thread.
  host::AlgorithmFlags flags() const override;
  QgsProcessingAlgorithm *createInstance() const override;
  void initAlgorithm(const QVariantMap &configuration) override;

protected:
  void check(const ParameterReader &reader) const override;
  void prepare(const ParameterReader &reader, QgsProcessingFeedback *feedback) override;
  QVariantMap run(const ParameterReader &reader, QgsProcessingFeedback *feedback) override;

private:
  CardSetting mSetting;
  CardPrinter::Layers mLayers;
  std::unique_ptr<Terrain> mTerrain;
};

} // namespace brushline
