#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""compare.py FOLDER FOLDER: whether two hosts worked out the same.

Every layer and raster of the first folder has to be in the second, with the
same fields, rows in the same order, texts alike, and numbers (coordinates
too) alike to 1e-9 of their size, or 1e-9 where they are small. Prints one
line; ends with 1 when something differs by more.
"""
import glob
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
        difference = abs(a - b) / max(1.0, abs(a), abs(b))
        if not difference <= self.worst:
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


def compare_layers(path, other, tally):
    name = os.path.basename(path)
    ours, theirs = ogr.Open(path), ogr.Open(other)
    a, b = ours.GetLayer(0), theirs.GetLayer(0)
    definition = a.GetLayerDefn()
    fields = [definition.GetFieldDefn(i) for i in range(definition.GetFieldCount())]
    for i, field in enumerate(fields):
        tally.same(field.GetName(), b.GetLayerDefn().GetFieldDefn(i).GetName(), f"{name}, field {i}")
    tally.same(a.GetFeatureCount(), b.GetFeatureCount(), f"{name}, rows")
    for row, (one, two) in enumerate(zip(a, b), 1):
        for i, field in enumerate(fields):
            where = f"{name}, row {row}, {field.GetName()}"
            tally.same(one.IsFieldSetAndNotNull(i), two.IsFieldSetAndNotNull(i), where)
            if not one.IsFieldSetAndNotNull(i):
                continue
            if field.GetType() == ogr.OFTReal:
                tally.number(one.GetFieldAsDouble(i), two.GetFieldAsDouble(i), where)
            else:
                tally.same(one.GetFieldAsString(i), two.GetFieldAsString(i), where)
        here, there = coordinates(one.GetGeometryRef()), coordinates(two.GetGeometryRef())
        tally.same(len(here), len(there), f"{name}, row {row}, vertices")
        for value, other_value in zip(here, there):
            tally.number(value, other_value, f"{name}, row {row}, geometry")


def compare_rasters(path, other, tally):
    name = os.path.basename(path)
    a, b = gdal.Open(path).ReadAsArray().astype(float), gdal.Open(other).ReadAsArray().astype(float)
    tally.same(a.shape, b.shape, f"{name}, size")
    if a.shape != b.shape:
        return
    differs = ~((a == b) | (np.isnan(a) & np.isnan(b)))
    tally.numbers += a.size - int(differs.sum())
    for row, column in zip(*np.nonzero(differs)):
        tally.number(float(a[row, column]), float(b[row, column]), f"{name}, cell {row}, {column}")


def main():
    ours, theirs = sys.argv[1:]
    tally = Tally()
    layers = sorted(glob.glob(os.path.join(ours, "*.gpkg")))
    rasters = sorted(glob.glob(os.path.join(ours, "*.tif")))
    if not layers or not rasters:
        sys.exit(f"{ours} has nothing to compare.")
    for path in layers:
        compare_layers(path, os.path.join(theirs, os.path.basename(path)), tally)
    for path in rasters:
        compare_rasters(path, os.path.join(theirs, os.path.basename(path)), tally)
    if tally.faults:
        print(f"{len(tally.faults)} differ, the first: {tally.faults[0]}")
        return 1
    print(f"{tally.numbers} numbers, the worst apart by {tally.worst:.1e}" + (f" ({tally.where})" if tally.worst else ""))
    return 0 if tally.worst <= TOLERANCE else 1


sys.exit(main())
