#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""Make walked.gpx: how a receiver in Joff's pack saw him walk the route "Practice loop".

Ressa wrote him the bearings of the map, and nobody thought of the declination: he set true bearings on a compass whose
needle points some 17 degrees west of true north. His paces are a little short. The receiver errs by some metres, for
minutes alike; once it lost its satellites, once it was somewhere else for a moment. Walk and day are invented; the same
seed makes the same file. Needs make_sample.py's sample.gpkg and GDAL's Python bindings.
"""
import argparse
import datetime
import math
import os
import random

from osgeo import ogr, osr

ogr.UseExceptions()
osr.UseExceptions()

HERE = os.path.dirname(os.path.abspath(__file__))
SEED = 1
ROUTE, WALKER = "Practice loop", "Joff (12)"
BEGAN = datetime.datetime(2026, 6, 20, 13, 4, tzinfo=datetime.timezone.utc)
DECLINATION = -17.1     # degrees, rounded; what the needle adds to each bearing
LENGTH = 0.96           # paced lengths: four in the hundred short
LEG_BEARING, LEG_LENGTH = 2.0, 0.03     # one sigma of a leg's own errors: degrees, share
HOP, HOP_ASIDE = 22.0, 2.5              # metres from mark to mark, and aside of the line (one sigma)
SPEED = 0.75            # metres a second, on the way from mark to mark
AT_MARK, AT_TURN, REST = 6, 55, 170     # seconds that he stands; one rest, in the middle of the fourth leg
EVERY = 4               # seconds between points
NOISE, NOISE_FADES = 3.5, 40.0          # metres in each direction (one sigma), seconds in which errors fade
GAP = (395, 450)        # seconds without satellites
SPIKE = (655, 85.0, -60.0)              # at which second, how far east and north


def plan():
    """The turns of the route, in metres of the sample's grid."""
    source = ogr.Open(os.path.join(HERE, "sample.gpkg"))
    layer = source.GetLayerByName("routes")
    layer.SetAttributeFilter("route = '%s'" % ROUTE)
    feature = layer.GetNextFeature()
    return feature.GetGeometryRef().GetPoints()


def walked(turns, chance):
    """Where he was: (second, east, north), corners only."""
    second, east, north = 0.0, turns[0][0], turns[0][1]
    way = [(second, east, north), (second + 40, east, north)]
    for leg, (start, end) in enumerate(zip(turns[:-1], turns[1:])):
        bearing = math.atan2(end[0] - start[0], end[1] - start[1])
        bearing += math.radians(DECLINATION + chance.gauss(0, LEG_BEARING))
        length = math.hypot(end[0] - start[0], end[1] - start[1]) * LENGTH * (1 + chance.gauss(0, LEG_LENGTH))
        hops = max(1, round(length / HOP))
        x, y = way[-1][1:]
        for hop in range(1, hops + 1):
            along = length * hop / hops
            aside = chance.gauss(0, HOP_ASIDE) if hop < hops else 0.0
            to = (x + along * math.sin(bearing) + aside * math.cos(bearing),
                  y + along * math.cos(bearing) - aside * math.sin(bearing))
            second = way[-1][0] + math.dist(way[-1][1:], to) / SPEED
            stands = AT_TURN if hop == hops else REST if leg == 3 and hop == hops // 2 else AT_MARK
            way += [(second,) + to, (second + stands,) + to]
    return way


def recorded(way, chance):
    """What the receiver wrote down: (second, east, north)."""
    fade = math.exp(-EVERY / NOISE_FADES)
    off = [chance.gauss(0, NOISE), chance.gauss(0, NOISE)]
    points, k = [], 1
    for second in range(0, int(way[-1][0]) + 1, EVERY):
        while k + 1 < len(way) and way[k][0] < second:
            k += 1
        (before, x0, y0), (after, x1, y1) = way[k - 1], way[k]
        share = (second - before) / (after - before)
        at = [x0 + share * (x1 - x0) + off[0], y0 + share * (y1 - y0) + off[1]]
        if SPIKE[0] <= second < SPIKE[0] + EVERY:
            at = [at[0] + SPIKE[1], at[1] + SPIKE[2]]
        if not GAP[0] < second < GAP[1]:
            points.append((second, at[0], at[1]))
        off = [fade * each + math.sqrt(1 - fade * fade) * chance.gauss(0, NOISE) for each in off]
    return points


def main():
    ap = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    ap.add_argument("--out", default=HERE, help="folder to write to")
    out = os.path.join(ap.parse_args().out, "walked.gpx")

    grid, earth = osr.SpatialReference(), osr.SpatialReference()
    grid.ImportFromEPSG(32621)
    earth.ImportFromEPSG(4326)
    for each in (grid, earth):
        each.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    to_earth = osr.CoordinateTransformation(grid, earth)
    chance = random.Random(SEED)
    points = recorded(walked(plan(), chance), chance)
    with open(out, "w", encoding="utf-8", newline="\n") as gpx:
        gpx.write('<?xml version="1.0" encoding="UTF-8"?>\n<!-- SPDX-License-Identifier: GPL-2.0-or-later -->\n'
                  '<gpx version="1.1" creator="make_walk.py" xmlns="http://www.topografix.com/GPX/1/1">\n'
                  "<trk><name>%s</name><desc>%s</desc><trkseg>\n" % (WALKER, ROUTE))
        for second, east, north in points:
            longitude, latitude, _ = to_earth.TransformPoint(east, north)
            when = (BEGAN + datetime.timedelta(seconds=second)).strftime("%Y-%m-%dT%H:%M:%SZ")
            gpx.write('<trkpt lat="%.6f" lon="%.6f"><time>%s</time></trkpt>\n' % (latitude, longitude, when))
        gpx.write("</trkseg></trk>\n</gpx>\n")
    print("%s  %d points" % (out, len(points)))


if __name__ == "__main__":
    main()
