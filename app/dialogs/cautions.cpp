// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/cautions.h"

#include "formats/text/safety_words.h"
#include "style/words.h"

namespace ullage {

namespace {

QStringList lines_of(const std::vector<Message>& words) {
    QStringList lines;
    for (const Message& each : words) lines << text_of(each);
    return lines;
}

} // namespace

QStringList cautions() { return lines_of(safety_words()); }

QStringList cautions(RunKind kind) { return lines_of(safety_words(kind)); }

QString caution_line() { return text_of(say(safety_line)); }

QString specimen_sentence() { return text_of(say(specimen_words)); }

QString specimen_line() { return text_of(say(specimen_line_words)); }

} // namespace ullage
