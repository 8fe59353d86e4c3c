# SPDX-License-Identifier: GPL-2.0-or-later
"""Run inside the desktop (--code): finds the algorithm in the toolbox, runs it from its dialog, looks at the result."""
import os
import sys

from qgis.core import QgsApplication, QgsProject, QgsVectorLayer
from qgis.utils import iface, plugins, unloadPlugin

sys.path.insert(0, os.environ["BRUSHLINE_TESTS"])
from desktop_support import PASS, SAMPLE, expect, later, pick, shot, start, toolbox, until, window  # noqa: E402

ID = "brushline:annotatelegs"
GEOPACKAGE = os.path.join(SAMPLE, "sample.gpkg")
LEGS = 17       # the sample's three routes, one walker


def registry():
    """The provider is there once, whoever registered it."""
    providers = [each.id() for each in QgsApplication.processingRegistry().providers()]
    expect(providers.count("brushline"), 1, "providers called brushline")
    expect("brushline" in plugins, PASS == "both", "loader active")
    algorithm = QgsApplication.processingRegistry().algorithmById(ID)
    expect(algorithm is not None, True, ID)
    expect(algorithm.icon().isNull(), False, "no icon")


def project():
    for name in ("points", "routes"):
        layer = QgsVectorLayer(GEOPACKAGE + "|layername=" + name, name, "ogr")
        expect(layer.isValid(), True, "layer " + name)
        QgsProject.instance().addMapLayer(layer)
    QgsProject.instance().setCrs(layer.crs())
    iface.mainWindow().resize(1420, 900)
    iface.mapCanvas().setExtent(layer.extent().buffered(150))


def result():
    """The legs; None while the algorithm runs."""
    layers = QgsProject.instance().mapLayersByName("Legs")
    return layers[0] if layers else None


def look(layer):
    expect(layer.featureCount(), LEGS, "legs")
    first = next(layer.getFeatures())
    expect([first["route"], first["leg"], first["from_name"]], ["Camp to stand", 1, "Camp"], "first leg")
    expect(layer.renderer().type(), "RuleRenderer", "renderer")
    rules = [rule.filterExpression() for rule in layer.renderer().rootRule().children()]
    expect(rules, ["\"direction\" = 'out'", "\"direction\" = 'back'"], "rules of the style")
    expect(layer.labelsEnabled(), True, "labels")
    expect("dial_text" in layer.labeling().settings().fieldName, True, "the label has the dial")
    for other in QgsProject.instance().mapLayersByName("routes"):
        QgsProject.instance().layerTreeRoot().findLayer(other).setItemVisibilityChecked(False)
    iface.mapCanvas().setExtent(first.geometry().boundingBox().buffered(150))
    iface.mapCanvas().refresh()


def disabled():
    """Taking the loader away leaves the provider to the native plugin."""
    expect(unloadPlugin("brushline"), True, "loader disabled")
    providers = [each.id() for each in QgsApplication.processingRegistry().providers()]
    expect(providers.count("brushline"), 1, "providers without the loader")


def check():
    registry()
    project()
    yield
    dock = toolbox("Brushline")
    yield
    expect(pick(dock, "Annotate legs"), ID, "chosen")
    shot(iface.mainWindow(), "toolbox")
    later(dock.executeAlgorithm)
    dialog = yield from until("the dialog", lambda: window("AlgorithmDialog"))
    expect(dialog.algorithm().id(), ID, "dialog of")
    dialog.setParameters({"INPUT": "routes", "ROUTE_FIELD": "route", "POINTS": "points",
                          "DEM": os.path.join(SAMPLE, "terrain.tif"), "DATE": "2026-06-20"})
    dialog.resize(1000, 860)
    yield
    shot(dialog, "dialog")
    dialog.runButton().click()
    layer = yield from until("the legs", result)
    look(layer)
    shot(dialog, "dialog-run")
    dialog.close()
    yield
    yield from until("the map", lambda: not iface.mapCanvas().isDrawing())
    shot(iface.mainWindow(), "map")
    if PASS == "both":
        disabled()


start(check)
