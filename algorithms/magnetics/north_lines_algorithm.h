// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/date_and_field_parameters.h"
#include "magnetics/north_lines_parameters.h"
#include "shared/base_algorithm.h"

namespace brushline {

//! The wrapper of northLines(): an extent in, lines towards magnetic north out.
class NorthLinesAlgorithm final : public BaseAlgorithm {
  Q_DECLARE_TR_FUNCTIONS(brushline::NorthLinesAlgorithm)

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
  QString labelOf(const NorthLine &line) const;
  void report(const NorthLinesReport &report, QgsProcessingFeedback *feedback) const;

  DateAndField mDateAndField;
  NorthLinesSetting mSetting;
};

} // namespace brushline
