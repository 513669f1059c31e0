// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room measure.
#pragma once

#include "measure/inside/dense_log.h"

#include <cstddef>
#include <vector>

namespace ullage {

/// Where the log of the run's meter says nothing of what flowed (before it, after it, and in gaps of a power without register), the log of another
/// meter of the run stands in that covers all of that time: its energy, by what is stated of that meter, goes into `dense`, and LogUse::taken_over
/// says so. Times of up to two minutes are left to the budget. Precondition: as dense_log().
void take_over_gaps(const RunRecord& record, const RunScan& scan, const MeasureOptions& options, DenseLog& dense);

/// The run as the log of another of its meters alone saw it: without registers and marks of registers.
[[nodiscard]] RunRecord by_other_log(const RunRecord& record, std::size_t log);

/// Adds what a meter measured to what it measured before.
void add_part(const MeterPart& part, std::vector<MeterPart>& parts);

} // namespace ullage
