// SPDX-License-Identifier: GPL-2.0-or-later
#include "records/pace_calibration.h"

#include "walking/pacing.h"

#include <boost/math/distributions/students_t.hpp>

#include <algorithm>
#include <cmath>
#include <tuple>

namespace brushline {

namespace {

constexpr double tooFew = 0.6, tooMany = 1.6;    // of the median: a blunder
constexpr double outlierChance = 0.01;           // of calling one among good tries an outlier
constexpr double carefulPacing = 0.03;           // Moss 1917, paragraph 1887
constexpr size_t leastLeft = 3;                  // tries, after leaving out an outlier
constexpr double disagreeing = 0.25;             // spread, of the result
constexpr double fewestPaces = 100 / 2.2;        // over 100 m: double paces of 1.1 m a step
constexpr double steepestOfTable = 30;           // degrees
constexpr double slopedFrom = 2, leastRange = 5; // degrees
constexpr size_t leastSloped = 3, leastForSlope = 4;

// Of Student's distribution: the t that a share of all values lies within, to both sides of 0.
double studentWithin(double share, size_t freedom) {
  return boost::math::quantile(boost::math::students_t(double(freedom)), 0.5 + share / 2);
}

struct Point {
  double x, y, weight;
  size_t index; // among the tries
  double slope; // degrees
};

// Weighted least squares y = a + b x, or y = a.
struct Fit {
  size_t parameters = 1;
  double a = 0, b = 0;
  double weights = 0, mean_x = 0, sum_xx = 0; // of the weights; weighted mean; weighted sum of squares about it
  double variance = 0;                        // sigma^2 for a weight of 1; 0 without freedom
  size_t freedom = 0;

  double at(double x) const { return a + b * x; }
  double leverage(const Point &point) const {
    const double off = point.x - mean_x;
    return point.weight * (1 / weights + (parameters == 2 ? off * off / sum_xx : 0));
  }
  // Variances of the estimates, as multiples of variance.
  double aa() const { return 1 / weights + (parameters == 2 ? mean_x * mean_x / sum_xx : 0); }
  double bb() const { return 1 / sum_xx; }
  double ab() const { return -mean_x / sum_xx; }
};

Fit fitted(const std::vector<Point> &points, bool line) {
  Fit fit;
  double wx = 0, wy = 0;
  for (const Point &point : points) {
    fit.weights += point.weight;
    wx += point.weight * point.x;
    wy += point.weight * point.y;
  }
  fit.mean_x = wx / fit.weights;
  fit.a = wy / fit.weights;
  if (line) {
    fit.parameters = 2;
    double xy = 0;
    for (const Point &point : points) {
      const double off = point.x - fit.mean_x;
      fit.sum_xx += point.weight * off * off;
      xy += point.weight * off * (point.y - fit.a);
    }
    fit.b = xy / fit.sum_xx;
    fit.a -= fit.b * fit.mean_x;
  }
  if (points.size() > fit.parameters) {
    fit.freedom = points.size() - fit.parameters;
    double squares = 0;
    for (const Point &point : points) {
      const double off = point.y - fit.at(point.x);
      squares += point.weight * off * off;
    }
    fit.variance = squares / double(fit.freedom);
  }
  return fit;
}

bool enoughSlope(const std::vector<Point> &points) {
  size_t sloped = 0;
  double least = 90, most = -90, leastX = 1, mostX = 0;
  for (const Point &point : points) {
    sloped += std::abs(point.slope) >= slopedFrom;
    least = std::min(least, point.slope);
    most = std::max(most, point.slope);
    leastX = std::min(leastX, point.x);
    mostX = std::max(mostX, point.x);
  }
  // Ups and downs to which the table gives the same effect tell nothing of it.
  return points.size() >= leastForSlope && sloped >= leastSloped && most - least >= leastRange &&
         mostX - leastX >= 0.01;
}

double medianOf(std::vector<Point> points) {
  std::sort(points.begin(), points.end(), [](const Point &a, const Point &b) { return a.y < b.y; });
  const size_t half = points.size() / 2;
  return points.size() % 2 ? points[half].y : (points[half - 1].y + points[half].y) / 2;
}

TryFlag blunder(double ratio) {
  if (ratio >= tooFew && ratio <= tooMany)
    return TryFlag::None;
  if (ratio > 0.42 && ratio < tooFew)
    return TryFlag::Half;
  if (ratio > tooMany && ratio < 2.4)
    return TryFlag::Twice;
  if (std::abs(ratio / 0.3048 - 1) < 0.15)
    return TryFlag::Feet;
  return TryFlag::FarOff;
}

template <typename Condition> void leaveOut(std::vector<Point> &points, Condition condition) {
  points.erase(std::remove_if(points.begin(), points.end(), condition), points.end());
}

void leaveOutBlunders(std::vector<Point> &points, std::vector<JudgedTry> &tries) {
  const double median = medianOf(points);
  const auto off = [&](const Point &point) { return blunder(point.y / median) != TryFlag::None; };
  const auto blunders = size_t(std::count_if(points.begin(), points.end(), off));
  if (points.size() - blunders < 2 || 2 * blunders >= points.size())
    return;
  for (const Point &point : points)
    tries[point.index].flag = blunder(point.y / median);
  leaveOut(points, off);
}

// The try that the test calls an outlier; none.
const Point *outlierAmong(const std::vector<Point> &points, const Fit &fit) {
  if (fit.freedom < 2 || !(fit.variance > 0))
    return nullptr;
  const Point *worst = nullptr;
  double most = 0;
  for (const Point &point : points) {
    const double off = point.y - fit.at(point.x), left = 1 - fit.leverage(point);
    if (left < 1e-9) // the line goes through it, whatever it is
      continue;
    const double squared = off * off * point.weight / (fit.variance * left);
    if (squared > most && std::abs(off) > carefulPacing * fit.a) {
      most = squared;
      worst = &point;
    }
  }
  if (!worst)
    return nullptr;
  const double freedom = double(fit.freedom), rest = freedom - most;
  const double bound = studentWithin(1 - outlierChance / double(points.size()), fit.freedom - 1);
  return rest <= 0 || std::sqrt(most * (freedom - 1) / rest) > bound ? worst : nullptr;
}

SlopeEffect slopeEffect(const Fit &line) {
  SlopeEffect effect{1 + line.b / line.a, std::nullopt};
  const double t = studentWithin(0.95, line.freedom), tt = t * t * line.variance;
  const double squared = line.a * line.a - tt * line.aa(), mixed = line.a * line.b - tt * line.ab();
  const double under = mixed * mixed - squared * (line.b * line.b - tt * line.bb());
  if (squared > 0 && under >= 0)
    effect.interval = {1 + (mixed - std::sqrt(under)) / squared, 1 + (mixed + std::sqrt(under)) / squared};
  return effect;
}

std::vector<Point> pointsOf(const std::vector<PaceTry> &tries, PaceKind kind, std::vector<JudgedTry> &judged) {
  std::vector<Point> points;
  for (size_t i = 0; i < tries.size(); ++i) {
    const PaceTry &each = tries[i];
    const double steps = kind == PaceKind::Double ? 2 * each.count : each.count;
    const double ratio = stepLengthRatio(each.slope), slope = each.slope.degrees();
    judged[i].steps_per_100m = 100 * steps * ratio / each.distance.metres();
    if (std::abs(slope) > steepestOfTable)
      judged[i].flag = TryFlag::TooSteep;
    else
      points.push_back({1 - ratio, judged[i].steps_per_100m, each.distance.metres(), i, slope});
  }
  // So that sums are rounded alike, in whatever order the tries come.
  std::sort(points.begin(), points.end(), [](const Point &a, const Point &b) {
    return std::tie(a.weight, a.y, a.x, a.index) < std::tie(b.weight, b.y, b.x, b.index);
  });
  return points;
}

} // namespace

PaceCalibration calibratePaces(const std::vector<PaceTry> &tries, PaceKind kind) {
  PaceCalibration result;
  result.tries.resize(tries.size());
  const auto countFlags = [&] {
    for (const JudgedTry &each : result.tries)
      result.flagged += each.flag != TryFlag::None;
  };
  std::vector<Point> points = pointsOf(tries, kind, result.tries);
  if (points.empty()) {
    countFlags();
    result.none = NoPaces::NoTry;
    return result;
  }
  leaveOutBlunders(points, result.tries);
  bool line = enoughSlope(points);
  Fit fit = fitted(points, line);
  while (const Point *outlier = outlierAmong(points, fit)) {
    const size_t index = outlier->index;
    result.tries[index].flag = TryFlag::Outlier;
    if (points.size() <= leastLeft)
      break;
    leaveOut(points, [&](const Point &point) { return point.index == index; });
    line = enoughSlope(points);
    fit = fitted(points, line);
  }
  if (line) {
    result.slope = slopeEffect(fit);
    const auto &interval = result.slope->interval;
    result.own_slope = interval && (interval->low > 1 || interval->high < 1);
    if (!result.own_slope)
      fit = fitted(points, false);
  }
  countFlags();

  for (const Point &point : points) {
    result.tries[point.index].used = true;
    result.sloped += std::abs(point.slope) >= slopedFrom;
  }
  result.used = points.size();
  result.paced = Length::metres(fit.weights);
  result.steps_per_100m = fit.a;
  for (size_t i = 0; i < tries.size(); ++i)
    result.tries[i].residual_percent =
        100 * (result.tries[i].steps_per_100m / fit.at(1 - stepLengthRatio(tries[i].slope)) - 1);

  const double meanTry = fit.weights / double(points.size());
  if (fit.freedom > 0) {
    const double rounding = (kind == PaceKind::Double ? 2 : 1) / std::sqrt(12.0) * 100 / meanTry;
    const double spread = std::sqrt(fit.variance / meanTry);
    result.spread_is_rounding = spread < rounding;
    result.spread = std::max(spread, rounding);
    const double half = studentWithin(0.95, fit.freedom) * *result.spread * std::sqrt(fit.aa() * meanTry);
    result.interval = {fit.a - half, fit.a + half};
    const double foretold =
        studentWithin(std::erf(std::sqrt(0.5)), fit.freedom) * *result.spread * std::sqrt(1 + fit.aa() * meanTry);
    result.pace_error_percent = std::max(100 * foretold / fit.a, Walker::paceErrorLimits.least);
  }
  const double counted = kind == PaceKind::Double ? fit.a / 2 : fit.a;
  if (result.spread.value_or(0) > disagreeing * fit.a || result.pace_error_percent > Walker::paceErrorLimits.most)
    result.none = NoPaces::Disagree;
  else if (!(counted >= fewestPaces) || !(fit.a <= Walker::countLimits.most))
    result.none = NoPaces::NoSteps;
  return result;
}

} // namespace brushline
