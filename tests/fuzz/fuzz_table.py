# SPDX-License-Identifier: GPL-2.0-or-later
"""Adds what fuzzers did to the manual's table of them.

fuzz_table.py TABLE LOGS TARGET ...: of each target that ran, LOGS/TARGET.row holds a row like those of the table.
Seconds and executions add up over the runs; coverage is the greatest, and what was found is the last run's.
"""
import os
import re
import sys

HEAD = """<!-- SPDX-License-Identifier: GPL-2.0-or-later -->
<!-- Made by tests/fuzz/run.sh. -->

| fuzzer | functions | seconds | executions | coverage | found |
| --- | --- | --- | --- | --- | --- |
"""
ROW = re.compile(r"\| `(\w+)` \| (.*) \| (\d+) \| (\d+) \| (\d+) \| (\w+) \|$")


def rows(path):
    """Target -> [functions, seconds, executions, coverage, found] of a file's rows."""
    if not os.path.exists(path):
        return {}
    with open(path) as file:
        found = [ROW.match(line.rstrip("\n")) for line in file]
    return {row[1]: [row[2], int(row[3]), int(row[4]), int(row[5]), row[6]] for row in found if row}


def main():
    table, logs, targets = sys.argv[1], sys.argv[2], sys.argv[3:]
    told = rows(table)
    for target in targets:
        for name, row in rows(os.path.join(logs, target + ".row")).items():
            before = told.get(name, row[:1] + [0, 0, 0, ""])
            told[name] = [row[0], before[1] + row[1], before[2] + row[2], max(before[3], row[3]), row[4]]
    with open(table, "w") as file:
        file.write(HEAD)
        for name in sorted(told):
            file.write("| `%s` | %s | %d | %d | %d | %s |\n" % (name, *told[name]))


main()
