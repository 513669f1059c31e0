// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "base/quantity.h"
#include "measure/budget.h"
#include "measure/inside/log_check.h"
#include "measure/inside/log_energy.h"
#include "measure/inside/log_track.h"
#include "model/meter_gain.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace ullage {
namespace {

std::string percent_words(double share) { return fixed_text(100 * std::abs(share), std::abs(share) < 0.0995 ? 1 : 0) + " % "; }

/// Integrated power against a register over the same samples. Both are the same meter's: what differs beyond steps and sampling is its power or its
/// counting.
std::string integration_sentence(const RunTrace& trace, double register_wh, double step_wh, double energy_wh, double u_moments_wh,
                                 const char* whose) {
    if (register_wh <= 0 || energy_wh <= 0) return {};
    const IntegrationDoubt doubt = integration_doubt(trace);
    const double u_wh = std::hypot(doubt.u_sampling_wh, doubt.step_half_width_wh / std::sqrt(3.0), step_wh / std::sqrt(6.0));
    const double half_wh = 2 * (u_wh + u_moments_wh);
    const double difference = energy_wh / register_wh - 1;
    std::string text = " Its integrated power gives " + fixed_text(energy_wh, 1) + " ± " + fixed_text(half_wh, 1) + " Wh where " + whose + " says " +
                       fixed_text(register_wh, 1) + " Wh: " + percent_words(difference) + (difference < 0 ? "less" : "more") + ", ";
    text += std::abs(energy_wh - register_wh) <= half_wh ? "which steps and sampling explain."
                                                         : "more than steps and sampling explain; the meter's power and its counting differ.";
    return text;
}

/// Each of a few, with its moments; of many how many there are and the longest.
std::string gaps_sentence(const std::vector<PowerGap>& gaps, const std::string& zone) {
    constexpr std::size_t most_listed = 5;
    const auto moments = [&zone](const PowerGap& gap) { return clock_text(gap.from_ms, zone) + " to " + clock_text(gap.to_ms, zone); };
    std::string text = " Nothing was logged from ";
    if (gaps.size() > most_listed) {
        const auto longest = std::ranges::max_element(gaps, {}, [](const PowerGap& gap) { return gap.to_ms - gap.from_ms; });
        text = " Nothing was logged for " + std::to_string(gaps.size()) + " stretches, the longest from " + moments(*longest);
    } else {
        for (std::size_t i = 0; i < gaps.size(); ++i) text += (i == 0 ? "" : i + 1 < gaps.size() ? ", " : " and ") + moments(gaps[i]);
    }
    return text + "; the register counts what flowed meanwhile.";
}

} // namespace

std::string compare_with_log(const RunRecord& record, const MeasureOptions& options, RegisterTrack& track) {
    if (!record.trace || record.trace->points.empty()) return {};
    const RunTrace& trace = *record.trace;
    if (!log_is_of_run_meter(record))
        return "The log is of another meter than the run names, so that delivered energy is based on registers noted by hand; name the log's meter as "
               "that of the run to use it.";
    std::string text;
    if (track.log && track.log->integrated) text = "Delivered energy is the integrated power of the log.";
    else if (track.log) text = "Delivered energy is that of the log's register at the noted moments.";
    else if (track.usable()) text = "Delivered energy is based on registers noted by hand.";
    if (track.log)
        for (const TakenOver& taken : track.log->taken_over)
            text += " From " + clock_text(taken.from_ms, record.run.time_zone) + " to " + clock_text(taken.to_ms, record.run.time_zone) +
                    " it says nothing, and the log of " + (taken.name.empty() ? "another meter" : taken.name) + " stands in with " +
                    energy_text(taken.part.delivered_wh) + ".";
    if (trace.has_register) {
        const HandCheck check = hand_check(record, options);
        if (check.compared > 0)
            text += " " + std::to_string(check.agreeing) + " of " + count_text(check.compared, "register", "registers") + " noted by hand " +
                    (check.agreeing == 1 ? "agrees" : "agree") + " with the log.";
        if (!track.log && check.compared > check.agreeing)
            text += " Most do not: the clock of the log is off, or it is the log of something else. It was not used.";
        if (track.log)
            for (const auto& [reading, log_wh] : check.differing)
                track.register_corrections.push_back(
                    {RegisterCorrectionKind::against_log,
                     reading->uuid,
                     exact_text(*reading->values.register_wh) + " Wh was noted, the log says " + energy_text(log_wh) + "; the log was used",
                     {}});
    }
    if (track.log && track.log->left_out > 0)
        text += " " + count_text(track.log->left_out, "value", "values") + " of its register fitted nothing and " +
                (track.log->left_out == 1 ? "was" : "were") + " left out.";
    if (!trace.has_power || !track.usable()) return text;
    if (const auto gaps = gaps_within(trace, track.points.front().time_ms, track.points.back().time_ms); !gaps.empty())
        return track.log && !track.log->integrated ? text + gaps_sentence(gaps, record.run.time_zone) : text;
    const LogCurve energy_wh = integrated_energy(trace);
    const double correction = typical_correction(record.meter);
    if (!energy_wh.usable() || (track.log && track.log->integrated)) return text;
    if (track.points.front().time_ms < energy_wh.times_ms.front() || track.missing_inside) return text;
    const UtcMs from_ms = track.points.front().time_ms, to_ms = std::min(track.points.back().time_ms, energy_wh.times_ms.back());
    const auto doubt = static_cast<UtcMs>(std::llround(log_moment_doubt_ms(trace, options)));
    const bool cut_off = track.log && record.run.end == RunEnd::cut_off_seen;
    const double from_wh = energy_wh.at(from_ms) * correction, to_wh = energy_wh.at(cut_off ? to_ms + doubt : to_ms) * correction;
    // Registers noted by hand stand for moments in doubt; the log's own stand beside its power.
    const auto u_at = [&](UtcMs time_ms) { return energy_wh.u_moment(time_ms, static_cast<double>(doubt)); };
    const double u_moments_wh = track.log ? 0 : std::hypot(u_at(from_ms), u_at(to_ms));
    return text + integration_sentence(trace, track.total_wh(), track.log ? track.log->step_wh : register_step_wh(record), to_wh - from_wh,
                                       u_moments_wh, track.log ? "its register" : "the register noted by hand");
}

} // namespace ullage
