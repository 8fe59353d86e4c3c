#!/usr/bin/env bash
# SPDX-License-Identifier: GPL-2.0-or-later
# numbers.sh PREFIX FOLDER: what the plugin installed in PREFIX works out from the sample, every algorithm that writes
# layers, as layers in FOLDER for compare.py. The day is always the same.
# shellcheck source-path=SCRIPTDIR source=../plugin/surroundings.sh
. "$(dirname "${BASH_SOURCE[0]}")/../plugin/surroundings.sh"
# shellcheck source=work_list.sh
. "$(dirname "${BASH_SOURCE[0]}")/work_list.sh"
prefix=$(realpath "${1:?give the prefix Brushline is installed in}")
out=$(realpath -m "${2:?give a folder}")
use_plugin "$prefix"
rm -rf "$out"
mkdir -p "$out"

work_out() { # work_out ID [OPTIONS] -- ARGUMENTS
  timeout 300 "$host" run "brushline:$1" "${@:2}" >"$temporary/out" 2>&1 || fail "$1: $(cat "$temporary/out")"
}
work_through "$sample" "$out"
