# SPDX-License-Identifier: GPL-2.0-or-later
"""The sample in each format people keep their data in, read and written by every algorithm, and what came of it compared.

Needs BRUSHLINE_SAMPLE, the folder of the sample, and BRUSHLINE_HOST, the host's qgis_process.
"""
import copy
import csv
import glob
import json
import os
import shutil
import subprocess
import sys

from osgeo import gdal, ogr

import ways_input

gdal.UseExceptions()
ogr.UseExceptions()

SAMPLE = ways_input.SAMPLE
MODEL = os.path.join(os.path.dirname(os.path.abspath(__file__)), "data", "all_algorithms.model3")
DATE = {"DATE": "2026-06-20"}
TOLERANCE = 1e-9                                # of numbers and coordinates: what 15 digits keep of a northing in metres
NAME_WIDTH = 10                                 # characters that a shapefile keeps of a field's name
LONG_NAMES = {"along_line_m": "along_line"}     # the one name of ours that is longer
NAMES = {"Camp to stand": "Übungsgelände – Süd", "Way out to the trail": "林道への道"}
LAYERS = ("routes", "points", "cover", "streams", "trails", "cliffs", "power_line", "walkers")
TABLES = {"walkers": None, "tries": "pace_tries.csv", "garden": "garden_legs.csv"}      # and where they come from
COUNTED = ("read_row", "row", "try", "track")   # fields that tell which row of the input it was
# What the model writes: tables without geometry, and layers that other steps read.
TABLES_MADE = ("calibratepaces:OUTPUT", "calibratepaces:TRIES", "comparetrack:GROUPS", "plotlegs:CLOSURE")
FEEDING = ("annotatelegs:OUTPUT", "annotatelegs:MARKS", "choosemarks:OUTPUT", "featuresmet:OUTPUT")


def stop(*words):
    sys.exit("FAILED: " + " ".join(str(each) for each in words))


class Format:
    """A file for each layer. What a format cannot hold:

    tables      False: GDAL writes no rows without geometry into it; the tables are GeoPackages then
    geometry    False: the host writes no geometry into it; layers that are read again are GeoPackages then
    typed       False: everything is text
    null_text   False: an empty text and no text are the same
    dates       False: a day comes back as midnight of the day
    create      GDAL's options for a layer
    ordered     False: its index gives the rows in another order, and so what counts or lists rows
    named       False: the host gives a layer no name, where it stands in a field of what is made of it
    row_id      the field under which a row's number goes on into what is made of the layer, if it does
    """

    def __init__(self, name, driver, ending, **cannot):
        self.name, self.driver, self.ending = name, driver, ending
        self.tables = self.geometry = self.typed = self.null_text = self.dates = self.ordered = self.named = True
        self.create = []
        self.row_id = None
        self.__dict__.update(cannot)

    def place(self, folder, name, table=False):
        """What GDAL opens for the layer, and the layer's name in it (None: the only one)."""
        if table and self.name == "Shapefile":
            return os.path.join(folder, name + ".dbf"), None
        return os.path.join(folder, name + (self.ending if self.tables or not table else ".gpkg")), None

    def source(self, folder, name, table=False):
        """What a user gives the host to read the layer."""
        return self.place(folder, name, table)[0]

    def destination(self, folder, name, table=False):
        return os.path.join(folder, name + (self.ending if self.tables or not table else ".gpkg"))

    def keep(self, base, folder):
        """Copies the layers of a GeoPackage."""
        for layer in [each.GetName() for each in ogr.Open(base)]:
            table = layer in TABLES
            path, _ = self.place(folder, layer, table)
            self.copy(base, layer, table, path, format=self.driver_of(path))

    def driver_of(self, path):
        return "GPKG" if path.endswith(".gpkg") else self.driver

    def copy(self, base, layer, table, path, **options):
        options = {"layerName": layer, "layerCreationOptions": self.create, **options}
        gdal.VectorTranslate(path, gdal.OpenEx(base, gdal.OF_VECTOR), layers=[layer], **options)


class Commas(Format):
    """CSV, lines and areas as well-known text; tables as they were typed."""

    def source(self, folder, name, table=False):
        path = super().source(folder, name, table)
        if table:
            return path
        with open(path, encoding="utf-8") as file:
            text = file.readline().split(",")[0]  # WKT, or as the geometry was called before: GDAL's versions differ
        return "delimitedtext://file://%s?type=csv&delimiter=,&wktField=%s&crs=EPSG:32621" % (path, text)

    def copy(self, base, layer, table, path, **options):
        if TABLES.get(layer):
            shutil.copy(os.path.join(SAMPLE, TABLES[layer]), path)
        else:
            super().copy(base, layer, table, path, layerCreationOptions=[] if table else ["GEOMETRY=AS_WKT"], **options)


class SpatiaLite(Format):
    """Read as tables of one database, by the host's own provider; written as files."""

    def source(self, folder, name, table=False):
        return "spatialite://dbname='%s' table=\"%s\"%s" % (
            os.path.join(folder, "all.sqlite"), name, "" if table else " (geometry)")

    def copy(self, base, layer, table, path, **options):
        path, options["format"] = os.path.join(os.path.dirname(path), "all.sqlite"), self.driver
        super().copy(base, layer, table, path, datasetCreationOptions=["SPATIALITE=YES"],
                     layerCreationOptions=["GEOMETRY_NAME=geometry"],
                     accessMode="update" if os.path.exists(path) else None, **options)


class PostGis(Format):
    """Tables of a server; a folder is a schema there."""

    def __init__(self, connection):
        super().__init__("PostGIS", "PostgreSQL", "")
        self.connection = connection

    def place(self, folder, name, table=False):
        return "PG:" + self.connection, folder + "." + name

    def source(self, folder, name, table=False):
        return "postgres://%s table=\"%s\".\"%s\"%s" % (self.connection, folder, name, "" if table else " (geom)")

    destination = source

    def copy(self, base, layer, table, path, **options):
        super().copy(base, layer, table, path, layerName=self.schema + "." + layer, accessMode="update",
                     layerCreationOptions=["GEOMETRY_NAME=geom"], **options)

    def keep(self, base, folder):
        self.schema = folder
        super().keep(base, folder)


GEOPACKAGE = Format("GeoPackage", "GPKG", ".gpkg")
FILES = [
    GEOPACKAGE,
    Format("Shapefile", "ESRI Shapefile", ".shp", null_text=False, create=["ENCODING=UTF-8"]),
    Format("GeoJSON", "GeoJSON", ".geojson"),
    Format("FlatGeobuf", "FlatGeobuf", ".fgb", ordered=False, dates=False, tables=False),
    SpatiaLite("SpatiaLite", "SQLite", ".sqlite", tables=False, row_id="ogc_fid0"),
    Commas("CSV", "CSV", ".csv", typed=False, null_text=False, geometry=False, named=False, row_id="fid"),
]


def base_layers(path):
    """The sample in a GeoPackage, with names from outside ASCII and cells without a value, and the tables typed."""
    shutil.copy(os.path.join(SAMPLE, "sample.gpkg"), path)
    source = ogr.Open(path, 1)
    routes, walkers = source.GetLayerByName("routes"), source.GetLayerByName("walkers")
    for feature in routes:
        feature.SetField("route", NAMES.get(feature.GetField("route"), feature.GetField("route")))
        if feature.GetField("route") == "林道への道":
            feature.SetFieldNull("note")
        routes.SetFeature(feature)
    for feature in walkers:
        if feature.GetField("walker") == "Minka (8)":
            feature.SetFieldNull("eye_m")
            walkers.SetFeature(feature)
    routes = walkers = source = None
    for layer, file in TABLES.items():
        if file:
            table = gdal.OpenEx(os.path.join(SAMPLE, file), open_options=["AUTODETECT_TYPE=YES"] * (layer == "tries"))
            gdal.VectorTranslate(path, table, format="GPKG", layerName=layer, accessMode="update")


def process(algorithm, parameters):
    """Runs it in qgis_process: exit code, all it said."""
    command = [os.environ["BRUSHLINE_HOST"], "--json", "run", algorithm, "--"]
    for key, value in parameters.items():
        command += ["%s=%s" % (key, each) for each in (value if isinstance(value, list) else [value])]
    done = subprocess.run(command, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, timeout=300)
    return done.returncode, done.stdout.decode("utf-8", "replace")


def run(what, algorithm, parameters):
    """Runs it, which has to go well; its results."""
    code, said = process(algorithm, parameters)
    if code:
        stop(what, "ended with", code, "and:", said[-3000:])
    return json.loads(said[said.index("{\n"):])["results"]


def refused(what, words, algorithm, parameters):
    """Runs it, which has to fail with these words."""
    code, said = process(algorithm, parameters)
    if not code or not all(word in said for word in words):
        stop(what, "ended with", code, "and:", said[-3000:])


def rows(path, layer=None):
    """Fields with their types, then each row's values, the geometry behind them."""
    source = ogr.Open(path)
    table = source.GetLayerByName(layer) if layer else source.GetLayer(0)
    definition = table.GetLayerDefn()
    fields = [(each.GetName(), each.GetTypeName())
              for each in (definition.GetFieldDefn(i) for i in range(definition.GetFieldCount()))]
    found = []
    for feature in table:
        values = [feature.GetField(i) if feature.IsFieldSetAndNotNull(i) else None for i in range(len(fields))]
        geometry = feature.GetGeometryRef()
        found.append(values + [geometry.Clone() if geometry else None])
    return fields, found


def plain(geometry):
    """Kind and coordinates, of a single part where there is only one."""
    if ogr.GT_Flatten(geometry.GetGeometryType()) > ogr.wkbPolygon and geometry.GetGeometryCount() == 1:
        geometry = geometry.GetGeometryRef(0)
    kind = ogr.GT_Flatten(geometry.GetGeometryType())
    if kind == ogr.wkbPolygon:      # shapefiles run round the other way, from another vertex
        geometry = geometry.Normalize()
    parts = list(geometry) if geometry.GetGeometryCount() else [geometry]
    return [kind] + [each for part in parts for point in part.GetPoints() for each in point]


def same_numbers(one, other):
    return len(one) == len(other) and all(abs(a - b) <= TOLERANCE for a, b in zip(one, other))


def same(form, kind, one, other):
    """Whether the value is the reference's, as far as the format can hold it."""
    if kind == "geometry" and not form.geometry:
        return other is None
    if kind == "String" and not form.null_text:
        one = one or None
    if not form.null_text:
        other = other if other != "" else None
    if one is None or other is None:
        return one is None and other is None
    if kind == "geometry":
        return same_numbers(plain(one), plain(other))
    if kind in ("Real", "Integer", "Integer64"):
        return same_numbers([one], [other if form.typed else float(other)])
    if kind == "Date" and not form.dates:
        return other in (one + " 00:00:00", one + " 00:00:00+00")   # as this GDAL tells it
    return other == one


def sorting(names):
    """What rows are sorted by: all but their geometry and which row of the input they were."""
    kept = [k for k, name in enumerate(names) if name not in COUNTED]

    def key(row):
        def cells(digits):
            return [(row[k] is None, round(row[k], digits) if isinstance(row[k], float) else row[k] or 0 * (row[k] is None))
                    for k in kept]
        return cells(4), cells(9)   # what the first leaves equal the second tells apart
    return key


def compare(form, what, wanted, got):
    fields, reference = wanted
    names = [LONG_NAMES.get(name, name) if form.name == "Shapefile" else name for name, _ in fields]
    found = [name for name, _ in got[0]]
    kept = [k for k, name in enumerate(found) if name != form.row_id or name in names]
    found = [found[k] for k in kept]
    if found != names:
        stop(form.name, what, "has the fields", found, "instead of", names)
    if len(got[1]) != len(reference):
        stop(form.name, what, "has", len(got[1]), "rows instead of", len(reference))
    made = [[row[k] for k in kept] + row[-1:] for row in got[1]]
    if not form.ordered:
        reference, made = sorted(reference, key=sorting(names)), sorted(made, key=sorting(names))
    for k, (one, other) in enumerate(zip(reference, made)):
        for (name, kind), a, b in zip(fields + [("geometry", "geometry")], one, other):
            unknown = name in COUNTED and not form.ordered or name == "layer" and not form.named
            if not unknown and not same(form, kind, a, b):
                stop(form.name, what, "row", k + 1, name, "is", repr(str(b)), "instead of", repr(str(a)))


def handed_out(folder, ordered):
    """What stands in the files of a folder: cells of tables, numbers as such; lines of the others, of cards the name."""
    def cell(text):
        try:
            return round(float(text), 9)
        except ValueError:
            return text

    found = {}
    for path in sorted(glob.glob(os.path.join(folder, "*"))):
        name = os.path.basename(path)
        if name.endswith(".csv"):
            with open(path, encoding="utf-8", newline="") as file:
                found[name] = [[cell(text) for text in row] for row in csv.reader(file)]
        elif name.endswith(".pdf"):
            found[name] = os.path.getsize(path) > 0
        else:
            with open(path, encoding="utf-8") as file:
                found[name] = list(file) if ordered else sorted(file)
    return found


def all_algorithms(form, inputs, outputs, folder):
    """The model with every algorithm: layers of a format in and out, what is handed out and rasters in a folder.

    Returns for each layer its format, what GDAL opens, and the layer in it.
    """
    given = ways_input.model_outputs(MODEL, folder)
    made = {}
    for key, path in given.items():
        if path.endswith(".gpkg"):
            name, table = os.path.basename(path)[:-len(".gpkg")], key in TABLES_MADE
            into = GEOPACKAGE if key in FEEDING and not form.geometry else form
            given[key] = into.destination(outputs, name, table)
            made[key] = (into, *into.place(outputs, name, table))
    layers = {layer: form.source(inputs, layer, layer in TABLES) for layer in LAYERS}
    run(form.name + ", all algorithms,", MODEL, {
        **DATE, "ROUTE_FIELD": "route", "COVER_CLASS": "class", "TITLE": "All formats", "DEM": ways_input.TERRAIN,
        "LAYERS": [layers["trails"]], **{layer.upper(): source for layer, source in layers.items()}, **given})
    return made


def small_runs(form, inputs, outputs):
    """Legs without terrain, whose number the log tells, and tables typed by hand. What came, read back."""
    def source(layer):
        return form.source(inputs, layer, layer in TABLES)

    told = run(form.name + ", legs,", "brushline:annotatelegs", {
        **DATE, "INPUT": source("routes"), "ROUTE_FIELD": "route", "POINTS": source("points"),
        "WALKERS": source("walkers"), "OUTPUT": form.destination(outputs, "legs"),
        "MARKS": form.destination(outputs, "marks")})
    run(form.name + ", paces,", "brushline:calibratepaces", {
        "INPUT": source("tries"), "WALKER_FIELD": "walker", "DISTANCE_FIELD": "metres", "COUNT_FIELD": "count",
        "SLOPE_FIELD": "slope", "OUTPUT": form.destination(outputs, "walkers", True)})
    run(form.name + ", garden,", "brushline:plotlegs", {
        **DATE, "INPUT": source("garden"), "ROUTE_FIELD": "route", "ORDER_FIELD": "order", "BEARING_FIELD": "bearing",
        "PACES_FIELD": "paces", "START": "632320,5407060 [EPSG:32621]", "OUTPUT": form.destination(outputs, "garden")})
    made = {name: rows(*form.place(outputs, name, name == "walkers")) for name in ("legs", "marks", "walkers", "garden")}
    fields, legs = made["legs"]
    if int(told["LEG_COUNT"]) != len(legs):
        stop(form.name, "the log tells", told["LEG_COUNT"], "legs, the file has", len(legs))
    columns = {name: {row[k] for row in legs} for k, (name, _) in enumerate(fields)}
    if columns["route"] != {*NAMES.values(), "Practice loop"}:
        stop(form.name, "the routes are called", columns["route"])
    if columns["slope_m"] - {None if form.typed else ""}:
        stop(form.name, "slope_m without terrain is", columns["slope_m"])
    if [name for name in columns if len(name) > NAME_WIDTH]:
        stop(form.name, "fields too long for a shapefile in", list(columns))
    return made


class Reference:
    """What comes of the GeoPackages in a folder; other formats are compared with it."""

    def __init__(self, folder):
        self.base = os.path.join(folder, "base.gpkg")
        base_layers(self.base)
        self.small = self.model = self.folder = None

    def compare(self, form, inputs, outputs, folder):
        """Reads and writes a format. The first one makes the reference."""
        form.keep(self.base, inputs)
        small = small_runs(form, inputs, outputs)
        made = all_algorithms(form, inputs, outputs, folder)
        if self.small is None:
            self.small, self.folder = small, folder
            self.model = {key: rows(path, layer) for key, (_, path, layer) in made.items()}
        count = 0
        kept = copy.copy(GEOPACKAGE)    # in the order of what was read
        kept.ordered, kept.named = form.ordered, form.named
        for name, got in small.items():
            compare(kept if name == "walkers" and not form.tables else form, name, self.small[name], got)
            count += len(got[1])
        for key, (into, path, layer) in made.items():
            wanted = self.model[key]
            got = rows(path, layer)
            compare(kept if path.endswith(".gpkg") else into, key, wanted, got)
            count += len(got[1])
        for each in ("legtables-folder", "legcards-folder"):
            one, other = (handed_out(os.path.join(here, each), form.ordered) for here in (self.folder, folder))
            if not one or one != other:
                stop(form.name, each, "differs:", [name for name in {**one, **other} if one.get(name) != other.get(name)])
        print("%s: %d layers, %d rows, equal" % (form.name, len(made) + len(small), count), flush=True)
