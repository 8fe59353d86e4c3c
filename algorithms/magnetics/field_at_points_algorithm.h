// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/date_and_field_parameters.h"
#include "magnetics/point_source_host.h"
#include "shared/base_algorithm.h"

#include <memory>
#include <string>

namespace brushline {

//! The wrapper of FieldAtPoints: points in, the same points with the magnetic field out.
class FieldAtPointsAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::FieldAtPointsAlgorithm)

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
  //! What was left empty, and how often.
  struct Counts {
    long rows = 0, no_place = 0, bad_height = 0, no_height = 0, no_grid = 0, caution = 0, blackout = 0, no_error = 0;
  };
  void report(const Counts &counts, QgsProcessingFeedback *feedback) const;

  DateAndField mDateAndField;
  std::unique_ptr<PointSource> mPoints;
  std::string mGrid; // empty: each point's UTM zone
};

} // namespace brushline
