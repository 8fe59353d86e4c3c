#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""matrix.py HOST=FILE[,FILE] ...: what was tried on each host, as a Markdown table.

A FILE is what `ctest --output-junit` wrote there; a second one, of some tests run again, counts for these. Hosts without
a file have a column of dashes. Rows are the tests of the computations and algorithms together, then those of the plugin,
one row each, but for those that try one thing in many ways: these tell each way in a line of their own.
"""
import os
import re
import sys
import xml.etree.ElementTree as ElementTree

# Tests that tell what they tried line by line, and what of a line names it.
TOLD = {
    "plugin/ways_test": ("Way in", r"(?P<name>[^:]+): .* equal"),
    "plugin/formats_test": ("Format", r"(?P<name>[^:]+): .*, equal"),
    "plugin/postgis_test": ("PostGIS", r"PostGIS: (?P<name>.*)"),
}
NAMES = {
    "plugin/bad_input_test": "Bad inputs refused",
    "plugin/desktop_test": "Toolbox and dialogs in the desktop",
    "plugin/event_model_test": "An event of 200 cards by a model",
    "plugin/expressions_test": "Functions in expressions",
    "plugin/full_disk_test": "Full disks",
    "plugin/loader_test": "Loading, and a library for another host",
    "plugin/manual_test": "The manual with its pictures",
    "plugin/names_test": "Names that attack",
    "plugin/provider_test": "All algorithms listed with help",
    "plugin/same_answer_test": "The same answer over threads and order",
    "plugin/translations_test": "Other languages",
}
SILENT = {"plugin/install"}
KILLED = "plugin/whole_files_"  # tests, one for each algorithm


class Host:
    """What one host's tests came to: a word for each row."""

    def __init__(self, name, paths):
        self.name = name
        self.cells = {}
        passed, said = {}, {}
        for path in filter(os.path.exists, paths.split(",")):
            suite = ElementTree.parse(path).getroot()
            self.name = "%s, %s" % (name, suite.get("timestamp", "")[:10])
            for case in suite.iter("testcase"):
                passed[case.get("name")] = case.get("status") == "run"
                said[case.get("name")] = case.findtext("system-out") or ""
        others = [ok for test, ok in passed.items() if not test.startswith("plugin/")]
        if others:
            self.cells["Tests of computations and algorithms"] = "%d of %d" % (sum(others), len(others))
        killed = [ok for test, ok in passed.items() if test.startswith(KILLED)]
        for test in sorted(passed):
            if test in SILENT or not test.startswith("plugin/") or test.startswith(KILLED):
                continue
            if test not in TOLD or not passed[test]:
                self.cells[NAMES.get(test, test)] = self.word(passed[test], said[test])
            if test in TOLD:
                kind, pattern = TOLD[test]
                for line in said[test].splitlines():
                    found = re.fullmatch(pattern, line)
                    if found:
                        self.cells["%s: %s" % (kind, found["name"])] = "passed"
        if killed:
            self.cells["Algorithms killed while they write files"] = "%d of %d" % (sum(killed), len(killed))

    @staticmethod
    def word(ok, said):
        cases = re.search(r"^(\d+) cases in ", said, re.MULTILINE)
        return ("passed, %s cases" % cases[1] if cases else "passed") if ok else "FAILED"


def main():
    hosts = [Host(*each.split("=", 1)) for each in sys.argv[1:]]
    if not hosts:
        sys.exit(__doc__)
    rows = list(dict.fromkeys(row for host in hosts for row in host.cells))
    print("| tried | %s |" % " | ".join(host.name for host in hosts))
    print("|---|%s" % ("---|" * len(hosts)))
    for row in rows:
        print("| %s | %s |" % (row, " | ".join(host.cells.get(row, "–") for host in hosts)))


main()
