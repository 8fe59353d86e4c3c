# SPDX-License-Identifier: GPL-2.0-or-later
"""ways_compare.py WAY REFERENCE FOLDER [PREFIX]: that what came by one way is what came by another, bit for bit.

Legs, marks and drift in FOLDER (their names begin with PREFIX) have to have the fields of those in REFERENCE, the
same rows in the same order, each value the same and each geometry the same bytes.
ways_compare.py --steps MODEL FOLDER: that each step of the model with all algorithms gave rows.
"""
import glob
import os
import sys

from osgeo import gdal, ogr

import ways_input

gdal.UseExceptions()
ogr.UseExceptions()
LEGS = 102      # 17 of the sample's three routes, out and back, for three walkers
LAYERS = (("legs", "output"), ("marks", "marks"), ("drift", "drift"))
MAY_BE_EMPTY = {"choosemarks:GAPS"}     # where a candidate serves everywhere there is no gap


def rows(path):
    """Fields with their types, then each row's values and geometry."""
    source = ogr.Open(path)
    layer = source.GetLayer(0)
    definition = layer.GetLayerDefn()
    fields = [(each.GetName(), each.GetTypeName())
              for each in (definition.GetFieldDefn(i) for i in range(definition.GetFieldCount()))]
    found = []
    for feature in layer:
        geometry = feature.GetGeometryRef()
        values = [feature.GetField(i) if feature.IsFieldSetAndNotNull(i) else None for i in range(len(fields))]
        found.append((feature.GetFID(), values, bytes(geometry.ExportToIsoWkb()) if geometry else None))
    reference = layer.GetSpatialRef()
    return fields, reference.ExportToWkt() if reference else None, found


def compare(way, reference, folder, prefix=""):
    told = []
    for name, key in LAYERS:
        path = os.path.join(folder, prefix + key + ".gpkg" if prefix else name + ".gpkg")
        if not os.path.exists(path):
            sys.exit("%s: there is no %s" % (way, path))
        wanted, got = rows(os.path.join(reference, name + ".gpkg")), rows(path)
        for what, one, other in zip(("fields", "system"), wanted, got):
            if one != other:
                sys.exit("%s: %s of %s differ: %s and %s" % (way, what, name, one, other))
        if len(wanted[2]) != len(got[2]) or not wanted[2]:
            sys.exit("%s: %d %s instead of %d" % (way, len(got[2]), name, len(wanted[2])))
        for one, other in zip(wanted[2], got[2]):
            if one != other:
                differ = [(field, a, b) for (field, _), a, b in zip(wanted[0], one[1], other[1]) if a != b]
                sys.exit("%s: row %d of %s differs: %s" % (way, one[0], name, differ or "id or geometry"))
        if name == "legs" and len(got[2]) != LEGS:
            sys.exit("%s: %d legs instead of %d" % (way, len(got[2]), LEGS))
        told.append("%d %s of %d fields" % (len(got[2]), name, len(got[0])))
    print("%s: %s equal" % (way, ", ".join(told)))


def amount(path):
    """Rows of a layer, cells of a raster that hold a number, routes of a GPX file, or files of a folder."""
    if path.endswith(".tif"):
        raster = gdal.Open(path)        # owns the band
        band = raster.GetRasterBand(1)
        values, empty = band.ReadAsArray(), band.GetNoDataValue()
        return int(((values != empty) & (values == values)).sum())
    if path.endswith(".gpx"):
        source = ogr.Open(path)
        return source.GetLayerByName("routes").GetFeatureCount()
    if path.endswith(".gpkg"):
        source = ogr.Open(path)
        return source.GetLayer(0).GetFeatureCount()
    return len([each for each in glob.glob(os.path.join(path, "*")) if os.path.getsize(each)])


def check_steps(model, folder):
    made = ways_input.model_outputs(model, folder)
    for name, path in made.items():
        if not os.path.exists(path):
            sys.exit("the step %s gave nothing" % name)
        count = amount(path)
        if not count and name not in MAY_BE_EMPTY:
            sys.exit("the step %s gave no rows" % name)
        print("   %s: %d" % (name, count))


if sys.argv[1] == "--steps":
    check_steps(*sys.argv[2:])
else:
    compare(*sys.argv[1:])
