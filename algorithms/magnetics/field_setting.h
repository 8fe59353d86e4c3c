// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/field_model.h"

#include <memory>
#include <optional>

namespace brushline {

//! What a compass meets at a place.
struct LocalField {
  Declination declination;
  std::optional<Angle> declination_error; //!< 1 sigma; none for a declination read off a map or a model without one
  CompassZone zone = CompassZone::Reliable;
  double horizontal_nt = 0; //!< the model's strength along the ground
};

/**
 * The declination a run works with: a model's on its day, or one read off a map that replaces it. Safe to ask from
 * several threads.
 */
class FieldSetting {
public:
  /**
   * \param model also tells the zone when a declination is given, since no number makes a compass work near the
   * magnetic pole.
   * \param given east positive; replaces the model's declination everywhere.
   */
  explicit FieldSetting(std::unique_ptr<FieldModel> model, std::optional<Declination> given = std::nullopt);

  LocalField at(const Place &place, Length height) const;
  //! What a compass meets where the model's field is this.
  LocalField of(const FieldVector &field) const;

  //! Whether a declination was given in place of the model's.
  bool given() const { return mGiven.has_value(); }

  const FieldModel &model() const { return *mModel; }

private:
  std::unique_ptr<FieldModel> mModel;
  std::optional<DeclinationErrorModel> mError;
  std::optional<Declination> mGiven;
};

} // namespace brushline
