#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""leg_tables_files_check.py LEGS.gpkg FOLDER: the CSV files of FOLDER hold the legs, for csv as for GDAL.

Every leg is found once; numbers are the same bit for bit; texts are the same but for the apostrophe before formulas,
spaces at the ends and control signs, which CSV cannot hold.
"""
import csv
import re
import struct
import sys
from pathlib import Path

from osgeo import gdal, ogr

gdal.UseExceptions()
ogr.UseExceptions()
CONTROL = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\x7f]")
FORMULA = "=+-@\uff1d\uff0b\uff0d\uff20"


def bits(number):
    return struct.pack("<d", float(number))


def plain(text):
    return CONTROL.sub("", text or "").replace("'", "").strip()


def legs(path):
    source = ogr.Open(str(path))
    layer = source.GetLayer(0)
    names = [field.GetName() for field in layer.schema]
    kinds = {field.GetName(): field.GetType() for field in layer.schema}
    rows = []
    for feature in layer:
        row = {name: feature.GetField(name) for name in names}
        if row["date"]:
            row["date"] = row["date"].replace("/", "-")
        rows.append(row)
    return names, kinds, rows


def same(given, text, kind):
    if given is None:
        return text == ""
    if kind == ogr.OFTReal:
        return bits(given) == bits(text) or given == 0 == float(text)  # the database keeps no minus before a zero
    if kind in (ogr.OFTInteger, ogr.OFTInteger64):
        return str(given) == text
    return plain(given) == plain(text)


def check_gdal(path, names, kinds, rows):
    """The same texts without types, the same numbers with those it finds."""
    for detect in ("NO", "YES"):
        data = gdal.OpenEx(str(path), gdal.OF_VECTOR, open_options=["AUTODETECT_TYPE=" + detect])
        layer = data.GetLayer(0)
        assert [field.GetName() for field in layer.schema] == names, path  # the byte order mark is no part of "route"
        assert layer.GetFeatureCount() == len(rows), path
        for feature, row in zip(layer, rows):
            for name, text in zip(names, row):
                if detect == "NO":
                    # GDAL makes one sign of a line's end inside a text.
                    read = feature.GetFieldAsString(name) or ""
                    assert read == text.replace("\r\n", "\n"), (path, name, text, read)
                elif text and kinds[name] == ogr.OFTReal:
                    assert bits(feature.GetField(name)) == bits(text), (path, name, text)


def main():
    names, kinds, wanted = legs(sys.argv[1])
    names = [name for name in names if name != "fid"]
    files = sorted(Path(sys.argv[2]).glob("*.csv"))
    if not files:
        sys.exit("no CSV files")
    found = 0
    for path in files:
        raw = path.read_bytes()
        assert raw.startswith(b"\xef\xbb\xbf") and raw.endswith(b"\r\n"), path
        with open(path, newline="", encoding="utf-8-sig") as stream:
            rows = list(csv.reader(stream, strict=True))
        assert rows[0] == names, (path, rows[0])
        for row in rows[1:]:
            assert len(row) == len(names), (path, row)
            for name, text in zip(names, row):
                if kinds[name] == ogr.OFTString:
                    assert text.lstrip()[:1] not in tuple(FORMULA) or text == "", (path, name, text)
            matches = [
                leg for leg in wanted if all(same(leg[name], text, kinds[name]) for name, text in zip(names, row))
            ]
            assert matches, (path, row)
            wanted.remove(matches[0])
            found += 1
        check_gdal(path, names, kinds, rows[1:])
    lost = [(leg["route"], leg["walker"], leg["leg"]) for leg in wanted]
    assert not lost, lost
    print(f"{len(files)} CSV files, {found} legs: the same")


main()
