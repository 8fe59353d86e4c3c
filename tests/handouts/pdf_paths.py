# SPDX-License-Identifier: GPL-2.0-or-later
"""What is drawn in a PDF file: stroked paths with their widths and greys, in millimetres from the lower left corner.

Reads what Qt's PDF engine writes; the standard library alone. Operators: ISO 32000-1, annex A.
"""
import re
import zlib

MM = 25.4 / 72


def content_streams(path):
    with open(path, "rb") as file:
        data = file.read()
    streams = []
    for match in re.finditer(rb"stream\r?\n", data):
        end = data.find(b"endstream", match.end())
        try:
            text = zlib.decompress(data[match.end():end])
        except zlib.error:
            continue
        if re.match(rb"\s*/\w+ gs ", text):
            streams.append(text.decode("latin-1"))
    return streams


def times(a, b):
    return (a[0] * b[0] + a[1] * b[2], a[0] * b[1] + a[1] * b[3],
            a[2] * b[0] + a[3] * b[2], a[2] * b[1] + a[3] * b[3],
            a[4] * b[0] + a[5] * b[2] + b[4], a[4] * b[1] + a[5] * b[3] + b[5])


class Stroke:
    def __init__(self, points, width, grey, closed):
        self.points, self.width, self.grey, self.closed = points, width, grey, closed


def strokes(stream):
    """All stroked paths of a content stream."""
    found, stack, operands = [], [], []
    matrix, width, colour = (1, 0, 0, 1, 0, 0), 1.0, (0, 0, 0)
    path, paths, closed = [], [], False

    def place(x, y):
        return (MM * (x * matrix[0] + y * matrix[2] + matrix[4]), MM * (x * matrix[1] + y * matrix[3] + matrix[5]))

    # Text, in parentheses or angle brackets, is passed over.
    for token in re.findall(r"<[0-9a-fA-F]*>|\[[^\]]*\]|[^\s]+", stream):
        if re.fullmatch(r"[-+.0-9]+", token):
            operands.append(float(token))
            continue
        if token == "q":
            stack.append((matrix, width, colour))
        elif token == "Q":
            matrix, width, colour = stack.pop()
        elif token == "cm":
            matrix = times(tuple(operands[-6:]), matrix)
        elif token == "w":
            width = operands[-1]
        elif token == "SCN":
            colour = tuple(operands[-3:])
        elif token == "m":
            path = [place(*operands[-2:])]
            paths.append(path)
            closed = False
        elif token == "l":
            path.append(place(*operands[-2:]))
        elif token == "c":
            path.append(place(*operands[-2:]))
        elif token == "h":
            closed = True
        elif token in ("S", "s", "B", "B*", "b", "b*"):
            scale = MM * abs(matrix[0] * matrix[3] - matrix[1] * matrix[2]) ** 0.5
            for each in paths:
                found.append(Stroke(each, width * scale, colour[0], closed or token in ("s", "b", "b*")))
            paths = []
        elif token in ("f", "F", "f*", "n"):
            paths = []
        if token not in ("/", "re"):
            operands = []
    return found
