# SPDX-License-Identifier: GPL-2.0-or-later
"""The table that run.sh makes."""
import os


def tell(what, measured, target=None, met=None):
    """A row of it; nothing when the bench runs by itself."""
    if os.environ.get("BRUSHLINE_BENCH"):
        with open(os.environ["BRUSHLINE_BENCH"], "a") as file:
            file.write("| %s | %s | %s | %s |\n" % (
                what, measured, target or "none set", "-" if target is None else "met" if met else "MISSED"))
