// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/end_doubts.h"

#include "forecast/forecast.h"
#include "measure/cut_off_moment.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace ullage {
namespace {

constexpr double beyond_doubt = 3; ///< standard uncertainties

/// How late the end may have been noticed, h; absent where nobody says and nobody saw it.
std::optional<double> noticed_late_h(const Run& run) {
    if (run.end_noticed_within_min) return *run.end_noticed_within_min / 60;
    if (run.end == RunEnd::cut_off_seen) return noticed_within_min / 60;
    return std::nullopt;
}

/// The run as it was before it was noted to have ended.
RunRecord before_the_end(const RunRecord& ended, UtcMs noted_ms) {
    RunRecord before = ended;
    before.run.end = RunEnd::still_running;
    std::erase_if(before.readings, [noted_ms](const Reading& reading) { return reading.values.time_ms >= noted_ms; });
    return before;
}

Message against_forecast(const RunRecord& ended, UtcMs noted_ms, const UnitFit& unit_fit, const MeasureOptions& options) {
    const RunRecord before = before_the_end(ended, noted_ms);
    const RunForecast forecast = forecast_at_last_reading(before, analyse_energy(before, options), unit_fit, options);
    if (!forecast.cut_off) return {};
    const double slack_h = std::max(options.moment_doubt_min / 60, noticed_late_h(ended.run).value_or(0));
    const std::string noted = clock_text(noted_ms, ended.run.time_zone);
    const Message range = say_expected_clock(*forecast.cut_off, noted_ms, ended.run.time_zone);
    const double early_h = hours_between(noted_ms, forecast.cut_off->lower_ms);
    if (early_h > options.moment_doubt_min / 60)
        return say(phrase("forecast", "%1 is %2 before the readings let the cut-off be expected (%3)"), noted, duration_text(early_h), range);
    const double late_h = hours_between(forecast.cut_off->upper_ms, noted_ms);
    if (noticed_late_h(ended.run) && late_h > slack_h)
        return say(phrase("forecast", "%1 is %2 after the readings let the cut-off be expected (%3)"), noted, duration_text(late_h), range);
    return {};
}

Message against_load(const RunRecord& ended, const RunScan& scan, const EnergyAnalysis& energy, UtcMs noted_ms, const MeasureOptions& options) {
    const std::optional<SteadyLoadEnd> by_load = steady_load_end(ended, scan, energy.track, options);
    if (!by_load) return {};
    const double noted_h = hours_between(*scan.first_ms, noted_ms);
    const double off_h = noted_h - by_load->hours, doubt_h = beyond_doubt * by_load->u_h;
    const std::optional<double> late_h = noticed_late_h(ended.run);
    if (off_h > -doubt_h && (!late_h || off_h < *late_h + doubt_h)) return {};
    const UtcMs expected_ms = *scan.first_ms + static_cast<UtcMs>(std::llround(by_load->hours * ms_per_hour));
    return say(phrase("forecast", "%1 it went off about %2, not at %3"), by_load->words, clock_text(expected_ms, ended.run.time_zone),
               clock_text(noted_ms, ended.run.time_zone));
}

} // namespace

std::vector<Message> end_doubts(const RunRecord& ended, const UnitFit& unit_fit, const MeasureOptions& options) {
    const bool cut_off = ended.run.end == RunEnd::cut_off_seen || ended.run.end == RunEnd::found_off;
    const bool drain = ended.run.kind == RunKind::drain || ended.run.kind == RunKind::no_load_drain;
    if (!cut_off || !drain) return {};
    const RunScan scan = scan_run(ended);
    if (!scan.last_ms) return {};
    const UtcMs noted_ms = scan.cut_off_ms.value_or(*scan.last_ms);
    const EnergyAnalysis energy = analyse_energy(ended, options);
    std::vector<Message> doubts{against_forecast(ended, noted_ms, unit_fit, options), against_load(ended, scan, energy, noted_ms, options)};
    std::erase_if(doubts, &Message::empty);
    return doubts;
}

} // namespace ullage
