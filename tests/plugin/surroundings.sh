# SPDX-License-Identifier: GPL-2.0-or-later
# shellcheck shell=bash disable=SC2034
# Sourced by the tests here: a temporary folder that goes at the end, and an environment that neither reads nor
# changes anybody's profile.
set -euo pipefail

tests=$(cd -P "$(dirname "${BASH_SOURCE[0]}")" && pwd)
sample=$(cd -P "$tests/../../sample-project" && pwd)
temporary=$(mktemp -d)
trap 'rm -rf "$temporary"' EXIT
mkdir "$temporary/home"
mkdir -m 700 "$temporary/runtime"

export HOME=$temporary/home XDG_RUNTIME_DIR=$temporary/runtime QGIS_CUSTOM_CONFIG_PATH=$temporary/profile
export LC_ALL=C.UTF-8 PYTHONWARNINGS=ignore
# Debian 12 does not compile the host's Python beforehand, which is a third of each start; nothing is written beside it.
unset PYTHONDONTWRITEBYTECODE
export PYTHONPYCACHEPREFIX=$temporary/python
export GDAL_PAM_ENABLED=NO # no side file beside the terrain
unset QGIS_PLUGINPATH QGIS_PREFIX_PATH

fail() {
  printf 'FAILED: %s\n' "$*" >&2
  exit 1
}

# Debian 12 wraps qgis_process in a script that passes on an option the program refuses.
host=qgis_process
command -v qgis_process.bin >/dev/null && host=qgis_process.bin

# use_plugin PREFIX: lets $host find the plugin that is installed there, and enables it.
use_plugin() {
  export QT_QPA_PLATFORM=offscreen QGIS_PLUGINPATH=$1/share/qgis/python/plugins
  "$host" plugins enable brushline >"$temporary/out" 2>&1 || fail "the plugin cannot be enabled: $(cat "$temporary/out")"
}

# The python3 that has the host's module; another one may come first.
find_python() {
  local each
  for each in /usr/bin/python3 python3; do
    if QT_QPA_PLATFORM=offscreen "$each" -c 'import qgis.core' 2>/dev/null; then
      echo "$each"
      return
    fi
  done
  fail "no python3 here has the module qgis.core (Debian: python3-qgis)."
}
