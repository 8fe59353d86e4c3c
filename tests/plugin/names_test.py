#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""What names_test.sh needs beside the host: names that attack what reads them, and whether they came through as text.

names_test.py make FOLDER            names.gpkg: a route, points, walkers and a cover for each name; long.gpkg: of 1 MB
names_test.py run SECONDS MB COMMAND...   runs it; fails when it takes longer (of the processor) or more memory
names_test.py layers FOLDER          legs as a GeoPackage, CSV and GeoJSON: the names as given
names_test.py tables FOLDER PLAIN route|walker   pages and CSV files; PLAIN holds those of harmless names
names_test.py cards FOLDER PLAIN [COUNT]   PDF cards
names_test.py gpx FILE route|walker  a GPX file
names_test.py log FILE               what was told
names_test.py tips FOLDER            the map tips of all styles
"""
import csv
import glob
import html.parser
import json
import os
import re
import resource
import sqlite3
import subprocess
import sys
import unicodedata
import urllib.parse
import xml.etree.ElementTree as xml

from osgeo import gdal, ogr, osr

gdal.UseExceptions()
ogr.UseExceptions()
csv.field_size_limit(1 << 24)

MARKUP = ["<script>document.title='run'</script>", "\"><img src=x onerror=document.title='run'>", "</title><b>bold",
          "Fish &amp; &lt;chips&gt; &#60;", "]]>", "<!--", "<![CDATA[x", "&bomb;", "[% 1 + 1 %]", "%1 %n %2"]
FORMULAS = ["=1+1", "+1+1", "-1", "@SUM(1)", "\t=1+2", "\r=1+3", "\n@x", "=cmd|' /C calc'!A0", "\uff1d1+1",
            "\u200b=1+4", "a;=1+1", "\"=1+1\""]
PATHS = ["../../escaped", "..\\..\\escaped", "C:\\escaped", "/etc/escaped", "CON", "nul.txt", "COM1", "ends in dots...",
         "ends in blanks   ", ".hidden", "-rf", "~root", "..", "*?<>|", "a:b", "index", "x" * 300, "\u00e9" * 300]
DATABASE = ["'; drop table legs; --", "x' or '1'='1", "a\"b", "NULL"]
SIGNS = ["a\x01b\x1b[31mc\x07d\x7fe\x9bf", "two\nlines", "three\r\nlines", "\u202egnp.exe", "\u2066isolate", "zero\u200bwidth",
         "\ufeffmark", "\U0001f468\u200d\U0001f469\u200d\U0001f467 family", "Za" + "\u0301\u0327\u0336" * 40 + "lgo",
         "\u05e9\u05d1\u05d9\u05dc 3", "\ufffe\uffff", "\ue000 private", "\u0378 unassigned"]
NAMES = MARKUP + FORMULAS + PATHS + DATABASE + SIGNS
# What is no text at all: half a surrogate pair, a byte that no UTF-8 has, a zero.
BYTES = [b"half \xed\xa0\xbd pair", b"byte \xff\xfe here", b"zero\x00here"]
SYSTEM = osr.SpatialReference()
SYSTEM.ImportFromEPSG(32621)
DIRECTIONS = "\u061c\u200e\u200f\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069"


def given():
    return NAMES + [each.split(b"\x00")[0].decode("utf-8", "replace") for each in BYTES]  # the host stops at a zero


def folded(text):
    """What has to come through: signs that are seen. Blanks count once; signs that are none are one."""
    text = unicodedata.normalize("NFC", text or "")
    text = re.sub("[\ud800-\udfff\ufffd\ufdd0-\ufdef\ufffe\uffff]+", "\ufffd", text)
    text = "".join(" " if each in "\t\n\r\u2028\u2029" else each for each in text
                   if each in "\t\n\r" or unicodedata.category(each) not in ("Cc", "Cf"))
    return re.sub(r"\s+", " ", text).strip()


# ---- make

def table(out, name, kind, fields, rows):
    layer = out.CreateLayer(name, SYSTEM if kind != ogr.wkbNone else None, kind, ["SPATIAL_INDEX=NO"])
    for field, of in fields:
        layer.CreateField(ogr.FieldDefn(field, of))
    layer.StartTransaction()
    for values, geometry in rows:
        feature = ogr.Feature(layer.GetLayerDefn())
        for field, value in values.items():
            feature.SetField(field, value)
        if geometry:
            feature.SetGeometry(ogr.CreateGeometryFromWkt(geometry))
        layer.CreateFeature(feature)
    layer.CommitTransaction()


def make_layers(path, texts, raw):
    """A route of two legs for each text, between points called after it and the two next, in a cover of that class."""
    count = len(texts) + len(raw)
    places = [(632300 + 60 * (i % 8), 5406900 + 80 * (i // 8)) for i in range(count + 2)]
    # Stand-ins that are replaced by the bytes, since a feature takes text only.
    texts = texts + ["raw %d" % i for i in range(len(raw))]
    out = ogr.GetDriverByName("GPKG").CreateDataSource(path)
    string, real = ogr.OFTString, ogr.OFTReal
    line = ["LINESTRING(%s)" % ",".join("%d %d" % (x, y) for x, y in places[i:i + 3]) for i in range(count)]
    box = ["POLYGON((%d %d,%d %d,%d %d,%d %d,%d %d))" % (x, y - 20, x, y + 60, x + 60, y + 60, x + 60, y - 20, x, y - 20)
           for x, y in places]
    table(out, "routes", ogr.wkbLineString, [("route", string)], [({"route": t}, line[i]) for i, t in enumerate(texts)])
    table(out, "points", ogr.wkbPoint, [("name", string)],
          [({"name": t}, "POINT(%d %d)" % places[i]) for i, t in enumerate(texts)])
    table(out, "cover", ogr.wkbPolygon, [("class", string)], [({"class": t}, box[i]) for i, t in enumerate(texts)])
    table(out, "kinds", ogr.wkbNone, [("class", string), ("sight_m", real), ("speed_f", real), ("pace_f", real),
                                      ("note", string)],
          [({"class": t, "sight_m": 20, "speed_f": 0.8, "pace_f": 1, "note": t}, None) for t in texts])
    table(out, "walkers", ogr.wkbNone, [("walker", string), ("paces_100m", real)],
          [({"walker": t, "paces_100m": 130}, None) for t in texts])
    table(out, "met", ogr.wkbPoint, [("route", string), ("leg", ogr.OFTInteger), ("feature", string), ("at_m", real),
                                     ("role", string)],
          [({"route": t, "leg": 1, "feature": t, "at_m": 10, "role": "crosses"}, "POINT(%d %d)" % places[i])
           for i, t in enumerate(texts)])
    out = None
    with sqlite3.connect(path) as base:
        for name, field in (("routes", "route"), ("points", "name"), ("cover", "class"), ("kinds", "class"),
                            ("walkers", "walker"), ("met", "feature"), ("met", "route")):
            for i, each in enumerate(raw):
                base.execute("update %s set %s = cast(? as text) where %s = ?" % (name, field, field),
                             (each, "raw %d" % i))


def make(folder):
    os.makedirs(folder, exist_ok=True)
    make_layers(os.path.join(folder, "names.gpkg"), NAMES, BYTES)
    make_layers(os.path.join(folder, "plain.gpkg"), ["Name %d" % (i + 1) for i in range(len(given()))], [])
    words = "long name " * 100000
    make_layers(os.path.join(folder, "long.gpkg"), ["x" * 1000000, words, "\U0001f98a" * 250000, "<" * 1000000], [])


# ---- run

def run(seconds, megabytes, command):
    # Of the processor, since others may use the machine too; the clock ends only what waits for ever.
    limit = int(seconds)
    resource.setrlimit(resource.RLIMIT_CPU, (limit, limit + 5))
    try:
        code = subprocess.run(command, timeout=10 * limit).returncode
    except subprocess.TimeoutExpired:
        sys.exit("took longer than %d s" % (10 * limit))
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    most = used.ru_maxrss / 1024
    print("   %.1f s, %.0f MB" % (used.ru_utime + used.ru_stime, most), file=sys.stderr)
    if code < 0:
        sys.exit("ended by signal %d; more than %d s of the processor are not allowed" % (-code, limit))
    if most > float(megabytes):
        sys.exit("took %.0f MB" % most)
    sys.exit(code)


# ---- layers

def texts_of(path, field):
    source = ogr.Open(path)
    return [feature.GetField(field) for feature in source.GetLayer(0)]


def same_set(where, wanted, found):
    wanted, found = {folded(each) for each in wanted} - {""}, {folded(each) for each in found} - {""}
    if wanted - found:
        sys.exit("%s: %d names are lost or changed: %r; there is %r" % (
            where, len(wanted - found), sorted(wanted - found)[:3], sorted(found - wanted)[:5]))
    if found - wanted:
        sys.exit("%s: %d names that nobody gave: %r" % (where, len(found - wanted), sorted(found - wanted)[:3]))


def layers(folder):
    for name in ("legs.gpkg", "legs.csv", "legs.geojson"):
        path = os.path.join(folder, name)
        for field in "route", "from_name":
            same_set("%s, %s" % (name, field), given(), texts_of(path, field))
        # A leg tells the class with the longest share only.
        classes = {folded(each) for each in texts_of(path, "cover")} - {""}
        if len(classes) < len(given()) / 2 or classes - {folded(each) for each in given()}:
            sys.exit("%s: classes of cover that nobody gave: %r" % (name, sorted(classes)))
    with open(os.path.join(folder, "legs.geojson"), encoding="utf-8") as stream:
        json.load(stream)
    print("legs as GeoPackage, CSV and GeoJSON: %d names as given" % len(given()))


# ---- files

DEVICE = re.compile(r"(con|prn|aux|nul|com[0-9\u00b9\u00b2\u00b3]|lpt[0-9\u00b9\u00b2\u00b3]|conin\$|conout\$)$", re.I)


def check_names_of_files(folder):
    """Files only, whose names any system takes.

    Source: Microsoft, "Naming Files, Paths, and Namespaces" (signs and devices kept back, no dot or blank at the end;
    255 UTF-16 units); Linux takes 255 bytes.
    """
    names = os.listdir(folder)
    for name in names:
        path = os.path.join(folder, name)
        if not os.path.isfile(path) or os.path.islink(path):
            sys.exit("%r is no plain file" % path)
        fault = (re.search(r'[<>:"/\\|?*\x00-\x1f\x7f]', name) or re.search(r"[. ]$|^[. ~-]", name)
                 or DEVICE.match(name.split(".")[0].rstrip()) or len(name.encode()) > 255
                 or any(unicodedata.category(each) in ("Cc", "Cf", "Cs", "Co", "Cn") for each in name))
        if fault:
            sys.exit("a file is called %r" % name)
    alike = {unicodedata.normalize("NFKC", name).casefold() for name in names}
    if len(alike) != len(names):
        sys.exit("names of files are alike where case does not count")
    return names


class Page(html.parser.HTMLParser):
    """Elements, attributes, references and the text of a page."""

    def __init__(self, content):
        super().__init__(convert_charrefs=True)
        self.parts, self.references, self.text, self.content = set(), [], "", content
        self.feed(content)
        self.close()

    @classmethod
    def read(cls, path):
        with open(path, encoding="utf-8", newline="") as stream:
            return cls(stream.read())

    def handle_starttag(self, tag, attrs):
        self.parts.add(tag)
        for name, value in attrs:
            if name == "class" and re.fullmatch("[a-z ]+", value):
                continue    # a long name's is another
            self.parts.add("%s %s" % (tag, name))
            if name in ("href", "src"):
                self.references.append(value)
            elif name not in ("content", "class", "aria-label"):
                self.parts.add("%s %s=%s" % (tag, name, value))

    def handle_endtag(self, tag):
        self.parts.add("/" + tag)

    def handle_comment(self, data):
        self.parts.add("comment")

    def unknown_decl(self, data):
        self.parts.add("declaration")

    def handle_pi(self, data):
        self.parts.add("instruction")

    def handle_data(self, data):
        self.text += data


def check_page(path, allowed):
    page = Page.read(path)
    if page.parts - allowed:
        sys.exit("%s has what pages of harmless names have not: %s" % (path, sorted(page.parts - allowed)))
    for reference in page.references:
        name = urllib.parse.unquote(reference)
        if reference.startswith("#"):
            continue
        if "/" in name.replace("./", "", 1) or not os.path.isfile(os.path.join(os.path.dirname(path), name)):
            sys.exit("%s refers to %r" % (path, reference))
    bad = [each for each in page.content if each not in "\n\t" and unicodedata.category(each) == "Cc" or each in DIRECTIONS]
    if bad:
        sys.exit("%s holds the sign %r" % (path, bad[0]))
    return folded(page.text)


def allowed_parts(plain):
    pages = glob.glob(os.path.join(plain, "*.html"))
    if not pages:
        sys.exit("there are no pages of harmless names")
    return set().union(*(Page.read(each).parts for each in pages))


def all_told(where, texts, names):
    """Each name stands whole in one of the texts; what nobody sees of it aside."""
    for name in names:
        wanted = folded(name)
        if not any(wanted in text for text in texts):
            sys.exit("%s: %r stands nowhere" % (where, wanted[:100]))


TEXTS = ("route", "walker", "direction", "from_name", "to_name", "date", "dial_text", "compass_pt", "cover", "warnings")
# "compass_pt" and numbers aside; what a spreadsheet takes for a formula, also behind what nobody sees.
FORMULA = re.compile("^[\t\r\n]|(^|[;\t\r\n])[\\s\u200b\ufeff\u2060\x00-\x20]*[=+@\uff1d\uff0b\uff0d\uff20-]")


def check_csv(path):
    with open(path, "rb") as stream:
        if re.search(rb"[\x00-\x08\x0b\x0c\x0e-\x1f\x7f]", stream.read()):
            sys.exit("%s holds control signs" % path)
    with open(path, newline="", encoding="utf-8-sig") as stream:
        rows = list(csv.DictReader(stream, strict=True))
    for row in rows:
        if None in row or None in row.values():
            sys.exit("%s: a row with more or fewer cells" % path)
        for field in TEXTS:
            if FORMULA.search(row[field]):
                sys.exit("%s, %s: a formula: %r" % (path, field, row[field]))
    return rows


def tables(folder, plain, whose):
    names = check_names_of_files(folder)
    allowed = allowed_parts(plain)
    pages = [os.path.join(folder, each) for each in names if each.endswith(".html")]
    texts = [check_page(each, allowed) for each in pages]
    index = [check_page(os.path.join(folder, "index.html"), allowed)]
    if len(pages) != len(given()) + 1:
        sys.exit("%d pages of %d names" % (len(pages), len(given())))
    all_told("pages", texts, given())
    all_told("index", index, given())
    rows = [row for each in names if each.endswith(".csv") for row in check_csv(os.path.join(folder, each))]
    drop = lambda text: folded(text).replace("'", "")
    same_set("CSV", [drop(each) for each in given()], [drop(row[whose]) for row in rows])
    print("%d pages without foreign elements, %d rows without formulas: all names as given" % (len(pages), len(rows)))


ACTIVE = re.compile(rb"/(JavaScript|JS|Launch|URI|OpenAction|AA|EmbeddedFile|SubmitForm|GoToR)\b")


def cards(folder, plain, count=None):
    names = check_names_of_files(folder)
    listed = [each for each in names if each == "cards.html"]
    check_page(os.path.join(folder, *listed), allowed_parts(plain))
    files = [each for each in names if each.endswith(".pdf")]
    count = int(count or len(given()))
    if len(files) != count:
        sys.exit("%d cards of %d names" % (len(files), count))
    words = 0
    for name in files:
        words += check_card(os.path.join(folder, name))
    print("%d cards, %d words, none of them beyond the paper" % (len(files), words))


def check_card(path):
    with open(path, "rb") as stream:
        # Not in what is packed, whose bytes may be anything.
        found = ACTIVE.search(re.sub(rb"\bstream\r?\n.*?\bendstream\b", b"", stream.read(), flags=re.DOTALL))
    if found:
        sys.exit("%s can act: %s" % (path, found.group()))
    out = subprocess.run(["pdftotext", "-bbox", path, "-"], check=True, capture_output=True).stdout.decode("utf-8", "replace")
    count, wide, high = 0, 0.0, 0.0
    for line in out.splitlines():
        page = re.search(r'<page width="([\d.]+)" height="([\d.]+)"', line)
        if page:
            wide, high = map(float, page.groups())
        word = re.search(r'<word xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)"', line)
        if not word:
            continue
        count += 1
        left, top, right, bottom = map(float, word.groups())
        # Half a point for the boxes of letters that lean out.
        if left < -0.5 or right > wide + 0.5 or top < -0.5 or bottom > high + 0.5:
            sys.exit("%s: a word stands beyond the paper: %s" % (path, line[:200]))
    if count < 20:
        sys.exit("%s holds %d words only" % (path, count))
    return count


def gpx(path, whose):
    root = xml.parse(path).getroot()
    space = {"g": "http://www.topografix.com/GPX/1/1", "leg": "urn:brushline:legs:1"}
    # What XML cannot hold is another sign there.
    drop = lambda text: folded(folded(text).replace("\ufffd", ""))
    same_set("GPX, " + whose, [drop(each) for each in given()],
             [drop(each.text) for each in root.iterfind(".//leg:" + whose, space)])
    texts = [drop(each.text) for each in root.iterfind("g:rte/g:name", space)]
    all_told("GPX", texts, [drop(each) for each in given()])
    print("GPX: %d routes, all names as given" % len(texts))


# Fields of our layers that hold numbers, and words of our own ("out" or "back").
COUNTS = ("leg", "legs", "mark", "number", "paces", "line_paces", "run_paces", "stop_paces", "back_dial", "piece",
          "direction")


def tips(folder):
    """A map tip of a layer whose texts are all markup has no elements but the style's own."""
    from qgis.core import (QgsApplication, QgsExpression, QgsExpressionContext, QgsExpressionContextUtils, QgsFeature,
                           QgsVectorLayer)
    app = QgsApplication([], False)
    app.initQgis()
    count = 0
    for path in sorted(glob.glob(os.path.join(folder, "*", "styles", "*.qml"))):
        with open(path, encoding="utf-8") as stream:
            found = re.search("<mapTip>(.*?)</mapTip>", stream.read(), re.DOTALL)
        if not found:
            continue
        tip = html.unescape(found.group(1))
        names = sorted(set(re.findall(r'"(\w+)"', tip)))
        numbers = {name for name in names if name in COUNTS or name.endswith("_m") or 'round("%s"' % name in tip}
        layer = QgsVectorLayer("Point?crs=EPSG:32621" + "".join(
            "&field=%s:%s" % (name, "double" if name in numbers else "string") for name in names), "x", "memory")
        feature = QgsFeature(layer.fields())
        feature.setAttributes([7.0 if name in numbers else "&lt;i>" + MARKUP[0] + MARKUP[1] + name for name in names])
        layer.dataProvider().addFeatures([feature])
        context = QgsExpressionContext(QgsExpressionContextUtils.globalProjectLayerScopes(layer))
        context.setFeature(next(layer.getFeatures()))
        shown = QgsExpression.replaceExpressionText(tip, context)
        page = Page(shown)
        foreign = page.parts - {"b", "/b", "br"}
        if foreign:
            sys.exit("%s: a name brings elements into the map tip: %s" % (path, sorted(foreign)))
        if len(numbers) < len(names) and "<script>" not in page.text:
            sys.exit("%s: the name does not stand in the map tip: %s" % (path, shown))
        count += 1
    if count < 10:
        sys.exit("only %d styles with a map tip" % count)
    print("%d map tips without foreign elements" % count)
    app.exitQgis()


def log(path):
    with open(path, encoding="utf-8", errors="surrogateescape", newline="") as stream:
        content = stream.read()
    for line in content.split("\n"):
        bad = [each for each in line.rstrip("\r") if each != "\t" and unicodedata.category(each) == "Cc" or each in DIRECTIONS]
        if bad:
            sys.exit("the log holds the sign %r: %r" % (bad[0], line[:200]))
        if len(line) > 100000:
            sys.exit("the log holds a line of %d signs: %r" % (len(line), line[:100]))


if __name__ == "__main__":
    what, *rest = sys.argv[1:]
    if what == "run":
        run(rest[0], rest[1], rest[2:])
    {"make": make, "layers": layers, "tables": tables, "cards": cards, "gpx": gpx, "log": log, "tips": tips}[what](*rest)
