// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "sizing/charge_course.h"
#include "sizing/daily_needs.h"
#include "sizing/sized_unit.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// A unit to be sized with what its runs say; `fit` (without drains for an untested unit) and `unit` are not null, `claims` may be.
struct UnitToSize {
    const Unit* unit = nullptr;
    const UnitFit* fit = nullptr;
    const UnitClaims* claims = nullptr;
};

/// All answers for one load list.
struct Sizing {
    LoadList list;
    LoadTotals totals;
    SizingChoices choices;
    std::vector<SizedUnit> units;                     ///< in the order given
    std::vector<DailyNeeds> needs;                    ///< PV array, months and battery, one for each unit, its own draw counted
    std::vector<std::optional<ChargeCourse>> courses; ///< one for each unit; absent where it has no basis
    DailyNeeds list_needs;                            ///< of the list alone, before any unit's own draw
    std::vector<Message> remarks;                     ///< what the answers assume
};

/// Preconditions: check(list) and check(choices) are good.
[[nodiscard]] Sizing size_for(const LoadList& list, const std::vector<UnitToSize>& units, const SizingChoices& choices = {});

/// What can hurt where a sizing is put to work, a sentence each.
[[nodiscard]] std::vector<Message> sizing_cautions();

} // namespace ullage
