#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""Runs the cases of a table of bad inputs through qgis_process and holds what happens against what should.

  bad_input.py TABLE [--workers N] [--host PROGRAM] [--only TEXT] [--show]

The table has a row for each case: id; algorithm; what is wrong; arguments; the expected exit code; the words that the
messages must have. Arguments and words are separated by semicolons. The first row of each algorithm is good input, which
must run; a case changes its arguments (KEY=value) or leaves one out (-KEY). In a value

  @name       is a file that bad_files.py made; without an ending it is a layer (name.gpkg, else name.shp),
  >name       is a file or folder to write in the case's own folder.

Beside code and words each case is held to what no bad input may do: end the program by a signal or with a trace, leave a
place of a message unfilled, change an input, leave a file when it failed, or anything but its outputs when it did not.
"""
import argparse
import collections
import csv
import hashlib
import os
import queue
import re
import shutil
import subprocess
import sys
import tempfile
import threading
import time

HERE = os.path.dirname(os.path.abspath(__file__))
FORBIDDEN = re.compile(r"Segmentation|QGIS died|Traceback|Sanitizer|runtime error:|terminate called|Aborted|Stacktrace|"
                       r"bad_alloc|std::|%L?[0-9]|%n\b|could not be computed|The host reports")
BY_HOST = re.compile(r"mandatory parameters were not specified|Incorrect parameter|Could not load|Unable to execute")
SECONDS = 300  # of a loaded machine; a start alone takes one or two of a free one
Case = collections.namedtuple("Case", "id algorithm wrong arguments code words")


def split(text):
    return [part.strip() for part in text.split(";") if part.strip()]


def read_table(path):
    with open(path, encoding="utf-8", newline="") as file:
        rows = list(csv.reader(line for line in file if line.strip() and not line.startswith("#")))
    if tuple(rows[0]) != Case._fields:
        sys.exit("%s: the first row has to be %s" % (path, ",".join(Case._fields)))
    cases, ids = [], set()
    for row in rows[1:]:
        if len(row) != len(Case._fields):
            sys.exit("%s: not %d columns: %s" % (path, len(Case._fields), row))
        case = Case(row[0], row[1], row[2], split(row[3]), int(row[4]), split(row[5]))
        if case.id in ids:
            sys.exit("%s: the id %s is there twice" % (path, case.id))
        if not case.words and case.wrong != "nothing":
            sys.exit("%s: %s has no words to look for" % (path, case.id))
        ids.add(case.id)
        cases.append(case)
    return cases


def arguments_of(case, good):
    """The good row's arguments as the case changes them; a key may be there several times."""
    own = case.arguments if case is not good else []
    changed = {each.lstrip("-").split("=", 1)[0] for each in own}
    kept = [each for each in good.arguments if each.split("=", 1)[0] not in changed]
    return kept + [each for each in own if not each.startswith("-")]


def files_in(folder):
    return {os.path.relpath(os.path.join(at, name), folder)
            for at, folders, names in os.walk(folder) for name in folders + names}


def state_of(folder):
    """What every file of a folder holds."""
    state = {}
    for name in files_in(folder):
        path = os.path.join(folder, name)
        if os.path.isfile(path):
            with open(path, "rb") as file:
                state[name] = hashlib.sha256(file.read()).hexdigest()
        else:
            state[name] = "folder"
    return state


class Bench:
    """A worker's own copy of the inputs, and its folders for outputs and temporary files."""

    def __init__(self, folder, inputs, host):
        self.host = host
        self.inputs, self.out, self.temporary = (os.path.join(folder, name) for name in ("inputs", "out", "temporary"))
        shutil.copytree(inputs, self.inputs)
        self.before = state_of(self.inputs)
        profile = os.path.join(folder, "profile")
        shutil.copytree(os.environ["QGIS_CUSTOM_CONFIG_PATH"], profile)
        self.environment = dict(os.environ, TMPDIR=self.temporary, QGIS_CUSTOM_CONFIG_PATH=profile)

    def value(self, text):
        if text.startswith(">"):
            return os.path.join(self.out, text[1:])
        if text.startswith("@"):
            path = os.path.join(self.inputs, text[1:])
            return next((each for each in (path, path + ".gpkg", path + ".shp") if os.path.exists(each)), path)
        return text

    def run(self, case, good):
        """What is not as it should be, and all that the program said."""
        for folder in (self.out, self.temporary):
            shutil.rmtree(folder, ignore_errors=True)
            os.makedirs(folder)
        pairs = [each.split("=", 1) for each in arguments_of(case, good)]
        given = [key + "=" + self.value(value) for key, value in pairs]
        try:
            done = subprocess.run([self.host, "run", "brushline:" + case.algorithm, "--"] + given, env=self.environment,
                                  stdout=subprocess.PIPE, stderr=subprocess.STDOUT, stdin=subprocess.DEVNULL,
                                  timeout=SECONDS, check=False)
        except subprocess.TimeoutExpired as late:
            return ["was not done after %d s" % SECONDS], (late.stdout or b"").decode("utf-8", "replace")
        said = done.stdout.decode("utf-8", "replace")
        wrong = ["ended with %d instead of %d" % (done.returncode, case.code)] if done.returncode != case.code else []
        keys = {key for key, _ in pairs}
        said_of_us = "\n".join(line for line in said.splitlines() if line.split(":\t")[0] not in keys)
        wrong += ["no word of “%s”" % word for word in case.words if word not in said_of_us]
        wrong += ["says “%s”" % found for found in sorted(set(FORBIDDEN.findall(said_of_us)))]
        wrong += self.left(case.code, [value[1:] for _, value in pairs if value.startswith(">")])
        return wrong, said

    def left(self, code, outputs):
        """What is wrong with what the run left behind."""
        wrong = []
        there = files_in(self.out)
        if code != 0:
            wrong += ["left %s" % name for name in sorted(there)]
        else:
            wrong += ["did not write %s" % name for name in outputs if name not in there]
            looks = [os.path.splitext(name)[0] + ".qml" for name in outputs if not name.endswith(".gpkg")]
            wrong += ["left %s beside its outputs" % name for name in sorted(there)
                      if name.split(os.sep)[0] not in outputs + looks or os.path.basename(name).startswith(".")]
        wrong += ["left the temporary %s" % name for name in sorted(files_in(self.temporary))]
        after = state_of(self.inputs)
        if after != self.before:
            wrong += ["changed its input %s" % name for name in sorted(set(after) | set(self.before))
                      if after.get(name) != self.before.get(name)]
            shutil.rmtree(self.inputs)
            raise InputsChanged(wrong)
        return wrong


class InputsChanged(Exception):
    """The bench is spoilt for other cases."""


def make_inputs(folder, host):
    """All files of bad_files.py, in a folder of their own."""
    inputs = os.path.join(folder, "made")
    os.mkdir(inputs)
    maker = [sys.executable, os.path.join(HERE, "bad_files.py"), inputs]
    subprocess.run(maker, check=True)
    made = {key: os.path.join(inputs, value) for key, value in
            (("INPUT", "routes.gpkg"), ("OUTPUT", "legs.gpkg"), ("MARKS", "marks.gpkg"), ("WALKERS", "walkers.csv"))}
    done = subprocess.run([host, "run", "brushline:annotatelegs", "--", "ROUTE_FIELD=route", "DATE=2026-06-20",
                           "KEEP_STYLE=false"] +
                          [key + "=" + value for key, value in made.items()], stdout=subprocess.PIPE,
                          stderr=subprocess.STDOUT, check=False)
    if done.returncode != 0:
        sys.exit("The legs to start from could not be made:\n" + done.stdout.decode("utf-8", "replace"))
    subprocess.run(maker + ["legs"], check=True)
    return inputs


def main():
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("table")
    parser.add_argument("--workers", type=int, default=2)
    parser.add_argument("--host", default="qgis_process")
    parser.add_argument("--only", help="cases whose id has this in it")
    parser.add_argument("--show", action="store_true", help="print what the program says")
    given = parser.parse_args()
    cases = read_table(given.table)
    goods = {case.algorithm: case for case in cases if case.wrong == "nothing"}
    wanted = [case for case in cases if not given.only or re.search(given.only, case.id)]
    started = time.monotonic()
    with tempfile.TemporaryDirectory() as folder:
        results = work(wanted, goods, folder, given)
    failed = report(wanted, results)
    print("%d cases in %.0f s, %d workers; %d failed" %
          (len(wanted), time.monotonic() - started, given.workers, failed))
    sys.exit(failed > 0)


def work(cases, goods, folder, given):
    """Does the cases in turn on each bench. Returns {id: (what is wrong, what was said)}."""
    inputs = make_inputs(folder, given.host)
    waiting, results = queue.Queue(), {}
    for case in cases:
        waiting.put(case)

    def bench(number):
        own = os.path.join(folder, "bench%d" % number)
        os.mkdir(own)
        at = Bench(own, inputs, given.host)
        while True:
            try:
                case = waiting.get_nowait()
            except queue.Empty:
                return
            try:
                wrong, said = at.run(case, goods[case.algorithm])
            except InputsChanged as changed:
                wrong, said = changed.args[0], ""
                shutil.copytree(inputs, at.inputs)
            except Exception as error:  # a bench that stops would leave its cases out
                wrong, said = ["could not be run: %r" % error], ""
            results[case.id] = wrong, said
            if wrong or given.show:
                print("-- %s: %s: %s\n   %s\n%s" % (case.id, case.algorithm, case.wrong, " ".join(case.arguments),
                                                   shortened(said)) +
                      "".join("   FAILED: %s\n" % each for each in wrong), flush=True)

    threads = [threading.Thread(target=bench, args=(number,)) for number in range(given.workers)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    return results


def shortened(said):
    """What the program said, without the arguments it repeats."""
    kept = [line for line in said.splitlines() if line.strip() and not re.match(r"-+$|Inputs$|Results$|[A-Z_]+:\t/", line)]
    return "".join("   > %s\n" % line for line in kept)


def report(cases, results):
    """Prints how many cases each algorithm has; returns how many failed."""
    lost = [case.id for case in cases if case.id not in results]
    print("%-16s %6s %9s %9s %13s" % ("algorithm", "cases", "refused", "warned", "by the host"))
    total = collections.Counter()
    for algorithm in sorted({case.algorithm for case in cases}):
        counts = collections.Counter()
        for case in cases:
            if case.algorithm == algorithm and case.wrong != "nothing":
                counts["cases"] += 1
                counts["refused"] += case.code != 0
                counts["warned"] += case.code == 0
                counts["host"] += bool(BY_HOST.search(results.get(case.id, ("", ""))[1]))
        total.update(counts)
        print("%-16s %6d %9d %9d %13d" % ((algorithm,) + tuple(counts[key] for key in ("cases", "refused", "warned", "host"))))
    print("%-16s %6d %9d %9d %13d" % (("all",) + tuple(total[key] for key in ("cases", "refused", "warned", "host"))))
    for each in lost:
        print("FAILED: %s was not run" % each)
    return len(lost) + sum(1 for wrong, _ in results.values() if wrong)


if __name__ == "__main__":
    main()
