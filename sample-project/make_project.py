#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""Make sample.qgz, the QGIS project for the sample data.

Run make_sample.py first.  Needs PyQGIS 3.22 or newer; the project is written
without a screen, with relative paths and without names of people or machines.
"""
import argparse
import os
import re
import zipfile

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ["QT_HASH_SEED"] = "0"           # the same order of attributes each time
os.environ["GDAL_PAM_ENABLED"] = "NO"      # no .aux.xml beside the terrain

from qgis.PyQt.QtCore import Qt    # noqa: E402
from qgis.PyQt.QtGui import QColor, QFont, QPainter  # noqa: E402
from qgis.core import (                    # noqa: E402
    Qgis, QgsApplication, QgsBilinearRasterResampler, QgsCategorizedSymbolRenderer,
    QgsCoordinateReferenceSystem, QgsFillSymbol, QgsHillshadeRenderer,
    QgsLinePatternFillSymbolLayer, QgsLineSymbol, QgsMarkerLineSymbolLayer, QgsMarkerSymbol,
    QgsPalLayerSettings, QgsPointPatternFillSymbolLayer, QgsProject, QgsRasterContourRenderer,
    QgsRasterDataProvider, QgsRasterLayer, QgsRasterPipe, QgsRectangle, QgsReferencedRectangle,
    QgsRendererCategory, QgsRuleBasedRenderer, QgsSimpleFillSymbolLayer,
    QgsSingleSymbolRenderer, QgsTextBufferSettings, QgsTextFormat, QgsUnitTypes, QgsVectorLayer,
    QgsVectorLayerSimpleLabeling)

EPSG = 32621
STAMP = "2024-05-01T00:00:00"

# class: fill, pattern, pattern colour.  Light fills; the closer the growth,
# the denser the pattern, so that a grey print still tells them apart.
COVER = [
    ("open ground", "#f6f1e6", None, None),
    ("heath", "#ece0e4", "specks", "#a98f9b"),
    ("bare rock", "#dcdad8", None, None),
    ("wet ground", "#dbe7ea", "dashes", "#6f98a6"),
    ("water", "#b4cfdd", None, None),
    ("scattered trees", "#e9eddb", "specks", "#94a083"),
    ("open woods", "#dbe5cd", None, None),
    ("mixed forest", "#c8d8bd", None, None),
    ("tall forest", "#b5caae", None, None),
    ("young growth", "#dfe0bd", "rise", "#a5a56c"),
    ("brush", "#e8d3b4", "rise", "#a5793f"),
    ("thicket", "#d6ac86", "cross", "#7d4a26"),
]


def no_edge(colour):
    layer = QgsSimpleFillSymbolLayer(QColor(colour))
    layer.setStrokeStyle(Qt.NoPen)
    return layer


def hatch(colour, angle, gap, width):
    layer = QgsLinePatternFillSymbolLayer()
    layer.setLineAngle(angle)
    layer.setDistance(gap)
    layer.setSubSymbol(QgsLineSymbol.createSimple({"color": colour, "width": str(width)}))
    return layer


def specks(colour, marker, size, gap_x, gap_y):
    layer = QgsPointPatternFillSymbolLayer()
    layer.setDistanceX(gap_x)
    layer.setDistanceY(gap_y)
    layer.setDisplacementX(gap_x / 2)
    layer.setSubSymbol(QgsMarkerSymbol.createSimple(
        {"name": marker, "color": colour, "outline_color": colour, "outline_width": "0.15",
         "size": str(size), "angle": "90" if marker == "line" else "0"}))
    return layer


def cover_symbol(fill, pattern, ink):
    symbol = QgsFillSymbol()
    symbol.changeSymbolLayer(0, no_edge(fill))
    if pattern == "rise":
        symbol.appendSymbolLayer(hatch(ink, 60, 1.7, 0.14))
    elif pattern == "cross":
        symbol.appendSymbolLayer(hatch(ink, 60, 1.3, 0.17))
        symbol.appendSymbolLayer(hatch(ink, -60, 1.3, 0.17))
    elif pattern == "specks":
        symbol.appendSymbolLayer(specks(ink, "circle", 0.35, 2.6, 2.2))
    elif pattern == "dashes":
        symbol.appendSymbolLayer(specks(ink, "line", 1.1, 3.0, 1.8))
    return symbol


def add_line(symbol, properties):
    one = QgsLineSymbol.createSimple(properties)     # must outlive the copy
    symbol.appendSymbolLayer(one.symbolLayer(0).clone())


def text(size, colour, bold=False, italic=False, halo=0.8):
    fmt = QgsTextFormat()
    font = QFont("Sans Serif")
    font.setBold(bold)
    font.setItalic(italic)
    fmt.setFont(font)
    fmt.setSize(size)
    fmt.setSizeUnit(QgsUnitTypes.RenderPoints)
    fmt.setColor(QColor(colour))
    buf = QgsTextBufferSettings()
    buf.setEnabled(halo > 0)
    buf.setSize(halo)
    buf.setColor(QColor(255, 255, 255, 215))
    fmt.setBuffer(buf)
    return fmt


def label(layer, field, fmt, placement, dist=1.2, priority=5, expression=False):
    s = QgsPalLayerSettings()
    s.fieldName = field
    s.isExpression = expression
    s.placement = placement
    s.dist = dist
    s.priority = priority
    s.setFormat(fmt)
    layer.setLabeling(QgsVectorLayerSimpleLabeling(s))
    layer.setLabelsEnabled(True)


def vector(folder, name, title):
    layer = QgsVectorLayer("%s|layername=%s" % (os.path.join(folder, "sample.gpkg"), name),
                           title, "ogr")
    if not layer.isValid():
        raise SystemExit("cannot read layer %s; run make_sample.py first" % name)
    return layer


def style_cover(layer):
    cats = [QgsRendererCategory(name, cover_symbol(fill, pattern, ink), name)
            for name, fill, pattern, ink in COVER]
    layer.setRenderer(QgsCategorizedSymbolRenderer("class", cats))
    layer.setBlendMode(QPainter.CompositionMode_Multiply)


def style_lines(streams, trails, power, cliffs, routes):
    line = QgsPalLayerSettings.Curved
    streams.setRenderer(QgsSingleSymbolRenderer(QgsLineSymbol.createSimple(
        {"color": "#4b7f98", "width": "0.5", "capstyle": "round", "joinstyle": "round"})))
    label(streams, "name", text(7.5, "#35647b", italic=True), line, 0.6)

    symbol = QgsLineSymbol.createSimple(
        {"color": "#ffffff", "width": "1.1", "capstyle": "round", "joinstyle": "round"})
    add_line(symbol, {"color": "#55504a", "width": "0.45", "line_style": "dash",
                      "use_custom_dash": "1", "customdash": "2.4;1.0", "capstyle": "flat"})
    trails.setRenderer(QgsSingleSymbolRenderer(symbol))
    label(trails, "name", text(7.5, "#3d3833"), line, 0.8)

    symbol = QgsLineSymbol.createSimple({"color": "#4a4a4a", "width": "0.3"})
    ticks = QgsMarkerLineSymbolLayer(True, 7.0)
    ticks.setSubSymbol(QgsMarkerSymbol.createSimple(
        {"name": "diamond", "color": "#ffffff", "outline_color": "#4a4a4a",
         "outline_width": "0.25", "size": "1.5"}))
    symbol.appendSymbolLayer(ticks)
    power.setRenderer(QgsSingleSymbolRenderer(symbol))
    label(power, "\"name\" || ', ' || \"kind\"", text(7, "#4a4a4a"), line, 1.0, expression=True)

    # High ground lies left of a cliff line: small wedges point down to the right.
    symbol = QgsLineSymbol.createSimple({"color": "#3a3030", "width": "0.55"})
    wedge = QgsMarkerLineSymbolLayer(True, 1.8)
    wedge.setOffset(0.75)
    wedge.setSubSymbol(QgsMarkerSymbol.createSimple(
        {"name": "triangle", "color": "#3a3030", "outline_style": "no", "size": "1.3",
         "angle": "180"}))
    symbol.appendSymbolLayer(wedge)
    cliffs.setRenderer(QgsSingleSymbolRenderer(symbol))
    label(cliffs, "'cliff ' || round(\"height_m\") || ' m'", text(6.5, "#3a3030"), line, 1.4,
          expression=True)

    symbol = QgsLineSymbol.createSimple(
        {"color": "#ffffff", "width": "1.5", "capstyle": "round", "joinstyle": "round"})
    add_line(symbol, {"color": "#1f3f66", "width": "0.7", "joinstyle": "round"})
    turns = QgsMarkerLineSymbolLayer()
    turns.setPlacement(QgsMarkerLineSymbolLayer.Vertex)
    turns.setSubSymbol(QgsMarkerSymbol.createSimple(
        {"name": "square", "color": "#ffffff", "outline_color": "#1f3f66",
         "outline_width": "0.4", "size": "1.7"}))
    symbol.appendSymbolLayer(turns)
    routes.setRenderer(QgsSingleSymbolRenderer(symbol))
    label(routes, "route", text(7.5, "#1f3f66", bold=True), line, 1.0, 7)


def style_points(points):
    root = QgsRuleBasedRenderer.Rule(None)
    for title, test, shape, size in (
            ("camp", "\"kind\" = 'camp'", "triangle", 3.4),
            ("stand", "\"kind\" = 'stand'", "star", 3.8),
            ("other point", "ELSE", "circle", 1.7)):
        symbol = QgsMarkerSymbol.createSimple(
            {"name": shape, "color": "#2b2b2b", "outline_color": "#ffffff",
             "outline_width": "0.3", "size": str(size)})
        root.appendChild(QgsRuleBasedRenderer.Rule(symbol, 0, 0, test, title))
    points.setRenderer(QgsRuleBasedRenderer(root))
    label(points, "name", text(7.5, "#202020"), QgsPalLayerSettings.OrderedPositionsAroundPoint,
          0.9, 9)


def tidy(xml, ids):
    """Take out what differs from run to run or tells of this machine."""
    for old, new in ids:
        xml = xml.replace(old, new)
    keys = {}
    xml = re.sub(r'\{[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}\}',
                 lambda m: keys.setdefault(
                     m.group(0), "{00000000-0000-4000-8000-%012x}" % len(keys)), xml)
    xml = re.sub(r'Annotations_[0-9a-f_]{36}', 'sample_annotations', xml)
    xml = re.sub(r'(?:[ ]*<layer-setting [^\n]*\n)+',
                 lambda m: "".join(sorted(m.group(0).splitlines(True))), xml)
    xml = re.sub(r' saveDateTime="[^"]*"', ' saveDateTime="%s"' % STAMP, xml)
    xml = re.sub(r' saveUser(Full)?="[^"]*"', r' saveUser\1=""', xml)
    xml = re.sub(r'<creation>[^<]*</creation>', '<creation>%s</creation>' % STAMP, xml)
    xml = re.sub(r'<author>[^<]*</author>', '<author></author>', xml)
    return xml


def main():
    ap = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    ap.add_argument("--out", default=os.path.dirname(os.path.abspath(__file__)),
                    help="folder with the data; sample.qgz is written there")
    folder = os.path.abspath(ap.parse_args().out)

    app = QgsApplication([], False)
    app.initQgis()
    gpkg = os.path.join(folder, "sample.gpkg")
    with open(gpkg, "rb") as f:
        before = f.read()

    crs = QgsCoordinateReferenceSystem("EPSG:%d" % EPSG)
    project = QgsProject.instance()
    project.setTitle("Brushline sample")
    project.setCrs(crs)
    project.setEllipsoid("EPSG:7030")
    project.setFilePathStorage(Qgis.FilePathType.Relative)
    project.setDistanceUnits(QgsUnitTypes.DistanceMeters)
    project.setAreaUnits(QgsUnitTypes.AreaHectares)
    meta = project.metadata()
    meta.setTitle("Brushline sample")
    meta.setAbstract("Invented land, names and people; see README.md.")
    project.setMetadata(meta)

    dem = os.path.join(folder, "terrain.tif")
    shade = QgsRasterLayer(dem, "Hillshade", "gdal")
    render = QgsHillshadeRenderer(shade.dataProvider(), 1, 315, 45)
    render.setZFactor(1.2)
    render.setMultiDirectional(True)
    shade.setRenderer(render)
    shade.resampleFilter().setZoomedInResampler(QgsBilinearRasterResampler())
    shade.resampleFilter().setZoomedOutResampler(QgsBilinearRasterResampler())
    shade.brightnessFilter().setBrightness(60)
    contours = QgsRasterLayer(dem, "Terrain", "gdal")
    render = QgsRasterContourRenderer(contours.dataProvider())
    render.setContourInterval(10)
    render.setContourIndexInterval(50)
    render.setDownscale(4)
    render.setContourSymbol(QgsLineSymbol.createSimple({"color": "#8b8781", "width": "0.16"}))
    render.setContourIndexSymbol(QgsLineSymbol.createSimple({"color": "#77726b", "width": "0.34"}))
    contours.setRenderer(render)
    contours.setResamplingStage(QgsRasterPipe.ResamplingStage.Provider)
    provider = contours.dataProvider()
    provider.enableProviderResampling(True)
    provider.setZoomedInResamplingMethod(QgsRasterDataProvider.ResamplingMethod.Cubic)
    provider.setZoomedOutResamplingMethod(QgsRasterDataProvider.ResamplingMethod.Bilinear)
    contours.setBlendMode(QPainter.CompositionMode_Multiply)

    cover = vector(folder, "cover", "Cover")
    streams = vector(folder, "streams", "Streams")
    trails = vector(folder, "trails", "Trails")
    power = vector(folder, "power_line", "Power line")
    cliffs = vector(folder, "cliffs", "Cliffs")
    points = vector(folder, "points", "Points")
    routes = vector(folder, "routes", "Planned routes")
    walkers = vector(folder, "walkers", "Walkers")
    style_cover(cover)
    style_lines(streams, trails, power, cliffs, routes)
    style_points(points)

    extent = QgsRectangle(shade.extent())
    for layer in (shade, cover, contours, streams, power, trails, cliffs, routes, points):
        project.addMapLayer(layer, False)
        project.layerTreeRoot().insertLayer(0, layer)
    project.addMapLayer(walkers, False)
    project.layerTreeRoot().addLayer(walkers)
    for node in project.layerTreeRoot().children():
        node.setExpanded(node.name() in ("Cover", "Points"))
    project.viewSettings().setDefaultViewExtent(QgsReferencedRectangle(extent, crs))
    project.viewSettings().setPresetFullExtent(QgsReferencedRectangle(extent, crs))

    # Layer ids carry a random part; give them plain names instead.
    ids = [(layer.id(), "sample_" + re.sub(r"\W+", "_", layer.name().lower()))
           for layer in project.mapLayers().values()]
    raw = os.path.join(folder, "sample.qgs")
    if not project.write(raw):
        raise SystemExit("cannot write the project")
    project.clear()
    app.exitQgis()

    with open(raw, encoding="utf-8") as f:
        xml = tidy(f.read(), ids)
    os.remove(raw)
    for left in ("sample.qgd", "sample_attachments.zip", "sample.gpkg-wal", "sample.gpkg-shm"):
        if os.path.exists(os.path.join(folder, left)):
            os.remove(os.path.join(folder, left))
    qgz = os.path.join(folder, "sample.qgz")
    with zipfile.ZipFile(qgz, "w", zipfile.ZIP_DEFLATED) as z:
        info = zipfile.ZipInfo("sample.qgs", (2024, 5, 1, 0, 0, 0))
        info.compress_type = zipfile.ZIP_DEFLATED
        info.external_attr = 0o644 << 16
        z.writestr(info, xml)
    # Reading must not have changed the data.
    with open(gpkg, "rb") as f:
        same = f.read() == before
    if not same:
        with open(gpkg, "wb") as f:
            f.write(before)
    print("sample.qgz  %d bytes" % os.path.getsize(qgz))


if __name__ == "__main__":
    main()
