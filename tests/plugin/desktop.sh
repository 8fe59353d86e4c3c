# SPDX-License-Identifier: GPL-2.0-or-later
# shellcheck shell=bash disable=SC2154
# Sourced after surroundings.sh by the tests that need the real desktop: starts it on a virtual screen.

for each in xvfb-run:xvfb xauth:xauth; do
  command -v "${each%:*}" >/dev/null ||
    fail "there is no ${each%:*}, so the desktop cannot be started (Debian: apt-get install ${each#*:})."
done
desktop_host=$(command -v qgis.bin || command -v qgis) ||
  fail "there is no desktop to test (Debian: apt-get install qgis)."
screenshots=${BRUSHLINE_SCREENSHOTS:-$temporary/screenshots}
mkdir -p "$screenshots"

# desktop NAME CHECK LOADER SECONDS: the desktop with the native plugin, and the Python loader too where LOADER is true,
# in the profile $temporary/NAME. Runs CHECK inside it and waits for its verdict, but not longer than SECONDS.
desktop() {
  local name=$1 check=$2 loader=$3 seconds=$4 profiles=$temporary/$1 code=0
  local result=$temporary/$1.result log=$temporary/$1.log path=()
  [ "$loader" = true ] && path=(QGIS_PLUGINPATH="$prefix/share/qgis/python/plugins")
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
  echo "-- desktop, $name"
  # Where gdb is there, it tells what a desktop that hangs is at.
  (
    sleep $((seconds - 20)) &&
      gdb -p "$(pgrep -f "^$desktop_host .*$profiles")" -batch -ex "thread apply all bt 25" >"$log.threads" 2>&1
  ) &
  local watch=$!
  # A screen of our own: the caller's settings must not reach the desktop.
  env -u DISPLAY -u WAYLAND_DISPLAY -u QGIS_CUSTOM_CONFIG_PATH -u QGIS_PLUGINPATH "${path[@]}" \
    QT_QPA_PLATFORM=xcb LIBGL_ALWAYS_SOFTWARE=1 \
    BRUSHLINE_TESTS="$tests" BRUSHLINE_PASS="$name" BRUSHLINE_RESULT="$result" BRUSHLINE_SAMPLE="$sample" \
    BRUSHLINE_SHOTS="$screenshots" \
    timeout --kill-after=10 "$seconds" xvfb-run --auto-servernum --server-args="-screen 0 1440x960x24" \
    "$desktop_host" --nologo --noversioncheck --profiles-path "$profiles" --code "$check" >"$log" 2>&1 || code=$?
  pkill -P "$watch" 2>/dev/null || true
  wait "$watch" 2>/dev/null || true
  if [ -f "$result" ]; then cat "$result"; fi
  if [ "$(tail -n 1 "$result" 2>/dev/null)" != passed ] || [ "$code" -ne 0 ]; then
    echo "-- what the desktop printed last:"
    tail -n 40 "$log"
    [ "$code" -eq 124 ] && cat "$log.threads"
    [ "$code" -eq 124 ] && fail "$name: no verdict within $seconds s."
    fail "$name: the desktop ended with $code."
  fi
}
