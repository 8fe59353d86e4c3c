# SPDX-License-Identifier: GPL-2.0-or-later
"""Run inside the desktop (--code): goes every way the desktop has into Brushline with the input of ways_input.py.

Each leaves its legs, marks and drift in a folder of its own in BRUSHLINE_WAYS; ways_test.sh compares them. The
scripts of the folder scripts/ have to be in the profile.
"""
import os
import sys

from qgis import processing
from qgis.core import (     # noqa: F401, the history's commands use some of them
    QgsApplication, QgsCoordinateReferenceSystem, QgsExpressionContextUtils, QgsFeatureRequest,
    QgsProcessingFeatureSourceDefinition, QgsProcessingOutputLayerDefinition, QgsProject, QgsProperty, QgsRasterLayer,
    QgsVectorLayer)
from qgis.gui import QgsGui
from qgis.PyQt.QtCore import QDate, QDateTime, QTime, Qt   # noqa: F401
from qgis.PyQt.QtGui import QColor                         # noqa: F401
from qgis.PyQt.QtWidgets import QAction, QTextEdit, QTreeView
from qgis.utils import iface

sys.path.insert(0, os.environ["BRUSHLINE_TESTS"])
import ways_input   # noqa: E402
from desktop_support import expect, later, pick, shot, start, toolbox, until, window    # noqa: E402

FOLDER = os.environ["BRUSHLINE_WAYS"]
MODEL = os.environ["BRUSHLINE_MODEL"]
LAYERS = ("routes", "points", "walkers", "cover")


def project():
    """The sample's layers are open; QgsProject owns them."""
    for name in LAYERS:
        layer = QgsVectorLayer(ways_input.layer(name), name, "ogr")
        expect(layer.isValid(), True, "layer " + name)
        QgsProject.instance().addMapLayer(layer)
    QgsProject.instance().addMapLayer(QgsRasterLayer(ways_input.TERRAIN, "terrain"))
    iface.mainWindow().resize(1420, 900)


def opened(name):
    return QgsProject.instance().mapLayersByName(name)[0]


def chosen(value=lambda layer: layer.id()):
    """The input, with the layers chosen from the project."""
    return {**ways_input.inputs(), "INPUT": value(opened("routes")), "POINTS": value(opened("points")),
            "WALKERS": value(opened("walkers")), "COVER": value(opened("cover")), "DEM": value(opened("terrain"))}


def made(folder):
    return ways_input.outputs(os.path.join(FOLDER, folder))


def close_results():
    """What was loaded goes, so that nobody holds the files."""
    own = LAYERS + ("terrain",)
    QgsProject.instance().removeMapLayers(
        [key for key, layer in QgsProject.instance().mapLayers().items() if layer.name() not in own])


def run(dialog, seconds=60, look=None):
    """Run what the dialog holds, look at what was loaded, and close it."""
    dialog.runButton().click()
    yield from until("running " + dialog.windowTitle(), dialog.wasExecuted, seconds)
    if look:
        look()
    dialog.close()
    close_results()
    yield


def by_dialog(dock):
    expect(pick(dock, "Annotate legs"), ways_input.ID, "chosen in the toolbox")
    later(dock.executeAlgorithm)
    dialog = yield from until("the dialog", lambda: window("AlgorithmDialog"))
    dialog.setParameters({**chosen(), **made("dialog")})
    yield from run(dialog, look=whose_labels)
    os.rename(os.path.join(FOLDER, "dialog"), os.path.join(FOLDER, "reference"))


def whose_labels():
    scope = QgsExpressionContextUtils.layerScope(opened("Legs"))
    expect(scope.variable("brushline_walker"), "Ressa (leader)", "whose labels the legs wear")


def by_history():
    """The entry the dialog left runs again as it stands; it writes where the dialog wrote."""
    later(iface.mainWindow().findChild(QAction, "historyAction").trigger)
    history = yield from until("the history", lambda: window("HistoryDialog", "QgsProcessingHistoryDialog"))
    made("dialog")
    tree = history.findChild(QTreeView)
    tree.expandAll()
    entry = yield from until("an entry", lambda: find(tree.model(), "Annotate legs"))
    tree.setCurrentIndex(entry)
    shot(history, "history")
    later(tree.doubleClicked.emit, entry)
    dialog = yield from until("the entry's dialog", lambda: window("AlgorithmDialog"))
    yield from run(dialog)
    history.close()
    os.rename(os.path.join(FOLDER, "dialog"), os.path.join(FOLDER, "history"))


def find(model, text, parent=None):
    for row in range(model.rowCount(*[parent] if parent else [])):
        index = model.index(row, 0, *[parent] if parent else [])
        if text in model.data(index, Qt.DisplayRole):
            return index
        below = find(model, text, index)
        if below:
            return below
    return None


def by_pasted_history():
    """The entry's command, as it is pasted to the Python console."""
    made("dialog")
    if hasattr(QgsGui, "historyProviderRegistry"):
        entries = [each.entry for each in QgsGui.historyProviderRegistry().queryEntries(providerId="processing")]
        command = [each["python_command"] for each in entries if each["algorithm_id"] == ways_input.ID][-1]
    else:
        from processing.core.ProcessingLog import ProcessingLog     # before QGIS 3.24: a file
        command = ProcessingLog.getLogEntries()[-1].text
    expect(command.startswith('processing.run("brushline:annotatelegs"'), True, "the history holds a command")
    exec(command)
    os.rename(os.path.join(FOLDER, "dialog"), os.path.join(FOLDER, "history-pasted"))


def by_console():
    processing.run(ways_input.ID, {**chosen(lambda layer: layer), **made("console")})


def by_script(name):
    """A script's dialog; the script runs beside the desktop, in a thread of its own."""
    later(processing.execAlgorithmDialog, "script:" + name, ways_input.for_script(os.path.join(FOLDER, name)))
    dialog = yield from until("the dialog of " + name, lambda: window("AlgorithmDialog"))
    yield from run(dialog)


def by_batch(dock):
    """Two rows: the first filled in, the second filled down from it."""
    pick(dock, "Annotate legs")
    later(dock.executeAlgorithmAsBatchProcess)
    dialog = yield from until("the batch panel", lambda: window("BatchAlgorithmDialog"))
    panel = dialog.mainWidget()
    table = panel.tblParameters
    dialog.resize(1400, 500)
    panel.btnAdvanced.setChecked(True)
    panel.btnAdd.click()
    for key, value in chosen().items():
        fill = table.cellWidget(0, panel.parameter_to_column[key])
        fill.setRowValue(0, value, panel.processing_context)
        fill.fillDown()
    for row in (0, 1):
        for key, value in made("batch-%d" % (row + 1)).items():
            table.cellWidget(row + 1, panel.parameter_to_column[key]).setValue(value)
    yield
    shot(dialog, "batch")
    dialog.runButton().click()
    yield from until("the batch", lambda: any("Batch execution completed" in each.toPlainText()
                                              for each in dialog.findChildren(QTextEdit)))
    shot(dialog, "batch-run")
    dialog.close()
    close_results()
    yield


def same_sources(some, others):
    """Newer hosts do not see that two coordinate systems in them are the same."""
    return some == others or (len(some) == len(others) and all(
        a.source() == b.source() and a.staticValue() == b.staticValue() and
        (a.expression(), a.parameterName(), a.outputChildId()) == (b.expression(), b.parameterName(), b.outputChildId())
        for a, b in zip(some, others)))


def by_designer():
    """The model file of the oldest host in the designer: every step's dialog, saving, and running."""
    from processing.modeler.ModelerDialog import ModelerDialog
    from processing.modeler.ModelerParametersDialog import ModelerParametersDialog
    designer = ModelerDialog.create()
    designer.show()
    designer.resize(1420, 900)
    designer.loadModel(MODEL)
    yield
    model = designer.model()
    expect(model.validate()[0], True, "the model holds")
    view = designer.view()
    view.fitInView(view.scene().itemsBoundingRect(), Qt.KeepAspectRatio)
    yield
    shot(designer, "designer")
    ours = {each.id() for each in QgsApplication.processingRegistry().providerById("brushline").algorithms()}
    steps = model.childAlgorithms()
    expect(sorted(ours - {each.algorithmId() for each in steps.values()}), [],
           "algorithms without a step in the model (see ways_model.py)")
    for name, step in steps.items():
        dialog = ModelerParametersDialog(step.algorithm(), model, name, step.configuration())
        again = dialog.createAlgorithm()
        for key, sources in step.parameterSources().items():
            given = again.parameterSources().get(key, []) if again else []
            if not same_sources(given, sources):
                raise AssertionError("the dialog of the step %s does not give back its %s, but %s" % (
                    name, key, [each.staticValue() for each in given]))
        dialog.close()
    expect(len(steps), len(ways_input.steps(MODEL)), "steps whose dialogs give back what the model holds")
    saved = os.path.join(FOLDER, "saved.model3")
    model.setSourceFilePath(saved)
    expect(designer.saveModel(False), True, "saved by this host")
    later(designer.actionRun().trigger)
    dialog = yield from until("the model's dialog", lambda: window("AlgorithmDialog"))
    dialog.setParameters({**ways_input.model_inputs(),
                          **ways_input.model_outputs(MODEL, os.path.join(FOLDER, "designer"))})
    yield from run(dialog, 120)
    designer.setDirty(False)
    designer.close()
    yield


def check():
    project()
    yield
    dock = toolbox("Brushline")
    yield
    yield from by_dialog(dock)
    yield from by_history()
    by_pasted_history()
    by_console()
    yield
    yield from by_script("waysdecorated")
    yield from by_script("waysclass")
    yield from by_batch(dock)
    yield from by_designer()


start(check)
