// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "planning/effort_grid_host.h"
#include "planning/pairs_host.h"
#include "planning/plan_legs.h"
#include "shared/base_algorithm.h"
#include "shared/named_places.h"
#include "shared/terrain.h"
#include "shared/walker.h"

#include <memory>
#include <vector>

namespace brushline {

//! The wrapper of LegPlanner: pairs of places and the ground between them in, routes of straight legs out.
class ThroughCoverAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::ThroughCoverAlgorithm)

public:
  QString name() const override;
  QString displayName() const override;
  QString group() const override;
  QString groupId() const override;
  QStringList tags() const override;
  QString shortDescription() const override;
  QgsProcessingAlgorithm *createInstance() const override;
  void initAlgorithm(const QVariantMap &configuration) override;

protected:
  void check(const ParameterReader &reader) const override;
  void prepare(const ParameterReader &reader, QgsProcessingFeedback *feedback) override;
  QVariantMap run(const ParameterReader &reader, QgsProcessingFeedback *feedback) override;

private:
  //! What is read from features, and the ground that is made for it.
  void readRest(const ParameterReader &reader, QgsProcessingFeedback *feedback);
  void skip(const QString &message, QgsProcessingFeedback *feedback);
  //! Passes over the pairs whose start or end cannot be walked at.
  void dropRefused(QgsProcessingFeedback *feedback);

  std::vector<PlacePair> mPairs;
  Walker mWalker;
  LegRule mRule;
  std::optional<RasterInput> mDem;
  CoverSetting mCover;
  double mUnknownSpeed = 1;
  std::unique_ptr<Terrain> mTerrain;
  std::unique_ptr<CoverSource> mSource;
  std::unique_ptr<PlanGround> mGround;
  std::unique_ptr<NamedPlaces> mNames;
  std::vector<Place> mPlaces;
  QgsCoordinateReferenceSystem mCrs;
  int mSkipped = 0;
  QString mFirstReason;
};

} // namespace brushline
