// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room trace: the steps of detect_layout().
#pragma once

#include "trace/inside/layout_rows.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// What the cells of one column are, as counts over the rows looked at.
struct ColumnContent {
    std::size_t filled = 0, numbers = 0, date_times = 0, dates = 0, clocks = 0;
    bool with_offset = false;      ///< moments with Z or an offset
    bool grows = true;             ///< numbers that never fall
    double first = 0, last = 0;    ///< of the numbers
    std::optional<LogUnit> suffix; ///< the unit that its cells name

    [[nodiscard]] bool mostly(std::size_t count) const { return 2 * count > filled; }
};

/// Decimal sign and grouping.
void settle_numbers(const LayoutRows& rows, const LayoutAnswers& answers, TraceDetection& detection);
[[nodiscard]] std::vector<ColumnContent> contents_of(const LayoutRows& rows, const TraceLayout& layout);
/// Roles and units of all columns but that of time. Errors: a column or unit named by the user that is not there.
[[nodiscard]] Result<void> settle_columns(const LayoutRows& rows, const std::vector<ColumnContent>& contents, const LayoutAnswers& answers,
                                          TraceDetection& detection);
/// Which columns hold the time and how it is written.
void settle_times(const LayoutRows& rows, const std::vector<ColumnContent>& contents, const LayoutAnswers& answers, TraceDetection& detection);

} // namespace ullage
