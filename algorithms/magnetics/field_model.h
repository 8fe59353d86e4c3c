// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include "magnetics/field_elements.h"
#include "quantities/decimal_year.h"
#include "quantities/length.h"
#include "quantities/place.h"

#include <memory>
#include <optional>
#include <stdexcept>
#include <string>

namespace brushline {

//! The years a model is good for, ends included.
struct ModelYears {
  double first;
  double last;

  bool contains(DecimalYear year) const { return year.value() >= first && year.value() <= last; }
};

//! A model of the Earth's field on one day. Safe to ask from several threads.
class FieldModel {
public:
  virtual ~FieldModel() = default;

  //! The model's own name, for logs.
  virtual std::string name() const = 0;

  /**
   * The field at a place.
   *
   * \param height above the ellipsoid; heights above the sea are near enough (100 m change the declination by less
   * than 0.001 degrees in nine places of ten).
   */
  virtual FieldVector field(const Place &place, Length height) const = 0;

  //! How the field changes there, nT a year.
  virtual FieldVector changePerYear(const Place &place, Length height) const = 0;

  //! The published error of its declination, if there is one.
  virtual std::optional<DeclinationErrorModel> declinationError() const = 0;
};

//! To be called before a model is built. GeographicLib's sums share a table of roots, which building a larger model
//! would replace while other threads read it; so it is made once, for the largest there are.
void prepareSums();

//! A day that a model is not made for.
struct YearOutsideModel : std::domain_error {
  YearOutsideModel(const std::string &modelName, ModelYears modelYears);
  std::string model;
  ModelYears years;
};

//! No magnetic model of that name can be read on this machine.
struct NoSuchModel : std::runtime_error {
  NoSuchModel(const std::string &modelName, const std::string &reason);
  std::string model;
};

/**
 * A magnetic model installed for GeographicLib, by its name ("wmm2025", "igrf14", "emm2017").
 *
 * \throws NoSuchModel when the files are missing or broken; YearOutsideModel when the day is not between the model's
 * own years.
 */
std::unique_ptr<FieldModel> installedModel(const std::string &name, DecimalYear year);

} // namespace brushline
