#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""The files that bad_inputs.csv names with @: good ones to start from, and each kind of bad one beside them.

  bad_files.py FOLDER         all that needs no plugin
  bad_files.py FOLDER legs    bad copies of legs.gpkg and marks.gpkg, which annotatelegs made in FOLDER

A layer stands alone in a file of its own name, so that messages name it alike in every version of QGIS. All places are
invented; the coordinates are in UTM zone 21N, eastings from 1000 and northings from 7000 on, in metres from 631000 and
5400000. Needs the Python module of GDAL only.
"""
import contextlib
import math
import os
import sqlite3
import struct
import sys

from osgeo import gdal, ogr, osr

EAST, NORTH = 631000, 5400000
NAN, INF = 7e77, 8e88  # as they are written at first
STAND_INS = {NAN: math.nan, INF: math.inf, -INF: -math.inf}
KINDS = {"point": ogr.wkbPoint, "line": ogr.wkbLineString, "polygon": ogr.wkbPolygon, "table": ogr.wkbNone,
         "multiline": ogr.wkbMultiLineString}
TYPES = {int: ogr.OFTInteger, float: ogr.OFTReal, str: ogr.OFTString}


def system(code):
    if code is None:
        return None
    found = osr.SpatialReference()
    found.ImportFromEPSG(code)
    found.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    return found


def shape(kind, places):
    """A geometry over places, as they are in the layer's system; None has none, [] is an empty one."""
    if places is None or kind == "table":
        return None
    if kind == "point":
        point = ogr.Geometry(ogr.wkbPoint)
        for place in places:
            point.AddPoint_2D(*place)
        return point
    line = ogr.Geometry(ogr.wkbLinearRing if kind == "polygon" else ogr.wkbLineString)
    for place in places:
        line.AddPoint_2D(*place)
    if kind != "polygon":
        return line
    line.CloseRings()
    polygon = ogr.Geometry(ogr.wkbPolygon)
    polygon.AddGeometry(line)
    return polygon


def layer(folder, name, kind, fields, rows, code=32621):
    """Writes rows of (places, value, value ...). fields is {name: type}. A Shapefile where there is no system."""
    driver, ending, options = (("ESRI Shapefile", "shp", []) if code is None else
                               ("GPKG", "gpkg", ["SPATIAL_INDEX=NO"]))
    path = os.path.join(folder, name + "." + ending)
    file = ogr.GetDriverByName(driver).CreateDataSource(path)
    made = file.CreateLayer(name, system(code), KINDS[kind], options)
    for field, type_ in fields.items():
        made.CreateField(ogr.FieldDefn(field, TYPES[type_]))
    made.StartTransaction()
    for places, *values in rows:
        feature = ogr.Feature(made.GetLayerDefn())
        for field, value in zip(fields, values):
            feature.SetField(field, value) if value is not None else feature.SetFieldNull(field)
        if kind != "table":
            feature.SetGeometry(shape(kind, places))
        made.CreateFeature(feature)
    made.CommitTransaction()
    feature = made = file = None  # closes it
    if kind != "table" and code is not None:
        make_infinite(path, name)


def make_infinite(path, name):
    """Puts in what GDAL refuses to write."""
    with contextlib.closing(sqlite3.connect(path)) as file:
        for fid, blob in file.execute("select fid, geom from " + name).fetchall():
            changed = blob
            for number, meant in STAND_INS.items():
                changed = changed and changed.replace(struct.pack("<d", number), struct.pack("<d", meant))
            if changed != blob:
                file.execute("update %s set geom = ? where fid = ?" % name, (changed, fid))
        file.commit()


def near(*places):
    """Places of the map, as (easting, northing) in metres from its corner."""
    return [(EAST + x, NORTH + y) for x, y in places]


def box(west, south, east, north):
    return near((west, south), (east, south), (east, north), (west, north), (west, south))


def raster(folder, name, values, corner=(EAST + 900, NORTH + 8100), cell=20.0, code=32621, turn=0.0, no_data=None,
           dtype=gdal.GDT_Float32):
    """values: rows from the north, all of one length; corner: the north-west one; turn: degrees."""
    rows, columns = len(values), len(values[0])
    file = gdal.GetDriverByName("GTiff").Create(os.path.join(folder, name + ".tif"), columns, rows, 1, dtype)
    c, s = math.cos(math.radians(turn)) * cell, math.sin(math.radians(turn)) * cell
    file.SetGeoTransform((corner[0], c, s, corner[1], s, -c))
    if code is not None:
        file.SetProjection(system(code).ExportToWkt())
    band = file.GetRasterBand(1)
    if no_data is not None:
        band.SetNoDataValue(no_data)
    code_of = {gdal.GDT_Float32: "f", gdal.GDT_Byte: "B"}[dtype]
    band.WriteRaster(0, 0, columns, rows, struct.pack("=%d%s" % (rows * columns, code_of), *sum(values, [])))


def text(folder, name, content):
    with open(os.path.join(folder, name), "w", encoding="utf-8") as file:
        file.write(content)


ROUTE = {"route": str}
NAMED = {"name": str}
ONE_WAY = near((1100, 7100), (1400, 7300), (1700, 7250))
OTHER_WAY = near((1100, 7600), (1350, 7800))


def good(folder):
    layer(folder, "routes", "line", ROUTE, [(ONE_WAY, "Elder Loop"), (OTHER_WAY, "Moss Line")])
    order = {"route": str, "number": int}
    layer(folder, "route_points", "point", order, [([p], "Elder Loop", i) for i, p in enumerate(ONE_WAY)])
    layer(folder, "points", "point", NAMED, [([ONE_WAY[0]], "Hollow Camp"), ([ONE_WAY[-1]], "Split Rock")])
    layer(folder, "area", "polygon", NAMED, [(box(1000, 7000, 1900, 8000), "Club Wood")])
    layer(folder, "cover", "polygon", {"class": str}, [(box(900, 6900, 2000, 8100), "young growth")])
    layer(folder, "obstacles", "polygon", NAMED, [(box(1200, 7140, 1260, 7240), "Frog Pond")])
    layer(folder, "trails", "line", NAMED, [(near((1000, 7450), (1900, 7460)), "Tinker Trail")])
    pair = {"name": str, "pair": str}
    layer(folder, "starts", "point", pair, [(near((1200, 7100)), "Hollow Camp", "a"),
                                            (near((1500, 7150)), "Split Rock", "b")])
    layer(folder, "ends", "point", pair, [(near((1250, 7350)), "Well", "a"), (near((1550, 7300)), "Gate", "b")])
    layer(folder, "destinations", "point", NAMED, [(near((1300, 7453)), "a"), (near((1500, 7455)), "b")])
    layer(folder, "candidates", "point", NAMED, [(near((1250, 7203)), "Bent Birch"), (near((1550, 7272)), "Grey Stone")])
    layer(folder, "iron", "line", {"kind": str}, [(near((1500, 7000), (1510, 8000)), "high-tension line")])
    layer(folder, "cliffs", "line", NAMED, [(near((1300, 7150), (1310, 7300)), "Rook Cliff")])
    layer(folder, "tracks", "line", NAMED, [(ONE_WAY, "First walk")])
    layer(folder, "stands", "polygon", {"stems": float, "diameter": float, "under": float},
          [(box(1000, 7000, 1400, 7400), 900.0, 0.2, 0.01)])
    heights = [[100 + 0.5 * x + 0.2 * y for x in range(60)] for y in range(60)]
    raster(folder, "dem", heights)
    text(folder, "rows.csv", "route,n,bearing,paces,metres,who\nGarden,1,042,40,31,Wenna\nGarden,2,140,32,25,Wenna\n"
                             "Garden,3,260,44,34,Wenna\n")
    text(folder, "tries.csv", "walker,metres,count,slope\nWenna,100,130,0\nWenna,100,133,0\nWenna,100,128,0\n"
                              "Wenna,60,80,2\n")
    text(folder, "walkers.csv", "walker,paces_100m,pace_kind\nWenna,150,0\nTam,170,0\n")
    text(folder, "cover_table.csv", "class,sight_m,speed_f\nyoung growth,40,0.8\n")


def bad_routes(folder):
    def routes(name, *ways, kind="line", code=32621):
        layer(folder, name, kind, ROUTE, [(way, "Elder Loop %d" % (i + 1)) for i, way in enumerate(ways)], code)

    layer(folder, "routes_no_crs", "line", ROUTE, [(ONE_WAY, "Elder Loop")], None)
    layer(folder, "routes_empty", "line", ROUTE, [])
    layer(folder, "routes_table", "table", ROUTE, [(None, "Elder Loop")])
    routes("routes_null", None)
    routes("routes_nothing", [])
    routes("routes_nan", [ONE_WAY[0], (NAN, NORTH + 7300), ONE_WAY[2]])
    routes("routes_infinite", [ONE_WAY[0], (INF, NORTH + 7300)])
    routes("routes_one_vertex", ONE_WAY[:1])
    routes("routes_zero", [ONE_WAY[0], ONE_WAY[0]])
    routes("routes_far_out", [ONE_WAY[0], (1e30, 1e30)])
    routes("routes_swapped", [(48.8, -155.2), (48.9, -155.3)], code=4326)
    routes("routes_beyond_pole", [(-55.2, 148.8), (-55.3, 148.9)], code=4326)
    routes("routes_elsewhere", [(10.0, 46.0), (10.01, 46.01)], code=4326)
    routes("routes_pole", [(0.0, 90.0), (10.0, 89.99)], code=4326)
    routes("routes_mixed", ONE_WAY, None, [ONE_WAY[0]], [ONE_WAY[0], (NAN, 0.0)], OTHER_WAY)
    layer(folder, "routes_nameless", "line", ROUTE, [(ONE_WAY, None), (OTHER_WAY, "")])
    order = {"route": str, "number": int, "written": str}

    def points(name, *rows):
        layer(folder, name, "point", order, [([place], *row) for place, row in zip(ONE_WAY, rows)])

    points("points_twice", ("Elder Loop", 1, "1"), ("Elder Loop", 2, "2"), ("Elder Loop", 2, "3"))
    points("points_words", ("Elder Loop", 1, "first"), ("Elder Loop", 2, "second"), ("Elder Loop", 3, "third"))
    points("points_unnumbered", ("Elder Loop", 1, "1"), ("Elder Loop", None, None), ("Elder Loop", 3, "3"))
    points("points_routeless", ("Elder Loop", 1, "1"), (None, 2, "2"), ("Elder Loop", 3, "3"))
    layer(folder, "points_lone", "point", order, [([ONE_WAY[0]], "Elder Loop", 1, "1")])
    layer(folder, "polygons", "polygon", {"route": str, "name": str, "class": str, "kind": str, "pair": str},
          [(box(1000, 7000, 1900, 8000), "Elder Loop", "Club Wood", "young growth", "fence", "a")])


def bad_places(folder):
    place = near((1200, 7200))
    many = {"name": str, "class": str, "kind": str, "pair": str, "route": str}
    layer(folder, "places_no_crs", "point", many, [(place, "Well", "open", "fence", "a", "Garden")], None)
    layer(folder, "areas_no_crs", "polygon", many,
          [(box(1000, 7000, 1900, 8000), "Well", "young growth", "fence", "a", "Garden")], None)
    layer(folder, "lines_no_crs", "line", many, [(ONE_WAY, "Well", "open", "fence", "a", "Garden")], None)
    layer(folder, "places_empty", "point", many, [])
    layer(folder, "areas_empty", "polygon", many, [])
    layer(folder, "lines_empty", "line", many, [])
    layer(folder, "places_unnamed", "point", {"label": str}, [(place, "Well")])
    layer(folder, "places_nameless", "point", NAMED, [(place, None), (place, "")])
    layer(folder, "places_null", "point", many, [(None, "Well", "open", "fence", "a", "Garden")])
    layer(folder, "places_far_out", "point", many, [([(200.0, 95.0)], "Well", "open", "fence", "a", "Garden")], 4326)
    layer(folder, "places_infinite", "point", many, [([(INF, -INF)], "Well", "open", "fence", "a", "Garden")])
    layer(folder, "places_mixed", "point", many, [(place, "Well", "open", "fence", "a", "Garden"),
                                                  (None, "Gate", "open", "fence", "b", "Garden"),
                                                  ([(INF, 0.0)], "Stile", "open", "fence", "c", "Garden")])
    layer(folder, "places_height", "point", many, [(place, "Well", "open", "fence", "a", "Garden")])
    layer(folder, "places_named_fields", "point", {"decl": float, "zone": str}, [(place, 1.0, "north")])
    layer(folder, "starts_twice", "point", {"name": str, "pair": str},
          [(near((1200, 7100)), "Hollow Camp", "a"), (near((1300, 7100)), "Split Rock", "a")])
    layer(folder, "starts_three", "point", {"name": str, "pair": str},
          [(near((1200 + 50 * i, 7100)), "Camp %d" % i, "abz"[i]) for i in range(3)])
    layer(folder, "starts_unpaired", "point", {"name": str, "pair": str},
          [(near((1200, 7100)), "Hollow Camp", None), (near((1300, 7100)), "Split Rock", "a")])
    layer(folder, "starts_in_lake", "point", {"name": str, "pair": str}, [(near((1230, 7190)), "Raft", "a")])
    layer(folder, "ends_far", "point", {"name": str, "pair": str}, [(near((500000, 7190)), "Gate", "a")])
    layer(folder, "lone_end", "point", {"name": str, "pair": str}, [(near((1250, 7350)), "Well", "a")])
    layer(folder, "destinations_beside", "point", NAMED, [(near((1300, 7800)), "a")])
    layer(folder, "lines_no_length", "line", NAMED, [([ONE_WAY[0], ONE_WAY[0]], "Tinker Trail")])
    layer(folder, "bow_tie", "polygon", {"name": str, "class": str},
          [(near((1200, 7140), (1260, 7240), (1200, 7240), (1260, 7140), (1200, 7140)), "Frog Pond", "young growth")])
    layer(folder, "areas_null", "polygon", many, [(None, "Well", "young growth", "fence", "a", "Garden")])
    layer(folder, "areas_nan", "polygon", many,
          [([(NAN, NAN)] * 4, "Well", "young growth", "fence", "a", "Garden")])
    layer(folder, "areas_far_out", "polygon", many,
          [(near((1000, 7000)) + [(1e30, 0.0), (0.0, 1e30)], "Well", "young growth", "fence", "a", "Garden")])
    layer(folder, "lines_far_out", "line", many,
          [(near((1000, 7450)) + [(1e30, 1e30)], "Tinker Trail", "young growth", "fence", "a", "Garden")])
    layer(folder, "lines_far_out_22", "line", many,
          [([(190000.0, 5400000.0), (1e30, 1e30)], "Tinker Trail", "young growth", "fence", "a", "Garden")], 32622)
    layer(folder, "area_tiny", "polygon", NAMED, [(box(1200, 7200, 1203, 7203), "Sandpit")])
    layer(folder, "area_vast", "polygon", NAMED, [([(-60.0, 40.0), (-50.0, 40.0), (-50.0, 50.0), (-60.0, 40.0)], "Land")],
          4326)
    layer(folder, "cover_unknown", "polygon", {"class": str}, [(box(1000, 7000, 1900, 8000), "triffid")])
    layer(folder, "cover_mixed", "polygon", {"class": str}, [(box(1000, 7000, 1500, 8000), "young growth"),
                                                             (box(1500, 7000, 1900, 8000), "triffid")])
    layer(folder, "cover_classless", "polygon", {"kind": str}, [(box(1000, 7000, 1900, 8000), "young growth")])
    layer(folder, "cover_degrees", "polygon", {"class": str},
          [([(-55.3, 48.7), (-55.1, 48.7), (-55.1, 48.9), (-55.3, 48.7)], "young growth")], 4326)
    layer(folder, "stands_bad", "polygon", {"stems": float, "diameter": float, "under": float},
          [(box(1000, 7000, 1400, 7400), -900.0, 0.2, 0.01)])
    layer(folder, "stands_words", "polygon", {"stems": str, "diameter": str, "under": str},
          [(box(1000, 7000, 1400, 7400), "many", "thin", "some")])
    layer(folder, "iron_unknown", "line", {"kind": str}, [(near((1500, 7000), (1510, 8000)), "meteorite")])
    time = {"name": str, "n": int, "time": str}
    layer(folder, "track_points_untimed", "point", time, [([p], "First walk", None, None) for p in ONE_WAY])
    layer(folder, "track_points_bad_times", "point", time, [([p], "First walk", None, "noon") for p in ONE_WAY])
    layer(folder, "tracks_elsewhere", "line", {"name": str, "route": str, "walker": str},
          [(near((9100, 9100), (9400, 9300)), "First walk", "Fern Loop", "Wenna")])
    layer(folder, "tracks_afar", "line", NAMED, [(near((9100, 9100), (9400, 9300)), "First walk")])
    layer(folder, "tracks_one_vertex", "line", NAMED, [(ONE_WAY[:1], "First walk")])


def bad_rasters(folder):
    flat = [[100.0] * 60 for _ in range(60)]
    raster(folder, "dem_no_crs", flat, code=None)
    raster(folder, "dem_turned", flat, turn=30)
    raster(folder, "dem_no_data", [[-9999.0] * 60 for _ in range(60)], no_data=-9999.0)
    raster(folder, "dem_nan", [[math.nan] * 60 for _ in range(60)])
    raster(folder, "dem_infinite", [[math.inf] * 60 for _ in range(60)])
    raster(folder, "dem_one_cell", [[100.0]], cell=2000)
    raster(folder, "dem_elsewhere", flat, corner=(EAST + 90000, NORTH + 90000))
    raster(folder, "codes_unknown", [[77] * 60 for _ in range(60)], dtype=gdal.GDT_Byte)
    raster(folder, "codes_no_crs", [[10] * 60 for _ in range(60)], code=None, dtype=gdal.GDT_Byte)
    raster(folder, "sights_negative", [[-50.0] * 60 for _ in range(60)])
    with open(os.path.join(folder, "dem.tif"), "rb") as file:
        whole = file.read()
    with open(os.path.join(folder, "dem_cut.tif"), "wb") as file:
        file.write(whole[:len(whole) // 3])
    with open(os.path.join(folder, "dem_rubbish.tif"), "wb") as file:
        file.write(whole[:8] + bytes(range(256)) * 8)


def bad_files(folder):
    text(folder, "words.gpkg", "This is a letter to the club, not a GeoPackage.\n")
    text(folder, "words.tif", "This is a letter to the club, not a picture.\n")
    text(folder, "nothing.gpkg", "")
    with open(os.path.join(folder, "routes.gpkg"), "rb") as file:
        whole = file.read()
    with open(os.path.join(folder, "cut.gpkg"), "wb") as file:
        file.write(whole[:len(whole) // 2])
    text(folder, "rubbish.gpx", "<?xml version='1.0'?><gpx version='1.1'><trk><trkseg><trkpt lat='north' lon='west'>")
    text(folder, "no_points.gpx", "<?xml version='1.0'?><gpx version='1.1' creator='nobody' "
                                  "xmlns='http://www.topografix.com/GPX/1/1'></gpx>\n")
    text(folder, "broken.geojson", '{"type":"FeatureCollection","features":[{"type":"Feature","geometry":{"type":"LineStr')
    os.mkdir(os.path.join(folder, "folder.gpkg"))
    os.mkdir(os.path.join(folder, "folder"))


def bad_tables(folder):
    def table(name, head, *rows):
        text(folder, name + ".csv", "\n".join((head,) + rows) + "\n")

    walkers = "walker,paces_100m,pace_kind,pace_err,brg_err,eye_m,speed_f"
    for name, row in (("negative", "Wenna,-130,0,5,3,1.6,1"), ("zero", "Wenna,0,0,5,3,1.6,1"),
                      ("huge", "Wenna,1e9,0,5,3,1.6,1"), ("words", "Wenna,plenty,0,5,3,1.6,1"),
                      ("nan", "Wenna,nan,0,5,3,1.6,1"), ("infinite", "Wenna,inf,0,5,3,1.6,1"),
                      ("comma", "Wenna,\"130,5\",0,5,3,1.6,1"), ("kind", "Wenna,130,7,5,3,1.6,1"),
                      ("half_kind", "Wenna,130,0.5,5,3,1.6,1"), ("two_ways", "Wenna,100,1,5,3,1.6,1"),
                      ("error", "Wenna,130,0,-5,3,1.6,1"), ("bearing", "Wenna,130,0,5,99,1.6,1"),
                      ("eye", "Wenna,130,0,5,3,160,1"), ("speed", "Wenna,130,0,5,3,1.6,0"),
                      ("nameless", ",130,0,5,3,1.6,1")):
        table("walkers_" + name, walkers, row)
    table("walkers_twice", walkers, "Wenna,130,0,5,3,1.6,1", "Wenna,150,0,5,3,1.6,1")
    table("walkers_empty", walkers)
    table("walkers_no_walker", "person,paces_100m", "Wenna,130")
    classes = "class,sight_m,speed_f,pace_f"
    table("classes_twice", classes, "young growth,40,1,1", "young growth,30,1,1")
    table("classes_negative", classes, "young growth,-40,1,1")
    table("classes_words", classes, "young growth,far,1,1")
    table("classes_no_sight", classes, "young growth,,1,1")
    table("classes_speed", classes, "young growth,40,-1,1")
    table("classes_empty", classes)
    table("classes_no_column", "class,distance", "young growth,40")
    table("distances_negative", "kind,distance_m", "fence,-3")
    table("distances_words", "kind,distance_m", "fence,a few")
    table("distances_twice", "kind,distance_m", "fence,3", "fence,5")
    table("distances_empty", "kind,distance_m")
    table("distances_no_column", "kind,feet", "fence,3")

    head = "route,n,bearing,paces,metres,who"
    good_row = "Garden,1,042,40,31,Wenna"
    for name, row in (("negative", "Garden,2,-10,32,25,Wenna"), ("over", "Garden,2,400,32,25,Wenna"),
                      ("words", "Garden,2,thataway,32,25,Wenna"), ("empty", "Garden,2,,32,25,Wenna"),
                      ("quarter", "Garden,2,N 120 E,32,25,Wenna"), ("minutes", "Garden,2,42°75',32,25,Wenna"),
                      ("comma", "Garden,2,\"1,042\",32,25,Wenna"), ("nan", "Garden,2,nan,32,25,Wenna"),
                      ("point", "Garden,2,140,1.250 paces,25,Wenna"),
                      ("no_paces", "Garden,2,140,,25,Wenna"), ("pace_words", "Garden,2,140,few,25,Wenna"),
                      ("pace_negative", "Garden,2,140,-32,25,Wenna"), ("pace_zero", "Garden,2,140,0,0,Wenna"),
                      ("pace_huge", "Garden,2,140,9999999,9999999,Wenna"), ("twice", "Garden,1,140,32,25,Wenna"),
                      ("unordered", "Garden,second,140,32,25,Wenna"), ("routeless", ",2,140,32,25,Wenna"),
                      ("stranger", "Garden,2,140,32,25,Nobody"), ("slip", "Garden,2,140,400,400,Wenna")):
        table("rows_" + name, head, good_row, row)
    table("rows_none", head)
    table("rows_blank", head, good_row, "Garden,2,140,32,25,Wenna", ",,,,,")

    head = "walker,metres,count,slope"
    enough = ("Wenna,100,130,0", "Wenna,100,133,0", "Wenna,100,128,0")
    for name, row in (("nameless", ",100,130,0"), ("negative", "Wenna,-100,130,0"), ("zero", "Wenna,0,130,0"),
                      ("words", "Wenna,far,130,0"), ("count_words", "Wenna,100,many,0"), ("slope", "Wenna,100,130,95"),
                      ("slope_empty", "Wenna,100,130,"), ("comma", "Wenna,\"1,000\",130,0")):
        table("tries_" + name, head, row, *enough)
    table("tries_feet", head, "Wenna,1000,130,0", "Wenna,1000,133,0", "Wenna,1000,128,0")
    table("tries_apart", head, "Wenna,100,130,0", "Wenna,100,260,0")
    table("tries_all_bad", head, "Wenna,0,130,0", ",100,130,0")
    table("tries_none", head)


def changed(folder, source, name, statements, select="*"):
    """A copy of a layer, changed by SQL."""
    made = os.path.join(folder, name + ".gpkg")
    gdal.VectorTranslate(made, os.path.join(folder, source + ".gpkg"), layerName=name,
                         SQLStatement="select %s from %s" % (select, source))
    file = gdal.OpenEx(made, gdal.OF_VECTOR | gdal.OF_UPDATE)
    for statement in statements:
        file.ExecuteSQL(statement)


def bad_legs(folder):
    gdal.VectorTranslate(os.path.join(folder, "legs_no_crs.shp"), os.path.join(folder, "legs.gpkg"))
    os.remove(os.path.join(folder, "legs_no_crs.prj"))
    changed(folder, "legs", "legs_empty", ["delete from legs_empty"])
    changed(folder, "legs", "legs_no_paces", ["update legs_no_paces set paces = null, dist_m = null"])
    changed(folder, "legs", "legs_one_without", ["update legs_one_without set paces = null, dist_m = null where fid = 1"])
    changed(folder, "legs", "legs_no_number", ["update legs_no_number set leg = null"])
    changed(folder, "legs", "legs_negative_number", ["update legs_negative_number set leg = -leg"])
    changed(folder, "legs", "legs_no_lines", ["update legs_no_lines set geom = null"])
    changed(folder, "legs", "legs_no_dial", ["alter table legs_no_dial drop column dial_text"])
    changed(folder, "legs", "legs_mixed_up", ["update legs_mixed_up set route = 'Elder Loop', leg = 1"])
    changed(folder, "legs", "legs_far_out", [])
    file = ogr.Open(os.path.join(folder, "legs_far_out.gpkg"), 1)
    for feature in list(file.GetLayer(0)):
        feature.SetGeometry(shape("line", [(1e30, 1e30), (2e30, 1e30)]))
        file.GetLayer(0).SetFeature(feature)
    file = None
    changed(folder, "marks", "marks_of_others", ["update marks_of_others set route = 'Fern Loop'"])
    changed(folder, "marks", "marks_no_places", ["update marks_no_places set geom = null"])
    changed(folder, "marks", "marks_no_leg", ["alter table marks_no_leg drop column leg"])


def main():
    gdal.UseExceptions()
    ogr.UseExceptions()
    gdal.SetConfigOption("OGR_CURRENT_DATE", "2026-01-01T00:00:00Z")
    folder = sys.argv[1]
    if sys.argv[2:] == ["legs"]:
        bad_legs(folder)
        return
    for make in (good, bad_routes, bad_places, bad_rasters, bad_files, bad_tables):
        make(folder)


if __name__ == "__main__":
    main()
