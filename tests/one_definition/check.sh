#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Refuses two definitions of one class name among object files that g++ compiled with -flto: the linker would keep the functions of one of them for
# both, and the program crashes. Usage: sh check.sh COMPILER LIST, where LIST names an object file a line.
set -eu
compiler=$1
list=$2
set --
while read -r object || [ -n "$object" ]; do
  set -- "$@" "$object"
done <"$list"
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
# What g++ calls for the first half of a link with -flto, which compares the types of all files; the second half, making code anew, is left out.
"$("$compiler" -print-prog-name=lto1)" -quiet -fwpa -flto-partition=one -fltrans-output-list="$folder/list" -Wodr -Werror=odr -o "$folder/out" "$@"
