#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""The surface of effort beside scikit-image's MCP_Geometric, on the same rasters in the same run.

  effort_bench.py --program build/.../through_cover_bench          speed and memory, 1, 4 and 16 million cells
  effort_bench.py --check --program ...                            small rasters: never above its costs

Each of the two runs in a process of its own, so that its peak memory is its own. Times are the processor's.
"""
import argparse
import os
import subprocess
import sys
import tempfile
import time

import numpy

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from bench_table import tell       # noqa: E402
from check_record import record   # noqa: E402

ABOVE = 1e-5    # single precision


def raster(side, patch, seed, values=100):
    """Random costs from 1 to 5, in square patches (1: cell by cell)."""
    random = numpy.random.default_rng(seed)
    small = 1 + 4 * random.integers(0, values, (side // patch + 1, side // patch + 1)) / (values - 1)
    return numpy.kron(small, numpy.ones((patch, patch)))[:side, :side].astype(numpy.float32)


def beside(costs):
    from skimage.graph import MCP_Geometric
    began = time.process_time()
    sums, _ = MCP_Geometric(costs.astype(float)).find_costs([(0, 0)])
    return sums, time.process_time() - began


def ours(program, path, side, effort="-", legs=0, hills=0):
    said = subprocess.run([program, path, str(side), effort, str(legs), str(hills)], check=True, capture_output=True,
                          text=True).stdout
    return {line.split()[0]: [float(word) for word in line.split()[1:]] for line in said.splitlines()}


def peak_megabytes():
    with open("/proc/self/status") as status:
        return next(float(line.split()[1]) / 1024 for line in status if line.startswith("VmHWM:"))


def check(program):
    worst = 0.0
    with tempfile.TemporaryDirectory() as folder:
        path, effort = os.path.join(folder, "costs"), os.path.join(folder, "effort")
        for seed, (side, patch) in enumerate([(60, 1), (60, 3), (150, 1), (150, 10), (200, 40), (333, 7)]):
            costs = raster(side, patch, seed)
            costs.tofile(path)
            ours(program, path, side, effort)
            surface = numpy.fromfile(effort, numpy.float32).reshape(side, side).astype(float)
            sums, _ = beside(costs)
            if not numpy.isfinite(surface).all():
                sys.exit("side %d patch %d: cells not reached" % (side, patch))
            over = (surface - sums) / numpy.maximum(sums, 1)
            worst = max(worst, over.max())
            record("share by which times lie above the least", "side %d patch %d" % (side, patch),
                   "computed with scikit-image's MCP_Geometric, random costs", 0, max(0, over.max()), ABOVE, "1")
            print("side %d patch %d: ours / theirs from %.4f to %.6f, mean %.4f" % (
                side, patch, (surface[1:, 1:] / sums[1:, 1:]).min(), (surface[1:, 1:] / sums[1:, 1:]).max(),
                (surface[1:, 1:] / sums[1:, 1:]).mean()))
            # Not far below either: eight directions alone make a way at most 1 / cos(22.5 degrees) = 1.0824 too long.
            # From cell centre to cell centre times are means of two cells; straight legs go through cells in between.
            if patch >= 10 and (surface[1:, 1:] / sums[1:, 1:]).min() < 1 / 1.0824 * 0.98:
                sys.exit("far below the costs by eight neighbours")
    if worst > ABOVE:
        sys.exit("effort above MCP_Geometric's cost by a share of %g" % worst)


def least(measured, name, at):
    return min(each[name][at] for each in measured)


def bench(program, sides, repeat):
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "costs")
        for name, patch in (("patches of 100 cells", 100), ("cell by cell", 1)):
            for side in sides:
                raster(side, patch, 1).tofile(path)
                theirs, mine, hills = [], [], []
                for _ in range(repeat):     # in turn, so that a change of the machine's pace meets all
                    said = subprocess.run([sys.executable, __file__, "--beside", path, str(side)], check=True,
                                          capture_output=True, text=True).stdout.split()
                    theirs.append({"surface": [float(said[0])], "megabytes": [float(said[1])]})
                    mine.append(ours(program, path, side, legs=1 if patch > 1 else 0))
                    hills.append(ours(program, path, side, legs=1 if patch > 1 else 0, hills=1))
                their, megabytes = least(theirs, "surface", 0), least(theirs, "megabytes", 0)
                cells = side * side / 1e6
                own, with_hills = least(mine, "surface", 1), least(hills, "surface", 1)
                own_megabytes, hills_megabytes = least(mine, "megabytes", 0), least(hills, "megabytes", 0)
                print("%s, %.3g million cells: MCP_Geometric %.3f us/cell %.0f MB; surface %.3f us/cell %.0f MB (%.1f times "
                      "faster, %.1f times less memory); with heights %.3f us/cell %.0f MB (%.1f times)" % (
                          name, cells, their / cells, megabytes, own / cells, own_megabytes, their / own,
                          megabytes / own_megabytes, with_hills / cells, hills_megabytes, their / with_hills), flush=True)
                about = "%s, %.3g million cells" % (name, cells)
                # The target is for the same work, so without heights, and for rasters that take a while.
                target = "at least 10 times" if cells >= 16 else None
                tell("surface of effort / MCP_Geometric, " + about,
                     "%.1f times faster (%.2f s / %.2f s)" % (their / own, own, their), target, their / own >= 10)
                tell("surface of effort with heights / MCP_Geometric, which knows none, " + about,
                     "%.1f times faster (%.2f s / %.2f s)" % (their / with_hills, with_hills, their))
                tell("memory of the surface of effort / MCP_Geometric, " + about,
                     "%.1f times less (%.0f MB / %.0f MB)" % (megabytes / own_megabytes, own_megabytes, megabytes),
                     "less", own_megabytes < megabytes)
                if patch > 1:
                    plan, plan_hills = least(mine, "plan", 1), least(hills, "plan", 1)
                    print("    plan with legs %.3f us/cell (%.1f times faster, %d legs); with heights %.3f us/cell (%.1f times)" % (
                        plan / cells, their / plan, mine[0]["legs"][0], plan_hills / cells, their / plan_hills))
                    tell("plan with legs / MCP_Geometric's surface alone, " + about,
                         "%.1f times faster (%.2f s / %.2f s)" % (their / plan, plan, their), "faster", plan < their)


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--program")
    parser.add_argument("--check", action="store_true")
    parser.add_argument("--beside", nargs=2)
    parser.add_argument("--sides", type=int, nargs="+", default=[1000, 2000, 4000], help="cells along each side")
    parser.add_argument("--repeat", type=int, default=3, help="runs of each, in turn; the least counts")
    given = parser.parse_args()
    if given.beside:
        side = int(given.beside[1])
        _, seconds = beside(numpy.fromfile(given.beside[0], numpy.float32).reshape(side, side))
        print(seconds, peak_megabytes())
    elif given.check:
        check(given.program)
    else:
        bench(given.program, given.sides, given.repeat)


if __name__ == "__main__":
    main()
