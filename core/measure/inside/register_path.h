// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/register.h"
#include "measure/run_scan.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace ullage {

/// A register reading as the search for the most plausible sequence sees it.
struct RegisterNode {
    std::size_t reading = 0;
    UtcMs time_ms = 0;
    double register_wh = 0;
    /// A mark between the node before and this one (both ends noted in the same row count): what it was and when.
    std::optional<MarkKind> mark;
    UtcMs mark_ms = 0;
};

/// How a kept node continues the kept node before it.
enum class Step { first, plain, rollover, reset, zeroed, swapped };

/// One kept node: its index into the nodes and how it was reached.
struct PathNode {
    std::size_t node = 0;
    Step step = Step::first;
};

/// Limits and costs of the search, see unwrap_register.
struct PathRules {
    double limit_w = 0; ///< no load above this is believed
    double usual_w = 0; ///< median load of the run; 0 when unknown
    double step_wh = 1;
    double moment_doubt_h = 0;
    std::optional<double> span_wh;
};

/// The cheapest sequence of kept nodes (dynamic programme over the last few kept nodes; O(n)). Never empty unless
/// `nodes` is.
[[nodiscard]] std::vector<PathNode> plausible_path(const std::vector<RegisterNode>& nodes, const PathRules& rules);

/// Median of the positive loads between neighbouring register readings, W; 0 when there is none.
[[nodiscard]] double usual_load_w(const std::vector<RegisterPoint>& registers, const std::vector<RegisterMark>& marks, const PathRules& rules);

/// Whether the register grows from every reading to the next by what could have flowed, with no mark between them: then the cheapest sequence
/// keeps every node and costs nothing, and there is nothing to search.
[[nodiscard]] bool only_grows(const std::vector<RegisterPoint>& registers, const std::vector<RegisterMark>& marks, const PathRules& rules);

} // namespace ullage
