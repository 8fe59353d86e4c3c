#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# whole_files_test.sh PREFIX ALGORITHM KEY ENDING [options] [PARAMETER=VALUE ...]
# Whether the files of an algorithm that reads annotated legs (INPUT) appear whole or not at all, on a full disk and
# when the program is killed in the middle of writing; and whether older files stay as they are then.
#
#   KEY             OUTPUT, for one file, or FOLDER, for files in a folder
#   ENDING          of the files, without a dot
#   --legs COUNT    legs of the layer that is made for it (60000); the output should be some megabytes
#   --whole COMMAND says of a file whether it is whole, by its exit code; without it a file must be the same, to the
#                   byte, as in an undisturbed run with the same SOURCE_DATE_EPOCH
#   --rounds COUNT  how often the program is killed (12)
# shellcheck source-path=SCRIPTDIR source=../plugin/surroundings.sh
here=$(cd -P "$(dirname "${BASH_SOURCE[0]}")" && pwd)
. "$here/../plugin/surroundings.sh"

prefix=${1:?give the prefix Brushline is installed in}
algorithm=${2:?give the id of an algorithm}
key=${3:?give the key of its output}
ending=${4:?give the ending of its files}
shift 4
legs=60000 whole='' rounds=12 parameters=()
while [ $# -gt 0 ]; do
  case $1 in
    --legs) legs=$2; shift ;;
    --whole) whole=$2; shift ;;
    --rounds) rounds=$2; shift ;;
    *) parameters+=("$1") ;;
  esac
  shift
done

export SOURCE_DATE_EPOCH=1781971200
python=$(find_python)
use_plugin "$prefix"
"$python" "$here/many_legs.py" "$temporary/legs.fgb" "$legs" || fail "no legs."

target() { # target FOLDER: the value of KEY
  if [ "$key" = FOLDER ]; then echo "$1"; else echo "$1/out.$ending"; fi
}
run() { # run FOLDER: the algorithm into that folder; both streams in $temporary/out
  "$host" run "$algorithm" -- INPUT="$temporary/legs.fgb" "${parameters[@]}" "$key=$(target "$1")" \
    >"$temporary/out" 2>&1
}
finals() { find "$1" -maxdepth 1 -type f -name "*.$ending" | sort; } # the files under their final names
unfinished() { find "$1" -maxdepth 1 -type f ! -name "*.$ending" | grep -q .; }
# A file that is being written may have no name yet.
writing() { find "/proc/$1/fd" -lname "$2/*" 2>/dev/null | grep -q .; } # writing PROCESS FOLDER
await_writing() { # await_writing PROCESS FOLDER: until it begins, or the process is gone
  until writing "$1" "$2" || ! kill -0 "$1" 2>/dev/null; do sleep 0.005; done
}
is_whole() { # is_whole FILE
  if [ -n "$whole" ]; then $whole "$1" >/dev/null 2>&1; else cmp -s "$1" "$temporary/reference/$(basename "$1")"; fi
}
old_text="an older file"
make_old() { # older files of the same names in FOLDER
  local file
  finals "$temporary/reference" | while read -r file; do printf '%s' "$old_text" >"$1/$(basename "$file")"; done
}
check_files() { # check_files FOLDER AFTER: every file is whole, or the older one
  local file
  while read -r file; do
    [ -n "$file" ] || continue
    [ "$(head -c 100 "$file")" = "$old_text" ] || is_whole "$file" || fail "$file is broken after $2."
  done < <(finals "$1")
}

echo "-- undisturbed"
mkdir "$temporary/reference"
"$host" run "$algorithm" -- INPUT="$temporary/legs.fgb" "${parameters[@]}" "$key=$(target "$temporary/reference")" \
  >"$temporary/out" 2>&1 &
pid=$!
await_writing "$pid" "$temporary/reference"
begin=$(date +%s%N)
wait "$pid" || fail "run: $(cat "$temporary/out")"
milliseconds=$((($(date +%s%N) - begin) / 1000000)) # with the end of the program
size=$(finals "$temporary/reference" | tr '\n' '\0' | xargs -0 cat | wc -c)
count=$(finals "$temporary/reference" | wc -l)
[ "$count" -gt 0 ] || fail "no files: $(cat "$temporary/out")"
unfinished "$temporary/reference" && fail "unfinished files were left."
while read -r file; do
  is_whole "$file" || fail "$file is not whole by --whole."
done < <(finals "$temporary/reference")
echo "   $count file(s), $size bytes, $milliseconds ms from the first file to the end"

# The check itself has to find a broken file.
broken=$(finals "$temporary/reference" | head -n 1)
mkdir "$temporary/broken"
head -c $(($(stat -c %s "$broken") / 2)) "$broken" >"$temporary/broken/$(basename "$broken")"
is_whole "$temporary/broken/$(basename "$broken")" && fail "half a file passes for a whole one."

after_full() { # after_full FOLDER WHAT WITH_OLD: what must hold after a run that failed
  grep -q 'could not be written whole\|cannot be written' "$temporary/out" ||
    fail "$2: no word on it: $(cat "$temporary/out")"
  check_files "$1" "$2"
  unfinished "$1" && fail "$2: unfinished files were left: $(ls -A "$1")"
  if [ "$key" = OUTPUT ] && [ "$3" = no ] && [ -n "$(finals "$1")" ]; then fail "$2: a file was left."; fi
  return 0
}
full_disks=0
for with_old in no yes; do
  echo "-- a limit on the size of files, older files: $with_old"
  folder=$temporary/limited-$with_old
  mkdir "$folder"
  [ $with_old = yes ] && make_old "$folder"
  biggest=$(finals "$temporary/reference" | tr '\n' '\0' | xargs -0 stat -c %s | sort -n | tail -n 1)
  # The signal is ignored, so that writing fails as it does on a full disk; dash counts in 512 bytes, bash in 1024.
  if (trap '' XFSZ; ulimit -f $((biggest / 2048)); run "$folder"); then
    fail "half the size was enough: $(cat "$temporary/out")"
  fi
  after_full "$folder" "the limit on size" $with_old
  full_disks=$((full_disks + 1))

  [ "$(id -u)" -eq 0 ] || continue
  folder=$temporary/disk-$with_old
  mkdir "$folder"
  mount -t tmpfs -o size=$((size * 2 / 3 / 4096 * 4096)) tmpfs "$folder" 2>/dev/null || continue
  trap 'umount "$temporary"/disk-* 2>/dev/null || true; rm -rf "$temporary"' EXIT
  echo "-- a disk of two thirds the size, older files: $with_old"
  [ $with_old = yes ] && make_old "$folder"
  if run "$folder"; then fail "two thirds of the size were enough: $(cat "$temporary/out")"; fi
  after_full "$folder" "the full disk" $with_old
  full_disks=$((full_disks + 1))
done
echo "   $full_disks runs on full disks"

echo "-- killed in the middle"
RANDOM=1 inside=0
for ((round = 1; round <= rounds; ++round)); do
  folder=$temporary/killed-$round
  mkdir "$folder"
  ((round % 2 == 0)) && make_old "$folder"
  "$host" run "$algorithm" -- INPUT="$temporary/legs.fgb" "${parameters[@]}" "$key=$(target "$folder")" \
    >"$temporary/out" 2>&1 &
  pid=$!
  await_writing "$pid" "$folder"
  wait_ms=$((milliseconds * RANDOM / 32768))
  sleep "$(printf '%d.%03d' $((wait_ms / 1000)) $((wait_ms % 1000)))"
  kill -STOP "$pid" 2>/dev/null || true # so that it does not move on between looking and killing
  if writing "$pid" "$folder"; then inside=$((inside + 1)); fi
  kill -KILL "$pid" 2>/dev/null || true
  wait "$pid" 2>/dev/null || true
  check_files "$folder" "being killed"
done
echo "   $inside of $rounds times in the middle of a file"
[ "$inside" -ge 3 ] || fail "this proves nothing: only $inside of $rounds times it was in the middle of a file."

echo "-- after being killed the next run is whole"
folder=$temporary/killed-1
run "$folder" || fail "run: $(cat "$temporary/out")"
[ "$(finals "$folder" | wc -l)" = "$count" ] || fail "files lack."
check_files "$folder" "a new run"
finals "$folder" | while read -r file; do
  [ "$(head -c 100 "$file")" = "$old_text" ] && fail "$file is still the older one."
  true
done
echo "passed"
