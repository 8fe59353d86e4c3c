#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# whole_files_test.sh PREFIX ALGORITHM KEY [options] PARAMETER=VALUE ...
# Whether the files that an algorithm itself writes appear whole or not at all: on a full disk, in a folder that may not
# be written to, over an input, and when the program is killed in the middle; whether older files stay as they are then,
# no input is changed, and what a killed run leaves is hidden and goes later. In values, @ is the folder of the inputs.
#
#   KEY             of the output: FOLDER, for files in a folder, or else that of one file
#   --ending ENDING of that one file (gpx)
#   --legs COUNT    makes @/legs.fgb, annotated legs
#   --land SIDE     makes @/cover.fgb, @/points.fgb, @/terrain.tif, @/starts.fgb, @/ends.fgb (see many_places.py)
#   --loose         two runs differ (PDF tells the time): files must be readable to their end and as long, in pages and
#                   so on; without it they must be the same to the byte as in an undisturbed run
#   --rounds COUNT  how often the program is killed (10); the environment variable BRUSHLINE_KILLS says otherwise
# shellcheck source-path=SCRIPTDIR source=surroundings.sh
here=$(cd -P "$(dirname "${BASH_SOURCE[0]}")" && pwd)
. "$here/surroundings.sh"

prefix=${1:?give the prefix Brushline is installed in}
algorithm=${2:?give the id of an algorithm}
key=${3:?give the key of its output}
shift 3
ending=gpx legs='' land='' loose=no rounds=10 parameters=()
inputs=$temporary/inputs
mkdir "$inputs"
while [ $# -gt 0 ]; do
  case $1 in
    --ending) ending=$2; shift ;;
    --legs) legs=$2; shift ;;
    --land) land=$2; shift ;;
    --loose) loose=yes ;;
    --rounds) rounds=$2; shift ;;
    *) parameters+=("${1//@/$inputs}") ;;
  esac
  shift
done

rounds=${BRUSHLINE_KILLS:-$rounds}

export SOURCE_DATE_EPOCH=1781971200
python=$(find_python)
use_plugin "$prefix"
[ -z "$legs" ] || "$python" "$here/many_legs.py" "$inputs/legs.fgb" "$legs" || fail "no legs."
[ -z "$land" ] || "$python" "$here/many_places.py" "$inputs" "$land" || fail "no land."
before=$(cd "$inputs" && sha256sum -- *)

target() { # target FOLDER: the value of KEY
  if [ "$key" = FOLDER ]; then echo "$1"; else echo "$1/out.$ending"; fi
}
command_for() { # command_for FOLDER: sets command, which runs the algorithm into that folder
  command=("$host" run "$algorithm" -- "${parameters[@]}" "$key=$(target "$1")")
}
run() { # run FOLDER [HOW ...]: both streams in $temporary/out
  command_for "$1"
  "${@:2}" "${command[@]}" >"$temporary/out" 2>&1
}
finals() { find "$1" -maxdepth 1 -type f ! -name '.*' | sort; }
leftovers() { find "$1" -mindepth 1 -name '.*'; } # what shows in no listing
# A file that is being written may have no name yet.
writing() { [ -n "$(find "/proc/$1/fd" -lname "$2/*" -print -quit 2>/dev/null)" ]; } # writing PROCESS FOLDER
await_writing() { # await_writing PROCESS FOLDER: until it begins, or the process is gone
  local new old=("$2"/* "$2"/.[!.]*)
  # What needs no program is asked first: some write for a few milliseconds alone.
  until new=("$2"/* "$2"/.[!.]*) && [ "${new[*]}" != "${old[*]}" ] || writing "$1" "$2" || ! kill -0 "$1" 2>/dev/null; do
    sleep 0.002
  done
}
is_whole() { # is_whole FILE
  if [ $loose = no ]; then cmp -s "$1" "$temporary/reference/$(basename "$1")"; else
    "$python" "$here/whole_file_check.py" --like "$temporary/reference" "$1" >/dev/null 2>&1
  fi
}
old_text="an older file"
make_old() { # older files of the same names in FOLDER
  local file
  finals "$temporary/reference" | while read -r file; do printf '%s' "$old_text" >"$1/$(basename "$file")"; done
}
is_old() { [ "$(head -c 100 "$1" | tr -d '\0')" = "$old_text" ]; }
check_files() { # check_files FOLDER AFTER: every file is whole, or the older one, and the inputs are as they were
  local file
  while read -r file; do
    [ -n "$file" ] || continue
    is_old "$file" || is_whole "$file" || fail "$file is broken after $2."
  done < <(finals "$1")
  check_inputs "$2"
}
check_inputs() { # check_inputs AFTER
  [ "$(cd "$inputs" && sha256sum -- *)" = "$before" ] || fail "an input is not what it was after $1."
}

echo "-- undisturbed"
mkdir "$temporary/reference"
command_for "$temporary/reference"
"${command[@]}" >"$temporary/out" 2>&1 &
pid=$!
await_writing "$pid" "$temporary/reference"
begin=$(date +%s%N)
wait "$pid" || fail "run: $(cat "$temporary/out")"
milliseconds=$((($(date +%s%N) - begin) / 1000000)) # with the end of the program
count=$(finals "$temporary/reference" | wc -l)
[ "$count" -gt 0 ] || fail "no files: $(cat "$temporary/out")"
size=$(finals "$temporary/reference" | tr '\n' '\0' | xargs -0 cat | wc -c)
[ -z "$(leftovers "$temporary/reference")" ] || fail "unfinished files were left."
long=$(finals "$temporary/reference" | tr '\n' '\0' | xargs -0 -n 100000 "$python" "$here/whole_file_check.py") ||
  fail "a file cannot be read to its end."
if [ "$algorithm" = brushline:exportgpx ]; then
  told=$(sed -n 's/.*; points in them: \([0-9]*\); waypoints: \([0-9]*\)\..*/\1+\2/p' "$temporary/out")
  [ $((told)) = "$long" ] || fail "it tells of $told points, and $long are in the file."
fi
echo "   $count file(s), $size bytes, $long points, rows, pages or cells; $milliseconds ms from the first file to the end"
check_inputs "an undisturbed run"

# The check itself has to find a broken file.
read -r broken < <(finals "$temporary/reference")
mkdir "$temporary/broken"
head -c $(($(stat -c %s "$broken") / 2)) "$broken" >"$temporary/broken/$(basename "$broken")"
is_whole "$temporary/broken/$(basename "$broken")" && fail "half a file passes for a whole one."
"$python" "$here/whole_file_check.py" "$temporary/broken/$(basename "$broken")" >/dev/null 2>&1 &&
  fail "half a file can be read to its end."

after_failure() { # after_failure FOLDER WHAT WITH_OLD: what must hold after a run that failed
  grep -q 'could not be written whole\|cannot be written\|cannot be made\|nothing can be written\|may not be written' \
    "$temporary/out" || fail "$2: no word on it: $(cat "$temporary/out")"
  check_files "$1" "$2"
  [ -z "$(leftovers "$1")" ] || fail "$2: unfinished files were left: $(leftovers "$1")"
  if [ "$key" != FOLDER ] && [ "$3" = no ] && [ -n "$(finals "$1")" ]; then fail "$2: a file was left."; fi
  return 0
}
full_disks=0
for with_old in no yes; do
  echo "-- a limit on the size of files, older files: $with_old"
  folder=$temporary/limited-$with_old
  mkdir "$folder"
  [ $with_old = yes ] && make_old "$folder"
  biggest=$(finals "$temporary/reference" | tr '\n' '\0' | xargs -0 stat -c %s | sort -n | tail -n 1)
  for limit in $((biggest / 2048)) $(((biggest - 1) / 1024)); do # half, and all but the end; bash counts in 1024 bytes
    # The signal is ignored, so that writing fails as it does on a full disk.
    if (trap '' XFSZ; ulimit -f "$limit"; run "$folder"); then
      fail "$limit KiB were enough: $(cat "$temporary/out")"
    fi
    if [ "$algorithm" != brushline:legcards ]; then # whose cards are first made in the system's temporary folder
      after_failure "$folder" "the limit of $limit KiB" $with_old
    else
      check_files "$folder" "the limit of $limit KiB"
    fi
    full_disks=$((full_disks + 1))
  done

  if [ "$(id -u)" -ne 0 ]; then
    echo "NOT RUN: a full disk, older files: $with_old, since only root can mount one"
    continue
  fi
  folder=$temporary/disk-$with_old
  mkdir "$folder"
  mount -t tmpfs -o size=$((size * 2 / 3 / 4096 * 4096)) tmpfs "$folder" 2>/dev/null || {
    echo "NOT RUN: a full disk, older files: $with_old, since none can be mounted here"
    continue
  }
  trap 'umount "$temporary"/disk-* 2>/dev/null || true; chmod 755 "$temporary"/closed-* 2>/dev/null; rm -rf "$temporary"' EXIT
  echo "-- a disk of two thirds the size, older files: $with_old"
  [ $with_old = yes ] && make_old "$folder"
  if run "$folder"; then fail "two thirds of the size were enough: $(cat "$temporary/out")"; fi
  after_failure "$folder" "the full disk" $with_old
  full_disks=$((full_disks + 1))
done
echo "   $full_disks runs on full disks"

# Root may write everywhere, unless that right is taken from it.
bound=()
[ "$(id -u)" -ne 0 ] || bound=(setpriv --bounding-set=-dac_override --)
for with_old in no yes; do
  echo "-- a folder that may not be written to, older files: $with_old"
  folder=$temporary/closed-$with_old
  mkdir "$folder"
  [ $with_old = yes ] && make_old "$folder"
  chmod 555 "$folder"
  "${bound[@]}" touch "$folder/new" 2>/dev/null && fail "$folder is not closed: this proves nothing."
  if run "$folder" "${bound[@]}"; then fail "it ran: $(cat "$temporary/out")"; fi
  after_failure "$folder" "a folder that may not be written to" $with_old
  chmod 755 "$folder"
done

if [ "$key" != FOLDER ]; then
  for input in "$inputs"/*; do
    grep -qF "$input" <<<"${parameters[*]}" || continue
    echo "-- over the input $(basename "$input")"
    if "$host" run "$algorithm" -- "${parameters[@]}" "$key=$input" >"$temporary/out" 2>&1; then
      fail "it ran: $(cat "$temporary/out")"
    fi
    grep -q "is read from" "$temporary/out" || fail "no word on it: $(cat "$temporary/out")"
    check_inputs "being given as output"
  done
fi

echo "-- killed in the middle"
RANDOM=1 inside=0
# Some write so briefly that it is hard to hit; a few more tries then, until one did.
for ((round = 1; round <= rounds || (inside == 0 && round <= rounds + 20); ++round)); do
  folder=$temporary/killed-$round
  mkdir "$folder"
  old=$((round % 2 == 0))
  if [ $old = 1 ]; then make_old "$folder"; fi
  command_for "$folder"
  "${command[@]}" >"$temporary/out" 2>&1 &
  pid=$!
  await_writing "$pid" "$folder"
  wait_ms=$((milliseconds * RANDOM / 32768))
  if ((round % 3 == 1 || round > rounds)); then wait_ms=0; fi
  sleep "$(printf '%d.%03d' $((wait_ms / 1000)) $((wait_ms % 1000)))"
  kill -STOP "$pid" 2>/dev/null || true # so that it does not move on between looking and killing
  new=$(finals "$folder" | while read -r file; do is_old "$file" || echo "$file"; done | wc -l)
  if writing "$pid" "$folder" || [ -n "$(leftovers "$folder")" ] || { [ "$new" -gt 0 ] && [ "$new" -lt "$count" ]; }; then
    inside=$((inside + 1))
  fi
  kill -KILL "$pid" 2>/dev/null || true
  wait "$pid" 2>/dev/null || true
  check_files "$folder" "being killed"
  left=$(leftovers "$folder" | grep -v '/\.brushline-' || true)
  [ -z "$left" ] || fail "after being killed there is something of another name: $left"
done
echo "   $algorithm: $inside of $((round - 1)) times in the middle"
[ "$inside" -ge 1 ] || fail "this proves nothing: in $((round - 1)) tries it never was in the middle."
remains=$(find "$temporary" -path '*/killed-*/.brushline-*' -prune | wc -l)
echo "   $remains left something under a hidden name"

echo "-- after being killed the next run is whole, and what lies there for a day goes"
folder=$temporary/killed-1
if [ "$remains" -gt 0 ]; then
  mkdir -p "$folder/.brushline-another"
  touch -d '2 days ago' "$folder/.brushline-another"
fi
leftovers "$folder" | tr '\n' '\0' | xargs -0 -r touch -d '2 days ago' --
mkdir "$folder/.brushline-atwork"
run "$folder" || fail "run: $(cat "$temporary/out")"
[ "$(leftovers "$folder")" = "$folder/.brushline-atwork" ] || fail "left are: $(leftovers "$folder")"
[ "$(finals "$folder" | wc -l)" = "$count" ] || fail "files lack."
check_files "$folder" "a new run"
while read -r file; do
  if is_old "$file"; then fail "$file is still the older one."; fi
done < <(finals "$folder")
echo "passed"
