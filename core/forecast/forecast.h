// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "measure/energy_analysis.h"
#include "unit/between_runs.h"

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
    label,          ///< its label alone, or an earlier charge: the gauge has not fallen yet
    trend,          ///< this run's gauge against its energy and time
    earlier_drains, ///< the unit's other drains, with this run's load so far
    both,           ///< earlier drains, and this run's gauge agrees
    disagreeing,    ///< both, which do not: the range holds both
};

/// "the unit's label alone", "this run's gauge", "earlier drains of the unit", "earlier drains of the unit, with which this run's gauge agrees",
/// "earlier drains of the unit and this run's gauge, which disagree": as files for machines have it.
[[nodiscard]] std::string_view forecast_basis_text(ForecastBasis basis);

/// Which of the two accounts of a drain (accounts.h) the range of the cut-off rests on.
enum class ForecastAccount {
    whichever, ///< neither: it holds for a gauge that is right and for one that is wrong, or asks no gauge
    right,     ///< less than 2 % of the posterior is left for a gauge that is wrong by over 3 points at its last reading
    wrong,     ///< less than 2 % is left for one that is right within these
};
/// "whichever is right", "if the gauge is right", "if the gauge is wrong": as files for machines have it.
[[nodiscard]] std::string_view forecast_account_text(ForecastAccount account);
/// The same for people.
[[nodiscard]] Message say_forecast_account(ForecastAccount account);

/// How the gauge falls at present. Speeds are positive where it falls.
struct GaugeSpeed {
    UtcMs at_ms = 0;          ///< last reading of the gauge
    double shown_percent = 0; ///< what it showed
    double step_pt = 1;       ///< its step
    double lower_pt_per_h = 0, estimate_pt_per_h = 0, upper_pt_per_h = 0;
    /// How far its true value may have been above the edge to the next lower value at `at_ms`: within 0 and a step.
    double least_above_edge_pt = 0, most_above_edge_pt = 1;
};

/// Something to read, and why.
struct ReadingAdvice {
    std::optional<UtcMs> at_ms; ///< when; absent: at the next opportunity
    Message sentence;           ///< for people
};

/// What a running drain will do.
struct RunForecast {
    UtcMs as_of_ms = 0;
    std::optional<UtcMs> last_reading_ms, last_gauge_ms, last_register_ms;
    std::optional<ExpectedTime> cut_off;
    ForecastBasis basis = ForecastBasis::trend; ///< meaningless without cut_off
    /// The last reading threw the forecast before it over: a sentence that says so; empty where it did not.
    Message overthrown;
    Message cut_off_reason; ///< what it rests on and assumes; without cut_off why there is none
    std::optional<GaugeSpeed> gauge_speed;
    Message gauge_reason;                    ///< why there is no speed, or no next step
    std::optional<ExpectedTime> next_step;   ///< when the gauge shows its next lower value
    std::optional<double> next_step_percent; ///< that value
    std::vector<ReadingAdvice> advice;       ///< most urgent first
    ForecastAccount account{};               ///< of cut_off; meaningless without
};

/// Forecast of a drain or no-load drain that is running, as of `now_ms`; readings after that are not looked at. `energy` is that
/// of the record, `unit_fit` that of the unit's runs (one without drains where there is none). Never fails: what cannot be said
/// has its reason.
///
/// Cut-off: the time until D + P*·t + c·Q has grown by what is left, weighed over what may be left and what the load may do
/// (forecast_load.h); median and central 95 %.
///  - Left by earlier drains: E* − P*·t − c·Q − D, normal, with the covariance of the fit in the direction of this run, the
///    repeatability of a single drain, and the meters' gains unless all drains and this run share one meter. A single drain, or
///    several at like loads, give UnitFit::planning, which knows the run time at their own load best. Needs a run that started
///    full and has a register (a no-load drain needs none).
///  - Left by the trend: a posterior over unit and gauge law (forecast_trend.h, its prior in gauge_law.h); P* anywhere in usual_no_load_draw. The
///  range
///    is the hull of the central 95 % under each family of gauges that the readings leave plausible (2 % of the posterior), so that it covers for
///    each by itself; the estimate is the median of all. Needs the label, or a fall of two gauge steps. Without a register time stands for energy,
///    and the load is taken to be steady.
///    What an earlier charge from cut-off to full took in bounds what may be left beside the label (full_charge.h).
///  - Both, where their intervals meet: the range is that of the earlier drains, which rests on no gauge, and says that the gauge
///    agrees. Where they do not, the range holds both.
/// A moment at which a later reading still found the output on is left out of the range.
///
/// Assumes that the load goes on as it was: a step yet to come and a unit that has aged since its earlier drains are beyond it. Source: the
/// program's own derivation, common practice where gauge_law.h says so. Accuracy: simulated in tests/ensemble/cases_forecasts.cpp and
/// cases_few_forecasts.cpp; the figures stand in resources/help/figures.md.
///
/// Gauge speed: from the readings of the last 8 points' fall, at the load expected next; next_step: gauge_drop_time by one step.
/// Refused, with a reason: a run of another kind or ended, one without readings, an output that is off (cut-off seen, or tripped
/// and not reset), no load, a gauge that has not fallen yet and no earlier drain.
[[nodiscard]] RunForecast forecast_run(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& unit_fit, UtcMs now_ms,
                                       const MeasureOptions& options = {});

/// forecast_run as of the last reading: the same whenever it is asked. Without readings as of the epoch; it then has its reason.
[[nodiscard]] RunForecast forecast_at_last_reading(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& unit_fit,
                                                   const MeasureOptions& options = {});

/// When the gauge should first show `drop_pt` points less than at its last reading, as a range; absent without a speed, for a
/// drop that is not above 0 or would bring the gauge below 0 %, or where the time is over a year. A drop is rounded up to whole
/// steps. Method: the true value is even between the limits of GaugeSpeed, the speed normal on either side of its estimate, and
/// 0.25 % less sure for each point of the drop.
[[nodiscard]] std::optional<ExpectedTime> gauge_drop_time(const RunForecast& forecast, double drop_pt);

/// "05:10 to 06:40"; "23:50 to Tue 02:10" and "Tue 01:10 to 02:10" past midnight; "16 May 05:10 to 17 May 06:40" where the later of the two is a
/// day or more from `as_of_ms`. Local time of `zone`.
[[nodiscard]] Message say_expected_clock(const ExpectedTime& time, UtcMs as_of_ms, std::string_view zone);
/// The same in the language in use.
[[nodiscard]] std::string expected_clock_text(const ExpectedTime& time, UtcMs as_of_ms, std::string_view zone);
/// "in 3.1 to 4.6 h", "within 1.2 h" where the lower end has passed, "overdue by 35 min" where both have; minutes below 1 h.
[[nodiscard]] Message say_expected_hours(const ExpectedTime& time, UtcMs as_of_ms);
/// The same in the language in use.
[[nodiscard]] std::string expected_hours_text(const ExpectedTime& time, UtcMs as_of_ms);

} // namespace ullage
