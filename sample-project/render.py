#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""Draw the pictures of the sample: its legs, their marks, planned legs, the garden course, magnetic north lines and a card.

Needs an installed Brushline (run.sh lays one into build/prefix) and PyQGIS 3.22
or newer; no screen. The day is fixed, so that the same pictures come each time.
"""
import argparse
import os
import subprocess
import sys
import tempfile

os.environ["QT_QPA_PLATFORM"] = "offscreen"
os.environ["GDAL_PAM_ENABLED"] = "NO"      # no .aux.xml beside the terrain

from osgeo import gdal                      # noqa: E402
from qgis.PyQt.QtCore import QBuffer, QByteArray, QPointF, QRectF, QSize, Qt   # noqa: E402
from qgis.PyQt.QtGui import QColor, QFont, QImage, QPainter, QPen  # noqa: E402
from qgis.core import (                                         # noqa: E402
    QgsApplication, QgsFeature, QgsGeometry, QgsLabelingEngineSettings, QgsLineSymbol,
    QgsMapRendererCustomPainterJob, QgsMapSettings, QgsPalLayerSettings, QgsPointXY, QgsProcessingContext,
    QgsProcessingFeedback, QgsProject, QgsRectangle,
    QgsSingleSymbolRenderer, QgsVectorLayer, QgsVectorLayerSimpleLabeling)

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(HERE)
DAY = "2026-06-20"
WALKER = "Ressa (leader)"
# file, route, size in pixels, dots to the inch, metres round the route (left, bottom, right, top), marks and drift too
PICTURES = [
    ("legs.png", "Camp to stand", QSize(1600, 1000), 135, (110, 250, 110, 250), False),
    ("practice-loop.png", "Practice loop", QSize(1200, 900), 135, (60, 60, 60, 60), False),
    ("marks.png", "Camp to stand", QSize(1600, 800), 135, (-400, -120, -520, -120), True),
]
# The same for the north lines, over the whole sample: metres between the lines.
NORTH = ("north-lines.png", QSize(1200, 1200), 120, 250)


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


def legs_of(route, with_marks):
    """The legs of one route for one walker, and their marks and drift when asked for, each in the plugin's own style."""
    project = QgsProject.instance()
    given = {"INPUT": layer("routes", "route = '%s'" % route), "POINTS": layer("points"),
             "COVER": layer("cover"), "WALKERS": layer("walkers", "walker = '%s'" % WALKER)}
    for each in given.values():
        project.addMapLayer(each, False)
    context = QgsProcessingContext()
    context.setProject(project)
    parameters = {key: value.id() for key, value in given.items()}
    parameters.update(ROUTE_FIELD="route", COVER_CLASS="class",
                      DEM=os.path.join(HERE, "terrain.tif"), DATE=DAY, OUTPUT="memory:")
    wanted = {"OUTPUT": "legs"}
    if with_marks:
        parameters.update(MARKS="memory:", DRIFT="memory:")
        wanted = {"MARKS": "marks", "OUTPUT": "legs", "DRIFT": "drift"}
    algorithm = QgsApplication.processingRegistry().algorithmById("brushline:annotatelegs")
    result, ok = algorithm.create().run(parameters, context, Feedback())
    if not ok:
        sys.exit("annotatelegs did not run")
    layers = []
    for key, style in wanted.items():
        made = context.takeResultLayer(result[key])
        message, ok = made.loadNamedStyle(os.path.join(ROOT, "algorithms", "legs", "styles", style + ".qml"))
        if not ok:
            sys.exit("%s.qml: %s" % (style, message))
        project.addMapLayer(made, False)
        layers.append(made)
    return layers


def north_lines(spacing):
    """The magnetic north lines over the sample, and their extent."""
    box = layer("cover").extent()
    context = QgsProcessingContext()
    context.setProject(QgsProject.instance())
    parameters = {"EXTENT": "%f,%f,%f,%f [EPSG:32621]" % (box.xMinimum(), box.xMaximum(), box.yMinimum(), box.yMaximum()),
                  "SPACING": spacing, "DATE": DAY, "OUTPUT": "memory:"}
    algorithm = QgsApplication.processingRegistry().algorithmById("brushline:northlines")
    result, ok = algorithm.create().run(parameters, context, Feedback())
    if not ok:
        sys.exit("northlines did not run")
    made = context.takeResultLayer(result["OUTPUT"])
    message, ok = made.loadNamedStyle(os.path.join(ROOT, "algorithms", "magnetics", "styles", "north_lines.qml"))
    if not ok:
        sys.exit("north_lines.qml: " + message)
    QgsProject.instance().addMapLayer(made, False)
    return [made], box


def line_layer(name, points, colour, style):
    """A line through points, drawn plainly over a white rim."""
    made = QgsVectorLayer("LineString?crs=EPSG:32621&field=dist_m:double", name, "memory")
    feature = QgsFeature(made.fields())
    feature.setGeometry(QgsGeometry.fromPolylineXY(points))
    made.dataProvider().addFeature(feature)
    made.updateExtents()
    symbol = QgsLineSymbol.createSimple({"line_color": "white", "line_width": "1.5"})
    upper = QgsLineSymbol.createSimple({"line_color": colour, "line_width": "0.8", "line_style": style})
    symbol.appendSymbolLayer(upper.symbolLayer(0).clone())
    made.setRenderer(QgsSingleSymbolRenderer(symbol))
    QgsProject.instance().addMapLayer(made, False)
    return made


def planned(walker):
    """The planned route from camp to stand (thick), the straight line (dashed) and the route drawn by eye (dotted)."""
    project = QgsProject.instance()
    given = {"STARTS": layer("points", "name = 'Camp'"), "ENDS": layer("points", "name = 'Hunting Stand'"),
             "COVER": layer("cover"), "POINTS": layer("points"), "WALKERS": layer("walkers", "walker = '%s'" % walker)}
    for each in given.values():
        project.addMapLayer(each, False)
    context = QgsProcessingContext()
    context.setProject(project)
    parameters = {key: value.id() for key, value in given.items()}
    parameters.update(COVER_CLASS="class", DEM=os.path.join(HERE, "terrain.tif"), OUTPUT="memory:")
    algorithm = QgsApplication.processingRegistry().algorithmById("brushline:throughcover")
    result, ok = algorithm.create().run(parameters, context, Feedback())
    if not ok:
        sys.exit("throughcover did not run")
    made = context.takeResultLayer(result["OUTPUT"])
    route = next(made.getFeatures())
    print("planned: %.1f min, %d legs; straight line: %.1f min" % (
        route["minutes"], route["legs"], route["straight_min"]))
    points = route.geometry().asPolyline()
    by_eye = layer("routes", "route = 'Camp to stand'")
    drawn = next(by_eye.getFeatures()).geometry()
    drawn.convertToSingleType()
    return [line_layer("plan", points, "#000000", "solid"),
            line_layer("straight", [QgsPointXY(points[0]), QgsPointXY(points[-1])], "#c00000", "dash"),
            line_layer("drawn", drawn.asPolyline(), "#0040c0", "dot")]


def garden(walker):
    """The garden course, plotted from its table, for one of its walkers."""
    context = QgsProcessingContext()
    context.setProject(QgsProject.instance())
    parameters = {key: os.path.join(HERE, "garden_" + name) for key, name in (
        ("INPUT", "legs.csv"), ("WALKERS", "walkers.csv"), ("STARTS", "start.geojson"))}
    parameters.update(ROUTE_FIELD="route", ORDER_FIELD="order", BEARING_FIELD="bearing", PACES_FIELD="paces",
                      WALKER_FIELD="counted", CLOSE=1, DATE=DAY, OUTPUT="memory:")
    algorithm = QgsApplication.processingRegistry().algorithmById("brushline:plotlegs")
    result, ok = algorithm.create().run(parameters, context, Feedback())
    if not ok:
        sys.exit("plotlegs did not run")
    made = context.takeResultLayer(result["OUTPUT"])
    others = [row.id() for row in made.getFeatures() if row["walker"] != walker]
    made.dataProvider().deleteFeatures(others)
    message, ok = made.loadNamedStyle(os.path.join(ROOT, "algorithms", "legs", "styles", "legs.qml"))
    if not ok:
        sys.exit("legs.qml: " + message)
    QgsProject.instance().addMapLayer(made, False)
    return [made]


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


def save(image, path):
    """Write a PNG of 256 colours picked from the picture: plenty for a map, at a third of the size."""
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
    image = image.convertToFormat(QImage.Format_Indexed8, colours, Qt.ThresholdDither)
    if not image.save(path, "PNG", 0):
        sys.exit("cannot write " + path)


def draw(path, layers, size, dpi, extent):
    project = QgsProject.instance()
    shown = [node.layer() for node in project.layerTreeRoot().findLayers()
             if node.isVisible() and node.layer() and node.layer().isSpatial()]
    routes = [each for each in shown if each.name() == "Planned routes"]
    over = [each for each in shown if each.name() == "Points"]
    under = [each for each in shown if each not in routes + over]
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
    painter.end()
    save(image, path)
    print("%s  1:%d  %d kB" % (path, round(settings.scale()), os.path.getsize(path) // 1000))


def draw_card(path):
    """Both pages of a card that run.sh made, side by side on grey; needs pdftoppm (Debian: poppler-utils)."""
    card = os.path.join(HERE, "result", "cards", "Camp to stand - Minka (8).pdf")
    if not os.path.exists(card):
        sys.exit("%s is not there; run sample-project/run.sh first" % card)
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run(["pdftoppm", "-r", "80", "-png", card, os.path.join(folder, "page")], check=True)
        pages = [QImage(os.path.join(folder, name)) for name in sorted(os.listdir(folder))]
    gap = 12
    image = QImage(sum(page.width() + gap for page in pages) + gap, pages[0].height() + 2 * gap, QImage.Format_RGB32)
    image.fill(Qt.gray)
    painter = QPainter(image)
    x = gap
    for page in pages:
        painter.drawImage(x, gap, page)
        x += page.width() + gap
    painter.end()
    save(image, path)
    print("%s  %d kB" % (path, os.path.getsize(path) // 1000))


def main():
    ap = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    ap.add_argument("--prefix", default=os.path.join(ROOT, "build", "prefix"),
                    help="where Brushline is installed")
    ap.add_argument("--out", default=os.path.join(HERE, "pictures"), help="folder for the pictures")
    given = ap.parse_args()
    os.makedirs(given.out, exist_ok=True)

    gdal.UseExceptions()
    app = QgsApplication([], False)
    app.initQgis()
    loader = provider(os.path.abspath(given.prefix))
    if not QgsProject.instance().read(os.path.join(HERE, "sample.qgz")):
        sys.exit("cannot read sample.qgz; run make_project.py first")
    for name, route, size, dpi, margins, with_marks in PICTURES:
        layers = legs_of(route, with_marks)
        box = next(each for each in layers if each.fields().indexOf("dist_m") >= 0).extent()
        left, bottom, right, top = margins
        draw(os.path.join(given.out, name), layers, size, dpi,
             QgsRectangle(box.xMinimum() - left, box.yMinimum() - bottom, box.xMaximum() + right, box.yMaximum() + top))
    name, size, dpi, spacing = NORTH
    layers, box = north_lines(spacing)
    draw(os.path.join(given.out, name), layers, size, dpi, box)
    layers = planned(WALKER)
    box = QgsRectangle(layers[0].extent())
    for each in layers[1:]:
        box.combineExtentWith(each.extent())
    draw(os.path.join(given.out, "plan.png"), layers, QSize(1600, 900), 135,
         QgsRectangle(box.xMinimum() - 150, box.yMinimum() - 250, box.xMaximum() + 150, box.yMaximum() + 150))
    layers = garden("Wenna (7)")
    draw(os.path.join(given.out, "garden.png"), layers, QSize(1200, 900), 135, layers[0].extent().buffered(12))
    draw_card(os.path.join(given.out, "card.png"))
    QgsProject.instance().clear()
    loader.unload()
    app.exitQgis()


if __name__ == "__main__":
    main()
