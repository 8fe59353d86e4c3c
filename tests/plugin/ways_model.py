#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""Make data/all_algorithms.model3: every algorithm of the provider as a step, most of them fed by others.

A new algorithm gets a step in steps(); ways_test.sh fails until the model has it. Run it on QGIS 3.22 only, with
QGIS_PLUGINPATH as in sample-project/run.sh: the file is there to show that newer hosts read what the oldest wrote.
"""
import os
import sys

tests = os.path.dirname(os.path.abspath(__file__))
sys.path.insert(0, os.path.join(tests, "..", "..", "sample-project"))

import make_model                               # noqa: E402
from qgis.core import (                         # noqa: E402
    Qgis, QgsApplication, QgsCoordinateReferenceSystem, QgsProcessing, QgsProcessingModelAlgorithm,
    QgsProcessingModelChildParameterSource as Source, QgsProcessingParameterFeatureSource)


def given(name):
    return Source.fromModelParameter(name)


def made(step, key="OUTPUT"):
    return Source.fromChildOutput(step, key)


def fixed(value):
    return Source.fromStaticValue(value)


def steps():
    """Name of the step (its algorithm's, without a provider ours), and what it gets."""
    walked = {"INPUT": given("ROUTES"), "ROUTE_FIELD": given("ROUTE_FIELD")}
    terrain = {"DEM": given("DEM")}
    cover = {"COVER": given("COVER"), "COVER_CLASS": given("COVER_CLASS")}
    date = {"DATE": given("DATE")}
    walkers = {"WALKERS": given("WALKERS")}
    names = {"POINTS": given("POINTS")}
    legs = {"INPUT": made("annotatelegs")}
    chosen = [
        ("camp", "native:extractbyexpression", {"INPUT": given("POINTS"), "EXPRESSION": fixed("\"name\" = 'Camp'")}),
        ("stand", "native:extractbyexpression",
         {"INPUT": given("POINTS"), "EXPRESSION": fixed("\"name\" = 'Hunting Stand'")}),
        ("water", "native:extractbyexpression",
         {"INPUT": given("COVER"), "EXPRESSION": fixed("\"class\" = 'water'")}),
        ("loop", "native:extractbyexpression",
         {"INPUT": made("annotatelegs"),
          "EXPRESSION": fixed("\"route\" = 'Practice loop' and \"direction\" = 'out'")}),
        ("onewalker", "native:extractbyexpression",
         {"INPUT": made("loop"), "EXPRESSION": fixed("\"walker\" = 'Ressa (leader)'")}),
        ("tracks", "native:densifygeometriesgivenaninterval", {"INPUT": given("ROUTES"), "INTERVAL": fixed(5.0)}),
    ]
    ours = [
        # The same as ways_test.sh gives everywhere else: half of it from the model's inputs, half kept in the model.
        ("annotatelegs", {**walked, **names, **walkers, **terrain, **cover, **date, "DIRECTION": fixed(2),
                          "GRID_CRS": fixed(QgsCoordinateReferenceSystem("EPSG:32622")), "DIAL_STEP": fixed(2.5),
                          "NAMED_FOUND": fixed(False)}),
        ("checkhazards", {**legs, **terrain, **date, "DISTURBANCES": given("POWER_LINE"),
                          "HAZARDS": [given("CLIFFS"), given("STREAMS")]}),
        ("choosemarks", {**walked, **walkers, **terrain, **date, "CANDIDATES": given("POINTS"),
                         "SIGHT_RASTER": made("sightsurface")}),
        ("detourlegs", {**walked, **walkers, **date, "OBSTACLES": made("water"), "CLEARANCE": fixed(15.0)}),
        ("featuresmet", {**legs, **terrain, "FEATURES": [given("STREAMS"), given("TRAILS"), made("water")]}),
        ("fieldatpoints", {**date, "INPUT": made("choosemarks")}),
        ("northlines", {**date, "EXTENT": made("annotatelegs"), "SPACING": fixed(250.0)}),
        ("sightsurface", {**cover, "EXTENT": given("ROUTES"), "CELL": fixed(20.0)}),
        ("throughcover", {**terrain, **cover, **names, "STARTS": made("camp"), "ENDS": made("stand"),
                          "SIGHT_RASTER": made("sightsurface")}),
        ("aimoff", {**terrain, **cover, **date, **walkers, "STARTS": made("stand"), "LINES": given("TRAILS")}),
        ("practicecourse", {**terrain, **cover, **date, "AREA": given("COVER"), "STARTS": made("camp"),
                            "COURSES": fixed(2), "LEGS": fixed(4)}),
        ("plotlegs", {**date, "INPUT": made("onewalker"), "ROUTE_FIELD": fixed("route"), "ORDER_FIELD": fixed("leg"),
                      "BEARING_FIELD": fixed("true_brg"), "DISTANCE_FIELD": fixed("dist_m"), "NORTH": fixed(1),
                      "START": fixed("632320,5407060 [EPSG:32621]")}),
        ("calibratepaces", {"INPUT": made("loop"), "WALKER_FIELD": fixed("walker"), "DISTANCE_FIELD": fixed("dist_m"),
                            "COUNT_FIELD": fixed("paces")}),
        ("comparetrack", {**legs, "TRACKS": made("tracks")}),
        ("legtables", {**legs, "MARKS": made("annotatelegs", "MARKS"), "TITLE": given("TITLE")}),
        ("legcards", {**legs, **terrain, "MARKS": made("annotatelegs", "MARKS"), "FEATURES": made("featuresmet"),
                      "LAYERS": given("LAYERS"), "PAPER": given("PAPER"), "TITLE": given("TITLE")}),
        ("exportgpx", {**legs, "MARKS": made("annotatelegs", "MARKS"), "TITLE": given("TITLE")}),
    ]
    return chosen + [(name, "brushline:" + name, sources) for name, sources in ours]


def make():
    model = QgsProcessingModelAlgorithm("All algorithms", "Brushline")
    inputs = [parameter for parameter, _ in make_model.inputs()]
    inputs += [QgsProcessingParameterFeatureSource(name, label, [QgsProcessing.TypeVectorLine]) for name, label in
               (("STREAMS", "Streams"), ("TRAILS", "Trails"), ("CLIFFS", "Cliffs"), ("POWER_LINE", "Power line"))]
    make_model.add_inputs(model, inputs)
    for k, (name, algorithm, sources) in enumerate(steps()):
        definition = QgsApplication.processingRegistry().algorithmById(algorithm)
        if definition is None:
            sys.exit("%s is not there." % algorithm)
        outputs = []
        if algorithm.startswith("brushline:"):
            outputs = [(each.name(), each.name()) for each in definition.destinationParameterDefinitions()]
        make_model.child(model, name, algorithm, definition.displayName(), (150 + 480 * (k % 4), 360 + 300 * (k // 4)),
                         sources, outputs)
    return model


def main():
    if Qgis.QGIS_VERSION_INT >= 32300:
        sys.exit("Make the model on QGIS 3.22; this is %s." % Qgis.QGIS_VERSION)
    app, _plugin = make_model.start()
    make_model.save(make(), os.path.join(tests, "data", "all_algorithms.model3"))
    app.exitQgis()


if __name__ == "__main__":
    main()
