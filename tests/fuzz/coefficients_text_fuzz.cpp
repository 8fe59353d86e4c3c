// SPDX-License-Identifier: GPL-2.0-or-later
// Coefficients of a field model as text, and the field they make.
#include "fuzz_input.h"

#include "magnetics/world_magnetic_model.h"

#include <stdexcept>

using namespace brushline;

FUZZ(input) {
  const DecimalYear year(input.flag() ? input.any() : 2026);
  const Place place{Angle::degrees(input.between(-90, 90)), Angle::degrees(input.between(-540, 540))};
  const Length height = Length::metres(input.between(-1000, 850000));
  std::string text;
  if (input.flag()) { // whole but for what is put in
    text = "name test\nepoch 2025\nradius_m 6371200\nmin_year 2025\nmax_year 2030\n";
    const size_t degree = 1 + input.upTo(3);
    text += "degree " + std::to_string(degree) + "\n";
    for (size_t n = 1; n <= degree; ++n)
      for (size_t m = 0; m <= n; ++m) {
        text += std::to_string(n) + ' ' + std::to_string(m);
        for (int i = 0; i < 4; ++i)
          text += ' ' + std::to_string(input.between(-30000, 30000));
        text += input.upTo(15) == 0 ? input.text(8) + "\n" : "\n";
      }
  } else {
    text = input.rest();
  }
  try {
    const FieldCoefficients coefficients = parseCoefficients(text);
    PROMISED(coefficients.degree >= 1 && coefficients.degree <= 1000);
    PROMISED(!coefficients.name.empty() && coefficients.radius_m > 0 && std::isfinite(coefficients.radius_m));
    PROMISED(coefficients.c.size() == size_t(coefficients.degree + 1) * size_t(coefficients.degree + 2) / 2);
    PROMISED(coefficients.s.size() == coefficients.c.size() - size_t(coefficients.degree) - 1);
    const auto model = coefficientModel(coefficients, year);
    PROMISED(coefficients.years.contains(year));
    const FieldVector field = model->field(place, height), change = model->changePerYear(place, height);
    const double declination = field.declination().east.degrees(), dip = field.inclination().degrees();
    PROMISED(std::isnan(field.horizontal()) || (declination >= -180 && declination <= 180));
    PROMISED(std::isnan(field.total()) || (dip >= -90 && dip <= 90));
    declinationChange(field, change);
    compassZone(field.horizontal());
  } catch (const std::invalid_argument &) {
  } catch (const YearOutsideModel &) {
  }
}
