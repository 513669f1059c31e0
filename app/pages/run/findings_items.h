// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "run_analysis/run_analysis.h"
#include "unit/loss_split.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <vector>

namespace ullage {

/// One line of the findings list.
struct FindingItem {
    enum class Sort { fault, doubt, note, assumed, not_known };
    Sort sort = Sort::note;
    QString sentence;
    QString evidence;                ///< small, below; may be empty
    std::vector<ReadingId> readings; ///< those that it names, in order of time; may be empty
    bool acceptable = false;         ///< an assumption that the tester can turn into a statement, see accept_register_correction

    bool operator==(const FindingItem&) const = default;
};

/// "fault", "doubt", "note", "assumed", "not known".
[[nodiscard]] QString finding_word(FindingItem::Sort sort);

/// What the readings of a run say: findings in their order, what was assumed of the register, and what is not known with
/// the reason. A gauge without a fault is said to have none found. Below them, where the energy went: `split` where given, what the run
/// itself says of losses, and the least error of the gauge unless a finding says the same. What only a drain can tell
/// is one line for the other kinds of run.
[[nodiscard]] std::vector<FindingItem> finding_items(const RunAnalysis& analysis, const std::optional<LossSplit>& split = std::nullopt,
                                                     RunKind kind = RunKind::drain);

} // namespace ullage
