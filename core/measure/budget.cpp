// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/budget.h"

#include "base/instant.h"
#include "base/number.h"
#include "numerics/monte_carlo.h"

#include <algorithm>
#include <cmath>

namespace ullage {

double register_step_wh(const RunRecord& record) {
    if (record.meter && record.meter->step_wh && *record.meter->step_wh > 0) return *record.meter->step_wh;
    double step_wh = 1.0;
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn || !reading.values.register_wh) continue;
        while (step_wh > 1e-3) {
            const double steps = *reading.values.register_wh / step_wh;
            if (std::abs(steps - std::round(steps)) < 1e-6 * std::max(1.0, std::abs(steps))) break;
            step_wh /= 10;
        }
    }
    return step_wh;
}

namespace {

/// The line of the short gaps together; notes the mean of what may have flowed in them.
void add_short_gaps(const RegisterTrack& track, Budget& budget) {
    double most_wh = 0, hours = 0, squares = 0;
    for (const ShortGap& gap : track.short_gaps) {
        most_wh += gap.most_wh;
        hours += gap.hours;
        squares += gap.most_wh * gap.most_wh / 12;
    }
    if (most_wh <= 0) return;
    budget.unread_mean_wh = most_wh / 2;
    const std::string gaps = count_text(static_cast<long>(track.short_gaps.size()), "short gap", "short gaps");
    budget.lines.push_back({gaps + " without register (" + duration_text(hours) + "), up to " + fixed_text(most_wh, 1) + " Wh",
                            "rectangular, one-sided", "independent", std::hypot(budget.unread_mean_wh, std::sqrt(squares)), 0});
}

/// Register steps at both ends of each stretch.
void add_register_step(const RunRecord& record, const RegisterTrack& track, Budget& budget) {
    const double step_wh = (track.log ? track.log->step_wh : register_step_wh(record)) * (record.meter ? record.meter->correction : 1.0);
    const bool step_stated = record.meter && record.meter->step_wh.has_value();
    const auto read_at_start = static_cast<double>(track.segments - std::min(track.segments, track.zero_starts));
    const auto zeroed = static_cast<double>(track.zero_starts);
    const std::string step_words = "register step " + exact_text(step_wh) + " Wh" + (step_stated ? "" : " (as the readings show)");
    if (read_at_start > 0)
        budget.lines.push_back({step_words + ", two readings" +
                                    (read_at_start > 1 ? " in each of " + count_text(static_cast<long>(read_at_start), "stretch", "stretches") : ""),
                                "triangular", "independent", step_wh * std::sqrt(read_at_start / 6.0), 0});
    if (zeroed > 0)
        budget.lines.push_back({step_words + ", read once after a start at 0, rounding or truncation unknown", "rectangular", "independent",
                                step_wh * std::sqrt(zeroed / 3.0), 0});
}

/// Steps of the power and what it did between samples.
void add_integration(const LogUse& log, Budget& budget) {
    budget.lines.push_back({"power step " + exact_text(log.power_step_w) + " W of the log, all the time alike, rounding or truncation unknown",
                            "rectangular", "independent", log.step_half_width_wh / std::sqrt(3.0), 0});
    budget.lines.push_back({"power between the samples of the log", "normal", "independent", log.u_sampling_wh, 0});
}

/// Start and end of the run as noted, against the log.
void add_moments(const LogUse& log, Budget& budget) {
    if (log.u_wh.empty()) return;
    budget.lines.push_back({"noted moments of start and end against the log's clock, interpolated between its samples", "rectangular", "independent",
                            std::hypot(log.u_wh.front(), log.u_wh.back()), 0});
}

} // namespace

Budget energy_budget(const RunRecord& record, const RegisterTrack& track, double delivered_wh, const MeasureOptions& options) {
    Budget budget;
    const bool limit_known = record.meter && record.meter->limit_percent.has_value();
    if (limit_known) {
        const double limit_percent = *record.meter->limit_percent;
        budget.gain_half_width_wh = std::abs(delivered_wh) * limit_percent / 100;
        budget.lines.push_back({"meter gain, limit ±" + exact_text(limit_percent) + " %", "rectangular", "common to all readings of this meter",
                                budget.gain_half_width_wh / std::sqrt(3.0), 0});
    }
    if (track.log && track.log->integrated) add_integration(*track.log, budget);
    else add_register_step(record, track, budget);
    if (track.log) add_moments(*track.log, budget);
    add_short_gaps(track, budget);
    double variance = 0, independent_variance = 0;
    for (const BudgetLine& line : budget.lines) variance += line.standard_wh * line.standard_wh;
    for (BudgetLine& line : budget.lines) {
        line.share = variance > 0 ? line.standard_wh * line.standard_wh / variance : 0;
        if (line.correlation == "independent") independent_variance += line.standard_wh * line.standard_wh;
    }
    budget.combined_standard_wh = std::sqrt(variance);
    budget.independent_wh = std::sqrt(independent_variance);
    if (!limit_known) {
        budget.half_width_method = record.meter ? "no interval: the error limit of the meter is not stated"
                                                : "no interval: no meter is stated, so its error limit is not known";
        return budget;
    }
    const double about_mean_wh = std::sqrt(std::max(0.0, independent_variance - budget.unread_mean_wh * budget.unread_mean_wh));
    budget.half_width_wh = budget.unread_mean_wh + half_width_of_sum(budget.gain_half_width_wh, about_mean_wh, options.coverage);
    budget.half_width_method = "95 % of a rectangular gain of ±" + fixed_text(budget.gain_half_width_wh, 1) +
                               " Wh convolved with an independent part of " + fixed_text(about_mean_wh, 1) + " Wh standard uncertainty";
    if (budget.unread_mean_wh > 0)
        budget.half_width_method += ", and " + fixed_text(budget.unread_mean_wh, 1) + " Wh for what may have flowed while the register was not read";
    return budget;
}

} // namespace ullage
