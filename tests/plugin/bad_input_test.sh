#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# bad_input_test.sh PREFIX [OPTIONS of bad_input.py]: every bad input of data/bad_inputs.csv through qgis_process is
# refused or passed over in words that say which parameter, layer and feature, and what to do; nothing is left behind, no
# input changed, and nothing crashes.
# shellcheck source-path=SCRIPTDIR source=surroundings.sh
. "$(dirname "${BASH_SOURCE[0]}")/surroundings.sh"

prefix=${1:?give the prefix Brushline is installed in}
shift
use_plugin "$prefix"
TMPDIR=$temporary "$(find_python)" "$tests/bad_input.py" "$tests/data/bad_inputs.csv" --host "$host" "$@" ||
  fail "bad inputs were not met as they should be; see above."
echo "passed"
