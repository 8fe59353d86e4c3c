#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""Build the manual: the chapters beside this file and a chapter on every algorithm become one HTML file.

The chapter on the algorithms comes from the installed plugin itself: its help, parameters and results, each with the
picture that render.py drew. Needs PyQGIS, Python's Markdown (Debian: python3-markdown) and an installed Brushline. No
screen. Everything is in the one file, pictures too.
"""
import argparse
import base64
import collections
import glob
import html
import os
import re
import sys

os.environ["QT_QPA_PLATFORM"] = "offscreen"

import markdown                                                     # noqa: E402
from qgis.core import QgsApplication, QgsProcessingParameterDefinition   # noqa: E402

HERE = os.path.dirname(os.path.abspath(__file__))
SAMPLE = os.path.dirname(HERE)
ROOT = os.path.dirname(SAMPLE)
PICTURES = os.path.join(SAMPLE, "pictures")
ALGORITHMS_AFTER = "03"   # the chapter on the algorithms comes after this one
SHARED_BY = 4             # so many algorithms have a parameter alike, and it is explained once for all

# The picture of each algorithm.
PICTURE = {
    "annotatelegs": "legs.png", "choosemarks": "chosen-marks.png", "throughcover": "plan.png", "aimoff": "aim-off.png",
    "detourlegs": "detour.png", "featuresmet": "features-met.png", "checkhazards": "hazards.png",
    "sightsurface": "sight.png", "northlines": "north-lines.png", "fieldatpoints": "field.png", "legcards": "card.png",
    "legtables": "table.png", "exportgpx": "gpx.png", "practicecourse": "courses.png", "plotlegs": "garden.png",
    "calibratepaces": "paces.png", "comparetrack": "track.png",
}

STYLE = """
body { font: 16px/1.5 "DejaVu Sans", sans-serif; color: #111; max-width: 55em; margin: 2em auto; padding: 0 1em; }
h1 { margin-top: 2.5em; border-bottom: 2px solid #111; } h2 { margin-top: 2em; } h3 { margin-top: 2em; }
pre, code { font-family: "DejaVu Sans Mono", monospace; font-size: 0.85em; background: #f2f2f2; }
pre { padding: 0.7em; overflow-x: auto; } img { max-width: 100%; border: 1px solid #bbb; }
table { border-collapse: collapse; font-size: 0.9em; } td, th { border: 1px solid #bbb; padding: 0.2em 0.5em;
text-align: left; vertical-align: top; } nav a { display: block; } @media print { pre { white-space: pre-wrap; } }
"""


def provider(prefix):
    """Register Brushline through its own loader; the returned object keeps it there."""
    sys.path.insert(0, os.path.join(prefix, "share", "qgis", "python", "plugins"))
    import brushline
    loader = brushline.classFactory(None)
    loader.initProcessing()
    if not loader.registered:
        sys.exit("Brushline is not installed under %s." % prefix)
    return loader


def row(*cells):
    return "<tr>" + "".join("<td>%s</td>" % cell for cell in cells) + "</tr>"


def parameter_row(definition):
    default = definition.defaultValue()
    if hasattr(definition, "options") and isinstance(default, int) and definition.options():
        options = "; ".join("%d %s" % each for each in enumerate(definition.options()))
        about = html.escape(options + ". ")
    else:
        about = ""
    optional = definition.flags() & QgsProcessingParameterDefinition.FlagOptional
    words = html.escape(definition.description()) + (" (optional)" if optional else "")
    shown = "" if default in (None, "") else html.escape(str(default))
    return row("<code>%s</code>" % definition.name(), words, about + html.escape(definition.help()), shown)


def table(rows):
    return "\n".join(["<table><tr><th>key</th><th>label</th><th>what</th><th>default</th></tr>"] + rows + ["</table>"])


def algorithm_chapter():
    """HTML of all algorithms, by group; parameters that many of them have alike stand once, at the end."""
    algorithms = sorted(QgsApplication.processingRegistry().providerById("brushline").algorithms(),
                        key=lambda each: (each.group(), each.displayName()))
    rows = {each.name(): {definition.name(): parameter_row(definition) for definition in each.parameterDefinitions()
                          if not definition.isDestination()} for each in algorithms}
    often = collections.Counter(each for own in rows.values() for each in own.values())
    shared = {each for each, count in often.items() if count >= SHARED_BY}
    parts = ["<h1>The algorithms</h1>"]
    group = None
    for each in algorithms:
        if each.group() != group:
            group = each.group()
            parts.append("<h2>%s</h2>" % html.escape(group))
        parts.append('<h3 id="%s">%s <code>brushline:%s</code></h3>'
                     % (each.name(), html.escape(each.displayName()), each.name()))
        parts.append("<p><b>%s</b></p>" % html.escape(each.shortDescription()))
        name = PICTURE.get(each.name())
        if name is None:
            sys.exit("No picture is named for %s." % each.name())
        parts.append('<p><img alt="%s" src="../pictures/%s"></p>' % (html.escape(each.displayName()), name))
        parts += ["<p>%s</p>" % html.escape(line) for line in each.shortHelpString().split("\n") if line.strip()]
        own = rows[each.name()]
        parts.append(table([text for text in own.values() if text not in shared]))
        others = ["<code>%s</code>" % key for key, text in own.items() if text in shared]
        if others:
            parts.append('<p>And, as <a href="#shared">further below</a>: %s.</p>' % ", ".join(others))
        results = [definition for definition in each.parameterDefinitions() if definition.isDestination()]
        known = {definition.name() for definition in results}
        results += [output for output in each.outputDefinitions() if output.name() not in known]
        parts.append("<p>Results: %s.</p>" % ", ".join(
            "<code>%s</code> %s" % (result.name(), html.escape(result.description())) for result in results))
    parts.append('<h2 id="shared">Parameters that many algorithms have</h2>')
    parts.append(table([text for text in often if text in shared]))
    return "\n".join(parts)


def chapter(path):
    """A chapter's Markdown. A comment <!-- table.md --> stands for that file, where it is there, and so does a
    paragraph that is nothing but a link to one, which those who read the chapter by itself can follow."""
    def put(match):
        table = os.path.join(HERE, match.group(1))
        if not os.path.isfile(table):
            return "(%s is not there yet.)" % match.group(1)
        with open(table, encoding="utf-8") as source:
            return source.read()
    with open(path, encoding="utf-8") as source:
        return re.sub(r"^(?:<!-- |\[[^\]]*\]\()(\S+\.md)(?: -->|\))$", put, source.read(), flags=re.MULTILINE)


def with_pictures(text):
    """Puts the pictures into the file; ends the program when one is missing."""
    def put(match):
        path = os.path.normpath(os.path.join(HERE, match.group(1)))
        if not os.path.isfile(path):
            sys.exit("%s is missing; run sample-project/render.py." % path)
        with open(path, "rb") as picture:
            return 'src="data:image/png;base64,%s"' % base64.b64encode(picture.read()).decode("ascii")
    return re.sub(r'src="(\.\./pictures/[^"]+)"', put, text)


def main():
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--prefix", default=os.path.join(ROOT, "build", "prefix"), help="where Brushline is installed")
    parser.add_argument("--out", default=os.path.join(HERE, "manual.html"))
    options = parser.parse_args()
    application = QgsApplication([], False)
    application.initQgis()
    kept = provider(options.prefix)

    chapters = []
    for path in sorted(glob.glob(os.path.join(HERE, "[0-9]*.md"))):
        chapters.append(markdown.markdown(chapter(path), extensions=["tables", "sane_lists"]))
        if os.path.basename(path).startswith(ALGORITHMS_AFTER):
            chapters.append(algorithm_chapter())
    body = "\n".join(chapters)
    titles = re.findall(r"<h1>(.*?)</h1>", body)
    for number, title in enumerate(titles):
        body = body.replace("<h1>%s</h1>" % title, '<h1 id="chapter%d">%s</h1>' % (number, title), 1)
    contents = "".join('<a href="#chapter%d">%s</a>' % each for each in enumerate(titles))
    page = ('<!DOCTYPE html>\n<html lang="en"><head><meta charset="utf-8"><title>Brushline</title><style>%s</style>'
            "</head><body><h1>Brushline</h1><p>Compass legs for walking through cover: a plugin for QGIS.</p>"
            "<nav>%s</nav>%s</body></html>\n" % (STYLE, contents, body))
    with open(options.out, "w", encoding="utf-8") as out:
        out.write(with_pictures(page))
    print(options.out)
    del kept
    application.exitQgis()


main()
