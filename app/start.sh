#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing, builds, and opens Ullage on the sample logbook; without a display it does the same job in text.
# Usage: sh app/start.sh [LOGBOOK]
set -eu
here=$(cd "$(dirname "$0")/.." && pwd)
sh "$here/resources/install-packages.sh" program

build="$here/.build/program"
[ -f "$build/build.ninja" ] || cmake -S "$here" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DULLAGE_UNITY=ON >/dev/null
[ -x "$build/app/ullage" ] || echo "ullage: building, this takes some minutes the first time"
ninja -C "$build" ullage
ullage="$build/app/ullage"

logbook="${1:-}"
if [ -z "$logbook" ]; then
  mkdir -p "$here/.build/sample"
  logbook="$here/.build/sample/travelling-pictures.ullage"
  if [ ! -f "$logbook" ]; then
    "$ullage" import "$logbook" "$here"/sample-data/*.csv
    "$ullage" import-trace "$here/sample-data/logs/12-pelm-900-drain-logged.csv" --logbook "$logbook" --unit "Pelm 900" --run 4
    "$ullage" import-loads "$here"/sample-data/load-lists/*.csv --logbook "$logbook"
  fi
fi

if [ -z "${XDG_RUNTIME_DIR:-}" ]; then
  XDG_RUNTIME_DIR="$here/.build/runtime"
  export XDG_RUNTIME_DIR
  mkdir -p "$XDG_RUNTIME_DIR"
  chmod 700 "$XDG_RUNTIME_DIR"
fi

if [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
  exec "$ullage" "$logbook"
fi

echo "ullage: no display here; the same job in text"
"$ullage" analyse "$logbook"
"$ullage" compare "$logbook"
list="$here/sample-data/load-lists/show-night.csv"
"$ullage" size "$logbook" --load-list "$list"
folder="$here/.build/sample/results" # ours alone, so that --force replaces nothing of anybody else
mkdir -p "$folder"
for form in csv markdown html xlsx json latex; do
  case $form in markdown) ending=md ;; latex) ending=tex ;; *) ending=$form ;; esac
  "$ullage" compare "$logbook" --format "$form" --force --output "$folder/comparison.$ending"
  "$ullage" export-readings "$logbook" --format "$form" --force --output "$folder/readings.$ending"
done
"$ullage" analyse "$logbook" --format json >"$folder/analysis.json"
"$ullage" pictures "$logbook" --force --into "$folder"
"$ullage" report "$logbook" --compare --force --output "$folder/comparison-report.pdf"
"$ullage" report "$logbook" --compare --force --output "$folder/comparison-report.html"
"$ullage" report "$logbook" --size "$list" --force --output "$folder/sizing-report.pdf"
"$ullage" report "$logbook" --size "$list" --force --output "$folder/sizing-report.html"
[ -n "${1:-}" ] || "$ullage" report "$logbook" --pv "$here/sample-data/pv-tarrow-2k-roof.txt" --force --output "$folder/pv-check-report.pdf"
echo "ullage: tables, pictures and reports are in $folder"
