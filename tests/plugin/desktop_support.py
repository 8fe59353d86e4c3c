# SPDX-License-Identifier: GPL-2.0-or-later
"""For the checks that run inside the desktop (--code): steps on a timer, the toolbox, and the verdict.

A check is a generator. Wherever it yields the desktop lives on for a while, and so do dialogs that wait to be closed.
What was found goes to the file BRUSHLINE_RESULT, its last line "passed" or "FAILED: ...", and the desktop ends.
"""
import os
import time
import traceback

from qgis.core import QgsProject
from qgis.PyQt.QtCore import QModelIndex, QTimer, Qt
from qgis.PyQt.QtWidgets import QApplication, QDialog, QDockWidget, QMainWindow, QMessageBox, QTextEdit
from qgis.utils import iface

PASS = os.environ["BRUSHLINE_PASS"]
SAMPLE = os.environ["BRUSHLINE_SAMPLE"]
PAUSE = 250         # ms between two steps

found = []          # lines for the result


def expect(value, wanted, what):
    if value != wanted:
        raise AssertionError("%s: expected %r, got %r" % (what, wanted, value))
    told("%s: %s" % (what, value))


def told(text):
    """In the desktop's own output too: it is all there is when the desktop dies."""
    print(text, flush=True)
    found.append(text)


def shot(widget, name):
    path = os.path.join(os.environ["BRUSHLINE_SHOTS"], "%s-%s.png" % (PASS, name))
    if not widget.grab().save(path):
        raise AssertionError("cannot write " + path)


def until(what, condition, seconds=60):
    """Wait for a true value of the condition; its value. What dialogs and boxes say goes with a failure."""
    end = time.monotonic() + seconds
    while True:
        value = condition()
        if value:
            return value
        if time.monotonic() > end:
            raise AssertionError("%s: not within %d s. %s" % (what, seconds, said()))
        yield


def said():
    """What message boxes, dialogs and their logs say."""
    texts = []
    for widget in QApplication.topLevelWidgets():
        if isinstance(widget, QMessageBox) and widget.isVisible():
            texts.append(widget.text() + " " + widget.detailedText())
        elif isinstance(widget, QDialog) and widget.isVisible():
            logs = [each.toPlainText()[-2000:] for each in widget.findChildren(QTextEdit)]
            texts.append(widget.windowTitle() + ": " + " ".join(logs))
    return " | ".join(texts)


def window(*names):
    """The visible window of one of these classes, or None; a subclass written in Python has a name of its own, and one
    that Python did not make may come as a mere dialog."""
    for widget in QApplication.topLevelWidgets():
        if widget.isVisible() and {widget.__class__.__name__, widget.metaObject().className()} & set(names):
            return widget
    return None


def later(function, *arguments):
    """Call what returns only when its dialog is closed."""
    QTimer.singleShot(0, lambda: function(*arguments))


def leaves(model, parent=QModelIndex()):
    for row in range(model.rowCount(parent)):
        index = model.index(row, 0, parent)
        if model.rowCount(index):
            yield from leaves(model, index)
        else:
            yield index


def toolbox(search):
    dock = iface.mainWindow().findChild(QDockWidget, "ProcessingToolbox")
    if dock is None:
        raise AssertionError("there is no toolbox")
    dock.show()
    dock.raise_()
    dock.searchBox.setText(search)
    return dock


def pick(dock, name):
    """Choose the algorithm as a click would, among those that the search left."""
    tree = dock.algorithmTree
    shown = list(leaves(tree.model()))
    names = [tree.model().data(index, Qt.DisplayRole) for index in shown]
    if name not in names:
        raise AssertionError("the search shows no %s, only %s" % (name, ", ".join(names)))
    tree.expandAll()
    tree.setCurrentIndex(shown[names.index(name)])
    return tree.selectedAlgorithm().id()


def finish(verdict):
    with open(os.environ["BRUSHLINE_RESULT"], "w", encoding="utf-8") as file:
        file.write("\n".join(found + [verdict]) + "\n")
    for widget in QApplication.topLevelWidgets():
        if widget.isVisible() and (isinstance(widget, QDialog) or window("ModelerDialog") is widget):
            if isinstance(widget, QMainWindow):
                widget.setDirty(False)
            widget.close()
    QTimer.singleShot(500, leave)


def leave():
    QgsProject.instance().clear()
    QgsProject.instance().setDirty(False)
    iface.actionExit().trigger()


def start(check):
    """Run the check once the desktop stands."""
    steps = check()

    def go_on():
        try:
            next(steps)
        except StopIteration:
            finish("passed")
        except BaseException:    # the desktop must end, whatever went wrong
            traceback.print_exc()
            finish("FAILED: " + traceback.format_exc().strip().splitlines()[-1])
        else:
            QTimer.singleShot(PAUSE, go_on)

    QTimer.singleShot(2000, go_on)
