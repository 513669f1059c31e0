// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/clauses.h"

#include "style/words.h"

namespace ullage {

QString joined_clauses(const QStringList& clauses) {
    std::vector<Message> parts;
    for (const QString& clause : clauses)
        if (!clause.isEmpty()) parts.emplace_back(utf8_of(clause));
    return raw_text(say_joined(parts, "; ").text());
}

} // namespace ullage
