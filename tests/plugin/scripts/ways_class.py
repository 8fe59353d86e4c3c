# SPDX-License-Identifier: GPL-2.0-or-later
"""A script of the host in its long form."""
import json

from qgis import processing
from qgis.core import (QgsProcessing, QgsProcessingAlgorithm, QgsProcessingOutputNumber,
                       QgsProcessingParameterFeatureSink, QgsProcessingParameterFeatureSource,
                       QgsProcessingParameterString)


class WaysClass(QgsProcessingAlgorithm):
    def name(self):
        return "waysclass"

    def displayName(self):
        return "Legs by a script with a class"

    def createInstance(self):
        return WaysClass()

    def initAlgorithm(self, _configuration=None):
        self.addParameter(QgsProcessingParameterFeatureSource("INPUT", "Routes", [QgsProcessing.TypeVectorLine]))
        self.addParameter(QgsProcessingParameterString("REST", "The other parameters, as JSON"))
        self.addParameter(QgsProcessingParameterFeatureSink("OUTPUT", "Legs"))
        self.addOutput(QgsProcessingOutputNumber("LEG_COUNT", "Legs"))

    def processAlgorithm(self, parameters, context, feedback):
        rest = json.loads(self.parameterAsString(parameters, "REST", context))
        made = processing.run("brushline:annotatelegs",
                              {"INPUT": parameters["INPUT"], "OUTPUT": parameters["OUTPUT"], **rest},
                              context=context, feedback=feedback, is_child_algorithm=True)
        return {"LEG_COUNT": made["LEG_COUNT"], "OUTPUT": made["OUTPUT"]}
