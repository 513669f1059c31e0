// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fleet/between_runs.h"
#include "measure/energy_analysis.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// A moment expected, meant to lie within lower and upper in 95 % of cases. lower_ms <= estimate_ms <= upper_ms.
struct ExpectedTime {
    UtcMs lower_ms = 0, estimate_ms = 0, upper_ms = 0;
};

/// What a forecast of the cut-off rests on.
enum class ForecastBasis {
    trend,          ///< this run's gauge against its energy and time
    earlier_drains, ///< the unit's other drains, with this run's load so far
    both,           ///< both, which agree
    disagreeing,    ///< both, which do not: the range holds both
};

/// "this run's gauge", "earlier drains of the unit", "earlier drains and this run's gauge", "earlier drains and this run's gauge, which disagree".
[[nodiscard]] std::string_view forecast_basis_text(ForecastBasis basis);

/// How the gauge falls at present. Speeds are positive where it falls.
struct GaugeSpeed {
    UtcMs at_ms = 0;              ///< last reading of the gauge
    double shown_percent = 0;     ///< what it showed
    double step_pt = 1;           ///< its step
    double lower_pt_per_h = 0, estimate_pt_per_h = 0, upper_pt_per_h = 0;
    /// How far its true value may have been above the edge to the next lower value at `at_ms`: within 0 and a step.
    double least_above_edge_pt = 0, most_above_edge_pt = 1;
};

/// Something to read, and why.
struct ReadingAdvice {
    std::optional<UtcMs> at_ms; ///< when; absent: at the next opportunity
    std::string sentence;       ///< for people
};

/// What a running drain will do.
struct RunForecast {
    UtcMs as_of_ms = 0;
    std::optional<UtcMs> last_reading_ms, last_gauge_ms, last_register_ms;
    std::optional<ExpectedTime> cut_off;
    ForecastBasis basis = ForecastBasis::trend; ///< meaningless without cut_off
    std::string cut_off_reason;                 ///< what it rests on and assumes; without cut_off why there is none
    std::optional<GaugeSpeed> gauge_speed;
    std::string gauge_reason;                   ///< why there is no speed
    std::optional<ExpectedTime> next_step;      ///< when the gauge shows its next lower value
    std::optional<double> next_step_percent;    ///< that value
    std::vector<ReadingAdvice> advice;          ///< most urgent first
};

/// Forecast of a run as of `now_ms`; readings after that are not looked at. `energy` is that of the record, `unit_fit` that of the unit's runs
/// (one without drains where there is none). Never fails: what cannot be said has its reason.
[[nodiscard]] RunForecast forecast_run(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& unit_fit, UtcMs now_ms,
                                       const MeasureOptions& options = {});

/// When the gauge should show `drop_pt` points less than at its last reading, as a range; absent without a speed, for a drop of 0 or below, or one
/// that would bring the gauge below 0 %. A drop is rounded up to whole steps.
[[nodiscard]] std::optional<ExpectedTime> gauge_drop_time(const RunForecast& forecast, double drop_pt);

/// Hours from the forecast's moment to one of its times; 0 for a time that has passed.
[[nodiscard]] double hours_ahead(const RunForecast& forecast, UtcMs time_ms);

/// "05:10 to 06:40", "15 May 05:10 to 06:40" where the first is not on the day of `as_of_ms`; local time of `zone`.
[[nodiscard]] std::string expected_clock_text(const ExpectedTime& time, UtcMs as_of_ms, std::string_view zone);
/// "in 3.1 to 4.6 h", "within 1.2 h" where the lower end has passed, "expected earlier" where both have; minutes below 1 h.
[[nodiscard]] std::string expected_hours_text(const ExpectedTime& time, UtcMs as_of_ms);

} // namespace ullage
