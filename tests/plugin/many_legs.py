# SPDX-License-Identifier: GPL-2.0-or-later
"""many_legs.py FILE LEGS [ROUTE_LENGTH]: a FlatGeobuf of made-up annotated legs, for tests of big outputs.

Routes of ROUTE_LENGTH legs (20) each; always the same. The numbers are no one's real course.
"""
import math
import random
import sys

from osgeo import ogr, osr

ogr.UseExceptions()
FIELDS = [("route", ogr.OFTString), ("leg", ogr.OFTInteger), ("walker", ogr.OFTString), ("direction", ogr.OFTString),
          ("from_name", ogr.OFTString), ("to_name", ogr.OFTString), ("true_brg", ogr.OFTReal),
          ("grid_brg", ogr.OFTReal), ("mag_brg", ogr.OFTReal), ("converg", ogr.OFTReal), ("decl", ogr.OFTReal),
          ("decl_err", ogr.OFTReal),
          ("date", ogr.OFTDate), ("dial", ogr.OFTReal), ("dial_text", ogr.OFTString), ("back_dial", ogr.OFTReal),
          ("compass_pt", ogr.OFTString), ("dist_m", ogr.OFTReal), ("slope_m", ogr.OFTReal), ("climb_m", ogr.OFTReal),
          ("drop_m", ogr.OFTReal), ("paces", ogr.OFTInteger), ("walk_min", ogr.OFTReal), ("cover", ogr.OFTString),
          ("sight_m", ogr.OFTReal), ("spacing_m", ogr.OFTReal), ("marks", ogr.OFTInteger), ("drift_m", ogr.OFTReal),
          ("along_m", ogr.OFTReal), ("warnings", ogr.OFTString)]
POINTS = "N NNE NE ENE E ESE SE SSE S SSW SW WSW W WNW NW NNW".split()


def main():
    path, count = sys.argv[1], int(sys.argv[2])
    length = int(sys.argv[3]) if len(sys.argv) > 3 else 20
    chance = random.Random(1)
    system = osr.SpatialReference()
    system.ImportFromEPSG(32621)
    data = ogr.GetDriverByName("FlatGeobuf").CreateDataSource(path)
    layer = data.CreateLayer("legs", system, ogr.wkbLineString)
    for name, kind in FIELDS:
        layer.CreateField(ogr.FieldDefn(name, kind))
    x = y = 0.0
    for i in range(count):
        leg = i % length + 1
        if leg == 1:
            x, y = 600000 + chance.uniform(-9000, 9000), 5400000 + chance.uniform(-9000, 9000)
        true, metres = chance.uniform(0, 360), chance.uniform(60, 240)
        grid, magnetic = (true - 1.4) % 360, (true + 17.02) % 360
        dial = round(magnetic / 2) * 2 % 360
        end = x + metres * math.sin(math.radians(grid)), y + metres * math.cos(math.radians(grid))
        values = [f"Course {i // length + 1}", leg, None, "out", f"Tree {i % 97}" if i % 3 else None, None, true, grid,
                  magnetic, 1.4, -17.02, 0.38, "2026/06/20", float(dial), f"{dial:03d}\u00b0",
                  float((dial + 180) % 360), POINTS[int(dial / 22.5 + 0.5) % 16], metres, metres * 1.002,
                  chance.uniform(0, 9), chance.uniform(0, 9),
                  round(metres * 1.35), metres / 48, "thicket", chance.uniform(6, 60), chance.uniform(5, 40),
                  chance.randint(1, 30), chance.uniform(3, 20), chance.uniform(3, 20),
                  None if i % 9 else "On 12 m (16 paces) not even the next mark can be seen: go from hand to hand."]
        feature = ogr.Feature(layer.GetLayerDefn())
        for index, value in enumerate(values):
            if value is not None:
                feature.SetField(index, value)
        feature.SetGeometry(ogr.CreateGeometryFromWkt(f"LINESTRING({x!r} {y!r}, {end[0]!r} {end[1]!r})"))
        layer.CreateFeature(feature)
        x, y = end


main()
