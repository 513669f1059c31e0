// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"

namespace ullage {

/// Two clauses with a semicolon between them; the one alone where the other says nothing.
[[nodiscard]] inline Message with_clause(const Message& before, const Message& clause) {
    if (before.empty()) return clause;
    return clause.empty() ? before : say_joined({before, clause}, "; ");
}

} // namespace ullage
