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
command -v xvfb-run >/dev/null ||
  fail "there is no xvfb-run, so the desktop cannot be started (Debian: apt-get install xvfb xauth)."
command -v xauth >/dev/null || fail "xvfb-run needs xauth (Debian: apt-get install xauth)."
host=$(command -v qgis.bin || command -v qgis) || fail "there is no desktop to test (Debian: apt-get install qgis)."
# A screen of our own: the caller's settings must not reach the desktop.
unset QT_QPA_PLATFORM DISPLAY WAYLAND_DISPLAY QGIS_CUSTOM_CONFIG_PATH
export QT_QPA_PLATFORM=xcb LIBGL_ALWAYS_SOFTWARE=1
screenshots=${BRUSHLINE_SCREENSHOTS:-$temporary/screenshots}
mkdir -p "$screenshots"
seconds=120

desktop() { # desktop PASS: starts it, waits for the check's verdict
  local pass=$1 profiles=$temporary/$1 code=0 loader=false
  [ "$pass" = both ] && loader=true
  mkdir -p "$profiles/profiles/default/QGIS"
  cat >"$profiles/profiles/default/QGIS/QGIS3.ini" <<INI
[app]
askToSaveMemoryLayers=false
[plugins]
searchPathsForPlugins=$prefix/lib/qgis/plugins
[Plugins]
libbrushline=true
[PythonPlugins]
processing=true
brushline=$loader
[qgis]
checkVersion=false
showTips=false
INI
  echo "-- desktop, $pass"
  rm -f "$temporary/result"
  export BRUSHLINE_PASS=$pass BRUSHLINE_RESULT=$temporary/result BRUSHLINE_SAMPLE=$sample BRUSHLINE_SHOTS=$screenshots
  if [ "$pass" = both ]; then export QGIS_PLUGINPATH=$prefix/share/qgis/python/plugins; else unset QGIS_PLUGINPATH; fi
  timeout --kill-after=10 "$seconds" xvfb-run --auto-servernum --server-args="-screen 0 1440x960x24" \
    "$host" --nologo --noversioncheck --profiles-path "$profiles" --code "$tests/desktop_check.py" \
    >"$temporary/log" 2>&1 || code=$?
  if [ -f "$temporary/result" ]; then cat "$temporary/result"; fi
  if [ "$(tail -n 1 "$temporary/result" 2>/dev/null)" != passed ] || [ "$code" -ne 0 ]; then
    echo "-- what the desktop printed last:"
    tail -n 40 "$temporary/log"
    [ "$code" -eq 124 ] && fail "$pass: no verdict within $seconds s."
    fail "$pass: the desktop ended with $code."
  fi
}

desktop library
desktop both
echo "passed"
