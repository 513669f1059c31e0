// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/cautions.h"

#include "formats/text/safety_words.h"
#include "style/words.h"

namespace ullage {

namespace {

QStringList translated(const std::vector<std::string>& words) {
    QStringList lines;
    for (const std::string& each : words) lines << tr(each.c_str());
    return lines;
}

} // namespace

QStringList cautions() { return translated(safety_words()); }

QStringList cautions(RunKind kind) { return translated(safety_words(kind)); }

QString caution_line() { return tr(safety_line.data()); }

QString specimen_sentence() { return tr(specimen_words.data()); }

QString specimen_line() { return tr(specimen_line_words.data()); }

} // namespace ullage
