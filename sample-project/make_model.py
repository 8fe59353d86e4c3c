#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""Make event.model3, the Processing model that makes a whole event's handouts in one go.

Needs PyQGIS 3.22 or newer, and in QGIS_PLUGINPATH the folder that holds the plugin: build/prefix/share/qgis/python/plugins
after sample-project/run.sh has built it, which sets that for itself only. A plugin installed under /usr is found without.
"""
import argparse
import os
import sys

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["QT_HASH_SEED"] = "0"           # the same order of keys each time

from qgis.PyQt.QtCore import QPointF  # noqa: E402
from qgis.core import (                    # noqa: E402
    QgsApplication, QgsProcessing, QgsProcessingModelAlgorithm, QgsProcessingModelChildAlgorithm,
    QgsProcessingModelChildParameterSource as Source, QgsProcessingModelOutput, QgsProcessingModelParameter,
    QgsProcessingParameterDateTime, QgsProcessingParameterDefinition, QgsProcessingParameterEnum,
    QgsProcessingParameterFeatureSource, QgsProcessingParameterField, QgsProcessingParameterMultipleLayers,
    QgsProcessingParameterRasterLayer, QgsProcessingParameterString)

HELP = """Works out the legs of all routes for all walkers, and makes from them everything that is handed out: \
a card and a table for each route and walker with an index, and one file of routes for GPS receivers. \
Walk a course yourself before children do, and read the cautions on the cards."""


def inputs():
    """The model's own inputs, with the key of annotatelegs that each one feeds, or None."""
    date = QgsProcessingParameterDateTime("DATE", "Day of the walk", QgsProcessingParameterDateTime.Date, optional=True)
    layers = QgsProcessingParameterMultipleLayers("LAYERS", "Layers for the cards' maps", QgsProcessing.TypeMapLayer,
                                                  optional=True)
    paper = QgsProcessingParameterEnum("PAPER", "Paper of the cards", ["A6", "A5", "A4", "Letter"], False, 1)
    return [
        (QgsProcessingParameterFeatureSource("ROUTES", "Routes (lines)", [QgsProcessing.TypeVectorLine]), "INPUT"),
        (QgsProcessingParameterField("ROUTE_FIELD", "Field with the route's name", None, "ROUTES"), "ROUTE_FIELD"),
        (QgsProcessingParameterFeatureSource("POINTS", "Named points", [QgsProcessing.TypeVectorPoint],
                                             optional=True), "POINTS"),
        (QgsProcessingParameterFeatureSource("WALKERS", "Walkers (table)", [QgsProcessing.TypeVector],
                                             optional=True), "WALKERS"),
        (QgsProcessingParameterRasterLayer("DEM", "Terrain model", optional=True), "DEM"),
        (QgsProcessingParameterFeatureSource("COVER", "Cover (polygons)", [QgsProcessing.TypeVectorPolygon],
                                             optional=True), "COVER"),
        (QgsProcessingParameterField("COVER_CLASS", "Field with the cover's class", None, "COVER", optional=True),
         "COVER_CLASS"),
        (date, "DATE"),
        (QgsProcessingParameterString("TITLE", "Title of the event", optional=True), None),
        (layers, None),
        (paper, None),
    ]


def add_inputs(model, parameters):
    """Put the model's own inputs above its steps, six to a row."""
    for k, parameter in enumerate(parameters):
        component = QgsProcessingModelParameter(parameter.name())
        component.setDescription(parameter.description())
        component.setPosition(QPointF(100 + 210 * (k % 6), 60 + 90 * (k // 6)))
        model.addModelParameter(parameter, component)


def child(model, name, algorithm, description, at, sources, outputs=()):
    """Add a step; a source is one or a list of them, outputs are (key, name) that become the model's own.

    Parameters that must have a value get their default, as the designer does it; without them it calls the model
    invalid.
    """
    step = QgsProcessingModelChildAlgorithm(algorithm)
    if not step.algorithm():
        sys.exit("%s is not there: is the Brushline plugin enabled?" % algorithm)
    unknown = [key for key in sources if not step.algorithm().parameterDefinition(key)]
    if unknown:
        sys.exit("%s has no %s." % (algorithm, ", ".join(unknown)))
    for parameter in step.algorithm().parameterDefinitions():
        optional = parameter.flags() & QgsProcessingParameterDefinition.FlagOptional
        if not (optional or parameter.isDestination() or parameter.name() in sources):
            step.addParameterSources(parameter.name(), [Source.fromStaticValue(parameter.defaultValue())])
    step.setChildId(name)
    step.setDescription(description)
    step.setPosition(QPointF(*at))
    for key, source in sources.items():
        step.addParameterSources(key, source if isinstance(source, list) else [source])
    own = {}
    for k, (key, title) in enumerate(outputs):
        output = QgsProcessingModelOutput(title, title)
        output.setChildId(name)
        output.setChildOutputName(key)
        output.setPosition(QPointF(at[0] + 220, at[1] + 60 * k))
        own[title] = output
    step.setModelOutputs(own)
    model.addChildAlgorithm(step)


def make():
    model = QgsProcessingModelAlgorithm("Handouts for an event", "Brushline")
    add_inputs(model, [parameter for parameter, _ in inputs()])
    legs = {key: Source.fromModelParameter(parameter.name()) for parameter, key in inputs() if key}
    child(model, "legs", "brushline:annotatelegs", "Work out the legs", (400, 300), legs,
          [("OUTPUT", "Legs"), ("MARKS", "Marks")])
    annotated = Source.fromChildOutput("legs", "OUTPUT")
    marks = Source.fromChildOutput("legs", "MARKS")
    title = Source.fromModelParameter("TITLE")
    child(model, "tables", "brushline:legtables", "Tables and index", (200, 480),
          {"INPUT": annotated, "TITLE": title}, [("FOLDER", "Tables")])
    child(model, "cards", "brushline:legcards", "Cards", (600, 480),
          {"INPUT": annotated, "MARKS": marks, "TITLE": title, "LAYERS": Source.fromModelParameter("LAYERS"),
           "PAPER": Source.fromModelParameter("PAPER"), "DEM": Source.fromModelParameter("DEM")},
          [("FOLDER", "Cards")])
    child(model, "gpx", "brushline:exportgpx", "Routes for GPS receivers", (1000, 480),
          {"INPUT": annotated, "MARKS": marks, "TITLE": title}, [("OUTPUT", "GPX")])
    model.setHelpContent({"ALG_DESC": HELP, "ALG_CREATOR": "Brushline", "ALG_VERSION": "1"})
    return model


def start():
    """The host with Processing and Brushline; keep what it returns."""
    app = QgsApplication([], False)
    app.initQgis()
    sys.path.append("/usr/share/qgis/python/plugins")
    sys.path.extend(filter(None, os.environ.get("QGIS_PLUGINPATH", "").split(os.pathsep)))
    from processing.core.Processing import Processing
    Processing.initialize()
    import brushline
    plugin = brushline.classFactory(None)
    plugin.initProcessing()
    return app, plugin


def save(model, out):
    model.updateDestinationParameters()
    fits, faults = model.validate()
    if not fits:
        sys.exit("The model does not hold: " + "; ".join(faults))
    if not model.toFile(out):
        sys.exit("%s could not be written." % out)
    with open(out, encoding="utf-8") as file:
        text = file.read()
    with open(out, "w", encoding="utf-8") as file:
        file.write("<!-- SPDX-License-Identifier: GPL-2.0-or-later -->\n" + text)
    print(out)


def main():
    ap = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    here = os.path.dirname(os.path.abspath(__file__))
    ap.add_argument("-o", "--out", default=os.path.join(here, "event.model3"))
    out = ap.parse_args().out
    app, _plugin = start()
    save(make(), out)
    app.exitQgis()


if __name__ == "__main__":
    main()
