// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/field_setting.h"
#include "shared/parameter_reader_host.h"

#include <memory>

namespace brushline {

//! The day of a walk and the magnetic field it is walked in.
struct DateAndField {
  QDate date;
  std::shared_ptr<const FieldSetting> field;
};

namespace date_and_field_parameters {

Definitions definitions();
DateAndField read(const ParameterReader &reader);

} // namespace date_and_field_parameters
} // namespace brushline
