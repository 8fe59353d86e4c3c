#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""Made-up input of a given size, always the same, for limits.sh. All of it lies in one square of 20 km.

  make_input.py routes FILE LEGS         FlatGeobuf of lines of 100 legs of 80 to 120 m
  make_input.py points FILE COUNT [M]    FlatGeobuf of points anywhere, or in a square of M metres
  make_input.py terrain FILE SIDE        GeoTIFF of SIDE x SIDE heights, cells of 5 m
  make_input.py cover FILE SIDE          GeoTIFF of SIDE x SIDE codes of ESA WorldCover, cells of 5 m, in patches
  make_input.py pair FOLDER SIDE         start.geojson and end.geojson, in opposite corners of such a raster
  make_input.py area FILE [M]            GeoJSON: the square, or one of M metres
"""
import math
import os
import random
import sys

import numpy
from osgeo import gdal, ogr, osr

gdal.UseExceptions()
ogr.UseExceptions()
WEST, NORTH, SIDE, CELL = 490000.0, 5210000.0, 20000.0, 5.0


def grid():
    system = osr.SpatialReference()
    system.ImportFromEPSG(32621)
    return system


def write(path, kind, features):
    """features: (name, geometry)."""
    driver = "GeoJSON" if path.endswith("json") else "FlatGeobuf"
    # GeoJSON knows longitudes and latitudes alone, unless it is told.
    data = ogr.GetDriverByName(driver).CreateDataSource(path)
    layer = data.CreateLayer("made", grid(), kind, [] if driver == "FlatGeobuf" else ["RFC7946=NO"])
    layer.CreateField(ogr.FieldDefn("name", ogr.OFTString))
    for name, geometry in features:
        feature = ogr.Feature(layer.GetLayerDefn())
        feature["name"] = name
        feature.SetGeometry(geometry)
        layer.CreateFeature(feature)


def point(x, y):
    geometry = ogr.Geometry(ogr.wkbPoint)
    geometry.SetPoint_2D(0, x, y)
    return geometry


def routes(count):
    chance = random.Random(20260615)
    for number in range(1, math.ceil(count / 100) + 1):
        line = ogr.Geometry(ogr.wkbLineString)
        x, y = WEST + chance.uniform(0, SIDE), NORTH - chance.uniform(0, SIDE)
        line.AddPoint_2D(x, y)
        bearing = chance.uniform(0, 2 * math.pi)
        for _ in range(min(100, count - 100 * (number - 1))):
            bearing += math.radians(chance.uniform(-60, 60))
            length = chance.uniform(80, 120)
            while not (WEST <= x + length * math.sin(bearing) <= WEST + SIDE and
                       NORTH - SIDE <= y + length * math.cos(bearing) <= NORTH):
                bearing += math.radians(30)
            x, y = x + length * math.sin(bearing), y + length * math.cos(bearing)
            line.AddPoint_2D(x, y)
        yield "Route %d" % number, line


def points(count, side=SIDE):
    chance = random.Random(13)
    for number in range(1, count + 1):
        yield "Tree %d" % number, point(WEST + chance.uniform(0, side), NORTH - chance.uniform(0, side))


def raster(path, side, kind, row_of):
    data = gdal.GetDriverByName("GTiff").Create(path, side, side, 1, kind, ["TILED=YES", "COMPRESS=DEFLATE"])
    data.SetGeoTransform((WEST, CELL, 0, NORTH, 0, -CELL))
    data.SetProjection(grid().ExportToWkt())
    band = data.GetRasterBand(1)
    for row in range(side):
        band.WriteArray(row_of(row)[None, :], 0, row)


def terrain(path, side):
    columns = numpy.arange(side)
    raster(path, side, gdal.GDT_Float32, lambda row: (500 + 40 * numpy.sin(columns * 0.021) * math.cos(row * 0.017) +
                                                      8 * numpy.sin(columns * 0.13 + row * 0.07)).astype(numpy.float32))


def cover(path, side):
    chance = numpy.random.default_rng(11)
    patches = chance.choice(numpy.array([10, 20, 30, 90], numpy.uint8), (side // 40 + 1, side // 40 + 1))
    columns = numpy.arange(side) // 40
    raster(path, side, gdal.GDT_Byte, lambda row: patches[row // 40][columns])


def pair(folder, side):
    far = CELL * (side - 60)
    for name, x, y in (("start", WEST + 300, NORTH - 300), ("end", WEST + far, NORTH - far)):
        write(os.path.join(folder, name + ".geojson"), ogr.wkbPoint, [("one", point(x, y))])


def area(path, side):
    ring = ogr.Geometry(ogr.wkbLinearRing)
    for x, y in ((0, 0), (side, 0), (side, -side), (0, -side), (0, 0)):
        ring.AddPoint_2D(WEST + x, NORTH + y)
    polygon = ogr.Geometry(ogr.wkbPolygon)
    polygon.AddGeometry(ring)
    write(path, ogr.wkbPolygon, [("square", polygon)])


def main():
    what, path = sys.argv[1], sys.argv[2]
    count = int(sys.argv[3]) if len(sys.argv) > 3 else 0
    if what == "routes":
        write(path, ogr.wkbLineString, routes(count))
    elif what == "points":
        write(path, ogr.wkbPoint, points(count, float(sys.argv[4]) if len(sys.argv) > 4 else SIDE))
    else:
        {"terrain": terrain, "cover": cover, "pair": pair, "area": lambda path, side: area(path, side or SIDE)}[what](path, count)


if __name__ == "__main__":
    main()
