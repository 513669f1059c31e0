#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Writes linker options that have a program hold what object files of the late part need of it.
# Usage: late_needs.sh FILE NM OBJECT...
set -eu
file=$1
nm=$2
shift 2
"$nm" -u "$@" >"$file.undefined"
sed -n 's/^ *U \(.*6ullage.*\)/-Wl,-u,\1/p' "$file.undefined" | sort -u >"$file"
[ -s "$file" ] || { echo "late_needs.sh: $nm names nothing that the late part needs" >&2; exit 1; }
