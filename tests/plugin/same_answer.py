#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""What same_answer_test.sh needs beside the host.

same_answer.py reorder ORDER SAMPLE FOLDER   the sample's data in FOLDER, its rows given, reversed or shuffled
same_answer.py rows ORDER FILE FILE          the same of one layer
same_answer.py wide SAMPLE FILE              routes and starts enough for many threads
same_answer.py compare FOLDER FOLDER         whether all files of two folders hold the same, bit for bit
same_answer.py compare-sorted FOLDER FOLDER  the same, but for the order of rows and what is counted in it
same_answer.py course FILE CSV               whether the controls of random courses are the check values
same_answer.py nudge FILE FIELD              changes the last bit of one number
"""
import csv
import math
import os
import random
import re
import shutil
import sys
import zlib

from osgeo import gdal, ogr

gdal.UseExceptions()
ogr.UseExceptions()

SEED = 20260620
GEOPACKAGE = ogr.GetDriverByName("GPKG")
# A test writes much and needs none of it after a crash.
gdal.SetConfigOption("OGR_SQLITE_SYNCHRONOUS", "OFF")


def reordered(rows, order):
    rows = list(rows)
    if order == "given":
        return rows
    if order == "reversed":
        return rows[::-1]
    random.Random(SEED).shuffle(rows)
    return rows


def copy_layer(layer, out, order, name=None):
    """Copies a layer; the rows are numbered anew, so that their ids tell nothing of the old order."""
    made = out.CreateLayer(name or layer.GetName(), layer.GetSpatialRef(), layer.GetGeomType())
    for field in layer.schema:
        made.CreateField(field)
    made.StartTransaction()
    for feature in reordered(layer, order):
        copy = ogr.Feature(made.GetLayerDefn())
        copy.SetFrom(feature)
        copy.SetFID(-1)
        made.CreateFeature(copy)
    made.CommitTransaction()


def reorder(order, sample, folder):
    os.makedirs(folder)
    source = ogr.Open(os.path.join(sample, "sample.gpkg"))
    out = GEOPACKAGE.CreateDataSource(os.path.join(folder, "sample.gpkg"))
    for layer in source:
        copy_layer(layer, out, order)
    # The points of a GPX file come in its own order; in a table they have to be put in order by their fields.
    walked = ogr.Open(os.path.join(sample, "walked.gpx"))
    out = GEOPACKAGE.CreateDataSource(os.path.join(folder, "walked.gpkg"))
    copy_layer(walked.GetLayerByName("track_points"), out, order)
    for name in ("garden_legs.csv", "garden_walkers.csv", "pace_tries.csv"):
        with open(os.path.join(sample, name), newline="", encoding="utf-8") as stream:
            head, *rows = stream.read().splitlines()
        with open(os.path.join(folder, name), "w", newline="", encoding="utf-8") as stream:
            stream.write("\n".join([head] + reordered(rows, order)) + "\n")
    for name in ("terrain.tif", "garden_start.geojson", "sample.qgz"):
        shutil.copy(os.path.join(sample, name), folder)


def reorder_rows(order, path, other):
    source, out = ogr.Open(path), GEOPACKAGE.CreateDataSource(other)  # own their layers
    copy_layer(source.GetLayer(0), out, order, os.path.splitext(os.path.basename(other))[0])


def wide(sample, path):
    """Routes and starts in many batches: a batch has 4096 vertices, or 64 starts.

    Most vertices come several times over, so that there are many of them and few legs.
    """
    source = ogr.Open(os.path.join(sample, "sample.gpkg"))
    routes = source.GetLayerByName("routes")
    lines = [feature.GetGeometryRef().GetPoints() for feature in routes]
    out = GEOPACKAGE.CreateDataSource(path)
    layer = out.CreateLayer("routes", routes.GetSpatialRef(), ogr.wkbLineString)
    layer.CreateField(ogr.FieldDefn("route", ogr.OFTString))
    layer.StartTransaction()
    for i in range(90):
        line = ogr.Geometry(ogr.wkbLineString)
        for point in lines[i % len(lines)]:
            for _ in range(1 + 120 * (i % 4)):
                line.AddPoint_2D(point[0] + 3 * i, point[1] - 2 * i)
        feature = ogr.Feature(layer.GetLayerDefn())
        feature.SetField("route", "Course %d" % (i + 1))
        feature.SetGeometry(line)
        layer.CreateFeature(feature)
    layer.CommitTransaction()
    layer = out.CreateLayer("starts", routes.GetSpatialRef(), ogr.wkbPoint)
    layer.CreateField(ogr.FieldDefn("name", ogr.OFTString))
    layer.StartTransaction()
    for i in range(700):
        point = ogr.Geometry(ogr.wkbPoint)
        point.AddPoint_2D(632700 + 7 * (i % 35), 5406900 + 9 * (i // 35))
        feature = ogr.Feature(layer.GetLayerDefn())
        feature.SetField("name", "Start %d" % (i + 1))
        feature.SetGeometry(point)
        layer.CreateFeature(feature)
    layer.CommitTransaction()


# What a row of a layer is: its values as they lie in the database, and its geometry's bytes.
def layer_rows(path):
    source = ogr.Open(path)
    layer = source.GetLayer(0)
    fields = [(field.GetName(), field.GetTypeName()) for field in layer.schema]
    system = layer.GetSpatialRef()
    rows = []
    for feature in layer:
        values = []
        for i, (name, _) in enumerate(fields):
            value = feature.GetField(i) if feature.IsFieldSetAndNotNull(i) else None
            values.append(value.hex() if isinstance(value, float) else value)
        geometry = feature.GetGeometryRef()
        rows.append((tuple(values), bytes(geometry.ExportToIsoWkb()) if geometry else None))
    return (fields, system.ExportToWkt() if system else None), rows


def raster_cells(path):
    raster = gdal.Open(path)
    about = raster.GetGeoTransform(), raster.GetProjection(), raster.RasterXSize, raster.RasterYSize
    bands = [raster.GetRasterBand(1 + i) for i in range(raster.RasterCount)]
    return about, [(repr(band.GetNoDataValue()), bytes(band.ReadRaster())) for band in bands]


def streams(content):
    """The parts of a PDF that are packed, unpacked: what is on the pages, fonts and pictures."""
    found = []
    for part in re.findall(rb"stream\r?\n(.*?)endstream", content, re.DOTALL):
        try:
            found.append(zlib.decompress(part))
        except zlib.error:
            found.append(part)
    return found


def page_content(path):
    """All of a PDF but the moment it was written at and the identifiers made from it."""
    with open(path, "rb") as stream:
        content = stream.read()
    for pattern in (rb"/(Creation|Mod)Date ?\([^)]*\)", rb"/ID ?\[[^]]*\]", rb"<\?xpacket begin.*?<\?xpacket end[^>]*>"):
        content = re.sub(pattern, b"", content, flags=re.DOTALL)
    return streams(content), re.sub(rb"stream\r?\n.*?endstream", b"", content, flags=re.DOTALL)


def gpx_content(path, in_order):
    """A GPX file but the moment it was written at.

    Sorted: its places alone, since walkers and routes are told and numbered in the order of the rows.
    """
    with open(path, encoding="utf-8") as stream:
        content = re.sub("<time>[^<]*</time>", "", stream.read(), count=1)
    return content if in_order else sorted(re.findall(r'<\w+pt lat="[^"]+" lon="[^"]+"', content))


def text_content(path, in_order):
    with open(path, "rb") as stream:
        content = stream.read()
    # A page that lists the others lists them in the order of the rows.
    listing = os.path.basename(path) in ("index.html", "cards.html")
    return content if in_order or not listing else sorted(content.split(b"\n"))


# These number the rows of the input table.
NUMBERED = {"plotted.gpkg": ("read_row",), "tries.gpkg": ("try", "row")}


def describe(one, other, fields):
    differ = [(name, a, b) for (name, _), a, b in zip(fields, one[0], other[0]) if a != b]
    return differ or "the geometry"


def without(rows, fields, names):
    kept = [i for i, (name, _) in enumerate(fields) if name not in names]
    return [(tuple(values[i] for i in kept), geometry) for values, geometry in rows], [fields[i] for i in kept]


def compare_layer(where, path, other, in_order):
    """Number of rows, and what differs first or None."""
    (about, rows), (other_about, other_rows) = layer_rows(path), layer_rows(other)
    if about != other_about:
        return 0, "%s: fields or system: %s and %s" % (where, about, other_about)
    if len(rows) != len(other_rows):
        return 0, "%s: %d rows and %d" % (where, len(rows), len(other_rows))
    fields = about[0]
    if not in_order:
        leave = NUMBERED.get(os.path.basename(where), ())
        (rows, fields), (other_rows, _) = without(rows, fields, leave), without(other_rows, fields, leave)
        rows, other_rows = sorted(rows, key=repr), sorted(other_rows, key=repr)
    for number, (one, two) in enumerate(zip(rows, other_rows), 1):
        if one != two:
            return 0, "%s, row %d: %s" % (where, number, describe(one, two, fields))
    return len(rows), None


def files(folder):
    return sorted(os.path.relpath(os.path.join(at, name), folder) for at, _, names in os.walk(folder) for name in names)


def content(path, in_order):
    if path.endswith(".tif"):
        return raster_cells(path)
    if path.endswith(".pdf"):
        return page_content(path)
    if path.endswith(".gpx"):
        return gpx_content(path, in_order)
    return text_content(path, in_order)


def compare(folder, other, in_order=True):
    names = files(folder)
    if not names or names != files(other):
        print("%s holds other files than %s: %s" % (other, folder, set(names) ^ set(files(other))))
        return 1
    faults, rows = [], 0
    for name in names:
        a, b = os.path.join(folder, name), os.path.join(other, name)
        if name.endswith(".gpkg"):
            count, fault = compare_layer(name, a, b, in_order)
            rows += count
        else:
            fault = None if content(a, in_order) == content(b, in_order) else "%s differs" % name
        if fault:
            faults.append(fault)
    for fault in faults:
        print("  ", fault)
    print("   %d files, %d rows: %s" % (len(names), rows, "%d differ" % len(faults) if faults else "the same"))
    return 1 if faults else 0


TOLERANCE = 1e-6    # m; another release of the host's projections may round otherwise


def course(path, values):
    with open(values, newline="", encoding="utf-8") as stream:
        wanted = list(csv.reader(line for line in stream if not line.startswith("#")))[1:]
    source = ogr.Open(path)
    found = [(row["route"], row["number"], row["name"], row.GetGeometryRef().GetPoint_2D()) for row in source.GetLayer(0)]
    if len(found) != len(wanted):
        print("   %d controls instead of %d" % (len(found), len(wanted)))
        return 1
    for (route, number, name, (x, y)), row in zip(found, wanted):
        off = max(abs(x - float(row[3])), abs(y - float(row[4])))
        if [route, str(number), name] != row[:3] or not off <= TOLERANCE:
            print("   %s, %s, %s, %r, %r instead of %s" % (route, number, name, x, y, row))
            return 1
    print("   %d controls as in the check values" % len(found))
    return 0


def nudge(path, field):
    source = ogr.Open(path, 1)
    layer = source.GetLayer(0)
    feature = next(iter(layer))
    feature[field] = math.nextafter(feature[field], math.inf)
    layer.SetFeature(feature)


if __name__ == "__main__":
    what, *rest = sys.argv[1:]
    if what == "compare":
        sys.exit(compare(*rest))
    if what == "compare-sorted":
        sys.exit(compare(*rest, in_order=False))
    if what == "course":
        sys.exit(course(*rest))
    {"reorder": reorder, "rows": reorder_rows, "wide": wide, "nudge": nudge}[what](*rest)
