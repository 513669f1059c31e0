#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Refuses what clang-tidy finds in a room of core or app, by the checks of .clang-tidy: sh tests/check-tidy.sh store; sh tests/check-tidy.sh pages/run
# A second word names the build, .build/tests if none; it has to be configured, and built as far as that room wants what is generated. The files of
# a room that are compiled together are looked at together, which takes seconds for a small room and a minute or two for a large one.
set -eu
cd "$(dirname "$0")/.."
here=$(pwd)
room=${1:?the name of a room, as in DEVELOPERS.md}
build=${2:-.build/tests}
case $build in /*) ;; *) build="$here/$build" ;; esac
for root in core app; do
  [ -f "$root/$room/CMakeLists.txt" ] && folder="$root/$room"
done
[ -n "${folder:-}" ] || { echo "tests/check-tidy.sh: there is no room called $room; see DEVELOPERS.md" >&2; exit 2; }
[ -f "$build/compile_commands.json" ] || { echo "tests/check-tidy.sh: $build is not configured; see DEVELOPERS.md" >&2; exit 2; }
files=$(sed -n 's/^ *"file": "\(.*\)",*$/\1/p' "$build/compile_commands.json" | sort -u |
  grep -E "^($here/$folder/|$build/$folder/CMakeFiles/[^/]*/Unity/).*\.(cpp|cxx)$" | grep -v mocs_compilation) || true
[ -n "$files" ] || { echo "tests/check-tidy.sh: $build compiles no file of $folder" >&2; exit 2; }
# The build is g++'s: what clang does not know of its options is no finding.
# shellcheck disable=SC2086
clang-tidy -p "$build" --quiet --warnings-as-errors='*' --extra-arg=-Wno-unknown-warning-option --extra-arg=-Wno-error $files
