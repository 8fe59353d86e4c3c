#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# Builds Brushline, runs all tests and the sample on other hosts, each in a Debian of its own, and compares what they
# work out with what this machine's host does: every number in every field, to 1e-9. Makes the host's package too, and
# installs, upgrades and removes it in another Debian that has nothing of ours.
#
#   hosts.sh [--quick | --again] [--cache FOLDER] [--table FILE] [HOST ...]
#
#   HOST     debian12 (QGIS 3.22), debian13 (QGIS 3.40), debian13-backports (QGIS 3.44); the last two when none is
#            given
#   --quick  without the tests labelled long, which start the host dozens or hundreds of times
#   --again  of the tests, those alone that failed the last time
#   --cache  where the Debians stay between runs, some gigabytes each; default brushline-hosts in the user's cache
#   --table  writes what came of it as Markdown tables; rows of hosts that are not named now stay as they are in FILE,
#            their columns as the last tests in the cache were. This machine's column is what tests/run.sh left.
#
# Needs to be root (it makes Debians with debootstrap and works in them with chroot), and the network the first time. Ends
# with 0 only if all is well, with 3 when no Debian could be made.
set -euo pipefail

root=$(cd -P "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
cache=${XDG_CACHE_HOME:-$HOME/.cache}/brushline-hosts
mirror=${BRUSHLINE_DEBIAN_MIRROR:-http://deb.debian.org/debian}
table=''
quick=() again=no
hosts=()
while [ $# -gt 0 ]; do
  case $1 in
    --cache) cache=${2:?--cache needs a folder}; shift ;;
    --quick) quick=(--no-long) ;;
    --again) again=yes ;;
    --table) table=${2:?--table needs a file}; shift ;;
    -*) echo "There is no option $1." >&2; exit 2 ;;
    *) hosts+=("$1") ;;
  esac
  shift
done
[ ${#hosts[@]} -gt 0 ] || hosts=(debian13 debian13-backports)

say() { printf '== %s\n' "$*"; }
fail() { printf 'FAILED: %s\n' "$*" >&2; exit 1; }
no_debian() { printf 'FAILED: no Debian can be made here: %s\n' "$1" >&2; exit 3; }
[ "$(id -u)" = 0 ] || no_debian "hosts.sh has to be run as root, since it makes other Debians and works in them."
if ! command -v debootstrap >/dev/null; then
  apt-get update -q
  DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends debootstrap
fi
mkdir -p "$cache"

mounted=()
# Lazily where something that is being ended still uses it: a /dev that stayed would go with the folder.
unmount() { for each in "${mounted[@]}"; do umount "$each" 2>/dev/null || umount -l "$each" || true; done; mounted=(); }
trap unmount EXIT

inside() { # inside DEBIAN COMMAND ...: with a plain environment, in the copy of the sources
  chroot "$1" /usr/bin/env -i PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LC_ALL=C.UTF-8 \
    DEBIAN_FRONTEND=noninteractive SOURCE_DATE_EPOCH=1781971200 /bin/bash -c 'cd /brushline && exec "$@"' inside "${@:2}"
}

make_debian() { # make_debian HOST FOLDER
  local release=trixie
  [ -e "$2/made" ] && return
  [ "$1" = debian12 ] && release=bookworm
  rm -rf --one-file-system "$2" || return
  debootstrap --variant=minbase --include=ca-certificates "$release" "$2" "$mirror" || return
  if [ "$1" = debian13-backports ]; then
    echo "deb $mirror trixie-backports main" >"$2/etc/apt/sources.list.d/backports.list" || return
    printf 'Package: *\nPin: release n=trixie-backports\nPin-Priority: 990\n' >"$2/etc/apt/preferences.d/backports" || return
  fi
  # No documentation, and nothing that only people need: the Debians stay on the disk. Nothing is synced either: a
  # Debian that a power cut broke is made anew.
  printf 'force-unsafe-io\npath-exclude=/usr/share/doc/*\npath-exclude=/usr/share/locale/*\n' >"$2/etc/dpkg/dpkg.cfg.d/lean" || return
  touch "$2/made"
}

copy_sources() { # copy_sources FOLDER: as they are here, but for what git ignores; what was built there stays
  mkdir -p "$1/brushline"
  find "$1/brushline" -mindepth 1 -maxdepth 1 ! -name build -exec rm -rf {} +
  git -C "$root" ls-files -z --cached --others --exclude-standard |
    tar -C "$root" --null --ignore-failed-read -T - -c 2>/dev/null | tar -C "$1/brushline" -x
}

mount_in() { # mount_in DEBIAN: what programs in it expect
  mountpoint -q "$1/proc" || { mount -t proc proc "$1/proc" || return; mounted=("$1/proc" "${mounted[@]}"); }
  mountpoint -q "$1/dev" || { mount --bind /dev "$1/dev" || return; mounted=("$1/dev" "${mounted[@]}"); }
}

package() ( # package HOST DEBIAN: makes the package in DEBIAN and tries it in a fresh one
  fresh=$cache/$1-fresh packages=/brushline/build/packages
  mounted=() # of its own
  trap unmount EXIT
  rm -rf "$2$packages" || exit
  inside "$2" apt-get install -q -y --no-install-recommends lintian >/dev/null || exit
  inside "$2" cpack --config build/tests/CPackConfig.cmake -B "$packages" >/dev/null || exit
  inside "$2" bash -c "lintian --allow-root --fail-on error $packages/*.deb" || exit
  inside "$2" cpack --config build/tests/CPackConfig.cmake -B "$packages/newer" \
    -D CPACK_DEBIAN_PACKAGE_RELEASE=2 >/dev/null || exit
  make_debian "$1" "$fresh.clean" || exit
  # The caller looks at what this returns, so a command that fails ends nothing by itself.
  rm -rf --one-file-system "$fresh" || exit
  cp -a "$fresh.clean" "$fresh" || exit
  mkdir "$fresh/brushline" || exit
  cp -r "$2$packages" "$fresh/packages" || exit
  cp -r "$root/sample-project" "$fresh/brushline/" || exit
  cp "$root/tests/hosts/package.sh" "$fresh/brushline/" || exit
  mount_in "$fresh" || exit
  mount --bind "$2/var/cache/apt/archives" "$fresh/var/cache/apt/archives" || exit # nothing is fetched twice
  mounted=("$fresh/var/cache/apt/archives" "${mounted[@]}")
  inside "$fresh" /brushline/package.sh "/$(cd "$fresh" && echo packages/*.deb)" \
    "/$(cd "$fresh" && echo packages/newer/*.deb)" /brushline/sample-project
)

say "This machine's own host"
here=$cache/numbers-here
"$root/plugin/packaging/set-up.sh" --tests --build "$root/build/tests" -DBRUSHLINE_WERROR=ON >/dev/null
"$root/tests/hosts/numbers.sh" "$root/build/tests/prefix" "$here"

failed=()
rows=()
for host in "${hosts[@]}"; do
  case $host in
    debian12 | debian13 | debian13-backports) ;;
    *) fail "there is no host $host; debian12, debian13 and debian13-backports are known." ;;
  esac
  debian=$cache/$host
  say "$host: a Debian of its own in $debian"
  make_debian "$host" "$debian" || no_debian "$host, see above."
  copy_sources "$debian"
  mount_in "$debian" || no_debian "nothing may be mounted."
  inside "$debian" apt-get update -q || no_debian "$host, see above."
  tests=passed sample=ran
  if [ $again = yes ]; then
    failures=$debian/brushline/build/tests/Testing/Temporary/LastTestsFailed.log
    [ -e "$failures" ] || fail "no test is known to have failed on $host; leave --again out."
    tests="passed, $(wc -l <"$failures") of them when run again"
    say "$host: the tests that failed"
    inside "$debian" plugin/packaging/set-up.sh --tests --build build/tests -DBRUSHLINE_WERROR=ON &&
      inside "$debian" ctest --test-dir build/tests --rerun-failed --output-on-failure \
        --output-junit tests-again.xml --test-output-size-passed 65536 ||
      { tests=FAILED; failed+=("the tests on $host"); }
  else
    [ ${#quick[@]} -eq 0 ] || tests="passed, without the long ones"
    say "$host: the tests"
    inside "$debian" tests/run.sh --no-sanitizers "${quick[@]}" || { tests=FAILED; failed+=("the tests on $host"); }
  fi
  say "$host: the sample"
  inside "$debian" sample-project/run.sh build/tests || { sample=FAILED; failed+=("the sample on $host"); }
  say "$host: its numbers"
  numbers=FAILED
  if inside "$debian" tests/hosts/numbers.sh build/tests/prefix /brushline/build/numbers &&
    numbers=$(/usr/bin/python3 "$root/tests/hosts/compare.py" "$here" "$debian/brushline/build/numbers"); then
    say "$host: $numbers"
  else
    failed+=("the numbers of $host: $numbers")
    numbers=FAILED
  fi
  say "$host: its package"
  package=$(package "$host" "$debian") || { failed+=("the package for $host: $package"); package=FAILED; }
  version=$(inside "$debian" dpkg-query -W -f '${Version}' libqgis-dev)
  rows+=("| $host | $version | $tests | $sample | $numbers | ${package##*$'\n'} | $(date -u +%F) |")
  unmount
done

qgis() { dpkg-query "$@" -W -f '${Version}' libqgis-dev | sed 's/+.*//; s/^/QGIS /'; } # qgis [OF ANOTHER DEBIAN]
tried() { echo "$1/tests.xml,$1/tests-again.xml"; } # tried BUILD
columns=("$(qgis)=$(tried "$root/build/tests")")
for host in debian13 debian13-backports; do
  built=$cache/$host/brushline/build/tests
  [ ! -e "$built" ] || columns+=("$(qgis --admindir="$cache/$host/var/lib/dpkg")=$(tried "$built")")
done

others=()
if [ -n "$table" ] && [ -f "$table" ]; then
  mapfile -t others < <(awk -F '[ |]+' -v now=" ${hosts[*]} " '/^\| debian/ && !index(now, " " $2 " ")' "$table")
fi
{
  echo "<!-- SPDX-License-Identifier: GPL-2.0-or-later -->"
  echo "<!-- Made by tests/hosts.sh. -->"
  echo
  echo "| host | QGIS | all tests | the sample | against QGIS $(dpkg-query -W -f '${Version}' libqgis-dev) | package | on |"
  echo "|---|---|---|---|---|---|---|"
  printf '%s\n' "${others[@]}" "${rows[@]}" | sed '/^$/d' | sort
  echo
  /usr/bin/python3 "$root/tests/hosts/matrix.py" "${columns[@]}"
} | tee "$cache/table"
[ -z "$table" ] || cp "$cache/table" "$table"
if [ ${#failed[@]} -gt 0 ]; then
  for each in "${failed[@]}"; do say "FAILED: $each"; done
  exit 1
fi
say "All hosts passed"
