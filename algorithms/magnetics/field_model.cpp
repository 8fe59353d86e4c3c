// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/field_model.h"

#include <GeographicLib/MagneticModel.hpp>
#include <GeographicLib/SphericalEngine.hpp>

namespace brushline {

YearOutsideModel::YearOutsideModel(const std::string &modelName, ModelYears modelYears)
    : std::domain_error("the magnetic model " + modelName + " does not reach that year"), model(modelName),
      years(modelYears) {}

NoSuchModel::NoSuchModel(const std::string &modelName, const std::string &reason)
    : std::runtime_error(reason), model(modelName) {}

void prepareSums() {
  static const bool prepared = [] {
    GeographicLib::SphericalEngine::RootTable(2190); // the degree GeographicLib's own documentation names
    return true;
  }();
  static_cast<void>(prepared);
}

namespace {

class InstalledModel final : public FieldModel {
public:
  InstalledModel(const std::string &name, DecimalYear year) : mModel(name), mYear(year.value()) {}

  std::string name() const override { return mModel.MagneticModelName(); }
  ModelYears years() const { return {mModel.MinTime(), mModel.MaxTime()}; }

  FieldVector field(const Place &place, Length height) const override { return evaluate(place, height).field; }
  FieldVector changePerYear(const Place &place, Length height) const override { return evaluate(place, height).change; }

  std::optional<DeclinationErrorModel> declinationError() const override {
    if (name() == "wmm2025" || name() == "wmmhr2025")
      return wmm2025Error;
    if (name() == "wmm2020")
      return wmm2020Error;
    return std::nullopt;
  }

private:
  struct Both {
    FieldVector field;
    FieldVector change;
  };

  Both evaluate(const Place &place, Length height) const {
    double east, north, up, eastChange, northChange, upChange;
    mModel(mYear, place.latitude.degrees(), place.longitude.degrees(), height.metres(), east, north, up, eastChange,
           northChange, upChange);
    return {{north, east, -up}, {northChange, eastChange, -upChange}};
  }

  GeographicLib::MagneticModel mModel;
  double mYear;
};

} // namespace

std::unique_ptr<FieldModel> installedModel(const std::string &name, DecimalYear year) {
  prepareSums();
  std::unique_ptr<InstalledModel> model;
  try {
    model = std::make_unique<InstalledModel>(name, year);
  } catch (const std::exception &error) { // not GeographicErr only: a broken size cannot be allocated
    throw NoSuchModel(name, error.what());
  }
  if (!model->years().contains(year))
    throw YearOutsideModel(name, model->years());
  return model;
}

} // namespace brushline
