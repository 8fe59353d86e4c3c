# SPDX-License-Identifier: GPL-2.0-or-later
"""Run inside the desktop (--code): finds the algorithm in the toolbox, runs it from its dialog, looks at the result.

Goes step by step on a timer, so that the desktop lives between the steps. Writes what was found to the file
BRUSHLINE_RESULT, its last line "passed" or "FAILED: ...", and ends the desktop.
"""
import os
import traceback

from qgis.core import QgsApplication, QgsProject, QgsVectorLayer
from qgis.PyQt.QtCore import QModelIndex, QTimer, Qt
from qgis.PyQt.QtWidgets import QApplication, QDockWidget
from qgis.utils import iface, plugins

ID = "brushline:annotatelegs"
PASS = os.environ["BRUSHLINE_PASS"]
SAMPLE = os.environ["BRUSHLINE_SAMPLE"]
GEOPACKAGE = os.path.join(SAMPLE, "sample.gpkg")
LEGS = 17       # the sample's three routes, one walker

found = []      # lines for the result


def expect(value, wanted, what):
    if value != wanted:
        raise AssertionError("%s: expected %r, got %r" % (what, wanted, value))
    found.append("%s: %s" % (what, value))


def shot(widget, name):
    path = os.path.join(os.environ["BRUSHLINE_SHOTS"], "%s-%s.png" % (PASS, name))
    if not widget.grab().save(path):
        raise AssertionError("cannot write " + path)


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


def toolbox():
    dock = iface.mainWindow().findChild(QDockWidget, "ProcessingToolbox")
    if dock is None:
        raise AssertionError("there is no toolbox")
    dock.show()
    dock.raise_()
    dock.searchBox.setText("Brushline")
    toolbox.dock = dock


def leaves(model, parent=QModelIndex()):
    for row in range(model.rowCount(parent)):
        index = model.index(row, 0, parent)
        if model.rowCount(index):
            yield from leaves(model, index)
        else:
            yield index


def pick():
    """The search for the plugin's name leaves its algorithms alone; choose ours as a click would."""
    tree = toolbox.dock.algorithmTree
    shown = [index for index in leaves(tree.model())]
    names = [tree.model().data(index, Qt.DisplayRole) for index in shown]
    expect("Annotate legs" in names, True, "shown by the search for Brushline: " + ", ".join(names))
    index = shown[names.index("Annotate legs")]
    tree.expandAll()
    tree.setCurrentIndex(index)
    expect(tree.selectedAlgorithm().id(), ID, "chosen")
    shot(iface.mainWindow(), "toolbox")
    QTimer.singleShot(0, toolbox.dock.executeAlgorithm)     # returns when the dialog is closed


def dialog():
    """The dialog the toolbox opened, filled in."""
    for widget in QApplication.topLevelWidgets():
        if widget.__class__.__name__ == "AlgorithmDialog" and widget.isVisible():
            dialog.window = widget
            break
    else:
        raise AssertionError("no dialog was opened")
    window = dialog.window
    expect(window.algorithm().id(), ID, "dialog of")
    window.setParameters({"INPUT": "routes", "ROUTE_FIELD": "route", "POINTS": "points",
                          "DEM": os.path.join(SAMPLE, "terrain.tif"), "DATE": "2026-06-20"})
    window.resize(1000, 860)


def run():
    shot(dialog.window, "dialog")
    dialog.window.runButton().click()


def result():
    """None while the algorithm runs."""
    layers = [each for each in QgsProject.instance().mapLayers().values() if each.name() == "Legs"]
    if not layers:
        return None
    layer = layers[0]
    expect(layer.featureCount(), LEGS, "legs")
    first = next(layer.getFeatures())
    expect([first["route"], first["leg"], first["from_name"]], ["Camp to stand", 1, "Camp"], "first leg")
    expect(layer.renderer().type(), "RuleRenderer", "renderer")
    rules = [rule.filterExpression() for rule in layer.renderer().rootRule().children()]
    expect(rules, ["\"direction\" = 'out'", "\"direction\" = 'back'"], "rules of the style")
    expect(layer.labelsEnabled(), True, "labels")
    expect("dial_text" in layer.labeling().settings().fieldName, True, "the label has the dial")
    for other in QgsProject.instance().mapLayers().values():
        if other.name() == "routes":
            QgsProject.instance().layerTreeRoot().findLayer(other).setItemVisibilityChecked(False)
    shot(dialog.window, "dialog-run")
    dialog.window.close()
    iface.mapCanvas().setExtent(first.geometry().boundingBox().buffered(150))
    iface.mapCanvas().refresh()
    return layer


def picture():
    if iface.mapCanvas().isDrawing():
        return None
    shot(iface.mainWindow(), "map")
    return True


def disabled():
    """Taking the loader away leaves the provider to the native plugin."""
    if PASS != "both":
        return True
    from qgis.utils import unloadPlugin
    expect(unloadPlugin("brushline"), True, "loader disabled")
    providers = [each.id() for each in QgsApplication.processingRegistry().providers()]
    expect(providers.count("brushline"), 1, "providers without the loader")
    return True


def finish(verdict):
    with open(os.environ["BRUSHLINE_RESULT"], "w", encoding="utf-8") as file:
        file.write("\n".join(found + [verdict]) + "\n")
    for widget in QApplication.topLevelWidgets():
        if widget.__class__.__name__ == "AlgorithmDialog":
            widget.close()
    QTimer.singleShot(500, leave)


def leave():
    QgsProject.instance().clear()
    QgsProject.instance().setDirty(False)
    iface.actionExit().trigger()


# A step that returns None where True is listed is asked again until it has something.
steps = [(registry, False), (project, False), (toolbox, False), (pick, False), (dialog, False), (run, False),
         (result, True), (picture, True), (disabled, True)]


def go_on():
    try:
        step, waits = steps[0]
        value = step()
        if not waits or value is not None:
            steps.pop(0)
    except BaseException:    # the desktop must end, whatever went wrong
        traceback.print_exc()
        finish("FAILED: " + traceback.format_exc().strip().splitlines()[-1])
        return
    if steps:
        QTimer.singleShot(500, go_on)
    else:
        finish("passed")


QTimer.singleShot(2000, go_on)
