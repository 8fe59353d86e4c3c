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
            print("side %d patch %d: ours / theirs from %.4f to %.6f, mean %.4f" % (
                side, patch, (surface[1:, 1:] / sums[1:, 1:]).min(), (surface[1:, 1:] / sums[1:, 1:]).max(),
                (surface[1:, 1:] / sums[1:, 1:]).mean()))
            # Not far below either: eight directions alone make a way at most 1 / cos(22.5 degrees) = 1.0824 too long.
            # From cell centre to cell centre times are means of two cells; straight legs go through cells in between.
            if patch >= 10 and (surface[1:, 1:] / sums[1:, 1:]).min() < 1 / 1.0824 * 0.98:
                sys.exit("far below the costs by eight neighbours")
    if worst > 1e-5:  # single precision
        sys.exit("effort above MCP_Geometric's cost by a share of %g" % worst)


def bench(program):
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "costs")
        for name, patch in (("patches of 100 cells", 100), ("cell by cell", 1)):
            for side in (1000, 2000, 4000):
                raster(side, patch, 1).tofile(path)
                said = subprocess.run([sys.executable, __file__, "--beside", path, str(side)], check=True,
                                      capture_output=True, text=True).stdout.split()
                their, megabytes = float(said[0]), float(said[1])
                mine = ours(program, path, side, legs=1 if patch > 1 else 0)
                hills = ours(program, path, side, legs=1 if patch > 1 else 0, hills=1)
                cells = side * side / 1e6
                print("%s, %2.0f million cells: MCP_Geometric %.3f us/cell %.0f MB; surface %.3f us/cell %.0f MB (%.1f times "
                      "faster, %.1f times less memory); with heights %.3f us/cell %.0f MB (%.1f times)" % (
                          name, cells, their / cells, megabytes, mine["surface"][1] / cells, mine["megabytes"][0],
                          their / mine["surface"][1], megabytes / mine["megabytes"][0], hills["surface"][1] / cells,
                          hills["megabytes"][0], their / hills["surface"][1]))
                if patch > 1:
                    print("    plan with legs %.3f us/cell (%.1f times faster, %d legs); with heights %.3f us/cell (%.1f times)" % (
                        mine["plan"][1] / cells, their / mine["plan"][1], mine["legs"][0], hills["plan"][1] / cells,
                        their / hills["plan"][1]))


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--program")
    parser.add_argument("--check", action="store_true")
    parser.add_argument("--beside", nargs=2)
    given = parser.parse_args()
    if given.beside:
        side = int(given.beside[1])
        _, seconds = beside(numpy.fromfile(given.beside[0], numpy.float32).reshape(side, side))
        print(seconds, peak_megabytes())
    elif given.check:
        check(given.program)
    else:
        bench(given.program)


if __name__ == "__main__":
    main()
