#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# manual_test.sh PREFIX: builds the sample's manual with the installed plugin. Every algorithm has its heading and its
# picture, every picture that is named is there, and tidy finds no fault in the page.
source "$(dirname "${BASH_SOURCE[0]}")/surroundings.sh"
prefix=$1
use_plugin "$prefix"
python=$(find_python)
manual=$temporary/manual.html

"$python" "$sample/manual/make_manual.py" --prefix "$prefix" --out "$manual" >"$temporary/log" 2>&1 ||
  fail "the manual cannot be built: $(cat "$temporary/log")"
tidy -q -e --show-warnings yes "$manual" >"$temporary/tidy" 2>&1 || fail "tidy: $(head -20 "$temporary/tidy")"

"$host" --json list 2>/dev/null >"$temporary/list" || fail "the algorithms cannot be listed"
"$python" - "$manual" "$temporary/list" <<'PYTHON' || fail "the manual is not whole"
import base64
import json
import re
import sys

with open(sys.argv[1], encoding="utf-8") as file:
    page = file.read()
with open(sys.argv[2], encoding="utf-8") as file:
    algorithms = json.load(file)["providers"]["brushline"]["algorithms"]
faults = [] if len(algorithms) > 15 else ["there are %d algorithms only" % len(algorithms)]
parts = dict(re.findall(r'<h3 id="(\w+)">(.*?)(?=<h[123])', page, re.DOTALL))
for each in sorted(algorithms):
    part = parts.get(each.split(":")[1], "")
    if "<code>%s</code>" % each not in part:
        faults.append(each + " has no heading")
    if part.count("<img ") != 1:
        faults.append(each + " has no picture")
pictures = re.findall(r'<img [^>]*?src="([^"]*)"', page)
for source in pictures:
    kind, _, data = source.partition(";base64,")
    if kind != "data:image/png" or not base64.b64decode(data).startswith(b"\x89PNG"):
        faults.append("a picture is not in the page: " + source[:60])
chapters = re.findall(r'<h1 id="(\w+)">', page)
links = re.findall(r'<a href="#(chapter\w+)">', page)
if links != chapters or len(links) < 6:
    faults.append("the contents and the chapters differ: %s, %s" % (links, chapters))
print("\n".join(faults) or "%d algorithms, %d chapters, %d pictures, %d kB" % (
    len(algorithms), len(chapters), len(pictures), len(page) // 1000))
sys.exit(bool(faults))
PYTHON
