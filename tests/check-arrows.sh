#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Refuses an include that points against the arrows between rooms. A room is a folder whose CMakeLists.txt calls ullage_room(NAME ROOT ROOMS...); it may
# include the headers that lie in the rooms it names, or that these name in turn. Headers in a folder inside a room are that room's own affair.
set -eu
cd "$(dirname "$0")/.."
bad=0
refuse() {
  echo "arrow check: $1" >&2
  bad=1
}

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
find core app -name CMakeLists.txt | while read -r list; do
  sed -n "s|^ullage_room(\([a-z_]*\) \([a-z]*\) *\(.*\))|$(dirname "$list") \1 \3|p" "$list"
done >"$work/arrows"
# Folder of the file, folder of the header below core or app.
grep -rn --include=*.h --include=*.cpp -E '^#include "[a-z_]+/' core app |
  sed 's|^\([^:]*\)/[^/:]*:[0-9]*:#include "\(.*\)/[^/"]*".*|\1 \2|' | sort | uniq |
  awk -v arrows="$work/arrows" '
  # The room that a folder lies in, empty for none.
  function room_of(folder) {
    while (folder != "" && !(folder in room)) if (!sub(/\/[^\/]*$/, "", folder)) folder = ""
    return folder
  }
  BEGIN {
    while ((getline line < arrows) > 0) {
      n = split(line, word, " ")
      below = word[1]; sub(/^[a-z]+\//, "", below)
      room[below] = word[2]; known[word[2]] = 1
      for (i = 3; i <= n; ++i) if (sub(/^ullage_/, "", word[i])) may[word[2], word[i]] = 1
    }
    # What a room may use its users may use too.
    do {
      again = 0
      for (a in known) for (b in known) if ((a, b) in may) for (c in known) if ((b, c) in may && !((a, c) in may)) { may[a, c] = 1; again = 1 }
    } while (again)
    for (a in known) if ((a, a) in may) print "the rooms are in a circle at " a
  }
  {
    from = $1; sub(/^[a-z]+\/?/, "", from)
    from = room_of(from); to = room_of($2)
    if (from == "") next
    if (to == "") { print $1 " includes from " $2 ", which is no room"; next }
    if (from == to) next
    if (!((room[from], room[to]) in may)) print $1 " may not include from " $2
    else if (to != $2) print $1 " may not include from " $2 ", which is private to " to
  }' >"$work/found"
while read -r words; do refuse "$words"; done <"$work/found"

for file in $(grep -rlE '^#include <Q[A-Za-z]' core --include=*.h --include=*.cpp || true); do refuse "$file names Qt"; done
# Qt Charts stays behind one adapter, the store behind the document.
for file in $(grep -rlE '#include <Q(t?Charts?|.*Series|.*Axis|Chart)' app --include=*.h --include=*.cpp || true); do
  case $file in app/charts/*) ;; *) refuse "$file names Qt Charts outside app/charts" ;; esac
done
for file in $(grep -rl '#include "store/' app --include=*.h --include=*.cpp || true); do
  case $file in app/document/*|app/cli/*) ;; *) refuse "$file touches the store past the document" ;; esac
done
# Text passes between core and Qt in one place.
for file in $(grep -rlE 'fromStdString|toStdString' app --include=*.h --include=*.cpp || true); do
  case $file in app/style/words.h) ;; *) refuse "$file converts text past app/style/words.h" ;; esac
done
exit $bad
