# SPDX-License-Identifier: GPL-2.0-or-later
"""ways_program.py FOLDER: a PyQGIS program of its own that runs an algorithm of Brushline by processing.run."""
import os
import sys

from qgis.core import QgsApplication

import ways_input

app = QgsApplication([], False)
app.initQgis()
sys.path.append(os.path.join(QgsApplication.pkgDataPath(), "python", "plugins"))
sys.path.extend(os.environ["QGIS_PLUGINPATH"].split(os.pathsep))
from processing.core.Processing import Processing   # noqa: E402
import processing                                   # noqa: E402
Processing.initialize()
import brushline                                    # noqa: E402
plugin = brushline.classFactory(None)
plugin.initProcessing()
made = processing.run(ways_input.ID, {**ways_input.inputs(), **ways_input.outputs(sys.argv[1])})
print("LEG_COUNT", made["LEG_COUNT"])
app.exitQgis()
