# SPDX-License-Identifier: GPL-2.0-or-later
"""formats_check.py FOLDER: every algorithm reads and writes the formats that are files, and makes the same of each.

What came of the GeoPackages is the reference. Every value has to be equal but for what formats.Format says that a format
cannot hold.
"""
import os
import shutil
import sys

from osgeo import ogr

import formats


def contents(path):
    return {layer.GetName(): str([[str(value) for value in row] for row in formats.rows(path, layer.GetName())[1]])
            for layer in ogr.Open(path)}


def beside(reference, folder):
    """Legs and marks become layers of the file they are read from; what else is in it stays, also the second time."""
    path = os.path.join(folder, "beside.gpkg")
    shutil.copy(reference.base, path)
    source = ogr.Open(path, 1)
    standing = source.CreateLayer("standing", source.GetLayerByName("routes").GetSpatialRef(), ogr.wkbLineString)
    standing.CreateField(ogr.FieldDefn("route", ogr.OFTString))
    feature = ogr.Feature(standing.GetLayerDefn())
    feature["route"] = "Nowhere"
    feature.SetGeometry(ogr.CreateGeometryFromWkt("LINESTRING (632320 5407060, 632320 5407060)"))
    standing.CreateFeature(feature)
    source = standing = feature = None
    before = contents(path)

    def layer(name):
        return path + "|layername=" + name

    def into(name):
        return "ogr:dbname='%s' table=\"%s\" (geom)" % (path, name)

    legs = {**formats.DATE, "ROUTE_FIELD": "route", "POINTS": layer("points"), "WALKERS": layer("walkers")}
    for _ in range(2):
        formats.run("layers beside others", "brushline:annotatelegs", {
            **legs, "INPUT": layer("routes"), "OUTPUT": into("legs"), "MARKS": into("marks")})
        for name in ("legs", "marks"):
            formats.compare(formats.GEOPACKAGE, "beside others", reference.small[name], formats.rows(path, name))
    after = contents(path)
    if set(after) != {*before, "legs", "marks", "layer_styles"} or after != {**after, **before}:
        formats.stop("layers beside", list(before), "became", list(after))

    # A run that fails leaves nothing of its own, and all the rest.
    formats.refused("routes without a line", ["INPUT"], "brushline:annotatelegs", {
        **legs, "INPUT": layer("standing"), "OUTPUT": into("none")})
    if contents(path) != after:
        formats.stop("a run that failed left", list(contents(path)))
    print("GeoPackage: legs and marks beside %d other layers" % len(before))


def table_as_flatgeobuf(folder):
    path = os.path.join(folder, "walkers.fgb")
    formats.refused("a table as FlatGeobuf", ["OUTPUT", "FlatGeobuf", ".gpkg"], "brushline:calibratepaces", {
        "INPUT": os.path.join(formats.SAMPLE, "pace_tries.csv"), "WALKER_FIELD": "walker", "DISTANCE_FIELD": "metres",
        "COUNT_FIELD": "count", "OUTPUT": path})
    if os.path.exists(path):
        formats.stop("a table as FlatGeobuf left a file")
    print("FlatGeobuf: a table is refused, since its rows would vanish")


work = sys.argv[1]
reference = formats.Reference(work)
for form in formats.FILES:
    inputs, outputs = (os.path.join(work, form.name, part) for part in ("in", "out"))
    os.makedirs(inputs)
    os.makedirs(outputs)
    reference.compare(form, inputs, outputs, outputs)
beside(reference, work)
table_as_flatgeobuf(work)
