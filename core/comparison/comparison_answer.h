// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "comparison/fair_comparison.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// Units that comparison_answer() gives a sentence; beyond them the table tells.
inline constexpr std::size_t most_answered = 12;

/// What a comparison says to a reader before any table.
struct ComparisonAnswer {
    Message order;              ///< which order these meters resolve, or why there is none; empty for a single unit
    bool has_order = false;     ///< units have a rank; else `order` is a caution
    std::vector<Message> units; ///< "Osk 1200 gives 75 % of its label at 120 W; its gauge is up to 14 points off.", in fair_order()
};

/// The answer of units side by side. Without rows, or with several rows of one unit, the order says what the rows are and no unit has a sentence.
[[nodiscard]] ComparisonAnswer comparison_answer(const Comparison& comparison, const FairComparison& fair);

/// Which drains a row at one load rests on, for people: "3 drains together", "mean of 2 drains", "drain 14 May, 64 W". As tested the run of the row.
[[nodiscard]] Message based_on_text(const Comparison& comparison, const FairComparison& fair, std::size_t row);

/// The load at which most units can stand beside one another, moved between their tested loads or tested there; of several the one nearest to the
/// middle of their loads as tested, rounded where that leaves nobody out. Absent where loads are alike, or fewer than two units meet.
[[nodiscard]] std::optional<CommonLoad> suggested_load(const Comparison& comparison);

} // namespace ullage
