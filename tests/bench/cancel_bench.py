#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""How soon every algorithm ends after a cancel, whatever it is at: reading, computing, writing, closing.

  QGIS_PLUGINPATH=PREFIX/share/qgis/python/plugins /usr/bin/python3 cancel_bench.py [options] [ALGORITHM ...]

Each algorithm runs on big made-up land, undisturbed first, then cancelled at moments spread over its duration. The
cancel comes from another thread; the latency is the time from then until run() returns. Of several tries at a moment
the shortest counts, since other programs may use the machine; the processor's time of this process in that interval is
told too. What remains of the outputs after a cancel is an error. No test: it takes half an hour. Ends with 1 if one
took longer than --most.
"""
import argparse
import os
import shutil
import subprocess
import sys
import tempfile
import time

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from qgis.PyQt.QtCore import Q_ARG, QMetaObject, QThread, QTimer, Qt    # noqa: E402
from qgis.core import (                                             # noqa: E402
    QgsApplication, QgsProcessingContext, QgsProcessingException, QgsProcessingFeedback, QgsProject)
from bench_land import Land, begin_host, outputs                    # noqa: E402

# Runs beside: at a moment it is told, it reads how long a process has been on the processor.
WATCHER = """
import sys, time
for line in sys.stdin:
    clock, moment = line.split()
    time.sleep(max(0, float(moment) - time.monotonic()))
    print(time.clock_gettime(int(clock)), flush=True)
"""


class Canceller:
    """Cancels from a thread of its own, without Python, which the running algorithm keeps to itself."""

    def __init__(self):
        self.thread = QThread()
        self.timer = QTimer()
        self.timer.setSingleShot(True)
        self.timer.setTimerType(Qt.PreciseTimer)
        self.timer.moveToThread(self.thread)
        self.thread.start()

    def after(self, seconds, feedback):
        self.timer.timeout.connect(feedback.cancel, Qt.DirectConnection)
        QMetaObject.invokeMethod(self.timer, "start", Qt.QueuedConnection, Q_ARG(int, round(1000 * seconds)))

    def forget(self, feedback):
        QMetaObject.invokeMethod(self.timer, "stop", Qt.BlockingQueuedConnection)
        self.timer.timeout.disconnect(feedback.cancel)

    def end(self):
        self.thread.quit()
        self.thread.wait()


class Run:
    def __init__(self, name, parameters, keys, ending):
        self.name = name
        self.folder = tempfile.mkdtemp()
        self.parameters = {**parameters, **outputs(name, keys, self.folder, ending)}

    def go(self, canceller=None, moment=None, watcher=None):
        """Returns duration, what was waited after the cancel (None: it came too late), processor's time, where."""
        algorithm = QgsApplication.processingRegistry().createAlgorithmById("brushline:" + self.name)
        context, feedback = QgsProcessingContext(), QgsProcessingFeedback(False)
        context.setProject(QgsProject.instance())
        clock = (~os.getpid() << 3) | 2  # of a process by its number, see clock_getcpuclockid(3)
        begin = time.monotonic()
        if canceller:
            watcher.stdin.write("%d %r\n" % (clock, begin + moment))
            watcher.stdin.flush()
            canceller.after(moment, feedback)
        try:
            results, ok = algorithm.run(self.parameters, context, feedback)
        except QgsProcessingException as error:
            sys.exit("%s: %s\n%s" % (self.name, error, feedback.textLog()))
        end, processor = time.monotonic(), time.clock_gettime(time.CLOCK_PROCESS_CPUTIME_ID)
        if not canceller:
            if not ok:
                sys.exit("%s: %s" % (self.name, feedback.textLog()))
            self.clear()
            return end - begin
        heard = feedback.isCanceled()
        canceller.forget(feedback)
        at = float(watcher.stdout.readline())
        if not heard:
            self.clear()
            return None
        if not results:
            left = [os.path.join(root, each) for root, _, files in os.walk(self.folder) for each in files]
            if left and not all(each.endswith(".pdf") for each in left):  # whole cards stay
                sys.exit("%s, cancelled after %.3f s, left %s" % (self.name, moment, left))
        self.clear()
        words = feedback.textLog().strip().splitlines()
        words = [word for word in words if not word.startswith("Cancelled")]
        where = "%.0f %%%s%s" % (feedback.progress(), ", done" if results else "", ", after “%s”" % words[-1][:50] if words else "")
        return end - begin - moment, max(0.0, processor - at), where

    def clear(self):
        for each in os.listdir(self.folder):
            path = os.path.join(self.folder, each)
            shutil.rmtree(path) if os.path.isdir(path) else os.remove(path)


def measure(name, job, given, canceller, watcher):
    run = Run(name, *job, given.ending)
    whole = min(run.go() for _ in range(2))
    worst = (0.0, 0.0, 0.0, "")
    over = heard = 0
    for k in range(given.moments):
        moment = whole * (k + 0.5) / given.moments
        best = None
        for _ in range(given.tries):
            found = run.go(canceller, moment, watcher)
            if found and (best is None or found[0] < best[0]):
                best = found
            if best and best[0] <= given.most / 2:
                break
        if best is None:
            continue
        heard += 1
        over += best[0] > given.most
        if given.verbose:
            print("    %-14s at %6.3f of %6.3f s: %4.0f ms (processor %4.0f ms), %s" % (
                name, moment, whole, 1000 * best[0], 1000 * best[1], best[2]), flush=True)
        if best[0] > worst[0]:
            worst = best[0], best[1], moment, best[2]
    os.rmdir(run.folder)
    print("%-14s %7.2f s %8d %9.0f ms %9.0f ms %5d  at %.2f s, %s" % (
        name, whole, heard, 1000 * worst[0], 1000 * worst[1], over, worst[2], worst[3]), flush=True)
    return over


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("algorithms", nargs="*", metavar="ALGORITHM", help="ids without brushline: (all)")
    parser.add_argument("--moments", type=int, default=16, help="to cancel at, for each algorithm (16)")
    parser.add_argument("--tries", type=int, default=3, help="at each moment, the shortest counts (3)")
    parser.add_argument("--most", type=float, default=0.1, help="seconds after a cancel (0.1)")
    parser.add_argument("--scale", type=float, default=1, help="of the land (1)")
    parser.add_argument("--ending", default="gpkg", help="of layers: gpkg, shp, fgb, geojson, csv (gpkg)")
    parser.add_argument("--verbose", action="store_true", help="a line for each moment")
    given = parser.parse_args()

    app = begin_host()
    watcher = subprocess.Popen([sys.executable, "-c", WATCHER], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
    canceller = Canceller()
    with tempfile.TemporaryDirectory() as folder:
        jobs = Land(folder, given.scale).jobs()
        missing = {each.name() for each in QgsApplication.processingRegistry().providerById("brushline").algorithms()} - set(jobs)
        if missing:
            sys.exit("no job for " + ", ".join(sorted(missing)))
        print("algorithm      undisturbed  moments   longest   processor  over  where", flush=True)
        try:
            over = sum(measure(name, jobs[name], given, canceller, watcher) for name in given.algorithms or jobs)
        finally:
            canceller.end()
            watcher.stdin.close()
            watcher.wait()
    app.exitQgis()
    sys.exit(1 if over else 0)


if __name__ == "__main__":
    main()
