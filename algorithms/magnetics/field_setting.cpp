// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/field_setting.h"

#include <utility>

namespace brushline {

FieldSetting::FieldSetting(std::unique_ptr<FieldModel> model, std::optional<Declination> given)
    : mModel(std::move(model)), mError(mModel->declinationError()), mGiven(given) {}

LocalField FieldSetting::at(const Place &place, Length height) const { return of(mModel->field(place, height)); }

LocalField FieldSetting::of(const FieldVector &field) const {
  const double horizontal = field.horizontal();
  LocalField local;
  local.zone = compassZone(horizontal);
  local.horizontal_nt = horizontal;
  if (mGiven) {
    local.declination = *mGiven;
  } else {
    local.declination = field.declination();
    if (mError)
      local.declination_error = mError->at(horizontal);
  }
  return local;
}

} // namespace brushline
