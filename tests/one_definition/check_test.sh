#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# check.sh must refuse two classes of one name and take two of different names. Usage: sh check_test.sh COMPILER FLAG…
set -eu
here=$(cd "$(dirname "$0")" && pwd)
compiler=$1
shift
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
"$compiler" "$@" -c "$here/first.cpp" -o "$folder/first.o"
"$compiler" "$@" -c "$here/second.cpp" -o "$folder/second.o"
"$compiler" "$@" -DNAME=OnceDefined -c "$here/second.cpp" -o "$folder/other.o"
printf '%s\n' "$folder/first.o" "$folder/second.o" >"$folder/twice"
printf '%s\n' "$folder/first.o" "$folder/other.o" >"$folder/once"
if said=$(sh "$here/check.sh" "$compiler" "$folder/twice" 2>&1); then
  echo "two classes of one name were taken" >&2
  exit 1
fi
case $said in *TwiceDefined*"One Definition Rule"*) ;; *) echo "refused for another reason: $said" >&2; exit 1 ;; esac
sh "$here/check.sh" "$compiler" "$folder/once"
