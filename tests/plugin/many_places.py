# SPDX-License-Identifier: GPL-2.0-or-later
"""many_places.py FOLDER SIDE: made-up land for tests of big outputs, always the same: SIDE x SIDE cells of 20 m.

cover.fgb (squares with a class), points.fgb (a point in each square), terrain.tif (20 m), starts.fgb and ends.fgb (one
point each, in opposite corners). Nowhere in particular.
"""
import os
import random
import sys

import numpy
from osgeo import gdal, ogr, osr

gdal.UseExceptions()
ogr.UseExceptions()
EAST, NORTH, CELL = 600000, 5400000, 20
CLASSES = ["open woods", "brush", "thicket", "heath", "tall forest", "young growth"]


def layer(folder, name, system, kind, rows):
    data = ogr.GetDriverByName("FlatGeobuf").CreateDataSource(os.path.join(folder, name + ".fgb"))
    made = data.CreateLayer(name, system, kind)
    made.CreateField(ogr.FieldDefn("class" if kind == ogr.wkbPolygon else "name", ogr.OFTString))
    for words, shape in rows:
        feature = ogr.Feature(made.GetLayerDefn())
        feature.SetField(0, words)
        feature.SetGeometry(ogr.CreateGeometryFromWkt(shape))
        made.CreateFeature(feature)


def main():
    folder, side = sys.argv[1], int(sys.argv[2])
    chance = random.Random(1)
    system = osr.SpatialReference()
    system.ImportFromEPSG(32621)
    corners = [(EAST + i * CELL, NORTH + j * CELL) for j in range(side) for i in range(side)]
    layer(folder, "cover", system, ogr.wkbPolygon,
          [(chance.choice(CLASSES), "POLYGON((%d %d,%d %d,%d %d,%d %d,%d %d))" % (
              x, y, x + CELL, y, x + CELL, y + CELL, x, y + CELL, x, y)) for x, y in corners])
    layer(folder, "points", system, ogr.wkbPoint,
          [("point %d" % i, "POINT(%r %r)" % (x + chance.uniform(0, CELL), y + chance.uniform(0, CELL)))
           for i, (x, y) in enumerate(corners)])
    for name, share in (("starts", 0.1), ("ends", 0.9)):
        layer(folder, name, system, ogr.wkbPoint,
              [(name, "POINT(%r %r)" % (EAST + share * side * CELL, NORTH + share * side * CELL))])
    heights = numpy.random.default_rng(1).normal(0, 1, (side + 2, side + 2)).cumsum(0).cumsum(1) / 20 + 300
    raster = gdal.GetDriverByName("GTiff").Create(os.path.join(folder, "terrain.tif"), side + 2, side + 2, 1,
                                                  gdal.GDT_Float32)
    raster.SetGeoTransform((EAST - CELL, CELL, 0, NORTH + (side + 1) * CELL, 0, -CELL))
    raster.SetProjection(system.ExportToWkt())
    raster.GetRasterBand(1).WriteArray(heights)


main()
