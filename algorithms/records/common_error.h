// SPDX-License-Identifier: GPL-2.0-or-later
#pragma once

#include <optional>
#include <vector>

namespace brushline {

//! One leg's error, in any unit.
struct LegError {
  double value;
  double sigma; //!< of the value by measuring alone, in its unit; above 0
};

//! What several legs have in common.
struct CommonError {
  size_t legs = 0;
  double mean = 0;
  double scatter = 0;               //!< of the legs about it beyond what measuring explains, 1 sigma
  std::optional<double> se;         //!< standard error of the mean; none from one leg
  std::optional<double> half_width; //!< of the interval that holds the true mean 95 times of 100
};

/**
 * The mean of errors that scatter by more than their measuring: a random-effects mean.
 *
 * Each has the weight 1 / (scatter^2 + sigma^2). The scatter is the one for which the weighted squares about the mean
 * add up to their number less one (R. C. Paule and J. Mandel, J. Res. Natl. Bur. Stand. 87 (1982) 377), or 0. The
 * standard error is that of the legs as they fall, whatever they were said to be measured to: the root of the sum of
 * squares of each error's distance from the mean of the others by its share of the weight (the estimator HC3 of J. G.
 * MacKinnon and H. White, J. Econometrics 29 (1985) 305). The interval is Student's t, with one degree less than
 * errors. Formulas from memory.
 *
 * \returns nothing for no errors.
 * Degenerate: one error is the mean, without standard error. Equal errors have the standard error 0.
 * Accuracy: the interval holds the true mean 93 to 97 times of 100, with sigmas between a half and twice the truth;
 * for equal weights it is wider by sqrt(n / (n - 1)) than that of a plain sample. Errors of neighbouring legs share a
 * turn and are not quite independent; the tests of whole walks show that it does no harm.
 */
std::optional<CommonError> commonError(const std::vector<LegError> &errors);

} // namespace brushline
