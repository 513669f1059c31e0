#!/bin/sh
# SPDX-License-Identifier: GPL-3.0-or-later
# Brings resources/languages/*.ts up to date with the texts of the source: new ones come in unfinished, those that are gone leave.
# With `--into FOLDER` copies in that folder are brought up to date in place of those.
set -eu
root=$(cd "$(dirname "$0")/../.." && pwd)
folder=$root/resources/languages
if [ "${1:-}" = --into ]; then
    folder=$(cd "$2" && pwd)
    cp "$root"/resources/languages/*.ts "$folder"
fi
lupdate=$(command -v lupdate6 || echo /usr/lib/qt6/bin/lupdate)
cd "$root"
"$lupdate" -silent -no-obsolete -locations none -source-language en \
    -tr-function-alias QT_TRANSLATE_NOOP+=phrase,QT_TRANSLATE_N_NOOP3+=phrases \
    app core -ts "$folder/ullage_de.ts" "$folder/ullage_fr.ts" "$folder/ullage_es.ts"
