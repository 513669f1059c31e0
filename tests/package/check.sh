#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs the built program into a folder, makes its Debian package, and has the tools of the desktop and of the distribution look at both.
# Usage: check.sh BUILD SOURCE
set -eu
build=$1
source=$2
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
fail() {
  echo "package: $1" >&2
  exit 1
}

cmake --install "$build" --prefix "$work/usr" >"$work/installed"
root=$work/usr
share=$root/share

desktop-file-validate "$share/applications/ullage.desktop" || fail "the desktop entry is faulty"
appstreamcli validate --no-net "$share"/metainfo/*.metainfo.xml || fail "the data for software catalogues are faulty"

# The manual page: no warning, and every command in it.
said=$(man --warnings -E UTF-8 -l -Tutf8 "$share/man/man1/ullage.1.gz" 2>&1 >"$work/page")
[ -z "$said" ] || fail "man warns of the manual page: $said"
for command in $("$root/bin/ullage" --help | sed -n '/^Subcommands:/,$p' | awk 'NR > 1 && /^  [^ ]/ {print $1}'); do
  zgrep -q "^.SS $(printf %s "$command" | sed 's/-/\\\\-/g')\$" "$share/man/man1/ullage.1.gz" || fail "the manual page lacks $command"
done

# The completion, as a shell uses it.
completed() {
  bash -c '. "$1"; COMP_WORDS=("${@:2}"); COMP_CWORD=$(($# - 2)); _ullage; printf "%s\n" "${COMPREPLY[@]}"' - "$share/bash-completion/completions/ullage" "$@"
}
completed ullage comp | grep -qx compare || fail "no command is completed"
completed ullage compare book.ullage --at | grep -qx -- --at-load || fail "no option is completed"
completed ullage import book.ullage --ended found | grep -qx found-off || fail "no word of an option is completed"

# What stands on large libraries lies in a file of its own.
"$root/bin/ullage" import "$work/late.ullage" "$source"/sample-data/01-*.csv >/dev/null
"$root/bin/ullage" export-readings "$work/late.ullage" --format xlsx --output "$work/late.xlsx" || fail "the late part is not found where it is installed"

# A logbook is known by what it holds, also under another name; another SQLite file is none.
mkdir -p "$share/mime/packages" "$work/home"
cp -r /usr/share/mime/packages/freedesktop.org.xml "$share/mime/packages/"
update-mime-database "$share/mime" 2>"$work/said" # that this folder is no usual one
"$root/bin/ullage" import "$work/book.ullage" "$source"/sample-data/01-*.csv >/dev/null
cp "$work/book.ullage" "$work/renamed.data"
sqlite3 "$work/other.data" 'CREATE TABLE t (a)'
kind_of() { XDG_DATA_DIRS="$share" XDG_DATA_HOME="$work/home" "$build/tests/package/mime_of" "$1"; }
[ "$(kind_of "$work/book.ullage")" = application/x-ullage-logbook ] || fail "a logbook is not known as one"
[ "$(kind_of "$work/renamed.data")" = application/x-ullage-logbook ] || fail "a logbook of another name is not known by its bytes"
[ "$(kind_of "$work/other.data")" = application/vnd.sqlite3 ] || fail "another database is taken for a logbook"
grep -q '^MimeType=application/x-ullage-logbook;$' "$share/applications/ullage.desktop" || fail "the desktop entry does not open logbooks"

(cd "$build" && cpack -B "$work/made" >"$work/cpack" 2>&1) || { cat "$work/cpack" >&2; fail "the package was not made"; }
lintian --allow-root --fail-on error,warning "$work"/made/*.deb || fail "lintian finds fault with the package"
dpkg-deb -f "$work"/made/*.deb Depends | grep -q libqt6svg6 || fail "the package does not ask for what draws its icons"
dpkg-deb -f "$work"/made/*.deb Depends | grep -q libxlsxwriter4 || fail "the package does not ask for what its late part stands on"
