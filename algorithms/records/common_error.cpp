// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/common_error.h"

#include <boost/math/distributions/students_t.hpp>

#include <algorithm>
#include <cmath>

namespace brushline {

namespace {
constexpr double held = 0.95;

struct Weighed {
  double weight = 0, mean = 0, squares = 0; // the sum of weights; of weighted squares about the mean
};

Weighed weigh(const std::vector<LegError> &errors, double scatter2) {
  Weighed all;
  for (const LegError &each : errors) {
    const double weight = 1 / (scatter2 + each.sigma * each.sigma);
    all.weight += weight;
    all.mean += weight * each.value;
  }
  all.mean /= all.weight;
  for (const LegError &each : errors)
    all.squares += (each.value - all.mean) * (each.value - all.mean) / (scatter2 + each.sigma * each.sigma);
  return all;
}
} // namespace

std::optional<CommonError> commonError(const std::vector<LegError> &errors) {
  if (errors.empty())
    return std::nullopt;
  const double degrees = double(errors.size()) - 1;
  double scatter2 = 0;
  if (errors.size() > 1 && weigh(errors, 0).squares > degrees) {
    double low = 0, high = 1e-12;
    while (weigh(errors, high).squares > degrees)
      high *= 4;
    for (int i = 0; i < 200 && high - low > 1e-12 * high; ++i) {
      const double middle = (low + high) / 2;
      (weigh(errors, middle).squares > degrees ? low : high) = middle;
    }
    scatter2 = (low + high) / 2;
  }
  const Weighed all = weigh(errors, scatter2);
  CommonError result;
  result.legs = errors.size();
  result.mean = all.mean;
  result.scatter = std::sqrt(scatter2);
  if (errors.size() > 1) {
    double squares = 0;
    for (size_t i = 0; i < errors.size(); ++i) {
      const double share = 1 / (scatter2 + errors[i].sigma * errors[i].sigma) / all.weight;
      double apart = (errors[i].value - all.mean) / (1 - share); // from the mean of the others
      if (share > 0.5) {                                         // one alone, and 1 - share may have no digits left
        std::vector<LegError> others(errors);
        others.erase(others.begin() + long(i));
        apart = errors[i].value - weigh(others, scatter2).mean;
      }
      squares += share * apart * (share * apart);
    }
    result.se = std::sqrt(squares);
    const boost::math::students_t student(degrees);
    result.half_width = *result.se * boost::math::quantile(student, (1 + held) / 2);
  }
  return result;
}

} // namespace brushline
