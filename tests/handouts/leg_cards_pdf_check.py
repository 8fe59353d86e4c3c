# SPDX-License-Identifier: GPL-2.0-or-later
"""leg_cards_pdf_check.py LEGS.gpkg FOLDER [options]: the cards in a folder say what the layer of annotated legs says.

Text by pdftotext, fonts by pdffonts, pictures by pdfimages, pages by pdfinfo (poppler); lines by pdf_paths.py. The
layer is read with sqlite3 as a GeoPackage (OGC 12-128r18). Every difference is printed; ends with 1 if there is any.
"""
import argparse
import html
import math
import os
import re
import sqlite3
import struct
import subprocess
import sys

import pdf_paths

LEG_WIDTH, NORTH_WIDTH = 0.6, 0.2     # millimetres; course_drawing.h
LENGTH_TOLERANCE = 0.005              # of a length on paper: half a percent
TURN_TOLERANCE = 0.1                  # degrees
SMALLEST_TEXT = 6.5                   # points
# From the top of a word's box to its bottom, in ems: ascent and descent of DejaVu Sans (0.928 + 0.236).
BOX_EMS = 1.164

problems = []


def problem(text):
    problems.append(text)
    print("FAILED: " + text)


def run(*command):
    return subprocess.run(command, check=True, stdout=subprocess.PIPE).stdout.decode("utf-8")


def line_of(blob):
    """The points of a GeoPackage's line, first and last."""
    envelope = {0: 0, 1: 32, 2: 48, 3: 48, 4: 64}[(blob[3] >> 1) & 7]
    start = 8 + envelope
    order = "<" if blob[start] == 1 else ">"
    kind = struct.unpack_from(order + "I", blob, start + 1)[0]
    if kind % 1000 != 2:
        sys.exit("a leg is no plain line but of type %d" % kind)
    size = 2 + (1 if kind // 1000 in (1, 2) else 2 if kind // 1000 == 3 else 0)
    count = struct.unpack_from(order + "I", blob, start + 5)[0]
    numbers = struct.unpack_from(order + "%dd" % (size * count), blob, start + 9)
    return numbers[:2], numbers[-size:][:2]


def legs_of(path):
    """The sheets of the layer: {(route, walker, direction): [row, ...]}."""
    with sqlite3.connect(path) as file:
        file.row_factory = sqlite3.Row
        table = file.execute("SELECT table_name, column_name FROM gpkg_geometry_columns").fetchone()
        sheets = {}
        for row in file.execute('SELECT * FROM "%s" ORDER BY fid' % table[0]):
            row = dict(row)
            row["ends"] = line_of(row.pop(table[1]))
            sheets.setdefault((row["route"], row["walker"], row["direction"]), []).append(row)
    return sheets


class Word:
    def __init__(self, page, match):
        self.page = page
        self.left, self.top, self.right, self.bottom = (float(match.group(i)) for i in range(1, 5))
        self.text = html.unescape(match.group(5))
        self.middle = (self.top + self.bottom) / 2
        self.height = self.bottom - self.top


def words_of(path):
    words, page = [], 0
    pattern = re.compile(r'<word xMin="([^"]+)" yMin="([^"]+)" xMax="([^"]+)" yMax="([^"]+)">(.*)</word>')
    for line in run("pdftotext", "-bbox", path, "-").splitlines():
        if "<page " in line:
            page += 1
        match = pattern.search(line)
        if match:
            words.append(Word(page, match))
    return words


def label_of(leg, legs):
    """What a card calls it: a leg with detours has several rows, told apart by letters."""
    several = sum(other["leg"] == leg["leg"] for other in legs) > 1
    return str(leg["leg"]) + (chr(ord("a") + leg["piece"] - 1) if several else "")


def check_pieces(name, legs, text):
    """What to do on each piece of a leg with detours, and how its paces count."""
    for leg in legs:
        if label_of(leg, legs) == str(leg["leg"]):
            continue
        told = []
        if leg["turn"] and leg["piece"] > 1:
            told.append("Turn %s, a quarter turn." % leg["turn"])
        if leg["part"] == "past":
            told.append("Past %s." % leg["obstacle"])
        if leg["part"] in ("along", "past"):
            told.append("from %d to %d." % (leg["run_paces"] - leg["paces"], leg["run_paces"]))
        else:
            told.append("These paces do not count for the leg.")
        for words in told:
            if words not in text:
                problem("%s: leg %s does not say “%s”" % (name, label_of(leg, legs), words))


def check_rows(name, words, legs, text):
    """Each leg's number, dial and paces stand in one line, and nothing is larger than the last two."""
    largest = max(word.height for word in words)
    for leg in legs:
        dial, paces = leg["dial_text"].split()[0], str(leg["paces"])
        found = []
        for number in (word for word in words if word.text == label_of(leg, legs)):
            beside = [word for word in words if word.page == number.page and word is not number
                      and abs(word.middle - number.middle) < 0.3 * largest]
            dials = [word for word in beside if word.text == dial and word.left > number.right]
            counts = [word for word in beside if word.text == paces]
            found += [(d, p) for d in dials for p in counts if p.left > d.right]
        if not found:
            problem("%s: leg %s with dial %s and %s paces is on no line" % (name, leg["leg"], dial, paces))
            continue
        if not any(min(d.height, p.height) > 0.98 * largest for d, p in found):
            problem("%s: leg %s's dial and paces are not the largest figures" % (name, leg["leg"]))
    for leg in legs:
        for end in ("from", "to"):
            place = leg[end + "_name"]
            if place and "%s %s" % (end, place) not in text:
                problem("%s: leg %s %s %s is not told" % (name, leg["leg"], end, place))
        if leg["warnings"] and leg["warnings"] not in text:
            problem("%s: leg %s's warning is not told: %s" % (name, leg["leg"], leg["warnings"]))
    total = sum(leg["paces"] for leg in legs)
    for wanted in (legs[0]["route"], legs[0]["date"], "%d paces" % total, "magnetic north",
                   "%.1f° %s ± %.1f°" % (abs(legs[0]["decl"]), "W" if legs[0]["decl"] < 0 else "E",
                                         legs[0]["decl_err"])):
        if wanted not in text:
            problem("%s: “%s” is not told" % (name, wanted))


def turn_of(a, b):
    """Clockwise from upward; y grows upward."""
    return math.degrees(math.atan2(b[0] - a[0], b[1] - a[1]))


def apart(a, b):
    return abs(math.remainder(a - b, 360))


def check_map(name, path, words, legs, scale, grid_is_map, with_legs):
    """Legs are as long on paper as the scale on the card says and run by their bearings; so do north lines."""
    text = " ".join(word.text for word in words).replace("\u00a0", " ")
    told = re.findall(r"1:(\d{1,3}(?: \d{3})+|\d+)", text)
    if not told:
        problem("%s: no scale is told" % name)
        return
    number = float(told[-1].replace(" ", ""))  # below the map; a note over it may name another
    if scale and number != scale:
        problem("%s: the scale is 1:%g instead of 1:%g" % (name, number, scale))
    strokes = [stroke for stream in pdf_paths.content_streams(path) for stroke in pdf_paths.strokes(stream)]

    def of(width, grey):
        return [stroke for stroke in strokes
                if abs(stroke.width - width) < 0.01 * width + 0.002 and abs(stroke.grey - grey) < 0.02
                and not stroke.closed]

    drawn = [stroke for stroke in of(LEG_WIDTH, 0) if len(stroke.points) >= 2]
    if len(drawn) != len(legs):
        problem("%s: %d legs are drawn instead of %d" % (name, len(drawn), len(legs)))
        return
    skew = None
    for leg, stroke in zip(legs, drawn):
        a, b = stroke.points[0], stroke.points[-1]
        paper, wanted = math.dist(a, b), leg["dist_m"] * 1000 / number
        if abs(paper / wanted - 1) > LENGTH_TOLERANCE:
            problem("%s: leg %d is %.3f mm long instead of %.3f" % (name, leg["leg"], paper, wanted))
        turn = turn_of(a, b) - (leg["grid_brg"] if grid_is_map else leg["true_brg"])
        skew = turn if skew is None else skew
        if apart(turn, 0 if grid_is_map else skew) > TURN_TOLERANCE:
            problem("%s: leg %d is turned by %.3f degrees" % (name, leg["leg"], math.remainder(turn, 360)))
    # Where legs meet on the ground they meet on paper.
    for before, after in zip(drawn, drawn[1:]):
        if math.dist(before.points[-1], after.points[0]) > 0.02:
            problem("%s: the legs do not meet" % name)
    # The layer's own lines, drawn by the host below the course, lie where the course does.
    if with_legs:
        others = [stroke for stroke in strokes if abs(stroke.width - LEG_WIDTH) > 0.1 and not stroke.closed]
        for leg, stroke in zip(legs, drawn):
            if not any(math.dist(other.points[0], stroke.points[0]) < 0.1
                       and math.dist(other.points[-1], stroke.points[-1]) < 0.1
                       for other in others if len(other.points) == 2 and abs(other.width - 1.68) > 0.1):
                problem("%s: leg %d does not lie on the map's own line" % (name, leg["leg"]))
    norths = of(NORTH_WIDTH, 0.25)
    norths = [stroke for stroke in norths if len(stroke.points) == 2]
    if not norths:
        problem("%s: no north lines" % name)
    # Magnetic north, from the map's upward: declination less convergence.
    wanted = [leg["decl"] + (-leg["converg"] if grid_is_map else skew) for leg in legs]
    for stroke in norths:
        turn = turn_of(*stroke.points)
        if min(apart(turn, each) for each in wanted) > TURN_TOLERANCE:
            problem("%s: a north line is turned by %.3f degrees instead of %.3f" % (name, turn, wanted[0]))


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("legs")
    parser.add_argument("folder")
    parser.add_argument("--size", help="of a page: width x height in points")
    parser.add_argument("--scale", type=float, help="that was asked for")
    parser.add_argument("--layers", action="store_true", help="text of the user's own is on the map")
    parser.add_argument("--not-grid", action="store_true", help="the map's upward is not the layer's grid north")
    parser.add_argument("--with-legs", action="store_true", help="the layer itself is on the map")
    given = parser.parse_args()
    sheets = legs_of(given.legs)
    files = sorted(name for name in os.listdir(given.folder) if name.endswith(".pdf"))
    if len(files) != len(sheets):
        problem("%d files for %d sheets" % (len(files), len(sheets)))
    for (route, walker, direction), legs in sorted(sheets.items(), key=str):
        name = " - ".join(part for part in (route, walker, "back" if direction == "back" else None) if part)
        path = os.path.join(given.folder, name + ".pdf")
        if not os.path.exists(path):
            problem("no file " + path)
            continue
        words = words_of(path)
        # As it was written: in the order of the rows, not of the page.
        check_rows(name, words, legs, " ".join(run("pdftotext", "-raw", path, "-").split()))
        check_pieces(name, legs, " ".join(run("pdftotext", "-raw", path, "-").split()))
        check_map(name, path, words, legs, given.scale, not given.not_grid, given.with_legs)
        if not given.layers:
            small = min(words, key=lambda word: word.height)
            if small.height < SMALLEST_TEXT * BOX_EMS * 0.98:
                problem("%s: “%s” is only %.2f points high" % (name, small.text, small.height / BOX_EMS))
        fonts = run("pdffonts", path).splitlines()[2:]
        if not fonts:
            problem("%s: no fonts, so no text" % name)
        for font in fonts:  # the columns from the right: object, generation, uni, sub, emb
            if font.split()[-5] != "yes":
                problem("%s: a font is not embedded: %s" % (name, font))
        if len(run("pdfimages", "-list", path).splitlines()) > 2:
            problem("%s: there are pictures in it" % name)
        for size in re.findall(r"Page.* size: *([\d.]+) x ([\d.]+) pts", run("pdfinfo", "-l", "99", path)):
            if given.size:
                width, height = (float(part) for part in given.size.split("x"))
                # Qt rounds sizes of the ISO to whole points: 0.35 mm.
                if abs(float(size[0]) - width) > 0.99 or abs(float(size[1]) - height) > 0.99:
                    problem("%s: a page of %s x %s points" % (name, *size))
    print("%d sheets, %d legs compared" % (len(sheets), sum(len(legs) for legs in sheets.values())))
    return 1 if problems else 0


if __name__ == "__main__":
    sys.exit(main())
