#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# ways_test.sh PREFIX: every way into Brushline gives the same legs, bit for bit.
#
# The input is that of ways_input.py; what the toolbox's dialog makes of it in the real desktop is the reference.
# Expression functions are no way to legs and have their own tests. Leaves pictures of the batch panel, the history and
# the model designer in BRUSHLINE_SCREENSHOTS (a folder; none are kept without).
# shellcheck source-path=SCRIPTDIR source=surroundings.sh
. "$(dirname "${BASH_SOURCE[0]}")/surroundings.sh"

prefix=${1:?give the prefix Brushline is installed in}
[ -f "$prefix/lib/qgis/plugins/libbrushline.so" ] || fail "$prefix/lib/qgis/plugins/libbrushline.so is not there."
# shellcheck source-path=SCRIPTDIR source=desktop.sh
. "$tests/desktop.sh"
command -v "$host" >/dev/null || fail "there is no $host (Debian: apt-get install qgis)."
python=$(find_python)
"$python" -c 'from osgeo import gdal, gdal_array, ogr' 2>/dev/null ||
  fail "$python has no module osgeo with numpy (Debian: python3-gdal, python3-numpy)."

export BRUSHLINE_SAMPLE=$sample BRUSHLINE_WAYS=$temporary/ways BRUSHLINE_MODEL=$tests/data/all_algorithms.model3
ways=$BRUSHLINE_WAYS
mkdir "$ways"

scripts() { # scripts PROFILES: keeps the scripts in a profile, as a user does
  mkdir -p "$1/profiles/default/processing/scripts"
  cp "$tests"/scripts/ways_*.py "$1/profiles/default/processing/scripts/"
}
compare() { "$python" "$tests/ways_compare.py" "$@" || fail "see above."; } # compare WAY REFERENCE FOLDER [PREFIX]
process() { # process WAY ARGUMENTS: qgis_process, with what standard input holds
  timeout 100 "$host" "${@:2}" >"$temporary/out" 2>&1 || fail "$1: $(tail -n 40 "$temporary/out")"
}

scripts "$temporary/ways-desktop"
desktop ways-desktop "$tests/ways_check.py" false 240
echo "-- the same by every way"
compare "Dialog of the toolbox (the reference, with itself)" "$ways/reference" "$ways/reference"
compare "History, the entry run again" "$ways/reference" "$ways/history"
compare "History, its command pasted to Python" "$ways/reference" "$ways/history-pasted"
compare "processing.run in the desktop's Python" "$ways/reference" "$ways/console"
compare "Script with @alg in the desktop" "$ways/reference" "$ways/waysdecorated"
compare "Script with a class in the desktop" "$ways/reference" "$ways/waysclass"
compare "Batch panel, first row" "$ways/reference" "$ways/batch-1"
compare "Batch panel, second row" "$ways/reference" "$ways/batch-2"
compare "Model designer" "$ways/reference" "$ways/designer" annotatelegs-
"$python" "$tests/ways_compare.py" --steps "$BRUSHLINE_MODEL" "$ways/designer" || fail "the model in the designer"

use_plugin "$prefix"
input=("$python" "$tests/ways_input.py")

mapfile -t keys < <("${input[@]}" keys "$ways/keys")
process "keys" run brushline:annotatelegs -- "${keys[@]}"
compare "qgis_process, keys" "$ways/reference" "$ways/keys"

"${input[@]}" json "$ways/json" >"$temporary/input.json"
if "$host" --help 2>/dev/null | grep STDIN >/dev/null; then
  process "JSON" run brushline:annotatelegs - <"$temporary/input.json"
  compare "qgis_process, JSON on standard input" "$ways/reference" "$ways/json"
else
  # QGIS 3.24 brought it. The host has to say so itself, or it could be the test that does not find it.
  version=$("$python" -c 'from qgis.core import Qgis; print(Qgis.QGIS_VERSION_INT)' 2>/dev/null)
  [ "$version" -lt 32400 ] || fail "qgis_process of QGIS $version does not tell of JSON on standard input."
  "$host" run brushline:annotatelegs - <"$temporary/input.json" >"$temporary/out" 2>&1 &&
    fail "qgis_process took JSON without telling of it."
  grep -q '^Invalid parameter value -' "$temporary/out" || fail "JSON: $(cat "$temporary/out")"
  mapfile -t keys < <("${input[@]}" keys "$ways/json")
  process "JSON out" --json run brushline:annotatelegs -- "${keys[@]}"
  compare "qgis_process, keys, its answer as JSON (it reads none before QGIS 3.24)" "$ways/reference" "$ways/json"
fi

scripts "$QGIS_CUSTOM_CONFIG_PATH"
for script in waysdecorated waysclass; do
  mapfile -t keys < <("${input[@]}" script-keys "$ways/process-$script")
  process "$script" run "script:$script" -- "${keys[@]}"
  compare "Script $script in qgis_process" "$ways/reference" "$ways/process-$script"
done

for model in "$BRUSHLINE_MODEL" "$ways/saved.model3"; do
  name=$(basename "$model")
  mapfile -t keys < <("${input[@]}" model-keys "$model" "$ways/$name.made")
  process "$name" run "$model" -- "${keys[@]}"
  compare "Model $name in qgis_process" "$ways/reference" "$ways/$name.made" annotatelegs-
  "$python" "$tests/ways_compare.py" --steps "$model" "$ways/$name.made" >"$temporary/out" ||
    fail "$name: $(cat "$temporary/out")"
done

timeout 60 "$python" "$tests/ways_program.py" "$ways/program" >"$temporary/out" 2>&1 ||
  fail "PyQGIS program: $(cat "$temporary/out")"
compare "PyQGIS program" "$ways/reference" "$ways/program"
echo "passed"
