# SPDX-License-Identifier: GPL-2.0-or-later
"""postgis_check.py CONNECTION FOLDER: every algorithm reads from and writes to PostGIS, and makes the same of it.

What came of GeoPackages is the reference. The database has the schemas read and written.
"""
import os
import sys

from osgeo import ogr

import formats


def part(server, reference, folder):
    """A filter picks routes; names from outside ASCII in it, too."""
    fields, legs = reference.small["legs"]
    route = [name for name, _ in fields].index("route")
    for name in ("林道への道", "Practice loop"):
        path = os.path.join(folder, "part.gpkg")
        formats.run("a part", "brushline:annotatelegs", {
            **formats.DATE, "INPUT": server.source("read", "routes") + " sql=\"route\" = '%s'" % name,
            "ROUTE_FIELD": "route", "POINTS": server.source("read", "points"),
            "WALKERS": server.source("read", "walkers", True), "OUTPUT": path})
        wanted = fields, [row for row in legs if row[route] == name]
        if not wanted[1]:
            formats.stop("no legs of", name)
        formats.compare(server, "part of the routes", wanted, formats.rows(path))
    print("PostGIS: part of a table by a filter")


def own_tables(server):
    """No output in the place of an input or of another output, by whatever name of machine and schema."""
    routes = server.source("read", "routes")
    before = formats.rows(*server.place("read", "routes"))
    given = {**formats.DATE, "INPUT": routes, "ROUTE_FIELD": "route"}
    for way in (routes, routes.replace("postgres://", "postgis:"), routes.replace("port='5432' ", "")):
        formats.refused("the routes written over", ["OUTPUT", "INPUT"], "brushline:annotatelegs", {**given, "OUTPUT": way})
    there = server.destination("written", "twice")
    formats.refused("two outputs in one table", ["OUTPUT", "MARKS"], "brushline:annotatelegs",
                    {**given, "OUTPUT": there, "MARKS": there})
    formats.compare(server, "the routes", before, formats.rows(*server.place("read", "routes")))
    if [each.GetName() for each in ogr.Open("PG:" + server.connection) if "twice" in each.GetName()]:
        formats.stop("a refused run left a table")
    print("PostGIS: tables that are read are not written over")


def again(server, reference):
    """A table of an earlier run is replaced."""
    formats.run("again", "brushline:annotatelegs", {
        **formats.DATE, "INPUT": server.source("read", "routes"), "ROUTE_FIELD": "route",
        "POINTS": server.source("read", "points"), "WALKERS": server.source("read", "walkers", True),
        "OUTPUT": server.destination("written", "legs")})
    formats.compare(server, "again", reference.small["legs"], formats.rows(*server.place("written", "legs")))
    print("PostGIS: a table of before is replaced")


connection, work = sys.argv[1:]
reference = formats.Reference(work)
inputs, outputs, made = (os.path.join(work, "postgis", name) for name in ("in", "out", "made"))
for folder in (inputs, outputs, made):
    os.makedirs(folder)
reference.compare(formats.GEOPACKAGE, inputs, outputs, outputs)
postgis = formats.PostGis(connection)
reference.compare(postgis, "read", "written", made)
part(postgis, reference, work)
own_tables(postgis)
again(postgis, reference)
