# SPDX-License-Identifier: GPL-2.0-or-later
"""What check.h records, for checks in Python: a row for each, when BRUSHLINE_CHECKS names a folder."""
import csv
import os
import sys

_file = None


def record(what, where, source, expected, got, tolerance, unit):
    global _file
    folder = os.environ.get("BRUSHLINE_CHECKS")
    if not folder:
        return
    if _file is None:
        name = os.path.splitext(os.path.basename(sys.argv[0]))[0]
        _file = open(os.path.join(folder, name + ".csv"), "w", encoding="utf-8", newline="")
        csv.writer(_file).writerow(
            ["what", "where", "file", "line", "source", "expected", "got", "tolerance", "unit", "passed"])
    csv.writer(_file).writerow([what, where, "", 0, source, "%.17g" % expected, "%.17g" % got, "%.17g" % tolerance,
                                unit, "yes" if abs(got - expected) <= tolerance else "no"])
