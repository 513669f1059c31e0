// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/quantity.h"
#include "measure/options.h"
#include "model/run_record.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// Between what the error of a meter lies, % of its reading: true energy = what it says, corrected, × (1 + error / 100).
struct ErrorRange {
    double low_percent = 0, high_percent = 0;
};

/// What two meters in series said, by registers noted side by side or by their logs, at loads within a factor of 1.25.
struct SeriesLoad {
    double load_w = 0;                  ///< mean, by the first meter
    double first_wh = 0, second_wh = 0; ///< each corrected by what is stated of it
    /// "gain_ratio": second_wh over first_wh. Its interval holds the register steps of both and the seconds between reading one and the other
    /// (10 s, rectangular, common practice, no source), taken as normal (JCGM 100:2008, 5.1). 1: the meters agree.
    Quantity ratio;
    /// Half-widths of what is stated of both at this load (bounding_percent()); absent where one of them states nothing.
    std::optional<double> first_limit_percent, second_limit_percent;
    bool contradiction = false; ///< the whole interval lies beyond what both limits together allow: at least one meter is outside its own
    /// What the other meter leaves of its limit, so that both and the ratio hold; absent without both limits, or where they contradict.
    std::optional<ErrorRange> first_error, second_error;
    Message sentence;
};

/// Two meters that ran in series, over all runs that note both registers.
struct MetersInSeries {
    Meter first, second;
    std::vector<RunId> run_uuids;
    std::vector<SeriesLoad> loads; ///< in order of rising load
};

/// Every pair of meters whose registers were noted in one run, or of which one has its log in a run of the other, in order of first appearance. Runs
/// with a mark "meter swapped" are left out, since there the second meter took over. A ratio takes stretches over which both registers moved by at
/// least twenty of their steps; shorter ones are put together, and pairs with none are left out. Of two logs (or a log beside registers noted by
/// hand) stretches take an hour or more, without a gap of either; the seconds between the two are then what their clocks may be apart
/// (clocks_apart_s()), a minute for notes. Nothing is assumed of which meter is right.
[[nodiscard]] std::vector<MetersInSeries> meters_in_series(const UnitRuns& records, const MeasureOptions& options = {});

} // namespace ullage
