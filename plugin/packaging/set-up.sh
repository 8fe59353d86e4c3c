#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# Gets what building needs, builds Brushline and installs it into a prefix inside the build folder.
#
#   set-up.sh [--tests] [--build FOLDER] [cmake options ...]
#
# --tests   also what the tests need, and build everything, not the plugin alone
# --build   the build folder; default build/ of this repository. The prefix is FOLDER/prefix.
#
# Packages are installed with apt-get, and only those that are missing; with none missing the network is not used.
# On systems without dpkg it says what is needed and goes on with what is there.
set -euo pipefail

root=$(cd -P "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
build=$root/build
tests=no
options=()
while [ $# -gt 0 ]; do
  case $1 in
    --tests) tests=yes ;;
    --build) build=${2:?--build needs a folder}; shift ;;
    *) options+=("$1") ;;
  esac
  shift
done

say() { printf '== %s\n' "$*"; }

packages=(g++ cmake make ninja-build
  libqgis-dev qgis qgis-providers python3-qgis python3-gdal
  libgeographiclib-dev libproj-dev libgdal-dev libsqlite3-dev libboost-dev
  qtbase5-dev libqt5svg5-dev qtpositioning5-dev qttools5-dev qttools5-dev-tools
  fonts-dejavu-core) # a font for the cards; without a desktop there may be none
if [ "$tests" = yes ]; then
  packages+=(xvfb xauth tidy libxml2-utils python3-gpxpy poppler-utils python3-skimage python3-scipy python3-markdown
    postgresql postgresql-postgis # a test starts a server of its own
    clang libclang-rt-dev # for tests/fuzz
    lld) # links the tests in a quarter of the time
fi

if command -v dpkg-query >/dev/null && command -v apt-get >/dev/null; then
  missing=()
  for package in "${packages[@]}"; do
    status=$(dpkg-query -W -f '${db:Status-Status}' "$package" 2>/dev/null || true)
    [ "$status" = installed ] || missing+=("$package")
  done
  if [ ${#missing[@]} -eq 0 ]; then
    say "All ${#packages[@]} packages that are needed are installed."
  else
    say "Installing: ${missing[*]}"
    as_root=()
    if [ "$(id -u)" -ne 0 ]; then
      if ! command -v sudo >/dev/null; then
        echo "These packages are missing, and you are neither root nor is there sudo. Ask for:" >&2
        echo "  apt-get install ${missing[*]}" >&2
        exit 1
      fi
      as_root=(sudo)
    fi
    # env, since sudo may drop variables that are set for it.
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get update -q
    "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends "${missing[@]}"
  fi
else
  say "This is no Debian, so nothing is installed. Needed, by the names Debian gives them: ${packages[*]}"
fi

# A build folder that came here by copying holds paths of elsewhere.
if [ -f "$build/CMakeCache.txt" ] &&
   ! grep -qxF "CMAKE_HOME_DIRECTORY:INTERNAL=$root" "$build/CMakeCache.txt"; then
  say "The cache in $build belongs to another copy of the sources; starting afresh."
  rm -rf "$build/CMakeCache.txt" "$build/CMakeFiles"
fi

generator=()
if [ ! -f "$build/CMakeCache.txt" ] && command -v ninja >/dev/null; then
  generator=(-G Ninja)
fi
say "Configuring in $build"
cmake -S "$root" -B "$build" "${generator[@]}" "${options[@]}"

target=(--target brushline)
[ "$tests" = yes ] && target=()
say "Building"
cmake --build "$build" --parallel "$(nproc)" "${target[@]}"

say "Installing into $build/prefix"
cmake --install "$build" --prefix "$build/prefix"
