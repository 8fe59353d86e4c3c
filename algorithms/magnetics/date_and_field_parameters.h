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
  //! False when a declination was given for a day that the model does not reach: the model then stands on the nearest
  //! day it knows, which serves to tell the zones and nothing else.
  bool model_of_day = true;
};

namespace date_and_field_parameters {

Definitions definitions();
DateAndField read(const ParameterReader &reader);

} // namespace date_and_field_parameters
} // namespace brushline
