# SPDX-License-Identifier: GPL-2.0-or-later
"""Makes the native library of Brushline usable where the host loads Python plugins only.

qgis_process and scripts never load C++ plugins; this loader registers the same library's provider there. In the
desktop both may be enabled: the library counts its registrations.
"""
import ctypes
import os

from qgis.core import Qgis, QgsApplication, QgsMessageLog

ABI = 1
LIBRARY = "libbrushline.so"


def _log(message):
    QgsMessageLog.logMessage(message, "Brushline", Qgis.MessageLevel.Critical)


def library_path():
    """The library laid beside this loader by the same installation, else the one among the host's plugins."""
    prefix = os.path.abspath(os.path.join(os.path.dirname(__file__), *[os.pardir] * 5))
    for folder in (os.path.join(prefix, "lib", "qgis", "plugins"), QgsApplication.pluginPath()):
        path = os.path.join(folder, LIBRARY)
        if os.path.isfile(path):
            return path
    return os.path.join(QgsApplication.pluginPath(), LIBRARY)


class Loader:
    """Holds one registration of the provider."""

    def __init__(self):
        self.library = None
        self.registered = False

    def initProcessing(self):
        if self.registered:
            return
        path = library_path()
        try:
            # Not PyDLL: the library works for long without needing Python. Not RTLD_GLOBAL: it exports generic names.
            library = ctypes.CDLL(path)
            for function, result in (("brushline_abi", ctypes.c_int), ("brushline_register", ctypes.c_int),
                                     ("brushline_unregister", None), ("brushline_built_for", ctypes.c_char_p)):
                getattr(library, function).restype = result
                getattr(library, function).argtypes = []
        except (OSError, AttributeError) as error:
            _log(f"Brushline cannot be loaded in QGIS {Qgis.QGIS_VERSION}: {error}. The library {path} was probably "
                 "built for another version of QGIS: install the package made for this one, or build it again.")
            return
        if library.brushline_abi() != ABI:
            _log(f"Brushline: {path} and its loader are of different versions. Install them again together.")
            return
        failure = library.brushline_register()
        if failure:
            _log(f"Brushline: QGIS did not take the provider (reason {failure}).")
            return
        self.library = library
        self.registered = True

    def initGui(self):
        self.initProcessing()

    def unload(self):
        if self.registered:
            self.library.brushline_unregister()
            self.registered = False


def classFactory(_iface):
    return Loader()
