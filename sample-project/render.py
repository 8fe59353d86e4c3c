#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""Draw a picture of what each algorithm makes of the sample, in the algorithms' own styles.

Needs an installed Brushline (run.sh lays one into build/prefix), PyQGIS 3.22 or newer, QtWebKit for the table (Debian:
python3-pyqt5.qtwebkit) and pdftoppm for the card (poppler-utils); no screen. Day and seeds are fixed, so that the same
things are drawn each time; only where labels crowd, the host may place a few of them otherwise.
"""
import argparse
import glob
import math
import os
import random
import subprocess
import sys
import tempfile

os.environ["QT_QPA_PLATFORM"] = "offscreen"
os.environ["QT_HASH_SEED"] = "0"           # the same order of layers each time
os.environ["GDAL_PAM_ENABLED"] = "NO"      # no .aux.xml beside the terrain

from osgeo import gdal                      # noqa: E402
from qgis.PyQt.QtCore import QBuffer, QByteArray, QEventLoop, QPointF, QRectF, QSize, Qt, QUrl   # noqa: E402
from qgis.PyQt.QtGui import QColor, QFont, QFontMetricsF, QImage, QPainter, QPen  # noqa: E402
from qgis.core import (                     # noqa: E402
    QgsApplication, QgsCoordinateTransform, QgsExpressionContextUtils, QgsFeature, QgsGeometry,
    QgsLabelingEngineSettings, QgsLineSymbol, QgsMapLayer, QgsMapRendererCustomPainterJob, QgsMapSettings,
    QgsMarkerSymbol, QgsPalLayerSettings, QgsPointXY, QgsProcessingContext, QgsProcessingFeedback, QgsProject,
    QgsRasterLayer, QgsRectangle, QgsSingleSymbolRenderer,
    QgsTextBufferSettings, QgsTextFormat, QgsVectorLayer, QgsVectorLayerSimpleLabeling)

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(HERE)
DAY = "2026-06-20"
WALKER = "Ressa (leader)"
CHILD = "Minka (8)"
TERRAIN = os.path.join(HERE, "terrain.tif")
SEED = 7
SCRATCH = tempfile.TemporaryDirectory()


class Feedback(QgsProcessingFeedback):
    def reportError(self, error, fatalError=False):
        sys.exit(error)


def provider(prefix):
    """Register Brushline through its own loader; the returned object keeps it there."""
    sys.path.insert(0, os.path.join(prefix, "share", "qgis", "python", "plugins"))
    import brushline
    loader = brushline.classFactory(None)
    loader.initProcessing()
    if not loader.registered:
        sys.exit("Brushline is not installed under %s; run sample-project/run.sh first." % prefix)
    return loader


def layer(name, subset=""):
    source = "%s|layername=%s" % (os.path.join(HERE, "sample.gpkg"), name)
    if subset:
        source += "|subset=" + subset
    found = QgsVectorLayer(source, name, "ogr")
    if not found.isValid():
        sys.exit("cannot read %s; run make_sample.py first" % source)
    return found


def run(algorithm, parameters, **styles):
    """Runs one of our algorithms on the sample's day. Layers, and lists of them, may be given as they are.

    styles: for each result that is wanted, by its key, the style it wears ("legs/marks") or None. Returns a dict of
    these results in the order they were asked for, layers in their style.
    """
    project = QgsProject.instance()
    context = QgsProcessingContext()
    context.setProject(project)
    found = QgsApplication.processingRegistry().algorithmById("brushline:" + algorithm)
    given = dict.fromkeys(styles, "memory:")
    if found.parameterDefinition("DATE"):
        given["DATE"] = DAY

    def known(value):
        if isinstance(value, list):
            return [known(each) for each in value]
        if not isinstance(value, QgsMapLayer):
            return value
        project.addMapLayer(value, False)
        return value.id()

    given.update((key, known(value)) for key, value in parameters.items())
    results, ok = found.create().run(given, context, Feedback())
    if not ok:
        sys.exit(algorithm + " did not run")
    made = {}
    for key, style in styles.items():
        made[key] = context.takeResultLayer(results[key]) or results[key]
        if style:
            folder, name = style.split("/")
            message, ok = made[key].loadNamedStyle(os.path.join(ROOT, "algorithms", folder, "styles", name + ".qml"))
            if not ok:
                sys.exit("%s.qml: %s" % (style, message))
        if isinstance(made[key], QgsMapLayer):
            # As the plugin does on loading; every picture is of one walker.
            QgsExpressionContextUtils.setLayerVariable(made[key], "brushline_walker", "")
            project.addMapLayer(made[key], False)
    return made


def ground():
    """The parameters of cover and terrain."""
    return {"COVER": layer("cover"), "COVER_CLASS": "class", "DEM": TERRAIN}


def walker(name):
    return layer("walkers", "walker = '%s'" % name)


def route(name):
    return {"INPUT": layer("routes", "route = '%s'" % name), "ROUTE_FIELD": "route"}


def place(name):
    return layer("points", "name = '%s'" % name)


def annotated(parameters, who=WALKER, **styles):
    """Annotated legs, with all that the sample knows."""
    return run("annotatelegs", {**parameters, "POINTS": layer("points"), "WALKERS": walker(who), **ground()},
               **(styles or {"OUTPUT": "legs/legs"}))


def memory(kind, rows, field="route"):
    """A layer of points, lines or polygons in metres of the sample's grid; rows: (text, geometry)."""
    made = QgsVectorLayer("%s?crs=EPSG:32621&field=%s:string" % (kind, field), field, "memory")
    for text, geometry in rows:
        feature = QgsFeature(made.fields())
        feature.setGeometry(geometry)
        feature.setAttributes([text])
        made.dataProvider().addFeature(feature)
    made.updateExtents()
    return made


def line(*points):
    return QgsGeometry.fromPolylineXY([QgsPointXY(*point) for point in points])


def box_round(layers, left, bottom=None, right=None, top=None):
    """The box of layers with so many metres about it; right and top are left and bottom when not given."""
    box = QgsRectangle()
    for each in layers:
        box.combineExtentWith(each.extent())
    bottom = left if bottom is None else bottom
    right, top = (other if each is None else each for each, other in ((right, left), (top, bottom)))
    return QgsRectangle(box.xMinimum() - left, box.yMinimum() - bottom, box.xMaximum() + right, box.yMaximum() + top)


def extent(box):
    return "%f,%f,%f,%f [EPSG:32621]" % (box.xMinimum(), box.xMaximum(), box.yMinimum(), box.yMaximum())


def plain_line(colour, style, rim="1.5", width="0.8"):
    """A line over a white rim."""
    symbol = QgsLineSymbol.createSimple({"line_color": "white", "line_width": rim})
    upper = QgsLineSymbol.createSimple({"line_color": colour, "line_width": width, "line_style": style})
    symbol.appendSymbolLayer(upper.symbolLayer(0).clone())
    return QgsSingleSymbolRenderer(symbol)


def hide(name):
    """Leaves a layer of the sample out of the picture."""
    for found in QgsProject.instance().mapLayersByName(name):
        QgsProject.instance().layerTreeRoot().findLayer(found).setItemVisibilityChecked(False)


def label(layer, field, size=8, placement=QgsPalLayerSettings.AroundPoint):
    """Labels in black over a white rim, in lines of some forty letters."""
    rim = QgsTextBufferSettings()
    rim.setEnabled(True)
    rim.setSize(0.8)
    text = QgsTextFormat()
    text.setFont(QFont("Sans Serif"))
    text.setSize(size)
    text.setColor(QColor("black"))
    text.setBuffer(rim)
    settings = QgsPalLayerSettings()
    settings.fieldName = field
    settings.isExpression = True
    settings.autoWrapLength = 40
    settings.multilineAlign = QgsPalLayerSettings.MultiLeft
    settings.displayAll = True
    settings.placement = placement
    settings.dist = 1.5
    settings.setFormat(text)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(settings))
    layer.setLabelsEnabled(True)


# What is drawn: each gives the layers, uppermost first, and the map's box.

def legs():
    layers = list(annotated(route("Camp to stand")).values())
    return layers, box_round(layers, 110, 250)


def practice_loop():
    layers = list(annotated(route("Practice loop")).values())
    return layers, box_round(layers, 60)


def marks():
    layers = annotated(route("Camp to stand"), MARKS="legs/marks", OUTPUT="legs/legs", DRIFT="legs/drift")
    return list(layers.values()), box_round([layers["OUTPUT"]], -400, -120, -520, -120)


def chosen_marks():
    """Trees, boulders and stumps by chance along the route, few of them in the thicket."""
    chance = random.Random(SEED)
    path = next(layer("routes", "route = 'Camp to stand'").getFeatures()).geometry()
    thicket = QgsGeometry.unaryUnion([each.geometry() for each in layer("cover", "class = 'thicket'").getFeatures()])
    candidates = []
    at = 0.0
    while at < path.length():
        on, angle = path.interpolate(at).asPoint(), path.interpolateAngle(at)
        point = QgsGeometry.fromPointXY(on.project(chance.uniform(-14, 14), math.degrees(angle) + 90))
        if not thicket.contains(point) or chance.random() < 0.35:
            candidates.append((chance.choice(["birch", "spruce", "pine", "boulder", "stump"]), point))
        at += chance.uniform(4, 22)
    made = run("choosemarks", {**route("Camp to stand"), "CANDIDATES": memory("Point", candidates, "name"),
                               "MARK_NAME": "name", "WALKERS": walker(WALKER), **ground()},
               OUTPUT="sighting/chosen_marks", SIGHTINGS="sighting/sightings", GAPS="sighting/gaps")
    return list(made.values()), QgsRectangle(632650, 5406970, 633130, 5407220)


def plan():
    """The planned route from camp to stand (thick), the straight line (dashed) and the route drawn by eye (dotted)."""
    made = run("throughcover", {"STARTS": place("Camp"), "ENDS": place("Hunting Stand"), "POINTS": layer("points"),
                                "WALKERS": walker(WALKER), **ground()}, OUTPUT=None)["OUTPUT"]
    found = next(made.getFeatures())
    print("planned: %.1f min, %d legs; straight line: %.1f min" % (
        found["minutes"], found["legs"], found["direct_min"]))
    points = found.geometry().asPolyline()
    straight = memory("LineString", [("straight", line(points[0], points[-1]))])
    by_eye = layer("routes", "route = 'Camp to stand'")
    for each, colour, style in (made, "#000000", "solid"), (straight, "#c00000", "dash"), (by_eye, "#0040c0", "dot"):
        each.setRenderer(plain_line(colour, style))
        each.setLabelsEnabled(False)
        QgsProject.instance().addMapLayer(each, False)
    layers = [made, straight, by_eye]
    return layers, box_round(layers, 150, 250, 150, 150)


def aim_off():
    made = run("aimoff", {"STARTS": place("Twin Tamaracks"), "START_NAME": "name", "LINES": layer("trails"),
                          "LINE_NAME": "name", "DESTINATIONS": place("Red Post"), "DEST_NAME": "name",
                          "WALKERS": walker(CHILD), **ground()}, OUTPUT="planning/aimoff")
    layers = list(made.values())
    return layers, box_round(layers, 330, 110, 330, 60)


def detour():
    across = memory("LineString", [("Over the water", line((632320, 5407060), (632283, 5406829), (632345, 5406700)))])
    layers = list(run("detourlegs", {"INPUT": across, "ROUTE_FIELD": "route",
                                     "OBSTACLES": layer("cover", "class = 'water'"), "OBSTACLE_NAME": "class",
                                     "POINTS": layer("points"), "WALKERS": walker(WALKER), "DEM": TERRAIN},
                      OUTPUT="planning/detour").values())
    return layers, box_round(layers, 200, 60, 200, 60)


def features_met():
    way = route("Way out to the trail")
    made = run("featuresmet", {**way, "FEATURES": [layer(name) for name in ("streams", "trails", "points")],
                               "WALKERS": walker(WALKER), **ground()}, OUTPUT="planning/features_met")
    layers = list(made.values()) + list(annotated(way).values())
    return layers, box_round(layers, 420, 60, 420, 60)


def hazards():
    """A leg over a cliff, and legs along and under the power line."""
    over = memory("LineString", [("Round the ledges", line((633485, 5407335), (633560, 5407800), (633905, 5407780),
                                                           (633935, 5407480), (634190, 5407330)))])
    given = {"INPUT": over, "ROUTE_FIELD": "route"}
    made = run("checkhazards", {**given, "DISTURBANCES": layer("power_line"), "KIND_FIELD": "kind",
                                "HAZARDS": [layer("cliffs"), layer("cover", "class = 'water'")], "DEM": TERRAIN},
               OUTPUT="planning/hazards")
    layers = list(made.values()) + list(annotated(given).values())
    return layers, box_round(layers, 160, 60, 160, 60)


def sight():
    """How far one sees, by the classes of its own style."""
    box = box_round([layer("routes", "route = 'Camp to stand'")], 110, 485)
    path = os.path.join(SCRATCH.name, "sight.tif")
    run("sightsurface", {"COVER": layer("cover"), "COVER_CLASS": "class", "CELL": 5,
                         "EXTENT": extent(box.buffered(100)), "OUTPUT": path})
    made = QgsRasterLayer(path, "sight")
    QgsProject.instance().addMapLayer(made, False)
    return [made], box, [(colour.name(), words) for words, colour in made.renderer().legendSymbologyItems()]


def field():
    layers = list(run("fieldatpoints", {"INPUT": layer("points")}, OUTPUT="magnetics/field_at_points").values())
    return layers, QgsRectangle(632120, 5406880, 632800, 5407390)


def north_lines():
    box = layer("cover").extent()
    layers = run("northlines", {"EXTENT": extent(box), "SPACING": 250}, OUTPUT="magnetics/north_lines")
    return list(layers.values()), box


def courses():
    """Three courses from the camp into the woods about it, on dry ground."""
    area = memory("Polygon", [("Camp woods", QgsGeometry.fromRect(QgsRectangle(632120, 5406940, 632720, 5407400)))])
    wet = layer("cover", "class in ('water', 'wet ground')")
    made = run("practicecourse", {"AREA": area, "STARTS": place("Camp"), "START_NAME": "name", "AVOID": [wet],
                                  "COURSES": 3, "LEGS": 5, "LEG_MIN": 80, "LEG_MAX": 220, "SEED": SEED,
                                  "WALKERS": walker(CHILD), **ground()},
               CONTROLS="planning/course_controls", OUTPUT="planning/practice_courses")
    return list(made.values()), box_round(list(made.values()), 60)


def garden():
    """The garden course, plotted from its table, as one of its walkers walks it."""
    given = {key: os.path.join(HERE, "garden_" + name) for key, name in (
        ("INPUT", "legs.csv"), ("WALKERS", "walkers.csv"), ("STARTS", "start.geojson"))}
    given.update(ROUTE_FIELD="route", ORDER_FIELD="order", BEARING_FIELD="bearing", PACES_FIELD="paces",
                 WALKER_FIELD="counted", CLOSE=1)
    made = run("plotlegs", given, OUTPUT="legs/legs")["OUTPUT"]
    others = [row.id() for row in made.getFeatures() if row["walker"] != "Wenna (7)"]
    made.dataProvider().deleteFeatures(others)
    return [made], box_round([made], 12)


def gpx():
    """The exported file, read back and drawn plainly with what a receiver shows at its points."""
    path = os.path.join(SCRATCH.name, "routes.gpx")
    run("exportgpx", {"INPUT": annotated(route("Practice loop"), "Joff (12)")["OUTPUT"], "OUTPUT": path})
    lines, points = (QgsVectorLayer("%s|layername=%s" % (path, name), name, "ogr")
                     for name in ("routes", "route_points"))
    lines.setRenderer(plain_line("#000000", "solid"))
    points.setRenderer(QgsSingleSymbolRenderer(QgsMarkerSymbol.createSimple(
        {"name": "square", "color": "black", "outline_color": "white", "size": "2.6"})))
    label(points, "\"name\" || coalesce('\\n' || \"cmt\", '')")
    hide("Points")
    for each in (lines, points):
        QgsProject.instance().addMapLayer(each, False)
    box = QgsCoordinateTransform(lines.crs(), QgsProject.instance().crs(), QgsProject.instance()).transform(
        lines.extent())
    return [points, lines], box.buffered(60)


def track():
    """The planned legs, the track that a receiver recorded (dotted) and the legs that were cut out of it."""
    planned = annotated(route("Practice loop"), "Joff (12)")["OUTPUT"]
    planned.setLabelsEnabled(False)
    walked = os.path.join(HERE, "walked.gpx")
    recorded = QgsVectorLayer(walked + "|layername=tracks", "recorded", "ogr")
    recorded.setRenderer(plain_line("#303030", "dot", "0.9", "0.4"))
    QgsProject.instance().addMapLayer(recorded, False)
    made = run("comparetrack", {"TRACKS": QgsVectorLayer(walked + "|layername=track_points", "points", "ogr"),
                                "INPUT": planned}, OUTPUT="records/walked_legs", GROUPS=None)
    print(next(made["GROUPS"].getFeatures())["hint"])
    layers = [made["OUTPUT"], planned, recorded]
    return layers, box_round([made["OUTPUT"], planned], 25)


def scale_bar(painter, settings):
    """10, 100 or 500 m of map, the first that is not short, in the lower right corner."""
    metres = next((each for each in (10, 100) if each / settings.mapUnitsPerPixel() > 60), 500)
    pixels = metres / settings.mapUnitsPerPixel()
    size = settings.outputSize()
    painter.setFont(QFont("Sans Serif", 9))
    box = QRectF(size.width() - pixels - 44, size.height() - 56, pixels + 30, 42)
    painter.fillRect(box, QColor(255, 255, 255, 225))
    left, y = box.left() + 15, box.bottom() - 11
    painter.setPen(QPen(Qt.black, 2.5))
    painter.drawLine(QPointF(left, y), QPointF(left + pixels, y))
    for x in (left, left + pixels):
        painter.drawLine(QPointF(x, y - 6), QPointF(x, y))
    painter.drawText(QRectF(left, box.top() + 1, pixels, 24), Qt.AlignCenter, "%d m" % metres)


def legend(painter, settings, classes):
    """Colours and what they mean, in the lower left corner."""
    painter.setFont(QFont("Sans Serif", 9))
    metrics = QFontMetricsF(painter.font(), painter.device())
    high = metrics.height() + 4
    wide = 50 + max(metrics.horizontalAdvance(words) for _, words in classes)
    top = settings.outputSize().height() - 14 - 10 - high * len(classes)
    painter.fillRect(QRectF(14, top, wide, high * len(classes) + 10), QColor(255, 255, 255, 235))
    painter.setPen(QPen(Qt.black, 1))
    for i, (colour, words) in enumerate(classes):
        painter.setBrush(QColor(colour))
        painter.drawRect(QRectF(22, top + 7 + i * high, 24, high - 5))
        painter.drawText(QRectF(54, top + 5 + i * high, wide, high), Qt.AlignLeft | Qt.AlignVCenter, words)


def colours_of(image):
    """256 colours picked from the picture: plenty for a map, at a third of the size."""
    plain = "/vsimem/plain.png"
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QBuffer.WriteOnly)
    image.save(buffer, "PNG")
    gdal.FileFromMemBuffer(plain, bytes(data))
    picture = gdal.Open(plain)
    table = gdal.ColorTable()
    gdal.ComputeMedianCutPCT(picture.GetRasterBand(1), picture.GetRasterBand(2),
                             picture.GetRasterBand(3), 256, table)
    colours = [QColor(*table.GetColorEntry(i)).rgb() for i in range(table.GetCount())]
    picture = None
    gdal.Unlink(plain)
    return colours


def save(image, path):
    if image.allGray():
        image = image.convertToFormat(QImage.Format_Grayscale8)
    else:
        image = image.convertToFormat(QImage.Format_Indexed8, colours_of(image), Qt.ThresholdDither)
    if not image.save(path, "PNG", 0):
        sys.exit("cannot write " + path)
    print("%s  %d kB" % (path, os.path.getsize(path) // 1000), end="")


def draw(path, size, dpi, layers, extent, classes=()):
    """The layers over the sample's map; classes: those of a raster, for a legend."""
    project = QgsProject.instance()
    shown = [node.layer() for node in project.layerTreeRoot().findLayers()
             if node.isVisible() and node.layer() and node.layer().isSpatial()]
    over = [each for each in shown if each.name() == "Points"]
    under = [each for each in shown if each not in over and each.name() != "Planned routes"]
    for each in over:    # round the point, wherever the legs' labels leave room
        names = each.labeling().settings()
        names.placement = QgsPalLayerSettings.AroundPoint
        each.setLabeling(QgsVectorLayerSimpleLabeling(names))

    settings = QgsMapSettings()
    settings.setLayers(over + layers + under)
    settings.setDestinationCrs(project.crs())
    settings.setOutputSize(size)
    settings.setOutputDpi(dpi)
    settings.setBackgroundColor(QColor("white"))
    for flag in (QgsMapSettings.Antialiasing, QgsMapSettings.UseAdvancedEffects):
        settings.setFlag(flag)
    engine = settings.labelingEngineSettings()
    engine.setFlag(QgsLabelingEngineSettings.UsePartialCandidates, False)
    settings.setLabelingEngineSettings(engine)
    settings.setExtent(extent)

    image = QImage(size, QImage.Format_RGB32)
    image.setDotsPerMeterX(round(dpi / 0.0254))
    image.setDotsPerMeterY(round(dpi / 0.0254))
    image.fill(Qt.white)
    painter = QPainter(image)
    job = QgsMapRendererCustomPainterJob(settings, painter)
    job.renderSynchronously()
    scale_bar(painter, settings)
    if classes:
        legend(painter, settings, classes)
    painter.end()
    save(image, path)
    print("  1:%d" % round(settings.scale()))


def sheet(path, title, tables):
    """Tables on white: tables is a list of (column heads, rows of texts)."""
    size, margin, high, large, small = QSize(1600, 2000), 40, 34, QFont("Sans Serif"), QFont("Sans Serif")
    large.setPixelSize(28)
    small.setPixelSize(20)
    image = QImage(size, QImage.Format_RGB32)
    image.fill(Qt.white)
    painter = QPainter(image)
    painter.setFont(large)
    y = margin
    painter.drawText(QRectF(margin, y, size.width(), 40), Qt.AlignLeft | Qt.AlignVCenter, title)
    y += 56
    painter.setFont(small)
    metrics = QFontMetricsF(small)
    widest = 0
    for heads, rows in tables:
        wide = [max(metrics.horizontalAdvance(texts[i]) for texts in [heads] + rows) + 34 for i in range(len(heads))]
        widest = max(widest, sum(wide))
        for k, texts in enumerate([heads] + rows):
            x = margin
            if k % 2 == 0 and k:
                painter.fillRect(QRectF(margin, y, sum(wide), high), QColor("#eeeeee"))
            for i, words in enumerate(texts):
                side = Qt.AlignLeft if i == 0 or i == len(heads) - 1 else Qt.AlignRight
                painter.drawText(QRectF(x + 6, y, wide[i] - 20, high), side | Qt.AlignVCenter, words)
                x += wide[i]
            y += high
            if k == 0:
                painter.drawLine(QPointF(margin, y), QPointF(margin + sum(wide), y))
        y += 26
    painter.end()
    save(image.copy(0, 0, int(widest) + 2 * margin, int(y)), path)


def draw_paces(path):
    """The table of walkers that the counts of pace_tries.csv give, and what was left out."""
    made = run("calibratepaces", {"INPUT": os.path.join(HERE, "pace_tries.csv"), "WALKER_FIELD": "walker",
                                  "DISTANCE_FIELD": "metres", "COUNT_FIELD": "count", "SLOPE_FIELD": "slope"},
               OUTPUT=None, TRIES=None)
    walkers = [[row["walker"], "%.1f" % row["paces_100m"], "%.1f to %.1f" % (row["lo_100m"], row["hi_100m"]),
                "%.1f" % row["pace_err"], "%.2f" % row["step_m"], "%d of %d" % (row["used"], row["tries"]), ""]
               for row in made["OUTPUT"].getFeatures()]
    tries = [[row["walker"], "%g" % row["dist_m"], "%g" % row["count"],
              "%+d" % row["slope_deg"] if row["slope_deg"] else "0", "%.1f" % row["steps_100m"],
              "%+.1f" % row["resid_pct"], row["flag"] or ""]
             for row in made["TRIES"].getFeatures()]
    sheet(path, "Calibrated walkers", [
        (["walker", "steps over 100 m", "95 % interval", "error, %", "step, m", "tries used", ""], walkers),
        (["try", "metres", "count", "slope, °", "steps over 100 m, level", "off, %", "flag"], tries)])


def shown(page, width, scale):
    """An HTML page as a window of so many CSS pixels shows it."""
    try:
        from PyQt5.QtWebKitWidgets import QWebPage
    except ImportError:
        sys.exit("QtWebKit is needed to draw the table (Debian: python3-pyqt5.qtwebkit).")
    web = QWebPage()
    web.setViewportSize(QSize(width, 100))
    wait = QEventLoop()
    web.loadFinished.connect(wait.quit)
    web.mainFrame().load(QUrl.fromLocalFile(page))
    wait.exec_()
    high = web.mainFrame().contentsSize().height()
    web.setViewportSize(QSize(width, high))
    image = QImage(round(width * scale), round(high * scale), QImage.Format_RGB32)
    image.fill(Qt.white)
    painter = QPainter(image)
    painter.setRenderHints(QPainter.Antialiasing | QPainter.TextAntialiasing)
    painter.scale(scale, scale)
    web.mainFrame().render(painter)
    painter.end()
    return image


def side_by_side(path, images, most=None):
    """Images on grey, cut off below where they are very high."""
    gap = 12
    high = min(max(each.height() for each in images), most or 10000)
    image = QImage(sum(each.width() + gap for each in images) + gap, high + 2 * gap, QImage.Format_RGB32)
    image.fill(Qt.gray)
    painter = QPainter(image)
    x = gap
    for each in images:
        painter.drawImage(x, gap, each.copy(0, 0, each.width(), min(each.height(), high)))
        x += each.width() + gap
    painter.end()
    save(image, path)


def draw_table(path):
    """The table of a child as a phone and as a wide window show it."""
    made = annotated(route("Camp to stand"), CHILD, OUTPUT=None, MARKS=None)
    folder = os.path.join(SCRATCH.name, "tables")
    run("legtables", {"INPUT": made["OUTPUT"], "FORMAT": 1, "FOLDER": folder, "TITLE": "Two days at the pond"})
    page = next(each for each in glob.glob(os.path.join(folder, "*.html")) if not each.endswith("index.html"))
    side_by_side(path, [shown(page, 390, 1.3), shown(page, 760, 1.3)], 960)


def draw_card(path):
    """Both pages of a child's card."""
    way = route("Camp to stand")
    made = annotated(way, CHILD, OUTPUT=None, MARKS=None)
    met = run("featuresmet", {**way, "FEATURES": [layer(name) for name in ("streams", "trails", "points")],
                              "WALKERS": walker(CHILD), **ground()}, OUTPUT=None)
    folder = os.path.join(SCRATCH.name, "cards")
    layers = [each.id() for name in ("Trails", "Streams", "Cover")
              for each in QgsProject.instance().mapLayersByName(name)]
    run("legcards", {"INPUT": made["OUTPUT"], "MARKS": made["MARKS"], "LAYERS": layers, "PAPER": 1, "DEM": TERRAIN,
                     "FEATURES": met["OUTPUT"], "TITLE": "Two days at the pond", "FOLDER": folder})
    card = glob.glob(os.path.join(folder, "*.pdf"))[0]
    subprocess.run(["pdftoppm", "-r", "80", "-png", card, os.path.join(folder, "page")], check=True)
    side_by_side(path, [QImage(each) for each in sorted(glob.glob(os.path.join(folder, "page*.png")))])


WIDE, PLAIN = QSize(1600, 1000), QSize(1200, 900)
# file: what is drawn, size in pixels, dots to the inch
MAPS = {
    "legs.png": (legs, WIDE, 135),
    "practice-loop.png": (practice_loop, PLAIN, 135),
    "marks.png": (marks, QSize(1600, 800), 135),
    "chosen-marks.png": (chosen_marks, QSize(1600, 830), 135),
    "plan.png": (plan, QSize(1600, 900), 135),
    "aim-off.png": (aim_off, PLAIN, 135),
    "detour.png": (detour, PLAIN, 135),
    "features-met.png": (features_met, QSize(1200, 1000), 120),
    "hazards.png": (hazards, PLAIN, 135),
    "sight.png": (sight, WIDE, 135),
    "field.png": (field, PLAIN, 135),
    "north-lines.png": (north_lines, QSize(1200, 1200), 120),
    "courses.png": (courses, PLAIN, 135),
    "garden.png": (garden, PLAIN, 135),
    "gpx.png": (gpx, PLAIN, 135),
    "track.png": (track, QSize(1200, 1000), 135),
}
SHEETS = {"paces.png": draw_paces, "table.png": draw_table, "card.png": draw_card}


def main():
    ap = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    ap.add_argument("--prefix", default=os.path.join(ROOT, "build", "prefix"),
                    help="where Brushline is installed")
    ap.add_argument("--out", default=os.path.join(HERE, "pictures"), help="folder for the pictures")
    ap.add_argument("only", nargs="*", help="names of pictures to draw, all when none is given")
    given = ap.parse_args()
    unknown = set(given.only) - set(MAPS) - set(SHEETS)
    if unknown:
        sys.exit("There is no picture " + ", ".join(sorted(unknown)))
    os.makedirs(given.out, exist_ok=True)

    gdal.UseExceptions()
    app = QgsApplication([], True)
    app.initQgis()
    loader = provider(os.path.abspath(given.prefix))
    project = QgsProject.instance()
    for name in {**MAPS, **SHEETS}:
        if given.only and name not in given.only:
            continue
        if not project.read(os.path.join(HERE, "sample.qgz")):     # anew, without what the last one added
            sys.exit("cannot read sample.qgz; run make_project.py first")
        path = os.path.join(given.out, name)
        if name in MAPS:
            what, size, dpi = MAPS[name]
            draw(path, size, dpi, *what())
        else:
            SHEETS[name](path)
            print()
    project.clear()
    loader.unload()
    app.exitQgis()


if __name__ == "__main__":
    main()
