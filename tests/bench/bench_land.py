# SPDX-License-Identifier: GPL-2.0-or-later
"""What the benches that run algorithms in the host share: big made-up land with a job on it for every algorithm, and the
host with the plugin in it."""
import os
import random
import subprocess
import sys

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from osgeo import ogr, osr                                          # noqa: E402
from qgis.core import QgsApplication                                # noqa: E402

ogr.UseExceptions()
HERE = os.path.dirname(os.path.abspath(__file__))
EAST, NORTH, CELL = 600000, 5400000, 20


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


def begin_host():
    """The host, with the plugin that QGIS_PLUGINPATH leads to. To be ended by exitQgis()."""
    app = QgsApplication([], False)
    app.initQgis()
    sys.path.append(os.path.join(QgsApplication.pkgDataPath(), "python", "plugins"))
    sys.path.extend(os.environ["QGIS_PLUGINPATH"].split(os.pathsep))
    import brushline
    brushline.classFactory(None).initProcessing()
    return app


def outputs(name, keys, folder, ending):
    """Files for the outputs of a job."""
    forms = {"FOLDER": "", "EFFORT": ".tif"}
    of_algorithm = {"sightsurface": ".tif", "exportgpx": ".gpx"}
    if ending == "fgb":     # keeps no tables
        forms.update((key, ".gpkg") for key in ("CLOSURE", "GROUPS", "TRIES"))
        of_algorithm["calibratepaces"] = ".gpkg"
    return {key: os.path.join(folder, key.lower() + forms.get(key, of_algorithm.get(name, "." + ending)))
            for key in keys.split()}
