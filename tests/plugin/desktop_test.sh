#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# desktop_test.sh PREFIX: the installed plugin in the real desktop, on a virtual screen.
#
# First with the native plugin alone, then with the Python loader beside it. desktop_check.py does the clicking; it
# leaves pictures of the toolbox, the dialog and the map in BRUSHLINE_SCREENSHOTS (a folder; none are kept without).
# shellcheck source-path=SCRIPTDIR source=surroundings.sh
. "$(dirname "${BASH_SOURCE[0]}")/surroundings.sh"

prefix=${1:?give the prefix Brushline is installed in}
[ -f "$prefix/lib/qgis/plugins/libbrushline.so" ] || fail "$prefix/lib/qgis/plugins/libbrushline.so is not there."
# shellcheck source-path=SCRIPTDIR source=desktop.sh
. "$tests/desktop.sh"

desktop library "$tests/desktop_check.py" false 120
desktop both "$tests/desktop_check.py" true 120
echo "passed"
