#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""Write checks-table.md: every number that was compared with one from outside, with its source and its tolerance.

Runs the core's tests of a build folder; each writes down what it compares (tests/support/check.h). What a value is
worth is said by its file's head: "# sure:", "# sure of COLUMN,COLUMN: ...", or a row's own cell "sure", "source" or
"origin"; for a value that stands in a test, by its source. Ends with 1 when a test fails, a file of check values is
compared with nothing, or a source does not say how sure it is.
"""
import argparse
import collections
import csv
import glob
import html
import math
import os
import subprocess
import sys
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))
ROOT = os.path.dirname(os.path.dirname(HERE))
TESTS = os.path.join(ROOT, "tests")
FOLDED = 30     # a table of so many rows is shown whole, folded

PUBLISHED, WORKED_OUT, NO_PROOF = range(3)
HEADINGS = [
    ("Published figures", "Printed or published by others, read there or, where it says second-hand, as others quote it."),
    ("Worked out another way", "From a published formula or table, or by another program."),
    ("No proof", "From memory, common practice, or there only so that a change does not go unnoticed. These show what we "
                 "mean, not that it is right."),
]


class File:
    """A file of check values: its head, its columns, its rows by line."""

    def __init__(self, path):
        self.path = path
        self.source, self.sure, self.sure_of, self.compared, self.rows = "", "", {}, set(), {}
        tolerances = set()
        header = None
        with open(os.path.join(TESTS, path), encoding="utf-8", newline="") as file:
            for number, line in enumerate(file, 1):
                line = line.rstrip("\r\n")
                key, _, value = line[2:].partition(":")
                if line.startswith("# source:"):
                    self.source = value.strip()
                elif line.startswith("# sure:"):
                    self.sure = value.strip()
                elif line.startswith("# sure of "):
                    self.sure_of.update({column: value.strip() for column in key[len("sure of "):].split(",")})
                elif line.startswith("# tolerance:"):
                    tolerances.add(value.split()[0])
                elif line and not line.startswith("#"):
                    cells = next(csv.reader([line]))
                    if header is None:
                        header = cells
                    else:
                        self.rows[number] = dict(zip(header, cells))
        self.lines = set()      # of the rows that are compared
        self.measured = [column for column in header if column in tolerances]

    def row_source(self, line):
        return next((self.rows[line][key] for key in ("sure", "source", "origin") if self.rows[line].get(key)), "")

    def sure_about(self, line, column):
        """How sure a cell is: its row's own word when that takes it back, else its column's, its row's, the file's."""
        own = self.row_source(line)
        if own and kind_of(own) == NO_PROOF:
            return own
        return self.sure_of.get(column) or (own if kind_of(own) is not None else self.sure)

    def where(self, line):
        """The row's own words: what goes in, not what comes out."""
        out = self.compared | set(self.measured) | {"sure", "source", "origin", "remark"}
        return ", ".join("%s %s" % (key, value) for key, value in self.rows[line].items() if key not in out and value)


class Cell:
    """What was compared, and the worst there was of it."""

    def __init__(self, record, kind):
        self.record, self.kind = record, kind

    def said(self, file):
        """Expected, as the file prints it, and got."""
        record, allowed = self.record, self.record["tolerance"]
        if not allowed:
            return [record["expected"] or "none", record["got"] or "none"]
        printed = file.rows[int(record["line"])][record["what"]] if file else None
        return [printed or number(record["expected"], allowed), number(record["got"], allowed)]

    @property
    def off(self):
        if not self.record["tolerance"]:
            return 0.0 if self.record["passed"] == "yes" else math.inf
        off = abs(float(self.record["got"]) - float(self.record["expected"]))
        return math.inf if math.isnan(off) else off

    @property
    def share(self):
        """Of the tolerance."""
        allowed = float(self.record["tolerance"] or 0)
        return self.off / allowed if allowed else (math.inf if self.off else 0.0)


def kind_of(sure):
    """What a word on a source makes of it; None when it does not say."""
    if any(words in sure for words in ("from memory", "common practice", "regression only")):
        return NO_PROOF
    if sure.startswith("computed") or "computed with" in sure:
        return WORKED_OUT
    if any(words in sure for words in ("read in", "second-hand", "published point")):
        return PUBLISHED
    return WORKED_OUT if "computed" in sure else None


def number(text, tolerance):
    """Digits as far as the tolerance tells, and two more."""
    value, allowed = float(text), float(tolerance)
    if not math.isfinite(value) or not allowed:
        return "%.12g" % value
    digits = max(0, 2 - math.floor(math.log10(allowed)))
    return "%.*f" % (digits, value) if digits < 14 and abs(value) < 1e12 else "%.12g" % value


def amount(value):
    return "0" if value == 0 else "%.2g" % value


def run_tests(build, folder):
    """Lets the core's tests of a build folder write down what they compare; whether they passed."""
    done = subprocess.run(["ctest", "-L", "core", "--output-on-failure", "-j", str(os.cpu_count())], cwd=build,
                          env=dict(os.environ, BRUSHLINE_CHECKS=folder), stdout=subprocess.PIPE,
                          stderr=subprocess.STDOUT, universal_newlines=True)
    if done.returncode:
        print(done.stdout)
    return done.returncode == 0


def read_records(folder):
    """What was written down, each with its program's name."""
    records = []
    for path in sorted(glob.glob(os.path.join(folder, "*.csv"))):
        with open(path, encoding="utf-8", newline="") as file:
            for row in csv.DictReader(file):
                records.append(dict(row, program=os.path.splitext(os.path.basename(path))[0]))
    return records


def gather(records, files):
    """Groups by kind and file or source; in each, by quantity, the worst of every cell. Ends when a source is unsure."""
    groups = collections.OrderedDict()
    programs = collections.defaultdict(set)
    for count, record in enumerate(records):
        path, line = record["file"], int(record["line"])
        if path:
            files[path].compared.add(record["what"])
            files[path].lines.add(line)
            sure = files[path].sure_about(line, record["what"])
        else:
            sure = record["source"]
        kind = kind_of(sure)
        if kind is None:
            sys.exit("How sure is this? %s %s: %s" % (path, record["what"], sure or record["source"]))
        group = (kind, path or record["source"])
        # What stands in a test has no row of its own: each comparison is one.
        key = line if path else (record["program"], count)
        cells = groups.setdefault(group, collections.OrderedDict()).setdefault(record["what"], {})
        cell = Cell(record, kind)
        if key not in cells or cell.share > cells[key].share:
            cells[key] = cell
        programs[group].add(record["program"])
    return groups, programs


def summary_row(what, cells, file):
    worst = max(cells.values(), key=lambda cell: cell.share)
    record = worst.record
    off, allowed = "alike" if record["passed"] == "yes" else "not alike", ""
    if record["tolerance"]:
        off, allowed = amount(worst.off), amount(float(record["tolerance"]))
    if record["passed"] != "yes":
        off = "**%s**" % off
    unit = record["unit"].replace("km_h_or_m_s", "km/h, m/s")
    return "| %s |" % " | ".join([what, unit, str(len(cells))] + worst.said(file) + [off, allowed])


def folded(quantities, file):
    """All comparisons of a group, as a table that opens."""
    by_row = file is not None and file.sure.startswith("per row")
    heads = ["row", "what", "expected", "got", "off by", "allowed"] + (["source"] if by_row else [])
    lines = ["<details><summary>Row by row</summary>", "<table>",
             "<tr>%s</tr>" % "".join("<th>%s</th>" % head for head in heads)]
    for what, cells in quantities.items():
        for cell in cells.values():
            record, allowed = cell.record, cell.record["tolerance"]
            line = int(record["line"])
            values = [file.where(line) if file else record["where"], what] + cell.said(file)
            values += [amount(cell.off), amount(float(allowed))] if allowed else ["", ""]
            if by_row:
                values.append(file.row_source(line))
            lines.append("<tr>%s</tr>" % "".join("<td>%s</td>" % html.escape(value) for value in values))
    return lines + ["</table>", "</details>", ""]


def report(records, files):
    groups, programs = gather(records, files)
    cells = [cell for quantities in groups.values() for of in quantities.values() for cell in of.values()]
    failed = sum(cell.record["passed"] != "yes" for cell in cells)
    lines = ["<!-- SPDX-License-Identifier: GPL-2.0-or-later -->", "<!-- Made by make_checks.py from the tests. -->", "",
             "%d comparisons, in %d groups by source; %s." % (
                 len(cells), len(groups), "%d beyond their tolerance" % failed if failed else "none beyond its tolerance"),
             "Of each quantity the worst is shown, measured by what is allowed: what was expected, what Brushline says, "
             "how far it is off. The tolerance is the source's own last digit, or what the other program is good for.", ""]
    lines += ["| | sources | comparisons |", "| --- | --- | --- |"]
    for kind, (heading, _) in enumerate(HEADINGS):
        lines.append("| %s | %d | %d |" % (heading, sum(group[0] == kind for group in groups),
                                           sum(cell.kind == kind for cell in cells)))
    for kind, (heading, about) in enumerate(HEADINGS):
        lines += ["", "### " + heading, "", about, ""]
        for (of, name), quantities in groups.items():
            if of != kind:
                continue
            file = files.get(name)
            tests = ", ".join("`%s`" % each for each in sorted(programs[of, name]))
            if file:
                words = sorted({file.sure_about(line, what) for what, own in quantities.items() for line in own})
                sure = "; ".join(words) if len(words) < 4 and not file.sure.startswith("per row") else file.sure
                source = "Several, each beside its row" if file.source.startswith("per row") else file.source
                lines += ["**%s**" % plain(source), "",
                          "`tests/%s`, %d rows, in %s. How sure: %s." % (name, len(file.rows), tests, plain(sure)), ""]
                rest = [column for column in file.measured if column not in file.compared]
                idle = len(file.rows) - len(file.lines)
                if rest or idle:
                    lines += ["Written there, but compared with nothing: %s." % ", ".join(
                        ["%d rows" % idle] * bool(idle) + ["column %s" % plain(column) for column in rest]), ""]
            else:
                lines += ["**%s**" % plain(name), "", "In %s." % tests, ""]
            lines += ["| what | unit | checks | expected | got | off by | allowed |",
                      "| --- | --- | --- | --- | --- | --- | --- |"]
            lines += [summary_row(what, own, file) for what, own in quantities.items()] + [""]
            if 1 < sum(len(own) for own in quantities.values()) <= FOLDED:
                lines += folded(quantities, file)
    return "\n".join(lines).rstrip() + "\n", failed


def plain(text):
    """Text whose signs Markdown would take for its own."""
    return text.replace("\\", "\\\\").replace("*", "\\*").replace("_", "\\_").replace("<", "&lt;").replace("|", "\\|")


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--build", default=os.path.join(ROOT, "build", "tests"), help="build folder with the tests")
    parser.add_argument("--records", help="folder that BRUSHLINE_CHECKS named in a run before, instead of running them")
    parser.add_argument("--out", default=os.path.join(HERE, "checks-table.md"))
    options = parser.parse_args()
    paths = [os.path.relpath(path, TESTS) for path in sorted(glob.glob(os.path.join(TESTS, "**", "data", "*.csv"),
                                                                       recursive=True))]
    paths = [path for path in paths if not path.startswith("plugin" + os.sep)]    # inputs, no check values
    files = {path: File(path) for path in paths}
    with tempfile.TemporaryDirectory() as folder:
        passed = True if options.records else run_tests(options.build, folder)
        records = read_records(options.records or folder)
    if not records:
        sys.exit("The tests of %s compare nothing: are they built?" % options.build)
    text, failed = report(records, files)
    with open(options.out, "w", encoding="utf-8") as out:
        out.write(text)
    print(options.out)
    forgotten = [path for path, file in files.items() if not file.compared]
    if forgotten:
        sys.exit("Compared with nothing: " + ", ".join(forgotten))
    if failed or not passed:
        sys.exit("Not all tests passed.")


if __name__ == "__main__":
    main()
