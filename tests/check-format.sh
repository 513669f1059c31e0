#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Refuses C++ that is not formatted as .clang-format says; with --write it formats it.
set -eu
cd "$(dirname "$0")/.."
way="--dry-run -Werror --ferror-limit=1"
[ "${1:-}" = --write ] && way="-i"
# shellcheck disable=SC2086
find core app tests \( -name '*.h' -o -name '*.cpp' \) -print0 | xargs -0 -n 40 -P 2 clang-format $way || {
  echo "tests/run.sh: format the files named above with: sh tests/check-format.sh --write" >&2
  exit 1
}
