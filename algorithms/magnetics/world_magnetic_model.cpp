// SPDX-License-Identifier: GPL-2.0-or-later
#include "magnetics/world_magnetic_model.h"

#include <GeographicLib/Geocentric.hpp>
#include <GeographicLib/SphericalHarmonic.hpp>

#include <cmath>
#include <locale>
#include <set>
#include <sstream>
#include <utility>

namespace brushline {

extern const char *const wmm2025Text;

namespace {

[[noreturn]] void failLine(int number, const std::string &line, const char *what) {
  throw std::invalid_argument("line " + std::to_string(number) + " of the coefficients (\"" + line + "\"): " + what);
}

// Index of degree n, order m in GeographicLib's column order.
size_t column(int degree, int n, int m) { return size_t(m * degree - m * (m - 1) / 2 + n); }

class CoefficientModel final : public FieldModel {
public:
  CoefficientModel(const FieldCoefficients &given, DecimalYear year)
      : mName(given.name), mRadius(given.radius_m), mC(given.c), mS(given.s), mCChange(given.c_change),
        mSChange(given.s_change) {
    // The field is linear in time: one sum over the day's own coefficients instead of two.
    const double years = year.value() - given.epoch;
    for (size_t i = 0; i < mC.size(); ++i)
      mC[i] += years * mCChange[i];
    for (size_t i = 0; i < mS.size(); ++i)
      mS[i] += years * mSChange[i];
    using GeographicLib::SphericalHarmonic;
    prepareSums();
    mField = SphericalHarmonic(mC, mS, given.degree, mRadius, SphericalHarmonic::SCHMIDT);
    mChange = SphericalHarmonic(mCChange, mSChange, given.degree, mRadius, SphericalHarmonic::SCHMIDT);
  }
  CoefficientModel(const CoefficientModel &) = delete; // the sums point into the vectors
  CoefficientModel &operator=(const CoefficientModel &) = delete;

  std::string name() const override { return mName; }
  FieldVector field(const Place &place, Length height) const override { return sum(mField, place, height); }
  FieldVector changePerYear(const Place &place, Length height) const override { return sum(mChange, place, height); }
  std::optional<DeclinationErrorModel> declinationError() const override { return wmm2025Error; }

private:
  FieldVector sum(const GeographicLib::SphericalHarmonic &harmonic, const Place &place, Length height) const {
    double x, y, z, gx, gy, gz;
    std::vector<double> m(9); // columns: east, north, up in geocentric coordinates
    GeographicLib::Geocentric::WGS84().Forward(place.latitude.degrees(), place.longitude.degrees(), height.metres(), x,
                                               y, z, m);
    harmonic(x, y, z, gx, gy, gz);
    // The field is minus the gradient of the potential, which is the radius times the sum.
    const double factor = -mRadius;
    return {factor * (m[1] * gx + m[4] * gy + m[7] * gz), factor * (m[0] * gx + m[3] * gy + m[6] * gz),
            -factor * (m[2] * gx + m[5] * gy + m[8] * gz)};
  }

  std::string mName;
  double mRadius;
  std::vector<double> mC, mS, mCChange, mSChange;
  GeographicLib::SphericalHarmonic mField, mChange;
};

} // namespace

FieldCoefficients parseCoefficients(const std::string &text) {
  FieldCoefficients result;
  std::set<std::pair<int, int>> seen;
  std::set<std::string> keys;
  std::istringstream lines(text);
  std::string line;
  for (int number = 1; std::getline(lines, line); ++number) {
    const std::string content = line.substr(0, line.find('#'));
    std::istringstream words(content);
    words.imbue(std::locale::classic());
    std::string first;
    if (!(words >> first))
      continue;
    if (std::isalpha(static_cast<unsigned char>(first[0]))) {
      const auto read = [&](double &value) {
        std::string rest;
        if (!(words >> value) || !std::isfinite(value) || (words >> rest))
          failLine(number, line, "one number is expected after the key");
      };
      if (!keys.insert(first).second)
        failLine(number, line, "this key stands twice");
      if (first == "name") {
        words >> result.name;
      } else if (first == "epoch") {
        read(result.epoch);
      } else if (first == "radius_m") {
        read(result.radius_m);
      } else if (first == "min_year") {
        read(result.years.first);
      } else if (first == "max_year") {
        read(result.years.last);
      } else if (first == "degree") {
        double degree = 0;
        read(degree);
        if (degree < 1 || degree > 1000 || degree != std::floor(degree) || result.degree != 0)
          failLine(number, line, "the degree is a whole number from 1 to 1000, given once");
        result.degree = int(degree);
        const size_t nC = column(result.degree, result.degree, result.degree) + 1;
        result.c.assign(nC, 0);
        result.c_change.assign(nC, 0);
        result.s.assign(nC - size_t(result.degree) - 1, 0);
        result.s_change.assign(nC - size_t(result.degree) - 1, 0);
      }
      continue;
    }
    std::istringstream row(content);
    row.imbue(std::locale::classic());
    int n, m;
    double g, h, gChange, hChange;
    std::string rest;
    if (!(row >> n >> m >> g >> h >> gChange >> hChange) || (row >> rest))
      failLine(number, line, "a row has six numbers: n m g h gdot hdot");
    if (n < 1 || n > result.degree || m < 0 || m > n)
      failLine(number, line, "n runs from 1 to the degree (given before the rows), m from 0 to n");
    if (!std::isfinite(g) || !std::isfinite(h) || !std::isfinite(gChange) || !std::isfinite(hChange))
      failLine(number, line, "coefficients are finite");
    if (!seen.insert({n, m}).second)
      failLine(number, line, "this n and m stand twice");
    const size_t i = column(result.degree, n, m);
    result.c[i] = g;
    result.c_change[i] = gChange;
    if (m > 0) {
      result.s[i - size_t(result.degree) - 1] = h;
      result.s_change[i - size_t(result.degree) - 1] = hChange;
    }
  }
  if (result.degree == 0 || seen.size() + 1 != result.c.size())
    throw std::invalid_argument("the coefficients are not complete: " + std::to_string(seen.size()) + " rows");
  if (result.name.empty() || !(result.radius_m > 0) || !(result.epoch > 0) ||
      !(result.years.first < result.years.last))
    throw std::invalid_argument("the coefficients lack a key: name, epoch, radius_m, min_year and max_year are needed");
  return result;
}

const FieldCoefficients &worldMagneticModel2025() {
  static const FieldCoefficients coefficients = parseCoefficients(wmm2025Text);
  return coefficients;
}

std::unique_ptr<FieldModel> coefficientModel(const FieldCoefficients &coefficients, DecimalYear year) {
  if (!coefficients.years.contains(year))
    throw YearOutsideModel(coefficients.name, coefficients.years);
  return std::make_unique<CoefficientModel>(coefficients, year);
}

} // namespace brushline
