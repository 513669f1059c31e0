#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Refuses an include that points against the arrows between rooms, and Qt anywhere in core.
set -eu
cd "$(dirname "$0")/.."
bad=0
refuse() {
  echo "arrow check: $1" >&2
  bad=1
}
allowed() {
  case $1 in
    base) echo "base" ;;
    model) echo "base model" ;;
    pv) echo "base model pv" ;;
    numerics) echo "base numerics" ;;
    store) echo "base model store" ;;
    measure) echo "base model numerics measure" ;;
    gauge) echo "base model numerics measure gauge" ;;
    fleet) echo "base model numerics measure gauge fleet" ;;
    sizing) echo "base model numerics measure gauge fleet sizing" ;;
    exchange) echo "base model pv numerics measure gauge fleet sizing exchange" ;;
    trace) echo "base model numerics store measure trace" ;;
  esac
}
for room in base model pv numerics store measure gauge fleet sizing exchange trace; do
  may=" $(allowed "$room") "
  for file in core/"$room"/*.h core/"$room"/*.cpp; do
    for target in $(sed -n 's,^#include "\([a-z_]*\)/.*",\1,p' "$file"); do
      case "$may" in *" $target "*) ;; *) refuse "$file may not include from $target" ;; esac
    done
    if grep -qE '^#include <Q[A-Za-z]' "$file"; then refuse "$file names Qt"; fi
  done
done
# What writes reports knows drawings and style, but neither document nor window.
for file in app/report/*.h app/report/*.cpp; do
  for target in $(sed -n 's,^#include "\([a-z_]*\)/.*",\1,p' "$file"); do
    case " report charts style base model numerics measure gauge fleet sizing exchange " in *" $target "*) ;; *) refuse "$file may not include from $target" ;; esac
  done
done
for file in $(grep -rl '#include "report/' app/style app/charts app/text app/document app/services app/models app/delegates || true); do
  refuse "$file may not include from report"
done
# Qt Charts stays behind one adapter, the store behind the document.
for file in $(grep -rlE '#include <Q(t?Charts?|.*Series|.*Axis|Chart)' app --include=*.h --include=*.cpp || true); do
  case $file in app/charts/*) ;; *) refuse "$file names Qt Charts outside app/charts" ;; esac
done
for file in $(grep -rl '#include "store/' app --include=*.h --include=*.cpp || true); do
  case $file in app/document/*|app/text/*) ;; *) refuse "$file touches the store past the document" ;; esac
done
exit $bad
