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
import random
import shutil
import subprocess
import sys
import tempfile
import time

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from osgeo import ogr, osr                                          # noqa: E402
from qgis.PyQt.QtCore import Q_ARG, QMetaObject, QThread, QTimer, Qt    # noqa: E402
from qgis.core import (                                             # noqa: E402
    QgsApplication, QgsProcessingContext, QgsProcessingException, QgsProcessingFeedback, QgsProject)

ogr.UseExceptions()
HERE = os.path.dirname(os.path.abspath(__file__))
EAST, NORTH, CELL = 600000, 5400000, 20

# Runs beside: at a moment it is told, it reads how long a process has been on the processor.
WATCHER = """
import sys, time
for line in sys.stdin:
    clock, moment = line.split()
    time.sleep(max(0, float(moment) - time.monotonic()))
    print(time.clock_gettime(int(clock)), flush=True)
"""


def layer(path, kind, fields, rows):
    """Rows: values and WKT (None: no geometry)."""
    system = osr.SpatialReference()
    system.ImportFromEPSG(32621)
    data = ogr.GetDriverByName("FlatGeobuf").CreateDataSource(path)
    made = data.CreateLayer("made", system, kind)
    for name, form in fields:
        made.CreateField(ogr.FieldDefn(name, form))
    for values, shape in rows:
        feature = ogr.Feature(made.GetLayerDefn())
        for k, value in enumerate(values):
            feature.SetField(k, value)
        if shape:
            feature.SetGeometry(ogr.CreateGeometryFromWkt(shape))
        made.CreateFeature(feature)


def line(points):
    return "LINESTRING(%s)" % ",".join("%r %r" % point for point in points)


class Land:
    """The files in a folder, each bigger with the scale."""

    def __init__(self, folder, scale):
        self.folder = folder
        self.side = int(200 * scale ** 0.5)
        self.metres = self.side * CELL
        plugin = os.path.join(HERE, "..", "plugin")
        subprocess.run([sys.executable, os.path.join(plugin, "many_places.py"), folder, str(self.side)], check=True)
        for name, legs in (("legs", int(30000 * scale)), ("few_legs", 240)):
            subprocess.run([sys.executable, os.path.join(plugin, "many_legs.py"), self(name), str(legs)], check=True)
        chance = random.Random(1)
        ways = [self.wandering(chance, 20, 120) for _ in range(int(1500 * scale))]
        text, whole, real = ogr.OFTString, ogr.OFTInteger, ogr.OFTReal
        layer(self("routes"), ogr.wkbLineString, [("route", text)],
              [(["route %d" % i], line(way)) for i, way in enumerate(ways)])
        layer(self("tracks"), ogr.wkbLineString, [("route", text)],
              [(["route %d" % i], line(self.walked(chance, way))) for i, way in enumerate(ways[:len(ways) // 15 + 2])])
        layer(self("streams"), ogr.wkbLineString, [("name", text)],
              [(["stream %d" % i], line(self.wandering(chance, 400, 15))) for i in range(int(300 * scale))])
        layer(self("wires"), ogr.wkbLineString, [("kind", text)],
              [(["power line"], line(self.wandering(chance, 40, 200))) for _ in range(int(300 * scale))])
        layer(self("ponds"), ogr.wkbPolygon, [("name", text)],
              [(["pond %d" % i], "POLYGON((%s))" % ",".join("%r %r" % point for point in self.ring(chance)))
               for i in range(int(1500 * scale))])
        layer(self("area"), ogr.wkbPolygon, [("name", text)], [(["all"], "POLYGON((%d %d,%d %d,%d %d,%d %d,%d %d))" % (
            EAST, NORTH, EAST, NORTH + self.metres, EAST + self.metres, NORTH + self.metres, EAST + self.metres, NORTH,
            EAST, NORTH))])
        layer(self("camps"), ogr.wkbPoint, [("name", text)],
              [(["camp %d" % i], "POINT(%r %r)" % self.somewhere(chance)) for i in range(40)])
        layer(self("tries"), ogr.wkbPoint, [("walker", text), ("metres", real), ("paces", whole)],
              [(["walker %d" % (i % 500), chance.uniform(90, 110), chance.randint(120, 140)], "POINT(0 0)")
               for i in range(int(200000 * scale))])

    def __call__(self, name):
        return os.path.join(self.folder, name + ".fgb")

    def somewhere(self, chance):
        return EAST + chance.uniform(0, self.metres), NORTH + chance.uniform(0, self.metres)

    def wandering(self, chance, count, step):
        points = [self.somewhere(chance)]
        while len(points) < count:
            x, y = points[-1]
            points.append((min(max(x + chance.uniform(-step, step), EAST), EAST + self.metres),
                           min(max(y + chance.uniform(-step, step), NORTH), NORTH + self.metres)))
        return points

    @staticmethod
    def walked(chance, way):
        return [(a[0] + (b[0] - a[0]) * k / 12 + chance.gauss(0, 3), a[1] + (b[1] - a[1]) * k / 12 + chance.gauss(0, 3))
                for a, b in zip(way, way[1:]) for k in range(12)] + [way[-1]]

    def ring(self, chance):
        x, y = self.somewhere(chance)
        wide, high = chance.uniform(5, 20), chance.uniform(5, 20)
        return [(x, y), (x + wide, y - 2), (x + wide + 3, y + high), (x + wide / 2, y + high + 4), (x - 2, y + high), (x, y)]

    def jobs(self):
        """Name: algorithm, parameters, keys of the outputs."""
        terrain = {"DEM": os.path.join(self.folder, "terrain.tif")}
        cover = {"COVER": self("cover"), "COVER_CLASS": "class"}
        date = {"DATE": "2026-06-20"}
        routes = {"INPUT": self("routes"), "ROUTE_FIELD": "route"}
        legs = {"INPUT": self("legs")}
        everywhere = "%d,%d,%d,%d [EPSG:32621]" % (EAST, EAST + self.metres, NORTH, NORTH + self.metres)
        return {
            "annotatelegs": ({**routes, **terrain, **cover, **date, "POINTS": self("points")}, "OUTPUT MARKS DRIFT"),
            "plotlegs": ({**legs, **date, "ROUTE_FIELD": "route", "ORDER_FIELD": "leg", "BEARING_FIELD": "true_brg",
                          "DISTANCE_FIELD": "dist_m", "NORTH": 1, "START": "600000,5400000 [EPSG:32621]"},
                         "OUTPUT CLOSURE"),
            "detourlegs": ({**routes, **date, "OBSTACLES": self("ponds"), "CLEARANCE": 5, "POINTS": self("points")},
                           "OUTPUT"),
            "sightsurface": ({**cover, "CELL": 1}, "OUTPUT"),
            "choosemarks": ({**routes, **terrain, **cover, **date, "CANDIDATES": self("points")}, "OUTPUT SIGHTINGS GAPS"),
            "throughcover": ({**terrain, **cover, "STARTS": self("starts"), "ENDS": self("ends"), "CELL": 4}, "OUTPUT EFFORT"),
            "aimoff": ({**terrain, **cover, **date, "STARTS": self("camps"), "LINES": self("streams"),
                        "CATCHING": self("streams")}, "OUTPUT"),
            "practicecourse": ({**terrain, **cover, **date, "AREA": self("area"), "STARTS": self("camps"),
                                "SITES": self("points"), "AVOID": [self("ponds")], "COURSES": 20, "LEGS": 8},
                               "OUTPUT CONTROLS"),
            "featuresmet": ({**routes, **terrain, **cover, "FEATURES": [self("streams"), self("ponds"), self("points")]},
                            "OUTPUT"),
            "checkhazards": ({**routes, **terrain, **date, "DISTURBANCES": self("wires"), "KIND_FIELD": "kind",
                              "HAZARDS": [self("ponds"), self("points")]}, "OUTPUT"),
            "fieldatpoints": ({**date, "INPUT": self("points")}, "OUTPUT"),
            "northlines": ({**date, "EXTENT": everywhere, "SPACING": max(1, self.metres / 6000)}, "OUTPUT"),
            "calibratepaces": ({"INPUT": self("tries"), "WALKER_FIELD": "walker", "DISTANCE_FIELD": "metres",
                                "COUNT_FIELD": "paces"}, "OUTPUT TRIES"),
            "comparetrack": ({**routes, "TRACKS": self("tracks"), "TRACK_ROUTE": "route"}, "OUTPUT PROFILE GROUPS"),
            "legtables": (legs, "FOLDER"),
            "legcards": ({"INPUT": self("few_legs"), **terrain, "LAYERS": [self("cover"), self("streams")]}, "FOLDER"),
            "exportgpx": (legs, "OUTPUT"),
        }


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
        self.name, self.ending = name, ending
        self.folder = tempfile.mkdtemp()
        self.parameters = dict(parameters)
        for key in keys.split():
            form = {"FOLDER": "", "EFFORT": ".tif"}.get(key, {"sightsurface": ".tif", "exportgpx": ".gpx"}.get(name, "." + ending))
            self.parameters[key] = os.path.join(self.folder, key.lower() + form)

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

    app = QgsApplication([], False)
    app.initQgis()
    sys.path.append(os.path.join(QgsApplication.pkgDataPath(), "python", "plugins"))
    sys.path.extend(os.environ["QGIS_PLUGINPATH"].split(os.pathsep))
    import brushline
    plugin = brushline.classFactory(None)
    plugin.initProcessing()
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
