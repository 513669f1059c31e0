// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

namespace ullage {

/// Clauses one after the other, as the language in use parts them: "pulled down; slow clock". Empty ones are left out.
[[nodiscard]] QString joined_clauses(const QStringList& clauses);

} // namespace ullage
