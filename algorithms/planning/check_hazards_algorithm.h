// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/date_and_field_parameters.h"
#include "planning/hazard_parameters.h"
#include "planning/leg_line.h"
#include "shared/base_algorithm.h"
#include "shared/geodesic.h"
#include "shared/terrain.h"
#include "shared/vector_output_host.h"

#include <memory>
#include <vector>

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
  //! A leg, and what is found along it.
  struct CheckedLeg {
    QString route;
    int number;
    QString direction;
    Place from, to;
    GeodesicLeg line;
    double start_x; //!< as the input has it
    std::vector<Found> found;
    std::vector<std::vector<Place>> ends; //!< of what is found
    double without_heights = 0;           //!< metres
  };
  static QgsFields fields();
  void find(CheckedLeg &leg, const Shapes &disturbances, const Shapes &hazards, Terrain *terrain) const;
  void addSlopes(CheckedLeg &leg, const LegLine &line, Terrain &terrain) const;
  void addZones(CheckedLeg &leg) const;

  HazardSetting mSetting;
  DateAndField mDateAndField;
  std::vector<std::unique_ptr<Terrain>> mTerrains; //!< one for each thread; null without a terrain model
};

} // namespace brushline
