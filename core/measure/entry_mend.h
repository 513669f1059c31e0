// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/entry_doubts.h"

#include <optional>
#include <vector>

namespace ullage {

/// Mean load between the last two register readings up to a moment that no mark parts, W; absent where there are none, or it is not above 0.
[[nodiscard]] std::optional<double> load_before_w(const RunRecord& record, UtcMs time_ms);

/// The reading as it was probably meant, where its register is doubted: with a digit or a decimal place too many or too few, or in kWh instead of Wh
/// (factors of 10, 100 and 1000). Offered where it then raises no doubt of the register and continues the load before it within a factor of two, of
/// several that do the one nearest to that load. Source: the program's own.
[[nodiscard]] std::optional<ReadingValues> mended_entry(const RunRecord& record, const ReadingValues& values, const std::vector<Doubt>& doubts,
                                                        UtcMs now_ms, const MeasureOptions& options = {});

} // namespace ullage
