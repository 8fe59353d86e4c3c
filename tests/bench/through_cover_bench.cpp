// SPDX-License-Identifier: GPL-2.0-or-later
// The surface of effort and a plan over a raster of costs that effort_bench.py has written, timed.
//   through_cover_bench COSTS SIDE EFFORT LEGS HILLS
// COSTS: SIDE x SIDE float32, at most 250 different values. EFFORT: file to write the surface to, or "-".
// LEGS: 1 to plan from corner to corner too. HILLS: 1 to lay heights under it.
#include "planning/plan_legs.h"

#include <chrono>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <fstream>
#include <map>
#include <string>
#include <vector>

using namespace brushline;

namespace {
double now() { return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count(); }
double processor() { return double(std::clock()) / CLOCKS_PER_SEC; }
} // namespace

int main(int argc, char **argv) {
  if (argc != 6)
    return 2;
  const long side = std::atol(argv[2]);
  const bool legs = argv[4][0] == '1', hills = argv[5][0] == '1';
  EffortGrid grid(side, side, Length::metres(1), !hills);
  {
    std::ifstream file(argv[1], std::ios::binary);
    std::map<float, int> kinds;
    std::vector<float> row(static_cast<size_t>(side));
    for (long r = 0; r < side; ++r) {
      if (!file.read(reinterpret_cast<char *>(row.data()), std::streamsize(row.size() * sizeof(float))))
        return 3;
      for (long c = 0; c < side; ++c) {
        auto found = kinds.find(row[size_t(c)]);
        if (found == kinds.end())
          found =
              kinds.emplace(row[size_t(c)], grid.addKind({std::to_string(kinds.size()), 1 / double(row[size_t(c)])}))
                  .first;
        grid.setKind(c, r, found->second);
        if (hills)
          grid.setHeight(c, r, float(12 * std::sin(double(c) * 0.02) * std::cos(double(r) * 0.017)));
      }
    }
  }
  const Walker walker;
  const PaceTable pace(walker);
  const Progress progress;
  EffortSurface surface(grid, pace);
  const CellPosition start{0.5, 0.5}, end{double(side) - 0.5, double(side) - 0.5};
  double wall = now(), cpu = processor();
  surface.search({start}, nullptr, progress);
  std::printf("surface %.6f %.6f\n", now() - wall, processor() - cpu);
  std::ifstream status("/proc/self/status"); // the peak of this program alone, not of the one that started it
  for (std::string line; std::getline(status, line);)
    if (line.rfind("VmHWM:", 0) == 0)
      std::printf("megabytes %.1f\n", std::atof(line.c_str() + 6) / 1024);
  if (argv[3][0] != '-') {
    std::ofstream out(argv[3], std::ios::binary);
    for (long r = 0; r < side; ++r)
      for (long c = 0; c < side; ++c) {
        const float unit = surface.secondsAt(c, r) / pace.level();
        out.write(reinterpret_cast<const char *>(&unit), sizeof unit);
      }
  }
  if (legs) {
    wall = now();
    cpu = processor();
    const EffortSurface::Goal goal{end, Duration::minutes(5)};
    EffortSurface bound(grid, pace);
    bound.search({start}, &goal, progress);
    const auto plan = LegPlanner(grid, pace, {Duration::minutes(2), 0.5, 8}).plan(bound, start, end, {}, progress);
    std::printf("plan %.6f %.6f\n", now() - wall, processor() - cpu);
    std::printf("legs %d %.1f %.1f %.1f\n", plan ? int(plan->points.size()) - 1 : 0, plan ? plan->cost.seconds() : 0,
                bound.secondsTo(end), grid.legSeconds(start, end, pace));
  }
  return 0;
}
