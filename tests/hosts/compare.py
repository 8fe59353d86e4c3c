#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""compare.py FOLDER FOLDER: whether two hosts worked out the same.

Both folders have to hold layers and rasters of the same names, with the same
coordinate reference systems, fields and rows in the same order, texts and
kinds of geometry alike, and numbers (coordinates too) alike to 1e-9 of their
size, or 1e-9 where they are small. What is no number on one side has to be
none on the other. Prints one line; ends with 1 when something differs by more.
"""
import math
import os
import sys

import numpy as np
from osgeo import gdal, ogr

gdal.UseExceptions()
ogr.UseExceptions()

TOLERANCE = 1e-9


class Tally:
    """Counts numbers, and keeps the greatest difference with its place."""

    def __init__(self):
        self.numbers = 0
        self.worst = 0.0
        self.where = ""
        self.faults = []

    def number(self, a, b, where):
        self.numbers += 1
        if (a != a and b != b) or a == b:
            return
        if not (math.isfinite(a) and math.isfinite(b)):
            self.same(a, b, where)
            return
        difference = abs(a - b) / max(1.0, abs(a), abs(b))
        if difference > self.worst:
            self.worst = difference
            self.where = f"{where}: {a!r} and {b!r}"

    def same(self, a, b, where):
        if a != b:
            self.faults.append(f"{where}: {a!r} and {b!r}")


def coordinates(geometry):
    if geometry is None:
        return []
    if geometry.GetGeometryCount():
        return [value for i in range(geometry.GetGeometryCount()) for value in coordinates(geometry.GetGeometryRef(i))]
    return [value for point in geometry.GetPoints() or [] for value in point]


def kind(geometry):
    """The name of a geometry with the numbers of coordinates of its parts."""
    if geometry is None:
        return "none"
    parts = [kind(geometry.GetGeometryRef(i)) for i in range(geometry.GetGeometryCount())]
    return f"{geometry.GetGeometryName()} {parts or len(coordinates(geometry))}"


def compare_systems(a, b, tally, name):
    """Two systems are the same whatever words the hosts have for them."""
    if a is None or b is None or not a.IsSame(b):
        words = [system and (system.GetAuthorityCode(None) or system.GetName()) for system in (a, b)]
        if a is not None or b is not None:
            tally.faults.append(f"{name}, coordinate reference system: {words[0]} and {words[1]}")


def fields_of(layer):
    definition = layer.GetLayerDefn()
    fields = [definition.GetFieldDefn(i) for i in range(definition.GetFieldCount())]
    return [(field.GetName(), field.GetTypeName()) for field in fields]


def compare_layers(path, other, tally):
    name = os.path.basename(path)
    ours, theirs = ogr.Open(path), ogr.Open(other)
    tally.same(ours.GetLayerCount(), theirs.GetLayerCount(), f"{name}, layers")
    a, b = ours.GetLayer(0), theirs.GetLayer(0)
    compare_systems(a.GetSpatialRef(), b.GetSpatialRef(), tally, name)
    fields = fields_of(a)
    tally.same(len(fields), len(fields_of(b)), f"{name}, fields")
    for i, (field, other_field) in enumerate(zip(fields, fields_of(b))):
        tally.same(field, other_field, f"{name}, field {i}")
    tally.same(a.GetFeatureCount(), b.GetFeatureCount(), f"{name}, rows")
    if fields != fields_of(b):
        return
    for row, (one, two) in enumerate(zip(a, b), 1):
        for i, (field, type_name) in enumerate(fields):
            where = f"{name}, row {row}, {field}"
            tally.same(one.IsFieldSetAndNotNull(i), two.IsFieldSetAndNotNull(i), where)
            if not (one.IsFieldSetAndNotNull(i) and two.IsFieldSetAndNotNull(i)):
                continue
            if type_name == "Real":
                tally.number(one.GetFieldAsDouble(i), two.GetFieldAsDouble(i), where)
            else:
                tally.same(one.GetFieldAsString(i), two.GetFieldAsString(i), where)
        here, there = one.GetGeometryRef(), two.GetGeometryRef()
        tally.same(kind(here), kind(there), f"{name}, row {row}, geometry")
        for value, other_value in zip(coordinates(here), coordinates(there)):
            tally.number(value, other_value, f"{name}, row {row}, geometry")


def compare_rasters(path, other, tally):
    name = os.path.basename(path)
    ours, theirs = gdal.Open(path), gdal.Open(other)
    compare_systems(ours.GetSpatialRef(), theirs.GetSpatialRef(), tally, name)
    for i, (one, two) in enumerate(zip(ours.GetGeoTransform(), theirs.GetGeoTransform())):
        tally.number(one, two, f"{name}, place {i}")
    tally.same(ours.RasterCount, theirs.RasterCount, f"{name}, bands")
    for band in range(1, min(ours.RasterCount, theirs.RasterCount) + 1):
        here, there = ours.GetRasterBand(band), theirs.GetRasterBand(band)
        none, other_none = here.GetNoDataValue(), there.GetNoDataValue()
        tally.same(none is None, other_none is None, f"{name}, a value for no data")
        if none is not None and other_none is not None:
            tally.number(none, other_none, f"{name}, value for no data")
        a, b = here.ReadAsArray().astype(float), there.ReadAsArray().astype(float)
        tally.same(a.shape, b.shape, f"{name}, size")
        if a.shape != b.shape:
            return
        differs = ~((a == b) | (np.isnan(a) & np.isnan(b)))
        tally.numbers += a.size - int(differs.sum())
        for row, column in zip(*np.nonzero(differs)):
            tally.number(float(a[row, column]), float(b[row, column]), f"{name}, cell {row}, {column}")


def names(folder):
    return sorted(name for name in os.listdir(folder) if name.endswith((".gpkg", ".tif")))


def main(ours, theirs):
    tally = Tally()
    layers = [name for name in names(ours) if name.endswith(".gpkg")]
    rasters = [name for name in names(ours) if name.endswith(".tif")]
    if not layers or not rasters:
        sys.exit(f"{ours} has nothing to compare.")
    for name in sorted(set(names(ours)) ^ set(names(theirs))):
        tally.faults.append(f"{name} is in one folder alone")
    for name in layers:
        if name in names(theirs):
            compare_layers(os.path.join(ours, name), os.path.join(theirs, name), tally)
    for name in rasters:
        if name in names(theirs):
            compare_rasters(os.path.join(ours, name), os.path.join(theirs, name), tally)
    if tally.faults:
        print(f"{len(tally.faults)} differ, the first: {tally.faults[0]}")
        return 1
    print(f"{tally.numbers} numbers, the worst apart by {tally.worst:.1e}" + (f" ({tally.where})" if tally.worst else ""))
    return 0 if tally.worst <= TOLERANCE else 1


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
