// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fleet/run_analysis.h"

#include <QString>
#include <QStringList>

#include <vector>

namespace ullage {

/// One line of the findings list.
struct FindingItem {
    enum class Sort { fault, doubt, note, assumed, not_known };
    Sort sort = Sort::note;
    QString sentence;
    QString evidence;     ///< small, below; may be empty
    QStringList readings; ///< those that it names, in order of time; may be empty

    bool operator==(const FindingItem&) const = default;
};

/// "fault", "doubt", "note", "assumed", "not known".
[[nodiscard]] QString finding_word(FindingItem::Sort sort);

/// What the readings of a run say: findings in their order, what was assumed of the register, and what is not known with
/// the reason. A gauge without a fault is said to have none found.
[[nodiscard]] std::vector<FindingItem> finding_items(const RunAnalysis& analysis);

} // namespace ullage
