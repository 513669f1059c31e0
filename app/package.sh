#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Builds Ullage and makes its Debian package, ready for `apt-get install ./FILE`.
# Usage: sh app/package.sh
set -eu
here=$(cd "$(dirname "$0")/.." && pwd)
sh "$here/resources/install-packages.sh" program
build="$here/.build/program"
[ -f "$build/build.ninja" ] || cmake -S "$here" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release -DULLAGE_UNITY=ON >/dev/null
ninja -C "$build"
(cd "$build" && cpack -B "$here/.build/package" >"$here/.build/package.log") || { cat "$here/.build/package.log" >&2; exit 1; }
for package in "$here"/.build/package/*.deb; do
  echo "ullage: the package is $package; install it with: apt-get install $package"
done
