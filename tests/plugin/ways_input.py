# SPDX-License-Identifier: GPL-2.0-or-later
"""What every way into Brushline is given in ways_test.sh, and where each puts what comes out.

Prints the parameters, or what else qgis_process needs, when it is run:
  ways_input.py keys FOLDER              KEY=VALUE lines
  ways_input.py json FOLDER              an object for standard input
  ways_input.py script-keys FOLDER       KEY=VALUE lines for a script of the folder scripts/
  ways_input.py model-keys MODEL FOLDER  KEY=VALUE lines for a model with all algorithms
"""
import json
import os
import sys
import xml.etree.ElementTree as xml

ID = "brushline:annotatelegs"
SAMPLE = os.environ["BRUSHLINE_SAMPLE"]
TERRAIN = os.path.join(SAMPLE, "terrain.tif")


def layer(name):
    return os.path.join(SAMPLE, "sample.gpkg") + "|layername=" + name


def inputs():
    """A source, a raster, a field, a date, a choice, a grid, a number and a yes or no; none of them the default."""
    return {"INPUT": layer("routes"), "ROUTE_FIELD": "route", "POINTS": layer("points"), "WALKERS": layer("walkers"),
            "DEM": TERRAIN, "COVER": layer("cover"), "COVER_CLASS": "class", "DATE": "2026-06-20", "DIRECTION": 2,
            "GRID_CRS": "EPSG:32622", "DIAL_STEP": 2.5, "NAMED_FOUND": False}


def outputs(folder):
    os.makedirs(folder, exist_ok=True)
    return {key: os.path.join(folder, name + ".gpkg")
            for key, name in (("OUTPUT", "legs"), ("MARKS", "marks"), ("DRIFT", "drift"))}


def for_script(folder):
    """A script asks for routes and legs, and takes the rest as one text."""
    rest = {**inputs(), **outputs(folder)}
    return {"INPUT": rest.pop("INPUT"), "OUTPUT": rest.pop("OUTPUT"), "REST": json.dumps(rest)}


def model_inputs():
    """The model asks for these; the other values of inputs() are kept in it."""
    own = {key: value for key, value in inputs().items()
           if key not in ("INPUT", "DIRECTION", "GRID_CRS", "DIAL_STEP", "NAMED_FOUND")}
    return {**own, "ROUTES": layer("routes"), "STREAMS": layer("streams"), "TRAILS": layer("trails"),
            "CLIFFS": layer("cliffs"), "POWER_LINE": layer("power_line"), "LAYERS": [layer("trails")],
            "TITLE": "All ways"}


def steps(path):
    """The steps of a model file of ours: name, algorithm, keys of what it writes."""
    def members(option):
        return {each.get("name"): each for each in option}

    found = []
    for child in members(xml.parse(path).getroot())["children"]:
        parts = members(child)
        found.append((child.get("name"), parts["alg_id"].get("value"), sorted(members(parts["outputs"]))))
    return found


def model_outputs(path, folder):
    """Every output of every step of ours, in a file or folder called after the step and its key."""
    os.makedirs(folder, exist_ok=True)
    endings = {"FOLDER": "", "EFFORT": ".tif", "sightsurface:OUTPUT": ".tif", "exportgpx:OUTPUT": ".gpx"}
    made = {}
    for step, _, keys in steps(path):
        for key in keys:
            name = step + ":" + key
            ending = endings.get(name, endings.get(key, ".gpkg"))
            made[name] = os.path.join(folder, "%s-%s%s" % (step, key.lower(), ending))
    return made


def key_lines(parameters):
    for key, value in parameters.items():
        for each in value if isinstance(value, list) else [value]:
            print("%s=%s" % (key, each if isinstance(each, str) else json.dumps(each)))


if __name__ == "__main__":
    what, *rest = sys.argv[1:]
    if what == "keys":
        key_lines({**inputs(), **outputs(rest[0])})
    elif what == "json":
        print(json.dumps({"inputs": {**inputs(), **outputs(rest[0])}}))
    elif what == "script-keys":
        key_lines(for_script(rest[0]))
    elif what == "model-keys":
        key_lines({**model_inputs(), **model_outputs(*rest)})
    else:
        sys.exit(__doc__)
