# SPDX-License-Identifier: GPL-2.0-or-later
"""whole_file_check.py [--like FOLDER] FILE ...: whether files can be read to their ends; with --like, whether each is as
long as the one of its name in that folder, in points (GPX), rows (CSV, tables of HTML), pages (PDF), cells (GeoTIFF) or elements (QML).
Prints the sum of these."""
import csv
import html.parser
import os
import re
import subprocess
import sys
import xml.etree.ElementTree as xml

UNCLOSED = {"meta", "link", "br", "hr", "img", "col", "input", "wbr"}


class Page(html.parser.HTMLParser):
    def __init__(self):
        super().__init__()
        self.open, self.rows, self.ended = [], 0, False

    def handle_starttag(self, tag, attrs):
        self.rows += tag == "tr"
        if tag not in UNCLOSED:
            self.open.append(tag)

    def handle_startendtag(self, tag, attrs):
        self.rows += tag == "tr"

    def handle_endtag(self, tag):
        if not self.open or self.open.pop() != tag:
            sys.exit("</%s> closes nothing." % tag)
        self.ended = tag == "html"


def gpx(path):
    return sum(each.tag.endswith("}rtept") or each.tag.endswith("}wpt") for each in xml.parse(path).iter())


def table(path):
    with open(path, newline="", encoding="utf-8-sig") as file:
        text = file.read()
    if not text.endswith("\n"):
        sys.exit("the last row does not end.")
    rows = list(csv.reader(text.splitlines(True), strict=True))
    if len({len(row) for row in rows}) != 1:
        sys.exit("rows of different lengths.")
    return len(rows)


def page(path):
    with open(path, encoding="utf-8") as file:
        reader = Page()
        reader.feed(file.read())
        reader.close()
    if reader.open or not reader.ended:
        sys.exit("the page does not end.")
    return reader.rows


def pdf(path):
    with open(path, "rb") as file:
        if not file.read().rstrip().endswith(b"%%EOF"):
            sys.exit("no %%EOF at the end.")
    read = subprocess.run(["pdftotext", path, "-"], check=True, capture_output=True, text=True)
    if read.stderr.strip():
        sys.exit(read.stderr)
    told = subprocess.run(["pdfinfo", path], check=True, capture_output=True, text=True).stdout
    return int(re.search(r"^Pages:\s+(\d+)", told, re.MULTILINE).group(1))


def raster(path):
    from osgeo import gdal
    gdal.UseExceptions()
    return gdal.Open(path).ReadAsArray().size


def style(path):
    return sum(1 for _ in xml.parse(path).iter())


KINDS = {"gpx": gpx, "csv": table, "html": page, "pdf": pdf, "tif": raster, "qml": style}


def count(path):
    return KINDS[path.rsplit(".", 1)[-1]](path)


files = sys.argv[1:]
like = files[1] if files[0] == "--like" else None
if like:
    del files[:2]
counts = [count(file) for file in files]
for file, found in zip(files, counts):
    if like and count(os.path.join(like, os.path.basename(file))) != found:
        sys.exit("%s: %d, not as in %s" % (file, found, like))
print(sum(counts))
