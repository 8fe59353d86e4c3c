# SPDX-License-Identifier: GPL-2.0-or-later
# shellcheck shell=bash disable=SC2034,SC2154
# Sourced after surroundings.sh: a PostgreSQL server with PostGIS of one's own, in a folder that goes at the end, also
# of a failure. It listens on a socket in that folder only, which nobody but its owner and root can reach.

# start_postgis: sets $postgis, which says where the database is, in the words of libpq, GDAL and QGIS.
start_postgis() {
  local each programs="" log
  # Debian keeps them off the path.
  for each in "$(dirname "$(command -v initdb || echo /none/initdb)")" /usr/lib/postgresql/*/bin; do
    [ -x "$each/initdb" ] && programs=$each # the newest
  done
  [ -n "$programs" ] || fail "there is no PostgreSQL server here (Debian: apt-get install postgresql postgresql-postgis)."
  postgis_folder=$(mktemp -d /tmp/postgis.XXXXXX) # a socket's path may not be long
  trap 'stop_postgis; rm -rf "$temporary"' EXIT
  as_server=()
  if [ "$(id -u)" = 0 ]; then # the server refuses to run as root
    local user=nobody
    id postgres >/dev/null 2>&1 && user=postgres
    as_server=(runuser -u "$user" --)
    chown "$user" "$postgis_folder"
  fi
  postgis_control=$programs/pg_ctl
  log=$postgis_folder/log
  cd "$postgis_folder" || exit # the server's user may not be let into the folder this one stands in
  "${as_server[@]}" "$programs/initdb" -D "$postgis_folder/data" -U brushline -A trust -E UTF8 --locale=C.UTF-8 -N \
    >"$temporary/initdb" 2>&1 || fail "initdb: $(cat "$temporary/initdb")"
  # What is in it is lost when the machine stops; so be it.
  "${as_server[@]}" "$postgis_control" -D "$postgis_folder/data" -l "$log" -w -t 60 -o \
    "-c listen_addresses='' -k '$postgis_folder' -c fsync=off -c synchronous_commit=off -c full_page_writes=off" \
    start >/dev/null || fail "PostgreSQL does not start: $(cat "$log")"
  cd "$OLDPWD" || exit
  # A test that is killed for taking too long stops nothing itself.
  setsid bash -c 'while kill -0 "$1" 2>/dev/null; do sleep 1; done; cd "$2" && "${@:3}"; rm -rf "$2"' watch $$ \
    "$postgis_folder" "${as_server[@]}" "$postgis_control" -D "$postgis_folder/data" -m immediate stop \
    </dev/null >/dev/null 2>&1 &
  postgis="host='$postgis_folder' port='5432' user='brushline' dbname='brushline'"
  postgis_psql=$programs/psql
  "$programs/createdb" -h "$postgis_folder" -U brushline brushline || fail "createdb"
  sql "create extension postgis" >/dev/null ||
    fail "there is no PostGIS for this PostgreSQL (Debian: apt-get install postgresql-postgis)."
}

stop_postgis() {
  [ -n "${postgis_folder:-}" ] || return 0
  if [ -f "$postgis_folder/data/postmaster.pid" ]; then
    (cd "$postgis_folder" && "${as_server[@]}" "$postgis_control" -D "$postgis_folder/data" -m immediate -w stop) >/dev/null ||
      true
  fi
  rm -rf "$postgis_folder"
}

# sql STATEMENT: the rows, columns parted by |.
sql() { "$postgis_psql" -h "$postgis_folder" -U brushline -d brushline -XqAt -v ON_ERROR_STOP=1 -c "$1"; }
