// SPDX-License-Identifier: GPL-2.0-or-later
// calibrate_check < TRIES: works out walkers for calibrate_check.py. A walker: a line "KIND N", N lines "COUNT METRES
// SLOPE". Answered by a line of names and numbers, and one "FLAG USED STEPS RESIDUAL" for each try.
#include "records/pace_calibration.h"

#include <cstdio>

using namespace brushline;

int main() {
  int kind = 0;
  unsigned count = 0;
  while (std::scanf("%d %u", &kind, &count) == 2) {
    std::vector<PaceTry> tries(count);
    for (PaceTry &each : tries) {
      double metres = 0, slope = 0;
      if (std::scanf("%lf %lf %lf", &each.count, &metres, &slope) != 3)
        return 1;
      each.distance = Length::metres(metres);
      each.slope = Angle::degrees(slope);
    }
    const PaceCalibration result = calibratePaces(tries, static_cast<PaceKind>(kind));
    std::printf("none %d steps %.17g", result.none ? static_cast<int>(*result.none) : -1, result.steps_per_100m);
    if (result.spread)
      std::printf(" spread %.17g rounding %d low %.17g high %.17g error %.17g", *result.spread,
                  int(result.spread_is_rounding), result.interval->low, result.interval->high,
                  *result.pace_error_percent);
    if (result.slope)
      std::printf(" k %.17g own %d", result.slope->factor, int(result.own_slope));
    if (result.slope && result.slope->interval)
      std::printf(" k_low %.17g k_high %.17g", result.slope->interval->low, result.slope->interval->high);
    std::puts("");
    for (const JudgedTry &each : result.tries)
      std::printf("%d %d %.17g %.17g\n", static_cast<int>(each.flag), int(each.used), each.steps_per_100m,
                  each.residual_percent);
  }
}
