# SPDX-License-Identifier: GPL-2.0-or-later
"""A script of the host in its short form, of the kind users keep in their profile."""
from qgis import processing
from qgis.processing import alg


@alg(name="waysdecorated", label="Legs by a decorated script", group="ways", group_label="Ways")
@alg.input(type=alg.SOURCE, name="INPUT", label="Routes")
@alg.input(type=alg.STRING, name="REST", label="The other parameters, as JSON")
@alg.input(type=alg.SINK, name="OUTPUT", label="Legs")
@alg.output(type=alg.NUMBER, name="LEG_COUNT", label="Legs")
def ways_decorated(instance, parameters, context, feedback, inputs):
    """Passes its parameters on to Brushline."""
    import json
    rest = json.loads(instance.parameterAsString(parameters, "REST", context))
    made = processing.run("brushline:annotatelegs",
                          {"INPUT": parameters["INPUT"], "OUTPUT": parameters["OUTPUT"], **rest},
                          context=context, feedback=feedback, is_child_algorithm=True)
    return {"LEG_COUNT": made["LEG_COUNT"], "OUTPUT": made["OUTPUT"]}
