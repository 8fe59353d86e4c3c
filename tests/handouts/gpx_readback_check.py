# SPDX-License-Identifier: GPL-2.0-or-later
"""gpx_readback_check.py LEGS MARKS GPX ONE: what gpxpy and GDAL read in a file against the layers it was made from.

ONE is true when the file has one route for all walkers. Every number must be the layer's own, every place within half a
unit of its ninth decimal.
"""
import math
import sys

import gpxpy
from osgeo import gdal, ogr, osr

gdal.UseExceptions()
ogr.UseExceptions()
SPACE = "{urn:brushline:legs:1}"
NUMBERS = ("true_brg grid_brg mag_brg converg decl decl_err dial back_dial dist_m slope_m climb_m drop_m").split()
WALKERS_NUMBERS = "paces walk_min sight_m spacing_m marks drift_m along_m".split()
TEXTS = "from_name to_name dial_text compass_pt cover".split()


def rows_of(path):
    """The rows of a layer, each a dictionary, with the places of the geometry's first and last point."""
    data = ogr.Open(path)
    layer = data.GetLayer(0)
    places = osr.SpatialReference()
    places.ImportFromEPSG(4326)
    places.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    system = layer.GetSpatialRef().Clone()
    system.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    transform = osr.CoordinateTransformation(system, places)
    rows = []
    for feature in layer:
        row = feature.items()
        points = feature.GetGeometryRef().GetPoints()
        row["start"] = transform.TransformPoint(*points[0][:2])[:2]
        row["end"] = transform.TransformPoint(*points[-1][:2])[:2]
        rows.append(row)
    return rows


def check(condition, *what):
    if not condition:
        sys.exit("FAILED: " + " ".join(str(part) for part in what))


def same_place(point, place):
    return abs(point.longitude - place[0]) < 0.6e-9 and abs(point.latitude - place[1]) < 0.6e-9


def own(item):
    """Our own elements among the extensions, by name."""
    found = {}
    for element in item.extensions:
        check(element.tag.startswith(SPACE), "an element of another namespace:", element.tag)
        name = element.tag[len(SPACE):]
        check(name not in found, "twice:", name)
        found[name] = element.text
    return found


def walkers_of(elements):
    """The names of the walkers, each with the ending of the elements that are theirs."""
    if "walker" in elements:
        return {elements["walker"]: ""}
    numbered = {value: name[len("walker"):] for name, value in elements.items() if name.startswith("walker_")}
    check(numbered, "no walker in", elements)
    return numbered


def check_numbers(elements, suffix, row, names):
    for name in names:
        written, expected = elements.get(name + suffix), row[name]
        check((written is None) == (expected is None), name, written, expected)
        check(written is None or float(written) == expected, name, written, expected)


def check_routes(gpx, legs, one):
    sheets = {}
    for row in legs:
        sheets.setdefault((row["route"], row["direction"], row["walker"]), {})[row["leg"]] = row
    courses = {key[:2] for key in sheets}
    check(len(gpx.routes) == (len(courses) if one else len(sheets)), len(gpx.routes), "routes")
    seen = set()
    for number, route in enumerate(gpx.routes, 1):
        check(route.number == number, "number", route.number)
        about = own(route)
        walkers = walkers_of(about)
        for walker in walkers:
            seen.add((about["route"], about["direction"], walker))
        first = sheets[about["route"], about["direction"], next(iter(walkers))]
        check(len(route.points) == len(first) + 1, len(route.points), "points")
        for point in route.points[:-1]:
            elements = own(point)
            leg = int(elements["leg"])
            check(same_place(point, first[leg]["start"]), "start of leg", leg)
            check(abs(math.remainder(point.magnetic_variation - first[leg]["decl"], 360)) < 1e-6, "magvar")
            check(0 <= point.magnetic_variation < 360, "magvar", point.magnetic_variation)
            check(point.elevation is None, "a height out of nowhere")
            check_numbers(elements, "", first[leg], NUMBERS)
            for name in TEXTS:
                check(elements.get(name) == first[leg][name], name)
            check(point.comment.startswith(first[leg]["dial_text"] + " "), point.comment)
            for walker, suffix in walkers.items():
                row = sheets[about["route"], about["direction"], walker][leg]
                check_numbers(elements, suffix, row, WALKERS_NUMBERS)
                check(elements.get("warnings" + suffix) == row["warnings"], "warnings of leg", leg)
                said = f"{walker} {row['paces']} p" if len(walkers) > 1 else f"{row['paces']} p"
                check(said in point.comment, said, "is not in", point.comment)
                check(f"{row['paces']} paces" in point.description, point.description)
            check((" !" in point.comment) == ("CAUTION" in point.description), point.comment)
        end = route.points[-1]
        check(same_place(end, first[max(first)]["end"]), "end of", route.name)
        check(end.comment == "End", end.comment)
    check(seen == set(sheets), "routes that lack:", set(sheets) - seen)


def check_marks(gpx, legs, marks):
    lengths = {tuple(row[name] for name in ("route", "direction", "walker", "leg")): row["dist_m"] for row in legs}
    expected = {}
    for row in marks:
        key = tuple(row[name] for name in ("route", "direction", "walker", "leg"))
        if row["at_m"] < lengths[key] - 0.05:
            expected[key + (row["mark"],)] = row
    for point in gpx.waypoints:
        elements = own(point)
        for walker, suffix in walkers_of(elements).items():
            key = (elements["route"], elements["direction"], walker, int(elements["leg"]), int(elements["mark"]))
            check(key in expected, "a mark too many:", key)
            row = expected.pop(key)
            check(same_place(point, row["start"]), "place of", key)
            check_numbers(elements, suffix, row, ["paces", "sight_m"])
            check_numbers(elements, "", row, ["at_m", "offset_m"])
            check(f"{walker} {row['paces']} p" in point.comment, point.comment)
    check(not expected, "marks that lack:", list(expected)[:3])
    check(len(gpx.waypoints) > 100, "only", len(gpx.waypoints), "waypoints")


def check_gdal(path, gpx):
    problems = []
    gdal.PushErrorHandler(lambda kind, number, message: problems.append(message))
    data = ogr.Open(path)
    for name, items in (("routes", gpx.routes), ("route_points", [p for r in gpx.routes for p in r.points]),
                        ("waypoints", gpx.waypoints)):
        layer = data.GetLayerByName(name)
        check(layer.GetFeatureCount() == len(items), "GDAL counts", layer.GetFeatureCount(), name)
        for feature, item in zip(layer, items):
            check(feature["name"] == item.name and feature["desc"] == item.description, "GDAL reads", feature["name"])
            for element, value in own(item).items():
                check(str(feature["leg_" + element]) == value or float(feature["leg_" + element]) == float(value),
                      "GDAL reads", element, feature["leg_" + element], "for", value)
    gdal.PopErrorHandler()
    check(not problems, "GDAL says:", problems[:3])


def main():
    legs_path, marks_path, gpx_path, one = sys.argv[1:]
    legs, marks = rows_of(legs_path), rows_of(marks_path)
    check(len(legs) > 50 and len(marks) > 200, "too little to read:", len(legs), len(marks))
    with open(gpx_path, encoding="utf-8") as file:
        gpx = gpxpy.parse(file, version="1.1")
    check(gpx.version == "1.1" and gpx.creator.startswith("Brushline"), gpx.version, gpx.creator)
    check(gpx.time is not None and gpx.time.utcoffset().total_seconds() == 0, "time", gpx.time)
    check_routes(gpx, legs, one == "true")
    check_marks(gpx, legs, marks)
    places = [p for r in gpx.routes for p in r.points] + gpx.waypoints
    box = gpx.bounds
    latitudes, longitudes = [p.latitude for p in places], [p.longitude for p in places]
    check((box.min_latitude, box.max_latitude) == (min(latitudes), max(latitudes)), "bounds")
    check((box.min_longitude, box.max_longitude) == (min(longitudes), max(longitudes)), "bounds")
    check_gdal(gpx_path, gpx)
    print(f"{len(gpx.routes)} routes, {sum(len(r.points) for r in gpx.routes)} points, {len(gpx.waypoints)} waypoints")


main()
