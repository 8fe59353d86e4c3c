#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""Algorithms that compute on several threads: whole runs on as many as there are processors, and on one.

  QGIS_PLUGINPATH=PREFIX/share/qgis/python/plugins /usr/bin/python3 threads_bench.py [options] [ALGORITHM ...]

The two take turns; the least of each counts. Outputs are FlatGeobuf, as quick to write as any. On "one" a thread computes
while another reads and writes, so what is told is what more of them bring; where writing takes longest, that is nothing.
That the outputs are the same is for same_answer_test.
"""
import argparse
import os
import sys
import tempfile
import time

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from qgis.core import (                                             # noqa: E402
    QgsApplication, QgsProcessingContext, QgsProcessingFeedback, QgsProject)
from bench_land import Land, begin_host, outputs                    # noqa: E402
from bench_table import tell                                        # noqa: E402

ALGORITHMS = ("annotatelegs", "sightsurface", "choosemarks", "aimoff", "featuresmet", "checkhazards", "comparetrack")


def seconds(name, parameters, threads):
    QgsApplication.setMaxThreads(threads)
    algorithm = QgsApplication.processingRegistry().createAlgorithmById("brushline:" + name)
    context, feedback = QgsProcessingContext(), QgsProcessingFeedback(False)
    context.setProject(QgsProject.instance())
    began = time.monotonic()
    _, ok = algorithm.run(parameters, context, feedback)
    if not ok:
        sys.exit("%s: %s" % (name, feedback.textLog()))
    return time.monotonic() - began


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("algorithms", nargs="*", metavar="ALGORITHM", help="ids without brushline: (all with threads)")
    parser.add_argument("--scale", type=float, default=1, help="of the land (1)")
    parser.add_argument("--repeat", type=int, default=3, help="runs of each (3)")
    given = parser.parse_args()
    app = begin_host()
    most = os.cpu_count()
    with tempfile.TemporaryDirectory() as folder:
        jobs = Land(folder, given.scale).jobs()
        for name in given.algorithms or ALGORITHMS:
            parameters, keys = jobs[name]
            parameters = {**parameters, **outputs(name, keys, folder, "fgb")}
            took = {1: [], most: []}
            for _ in range(given.repeat):
                for threads in took:
                    took[threads].append(seconds(name, parameters, threads))
            one, all_of_them = min(took[1]), min(took[most])
            what = "%s on %d threads / on one" % (name, most)
            measured = "%.2f times faster (%.2f s / %.2f s)" % (one / all_of_them, all_of_them, one)
            print("%s: %s" % (what, measured), flush=True)
            tell(what, measured)
    app.exitQgis()


if __name__ == "__main__":
    main()
