#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""Print annotated legs as tables, one for each route, direction and walker.

Reads any layer that annotatelegs wrote. Needs the Python module of GDAL only.
"""
import argparse
import re
import signal
import sys
import textwrap
import unicodedata

from osgeo import gdal, ogr

WIDTH = 98
GAP = "  "


class Column:
    """A column of the table: its head in two lines, how a leg's value is written, and how it is laid out."""

    def __init__(self, head, unit, text, key=None, left=False):
        self.head, self.unit, self.text, self.left = head, unit, text, left
        self.key = key      # left out where no leg has this field
        self.width = 0


def width_of(text):
    """Columns that a text takes on a terminal."""
    return sum(0 if unicodedata.combining(c) else 2 if unicodedata.east_asian_width(c) in "WF" else 1
               for c in text)


def fitted(text, width):
    """The text, cut with an ellipsis when it is wider than width."""
    if width_of(text) <= width:
        return text
    while width_of(text) > width - 1:
        text = text[:-1]
    return text + "…"


def line(values, columns):
    cells = []
    for value, column in zip(values, columns):
        value = fitted(value, column.width)
        space = " " * (column.width - width_of(value))
        cells.append(value + space if column.left else space + value)
    return GAP.join(cells).rstrip()


def number(value, decimals=0):
    return "–" if value is None else "%.*f" % (decimals, value)


def back_text(leg):
    """The back bearing, written the way dial_text is."""
    back, dial = leg["back_dial"], leg["dial_text"]
    if back is None:
        return "–"
    like = re.match(r"(\d+)(?:\.(\d+))?(.*)$", dial or "")
    if not like:
        return "%g" % back
    whole, decimals, unit = like.group(1), len(like.group(2) or ""), like.group(3)
    wide = len(whole) + (decimals + 1 if decimals else 0)
    return "%0*.*f%s" % (wide, decimals, back, unit)


def columns_for(legs):
    every = [
        Column("leg", "", lambda leg: str(leg["leg"])),
        Column("from", "", lambda leg: leg["from_name"] or "", key="from_name", left=True),
        Column("to", "", lambda leg: leg["to_name"] or "", key="to_name", left=True),
        Column("dial", "", lambda leg: leg["dial_text"] or "–"),
        Column("paces", "", lambda leg: number(leg["paces"])),
        Column("dist", "m", lambda leg: number(leg["dist_m"])),
        Column("climb", "m", lambda leg: number(leg["climb_m"]), key="climb_m"),
        Column("drop", "m", lambda leg: number(leg["drop_m"]), key="drop_m"),
        Column("walk", "min", lambda leg: number(leg["walk_min"], 1)),
        Column("sight", "m", lambda leg: number(leg["sight_m"]), key="sight_m"),
        Column("marks", "", lambda leg: number(leg["marks"]), key="sight_m"),
        Column("back", "dial", back_text),
    ]
    columns = [each for each in every if not each.key or any(leg[each.key] is not None for leg in legs)]
    for each in columns:
        each.width = max(width_of(text) for text in [each.head, each.unit] + [each.text(leg) for leg in legs])
    # Names give way when the line gets too long.
    names = [each for each in columns if each.left]
    room = WIDTH - sum(each.width for each in columns if not each.left) - len(GAP) * (len(columns) - 1)
    for each in names:
        each.width = min(each.width, max(room // 2, room - sum(other.width for other in names if other is not each)))
    return columns


def table(title, legs):
    columns = columns_for(legs)
    print(title)
    print(line([each.head for each in columns], columns))
    print(line([each.unit for each in columns], columns))
    for leg in legs:
        print(line([each.text(leg) for each in columns], columns))
        if leg["warnings"]:
            print(textwrap.fill(leg["warnings"], WIDTH, initial_indent="     ! ", subsequent_indent="       "))

    def total(key):
        return number(sum(leg[key] or 0 for leg in legs))

    parts = ["1 leg" if len(legs) == 1 else "%d legs" % len(legs), total("dist_m") + " m", total("paces") + " paces"]
    if any(leg["climb_m"] is not None for leg in legs):
        parts.append("up %s m and down %s m" % (total("climb_m"), total("drop_m")))
    parts.append(total("walk_min") + " min of walking without a stop")
    print(", ".join(parts))
    print()


def main():
    ap = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    ap.add_argument("file", help="the legs, in any vector format")
    ap.add_argument("--layer", help="the layer's name; the first when not given")
    given = ap.parse_args()
    if hasattr(signal, "SIGPIPE"):
        signal.signal(signal.SIGPIPE, signal.SIG_DFL)     # quiet when the reader has seen enough
    sys.stdout.reconfigure(encoding="utf-8")

    gdal.UseExceptions()
    try:
        source = gdal.OpenEx(given.file, gdal.OF_VECTOR | gdal.OF_READONLY)
    except RuntimeError as error:
        sys.exit("%s cannot be read: %s" % (given.file, error))
    layer = source.GetLayerByName(given.layer) if given.layer else source.GetLayer(0)
    if layer is None:
        sys.exit("%s has no layer %s" % (given.file, given.layer or "at all"))
    names = [field.GetName() for field in layer.schema]
    wanted = ["route", "leg", "walker", "direction", "from_name", "to_name", "date", "dial_text", "back_dial",
              "dist_m", "climb_m", "drop_m", "paces", "walk_min", "sight_m", "marks", "warnings"]
    lacking = [name for name in wanted if name not in names]
    if lacking:
        sys.exit("%s holds no annotated legs; it lacks the fields %s." % (given.file, ", ".join(lacking)))

    blocks = {}     # in the order they are met
    for feature in layer:
        leg = {name: feature.GetField(name) for name in wanted}
        key = (leg["route"] or "", leg["direction"] or "", leg["walker"] or "")
        blocks.setdefault(key, []).append(leg)
    for (route, direction, walker), legs in blocks.items():
        day = (legs[0]["date"] or "").replace("/", "-")
        title = " · ".join(part for part in (route, walker, "way back" if direction == "back" else "", day) if part)
        table(title, sorted(legs, key=lambda leg: leg["leg"]))


if __name__ == "__main__":
    main()
