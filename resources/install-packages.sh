#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Installs what packages.txt names and this machine lacks; says so and stops when it may not.
# Usage: install-packages.sh [program]; with `program` without what only the tests need.
set -eu
list="$(dirname "$0")/packages.txt"
missing=""
end='$'
[ "${1:-}" != program ] || end='/^# For the tests alone/'
for package in $(sed -n "1,${end}p" "$list" | grep -v '^#'); do
  dpkg-query -W -f='${Status}' "$package" 2>/dev/null | grep -q 'ok installed' || missing="$missing $package"
done
[ -n "$missing" ] || exit 0
if [ "$(id -u)" = 0 ]; then
  as_root=""
elif command -v sudo >/dev/null 2>&1; then
  as_root="sudo"
else
  echo "ullage: these packages are missing and this user may not install them:$missing" >&2
  echo "ullage: ask an administrator to run: apt-get install --no-install-recommends$missing" >&2
  exit 1
fi
echo "ullage: installing$missing"
$as_root apt-get update
$as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends $missing
