// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "model/ids.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// Named faults; the text names reach files and JSON, see finding_key().
enum class FindingKind {
    stuck,
    jump,
    rebound,
    stopped_early,
    hidden_reserve,
    delivered_exceeds_gauge_implied,
    held_at_full,
    bent,
    coarse,
    omits_own_consumption,
    found_off_without_mark,
    infeasible,
    outside_shares, ///< of energy and time gone, in a drain from full to cut-off
    lone_reading,   ///< of the gauge, perhaps mistyped: without it there is no fault
    hidden_reset,   ///< of the register, not the gauge: what one run shows may be either
};

/// Three weights, told by word and shape as well as colour.
enum class Weight { note, doubt, fault };

/// "stuck", "jump", "rebound", "stopped_early", …
[[nodiscard]] std::string_view finding_key(FindingKind kind);
/// "note", "doubt", "fault": as files for machines have it.
[[nodiscard]] std::string_view weight_text(Weight weight);
/// The same for people.
[[nodiscard]] Message say_weight(Weight weight);

/// A named fault of the gauge with its evidence.
struct Finding {
    FindingKind kind;
    Weight weight = Weight::doubt;
    Message sentence{};                ///< one sentence for people
    Message evidence{};                ///< the numbers that decided it
    std::vector<ReadingId> readings{}; ///< in order of time
    double size = 0;                   ///< how large, in size_unit
    std::string size_unit{};           ///< "pt" or "Wh"
    std::string statistic_name{};      ///< what was compared
    double statistic = 0, threshold = 0;
};

} // namespace ullage
