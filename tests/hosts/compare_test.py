#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""compare_test.py: compare.py passes outputs that are alike, and finds each way in which they may differ."""
import contextlib
import io
import math
import os
import subprocess
import sys
import tempfile
import unittest

import numpy as np
from osgeo import gdal, ogr, osr

import compare

gdal.UseExceptions()
ogr.UseExceptions()
FIELDS = (("route", ogr.OFTString), ("dial", ogr.OFTReal), ("marks", ogr.OFTInteger), ("paces", ogr.OFTReal))
ROWS = (("Loop", 42.0, 3, 130.0, "LINESTRING (600000 5400000,600100 5400050)"),
        ("Loop", 318.0, 2, None, "LINESTRING (600100 5400050,600000 5400200)"))
CELLS = ((1.0, 2.0, math.nan), (4.0, 5.0, 6.0))


def system(code):
    made = osr.SpatialReference()
    made.ImportFromEPSG(code)
    return made


def write_layer(folder, fields=FIELDS, rows=ROWS, code=32621, name="legs", kind=ogr.wkbLineString):
    source = ogr.GetDriverByName("GPKG").CreateDataSource(os.path.join(folder, name + ".gpkg"))
    layer = source.CreateLayer(name, system(code) if code else None, kind)
    for field, type_of_field in fields:
        layer.CreateField(ogr.FieldDefn(field, type_of_field))
    for row in rows:
        feature = ogr.Feature(layer.GetLayerDefn())
        for i, value in enumerate(row[:-1]):
            if value is None:
                feature.SetFieldNull(i)
            else:
                feature.SetField(i, value)
        if row[-1]:
            feature.SetGeometry(ogr.CreateGeometryFromWkt(row[-1]))
        layer.CreateFeature(feature)


def write_raster(folder, cells=CELLS, code=32621, left=600000.0, none=-1.0, bands=1):
    cells = np.array(cells)
    source = gdal.GetDriverByName("GTiff").Create(os.path.join(folder, "effort.tif"), cells.shape[1], cells.shape[0],
                                                  bands, gdal.GDT_Float64)
    source.SetGeoTransform((left, 10, 0, 5400000, 0, -10))
    if code:
        source.SetProjection(system(code).ExportToWkt())
    for band in range(1, bands + 1):
        source.GetRasterBand(band).WriteArray(cells)
        if none is not None:
            source.GetRasterBand(band).SetNoDataValue(none)


def changed(row, column, value):
    """The rows with another value in one place."""
    return [tuple(value if (i, j) == (row, column) else old for j, old in enumerate(values))
            for i, values in enumerate(ROWS)]


def said_of(folders):
    """How it ends, and the line it prints."""
    printed = io.StringIO()
    with contextlib.redirect_stdout(printed):
        try:
            code = compare.main(*folders)
        except SystemExit as end:  # with words instead of a number
            return 1, str(end)
    return code, printed.getvalue()


class CompareTest(unittest.TestCase):
    def both_ways(self, layer=None, raster=None):
        """What compare.py says of the outputs above and of others, both ways round: the code and the line."""
        with tempfile.TemporaryDirectory() as folder:
            both = [os.path.join(folder, name) for name in ("ours", "theirs")]
            for each in both:
                os.mkdir(each)
            write_layer(both[0])
            write_raster(both[0])
            if layer is not False:
                write_layer(both[1], **(layer or {}))
            if raster is not False:
                write_raster(both[1], **(raster or {}))
            return [said_of(both), said_of(both[::-1])]

    def passes(self, **other):
        for code, said in self.both_ways(**other):
            self.assertEqual(code, 0, said)
            self.assertIn(" numbers, the worst apart by ", said)

    def differs(self, *words, **other):
        for code, said in self.both_ways(**other):
            self.assertEqual(code, 1, said)
            for word in words:
                self.assertIn(word, said)

    def test_alike(self):
        # Numbers: 2 dials, 1 of paces, 8 coordinates; of the raster 6 for its place, 1 for no data, 6 cells.
        for code, said in self.both_ways():
            self.assertEqual((code, said), (0, "24 numbers, the worst apart by 0.0e+00\n"))

    def test_as_a_program(self):
        with tempfile.TemporaryDirectory() as folder:
            write_layer(folder)
            write_raster(folder)
            for other, code in ((folder, 0), (os.path.dirname(os.path.abspath(__file__)), 1)):
                run = subprocess.run([sys.executable, compare.__file__, folder, other], stdout=subprocess.PIPE,
                                     check=False)
                self.assertEqual(run.returncode, code)
                self.assertEqual(run.stdout.count(b"\n"), 1)

    def test_numbers(self):
        self.passes(layer={"rows": changed(0, 1, 42.0 * (1 + 9e-10))})
        self.differs("legs.gpkg, row 1, dial", layer={"rows": changed(0, 1, 42.0 * (1 + 1.1e-9))})
        self.passes(raster={"cells": ((1, 2, math.nan), (4, 5, 6 + 5e-9))})
        self.differs("effort.tif, cell 1, 2", raster={"cells": ((1, 2, math.nan), (4, 5, 6 + 7e-9))})

    def test_no_number_on_one_side(self):
        # Whatever stands behind it: a number after it is off by a little, within the tolerance.
        for value in (math.nan, math.inf, -math.inf):
            rows = changed(0, 1, value)
            rows[1] = ("Loop", 318.0 + 1e-8) + rows[1][2:]
            self.differs("legs.gpkg, row 1, dial", layer={"rows": rows})
            for row, column in ((0, 0), (1, 2)):
                cells = [list(line) for line in CELLS]
                cells[1][0] += 1e-9
                cells[row][column] = value
                self.differs(f"effort.tif, cell {row}, {column}", raster={"cells": cells})
        self.differs("effort.tif, cell 0, 2", raster={"cells": ((1, 2, 3), (4, 5, 6))})
        self.differs("legs.gpkg, row 1, paces", layer={"rows": changed(0, 3, None)})
        self.differs("legs.gpkg, row 2, paces", layer={"rows": changed(1, 3, 0.0)})

    def test_fields(self):
        def without(column):
            fields = [field for i, field in enumerate(FIELDS) if i != column]
            return {"fields": fields, "rows": [row[:column] + row[column + 1:] for row in ROWS]}

        for column in range(len(FIELDS)):
            self.differs("legs.gpkg, fields: ", layer=without(column))
        self.differs("legs.gpkg, field 3", "steps", layer={"fields": FIELDS[:3] + (("steps", ogr.OFTReal),)})
        self.differs("legs.gpkg, field 2", layer={"fields": FIELDS[:2] + (("marks", ogr.OFTReal),) + FIELDS[3:]})
        self.differs("legs.gpkg, field 1", layer={
            "fields": (FIELDS[0], FIELDS[3], FIELDS[2], FIELDS[1]),
            "rows": [(row[0], row[3], row[2], row[1], row[4]) for row in ROWS]})

    def test_values(self):
        self.differs("legs.gpkg, row 2, route", "'Loop'", layer={"rows": changed(1, 0, "loop")})
        self.differs("legs.gpkg, row 1, marks", layer={"rows": changed(0, 2, 4)})
        self.differs("legs.gpkg, rows", layer={"rows": ROWS[:1]})
        self.differs("legs.gpkg, row 1", layer={"rows": ROWS[::-1]})

    def test_geometry(self):
        self.differs("row 1, geometry", layer={"rows": changed(0, 4, "LINESTRING (600000 5400000,600100 5400050.006)")})
        self.passes(layer={"rows": changed(0, 4, "LINESTRING (600000 5400000,600100 5400050.005)")})
        self.differs("row 1, geometry", layer={"rows": changed(0, 4, None)})
        self.differs("row 1, geometry", layer={
            "rows": changed(0, 4, "LINESTRING (600000 5400000,600050 5400025,600100 5400050)")})
        self.differs("row 1, geometry", layer={
            "rows": changed(0, 4, "LINESTRING Z (600000 5400000 0,600100 5400050 0)"), "kind": ogr.wkbUnknown})
        self.differs("row 1, geometry", layer={
            "rows": changed(0, 4, "MULTIPOINT (600000 5400000,600100 5400050)"), "kind": ogr.wkbUnknown})

    def test_systems(self):
        for code in (32622, 4326, None):
            self.differs("legs.gpkg, coordinate reference system", "32621", layer={"code": code})
            self.differs("effort.tif, coordinate reference system", "32621", raster={"code": code})

    def test_rasters(self):
        self.differs("effort.tif, place 0", raster={"left": 600001.0})
        self.differs("effort.tif, size", raster={"cells": ((1, 2), (4, 5))})
        self.differs("effort.tif, bands", raster={"bands": 2})
        self.differs("effort.tif, value for no data", raster={"none": -2.0})
        self.differs("effort.tif, a value for no data", raster={"none": None})

    def test_missing_files(self):
        # Without any layer or raster the first folder has nothing to compare.
        for kind, name in (("layer", "legs.gpkg"), ("raster", "effort.tif")):
            (code, said), (other_code, other_said) = self.both_ways(**{kind: False})
            self.assertEqual(code, 1)
            self.assertIn(f"{name} is in one folder alone", said)
            self.assertEqual(other_code, 1)
            self.assertIn("nothing to compare", other_said)
        self.differs("drift.gpkg is in one folder alone", layer={"name": "drift"})


if __name__ == "__main__":
    unittest.main()
