// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/date_and_field_parameters.h"
#include "planning/hazard_parameters.h"
#include "planning/leg_line.h"
#include "shared/base_algorithm.h"
#include "shared/terrain.h"
#include "shared/vector_output_host.h"

#include <memory>

namespace brushline {

//! The wrapper of the checks in hazards.h: routes in, stretches of legs to take care on out.
class CheckHazardsAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::CheckHazardsAlgorithm)

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
  //! A stretch to take care on.
  struct Found {
    QString hazard; //!< kind or name
    QString layer;  //!< empty: none
    double from_m, to_m;
    QVariant limit; //!< metres, or degrees for slopes
    QString advice;
  };
  static QgsFields fields();
  std::vector<Found> found(const LegLine &leg, const Place &from, const Place &to, const Shapes &disturbances,
                           const Shapes &hazards);
  void addSlopes(const LegLine &leg, const Place &from, const Place &to, std::vector<Found> &all);
  void addZones(const LegLine &leg, const Place &from, const Place &to, std::vector<Found> &all) const;

  HazardSetting mSetting;
  DateAndField mDateAndField;
  std::unique_ptr<Terrain> mTerrain;
  double mWithoutHeights = 0; // metres
};

} // namespace brushline
