// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forecast/forecast.h"

#include <optional>
#include <string>

namespace ullage {

/// When a tester wants to be told to read again; parts that are absent do not count. A rule without any part asks for nothing.
struct ReadingRule {
    std::optional<double> every_min;          ///< so many minutes after the last reading; above 0
    std::optional<double> gauge_drop_pt;      ///< when the gauge should show so many points less than at its last reading; above 0
    std::optional<double> before_cut_off_min; ///< so many minutes before the earliest forecast cut-off; 0 or more

    bool operator==(const ReadingRule&) const = default;
};

/// Which part of a rule makes a reading due.
enum class DueBecause { nothing, interval, gauge_drop, cut_off };

/// When the next reading is due.
struct ReadingDue {
    std::optional<UtcMs> due_ms; ///< absent: see `why`
    DueBecause because = DueBecause::nothing;
    Message why; ///< one clause for people: what makes it due ("30 min after the last reading"), or why nothing is due
};

/// The earliest moment that a part of the rule names, from the run's last reading and its forecast.
///
/// Interval: last reading of any kind + every_min. Gauge: the estimate of gauge_drop_time. Cut-off: the lower end of the forecast
/// less before_cut_off_min, unless a reading was taken at or after that moment already. A part that the forecast cannot serve is
/// left out; where none is left, `why` is the reason of the first. None is due for a run that is not running, or without a
/// reading. Parts outside their limits, or not finite, are left out.
[[nodiscard]] ReadingDue next_reading_due(const RunRecord& record, const RunForecast& forecast, const ReadingRule& rule);

/// Minutes by which a reading is overdue at `now_ms`: above 0 once the moment has passed, else 0; absent where none is due.
[[nodiscard]] std::optional<double> overdue_min(const ReadingDue& due, UtcMs now_ms);

} // namespace ullage
