#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what is missing, builds, and runs every test: those of core, and the whole program, under address and undefined-behaviour sanitizers.
# With the name of a folder of tests, such as `store`, `unit` or `window`, it builds and runs those alone.
set -eu
here=$(cd "$(dirname "$0")/.." && pwd)
sh "$here/resources/install-packages.sh"
sh "$here/tests/check-arrows.sh"
sh "$here/tests/check-format.sh"

XDG_RUNTIME_DIR="${XDG_RUNTIME_DIR:-$here/.build/runtime}"
# What the program remembers of files between its runs stays among the builds.
XDG_STATE_HOME="$here/.build/state"
# Most tests hold what is said in English, whatever the desktop speaks.
unset LANGUAGE
export XDG_RUNTIME_DIR XDG_STATE_HOME QT_QPA_PLATFORM=offscreen LC_ALL=C.UTF-8
mkdir -p "$XDG_RUNTIME_DIR"
chmod 700 "$XDG_RUNTIME_DIR"

compiler=""
configure() {
  build="$here/.build/$1"
  shift
  env ${compiler:+CXX="$compiler"} cmake -S "$here" -B "$build" -G Ninja -DULLAGE_TESTS=ON -DULLAGE_UNITY=ON "$@" >/dev/null
}
# Core tests run once, under sanitizers, and so does the whole program as users call it. clang++ makes such code in less than
# half of the time that g++ takes. -O1: the ensembles of simulated runs would take minutes without.
configure_sanitized() {
  compiler=clang++-19
  configure sanitized -DCMAKE_BUILD_TYPE=Debug -DULLAGE_SANITIZE=ON -DCMAKE_CXX_FLAGS_DEBUG="-O1 -g1"
  compiler=""
}
# The rest, on libraries and program as app/start.sh builds them. What g++ keeps of each file tells whether every class name has one definition.
configure_tests() { configure tests -DCMAKE_BUILD_TYPE=Release -DULLAGE_CORE_TESTS=OFF -DULLAGE_ONE_DEFINITION=ON; }
run() {
  ninja -C "$build"
  # Three at once on two processors: many wait for the disk.
  ctest --test-dir "$build" --output-on-failure --no-tests=error -j 3
}
run_one() {
  ninja -C "$build" "test_$(basename "$1")"
  ctest --test-dir "$build/tests/$1" --output-on-failure --no-tests=error -j 3
}

if [ $# -gt 0 ]; then
  for folder in "core/$1" "$1" "app/$1"; do
    [ -f "$here/tests/$folder/CMakeLists.txt" ] || continue
    case $folder in core/*|published) configure_sanitized ;; *) configure_tests ;; esac
    run_one "$folder"
    exit
  done
  echo "tests/run.sh: there is no folder of tests called $1; see tests/core and tests/app" >&2
  exit 2
fi
configure_sanitized
run
configure_tests
run
