# SPDX-License-Identifier: GPL-2.0-or-later
"""loader_check.py STEP PREFIX BROKEN SAMPLE: the library's C face and the loader in a PyQGIS program.

Each step is a program of its own, since some of them end the application. Prints "done" when all is well.
"""
import ctypes
import os
import sys

from qgis.core import Qgis, QgsApplication, QgsExpression, QgsProcessingContext, QgsProcessingFeedback

step, prefix, broken, sample = sys.argv[1:5]


def library():
    handle = ctypes.CDLL(os.path.join(prefix, "lib", "qgis", "plugins", "libbrushline.so"))
    handle.brushline_unregister.restype = None
    handle.brushline_built_for.restype = ctypes.c_char_p
    return handle


def loader(where):
    sys.path.insert(0, os.path.join(where, "share", "qgis", "python", "plugins"))
    import brushline
    return brushline.classFactory(None)


def application():
    app = QgsApplication([], False)
    app.initQgis()
    return app


def providers():
    return sum(each.id() == "brushline" for each in QgsApplication.processingRegistry().providers())


def functions():
    names = ("brushline_declination", "brushline_dial", "brushline_compass_point", "brushline_paces")
    return sum(QgsExpression.isFunctionName(name) for name in names)


def expect(value, wanted, what):
    if value != wanted:
        sys.exit("%s: expected %r, got %r" % (what, wanted, value))


def run():
    algorithm = QgsApplication.processingRegistry().algorithmById("brushline:annotatelegs")
    context = QgsProcessingContext()
    result, ok = algorithm.create().run(
        {"INPUT": os.path.join(sample, "sample.gpkg") + "|layername=routes", "DATE": "2026-06-20",
         "OUTPUT": "memory:"}, context, QgsProcessingFeedback())
    expect(ok, True, "run")
    expect(result["LEG_COUNT"], 17, "legs")


def early():
    """There is no application to register with yet; later there is."""
    lib = library()
    expect(lib.brushline_register(), 1, "register before the application")
    lib.brushline_unregister()
    app = application()
    expect(lib.brushline_register(), 0, "register")
    expect(providers(), 1, "providers")
    expect(lib.brushline_abi(), 1, "the face's number")
    version = Qgis.QGIS_VERSION.split("-")[0]
    expect(lib.brushline_built_for().decode(), version, "the host it was built for")
    run()
    app.exitQgis()


def counted():
    """Registered twice it is there once, and goes with the second unregistering."""
    app = application()
    lib = library()
    expect([lib.brushline_register(), lib.brushline_register()], [0, 0], "register twice")
    expect([providers(), functions()], [1, 4], "provider and functions")
    lib.brushline_unregister()
    expect([providers(), functions()], [1, 4], "after the first unregistering")
    run()
    lib.brushline_unregister()
    expect([providers(), functions()], [0, 0], "after the second")
    lib.brushline_unregister()      # one too many
    expect(lib.brushline_register(), 0, "register again")
    expect(providers(), 1, "providers after registering again")
    run()
    expect(QgsExpression("brushline_paces(250, 120)").evaluate(), 300, "an expression")
    lib.brushline_unregister()
    expect([providers(), functions()], [0, 0], "at the end")
    app.exitQgis()


def after_exit():
    """The host has been shut down, the application object is still there."""
    app = application()
    lib = library()
    expect(lib.brushline_register(), 0, "register")
    app.exitQgis()
    lib.brushline_unregister()
    lib.brushline_unregister()


def destroyed():
    """The application object is gone, and the registry with it."""
    from qgis.PyQt import sip
    app = application()
    lib = library()
    expect([lib.brushline_register(), lib.brushline_register()], [0, 0], "register twice")
    app.exitQgis()
    sip.delete(app)
    lib.brushline_unregister()
    lib.brushline_unregister()
    expect(lib.brushline_register(), 1, "register without an application")


def loader_and_library():
    """Loader and library at once, taken away in either order."""
    app = application()
    lib = library()
    bridge = loader(prefix)
    bridge.initProcessing()
    bridge.initGui()        # the desktop calls both
    expect(lib.brushline_register(), 0, "register")
    expect(providers(), 1, "providers")
    bridge.unload()
    expect(providers(), 1, "providers without the loader")
    run()
    bridge.initProcessing()
    lib.brushline_unregister()
    expect(providers(), 1, "providers without the library")
    run()
    expect(functions(), 4, "functions without the library")
    bridge.unload()
    bridge.unload()
    expect([providers(), functions()], [0, 0], "at the end")
    app.exitQgis()


def broken_library():
    """One line in the log that says which version runs and what to do."""
    app = application()
    lines = []
    QgsApplication.messageLog().messageReceived.connect(
        lambda message, tag, level: lines.append(message) if tag == "Brushline" else None)
    bridge = loader(broken)
    bridge.initProcessing()
    bridge.unload()
    expect(providers(), 0, "providers")
    expect(len(lines), 1, "lines in the log")
    for word in (Qgis.QGIS_VERSION, "libbrushline.so", "another version"):
        expect(word in lines[0] and "\n" not in lines[0], True, "“%s” in “%s”" % (word, lines[0]))
    app.exitQgis()


{"early": early, "counted": counted, "after_exit": after_exit, "destroyed": destroyed,
 "loader_and_library": loader_and_library, "broken": broken_library}[step]()
print("done", flush=True)
