// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/budget.h"

#include "base/instant.h"
#include "base/number.h"
#include "measure/inside/meter_parts.h"
#include "model/meter_gain.h"
#include "numerics/distributions.h"
#include "numerics/monte_carlo.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>
#include <string>
#include <utility>

namespace ullage {

namespace {

/// A line whose standard uncertainty is `sensitivity` × `input_u`, with infinite degrees of freedom.
BudgetLine line_of(std::string source, std::string shape, std::string correlation, double sensitivity, double input_u, std::string input_unit) {
    BudgetLine line;
    line.source = std::move(source);
    line.shape = std::move(shape);
    line.correlation = std::move(correlation);
    line.standard_wh = sensitivity * input_u;
    line.input_u = input_u;
    line.input_unit = std::move(input_unit);
    line.sensitivity = sensitivity;
    return line;
}

constexpr const char* of_one_meter = "common to all readings of this meter";

std::string name_of(const RunRecord& record, const MeterPart& part) {
    const Meter* meter = meter_of(record, part);
    return meter == nullptr ? "a meter that is not stated" : meter->name;
}

/// What is known of the gain of all meters of a run.
struct GainDoubt {
    std::vector<double> rectangles_wh; ///< half-widths, a meter each
    double normal_wh = 0;
    std::string not_stated; ///< why there is no interval
};

std::string why_no_limit(const RunRecord& record, const MeterPart& part) {
    if (const Meter* meter = meter_of(record, part)) {
        const std::string owner = part.meter == MeterOfRun::first ? "the meter" : "meter " + meter->name;
        return "no interval: the error limit of " + owner + " is not stated";
    }
    if (part.meter == MeterOfRun::other) return "no interval: the log of a meter that is not stated stands in, so its error limit is not known";
    if (!record.meter && !record.second_meter) return "no interval: no meter is stated, so its error limit is not known";
    return "no interval: another meter took over and is not stated, so its error limit is not known; name it as the second meter of the run";
}

/// A line for what is stated of each meter's gain. `scale`: the energy of the budget over that of the track.
GainDoubt add_gains(const RunRecord& record, const RegisterTrack& track, double scale, Budget& budget) {
    GainDoubt doubt;
    double bounding_square = 0;
    for (const MeterPart& part : track.meters) {
        const double wh = std::abs(scale * part.delivered_wh), limit_wh = std::abs(scale * part.limit_wh), u_wh = std::abs(scale * part.u_wh);
        if (!part.is_stated || (meter_of(record, part) == nullptr && track.meters.size() == 1)) doubt.not_stated = why_no_limit(record, part);
        const std::string of = track.meters.size() > 1 ? " of " + name_of(record, part) : "";
        if (limit_wh > 0) {
            const double percent = 100 * limit_wh / wh;
            budget.lines.push_back(line_of("meter gain" + of + ", limit ±" + exact_text(std::round(percent * 1e6) / 1e6) + " %", "rectangular",
                                           of_one_meter, wh / 100, percent / std::sqrt(3.0), "%"));
            doubt.rectangles_wh.push_back(limit_wh);
        }
        if (u_wh > 0) {
            const double percent = 100 * u_wh / wh;
            budget.lines.push_back(line_of("meter gain" + of + " by its certificate, u = " + fixed_text(percent, 3) + " %", "normal", of_one_meter,
                                           wh / 100, percent, "%"));
            doubt.normal_wh = std::hypot(doubt.normal_wh, u_wh);
        }
        const double bounding_wh = limit_wh + bounding_percent({1.0, {}, u_wh, false}).value_or(0);
        bounding_square += bounding_wh * bounding_wh;
    }
    budget.gain_half_width_wh = std::sqrt(bounding_square);
    // Nobody knows that two meters err apart where one stands in for the other: their limits add up, so that no gap narrows an interval.
    if (track.log && !track.log->taken_over.empty() && doubt.rectangles_wh.size() > 1) {
        const double sum_wh = std::accumulate(doubt.rectangles_wh.begin(), doubt.rectangles_wh.end(), 0.0);
        doubt.rectangles_wh = {sum_wh};
        budget.gain_half_width_wh = std::max(budget.gain_half_width_wh, sum_wh);
    }
    return doubt;
}

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
    budget.lines.push_back(line_of(gaps + " without register (" + duration_text(hours) + "), up to " + fixed_text(most_wh, 1) + " Wh",
                                   "rectangular, one-sided", "independent", 1, std::hypot(budget.unread_mean_wh, std::sqrt(squares)), "Wh"));
}

/// Register steps at both ends of each stretch.
void add_register_step(const RunRecord& record, const RegisterTrack& track, Budget& budget) {
    RegisterStep step = register_step(record);
    if (track.log) step.wh = track.log->step_wh;
    const double correction = typical_correction(record.meter);
    const auto read_at_start = static_cast<double>(track.segments - std::min(track.segments, track.zero_starts));
    const auto zeroed = static_cast<double>(track.zero_starts);
    const std::string step_words = "register step " + exact_text(step.wh) + " Wh" +
                                   (step.stated  ? ""
                                    : step.found ? " (found from the readings)"
                                                 : " (as the readings show)");
    if (read_at_start > 0)
        budget.lines.push_back(
            line_of(step_words + ", two readings" +
                        (read_at_start > 1 ? " in each of " + count_text(static_cast<long>(read_at_start), "stretch", "stretches") : ""),
                    "triangular", "independent", correction, step.wh * std::sqrt(read_at_start / 6.0), "Wh"));
    if (zeroed > 0)
        budget.lines.push_back(line_of(step_words + ", read once after a start at 0, rounding or truncation unknown", "rectangular", "independent",
                                       correction, step.wh * std::sqrt(zeroed / 3.0), "Wh"));
}

/// Steps of the power and what it did between samples.
void add_integration(const LogUse& log, Budget& budget) {
    budget.lines.push_back(line_of("power step " + exact_text(log.power_step_w) + " W of the log, all the time alike, rounding or truncation unknown",
                                   "rectangular", "independent", 1, log.step_half_width_wh / std::sqrt(3.0), "Wh"));
    budget.lines.push_back(line_of("power between the samples of the log", "normal", "independent", 1, log.u_sampling_wh, "Wh"));
}

/// Start and end of the run as noted, against the log.
void add_moments(const LogUse& log, Budget& budget) {
    if (log.u_wh.empty()) return;
    budget.lines.push_back(line_of("noted moments of start and end against the log's clock, interpolated between its samples", "rectangular",
                                   "independent", 1, std::hypot(log.u_wh.front(), log.u_wh.back()), "Wh"));
}

/// The ends of each stretch over which the log of another meter stood in.
void add_taken_over(const LogUse& log, Budget& budget) {
    for (const TakenOver& taken : log.taken_over)
        budget.lines.push_back(line_of("log of " + (taken.name.empty() ? "another meter" : taken.name) + " standing in for " +
                                           duration_text(hours_between(taken.from_ms, taken.to_ms)) + ", its ends against both clocks",
                                       "normal", "independent", 1, taken.u_wh, "Wh"));
}

/// Sums of the lines, their shares, and the effective degrees of freedom.
void add_up(Budget& budget) {
    double variance = 0, independent_variance = 0;
    std::vector<UncertaintyPart> parts;
    for (const BudgetLine& line : budget.lines) {
        variance += line.standard_wh * line.standard_wh;
        if (line.correlation == "independent") independent_variance += line.standard_wh * line.standard_wh;
        parts.push_back({line.standard_wh, line.degrees_of_freedom.value_or(std::numeric_limits<double>::infinity())});
    }
    for (BudgetLine& line : budget.lines) line.share = variance > 0 ? line.standard_wh * line.standard_wh / variance : 0;
    budget.combined_standard_wh = std::sqrt(variance);
    budget.independent_wh = std::sqrt(independent_variance);
    if (const auto effective = effective_degrees_of_freedom(parts); effective && std::isfinite(*effective))
        budget.effective_degrees_of_freedom = effective;
}

/// The 95 % interval: the widest rectangle convolved with all else, taken as normal.
void add_half_width(const GainDoubt& doubt, double coverage, Budget& budget) {
    double widest_wh = 0, normal_variance = doubt.normal_wh * doubt.normal_wh;
    for (const double half_width_wh : doubt.rectangles_wh) {
        normal_variance += std::pow(std::min(widest_wh, half_width_wh), 2) / 3;
        widest_wh = std::max(widest_wh, half_width_wh);
    }
    const double about_mean_wh =
        std::sqrt(std::max(0.0, budget.independent_wh * budget.independent_wh - budget.unread_mean_wh * budget.unread_mean_wh));
    const double normal_wh = std::sqrt(normal_variance + about_mean_wh * about_mean_wh);
    budget.half_width_wh = budget.unread_mean_wh + half_width_of_sum(widest_wh, normal_wh, coverage);
    if (normal_variance == 0)
        budget.half_width_method = "95 % of a rectangular gain of ±" + fixed_text(widest_wh, 1) + " Wh convolved with an independent part of " +
                                   fixed_text(about_mean_wh, 1) + " Wh standard uncertainty";
    else
        budget.half_width_method = (widest_wh > 0 ? "95 % of a rectangular gain of ±" + fixed_text(widest_wh, 1) + " Wh convolved with" : "95 % of") +
                                   std::string(" a normal part of ") + fixed_text(normal_wh, 1) + " Wh standard uncertainty";
    if (budget.unread_mean_wh > 0)
        budget.half_width_method += ", and " + fixed_text(budget.unread_mean_wh, 1) + " Wh for what may have flowed while the register was not read";
    if (budget.combined_standard_wh > 0) budget.coverage_factor = *budget.half_width_wh / budget.combined_standard_wh;
}

} // namespace

std::string freedom_text(const std::optional<double>& degrees_of_freedom) { return degrees_of_freedom ? fixed_text(*degrees_of_freedom, 1) : "∞"; }

std::string sensitivity_text(const BudgetLine& line) {
    // Three digits tell what a change of the input would do.
    const int decimals = std::clamp(2 - static_cast<int>(std::floor(std::log10(std::max(line.sensitivity, 1e-6)))), 0, 6);
    return exact_text(std::stod(fixed_text(line.sensitivity, decimals))) + " Wh/" + line.input_unit;
}

std::string coverage_text(const Budget& budget) {
    if (!budget.coverage_factor) return {};
    return ", k = " + fixed_text(*budget.coverage_factor, 2) + ", effective degrees of freedom " + freedom_text(budget.effective_degrees_of_freedom);
}

Budget energy_budget(const RunRecord& record, const RegisterTrack& track, double delivered_wh, const MeasureOptions& options) {
    Budget budget;
    const double total_wh = track.total_wh();
    const GainDoubt doubt = add_gains(record, track, total_wh > 0 ? delivered_wh / total_wh : 0, budget);
    if (track.log && track.log->integrated) add_integration(*track.log, budget);
    else add_register_step(record, track, budget);
    if (track.log) add_moments(*track.log, budget);
    if (track.log) add_taken_over(*track.log, budget);
    add_short_gaps(track, budget);
    add_up(budget);
    if (track.meters.empty() || !doubt.not_stated.empty()) {
        budget.half_width_method = doubt.not_stated;
        return budget;
    }
    const double wh = std::abs(delivered_wh);
    budget.gain_percent = wh > 0 ? 100 * budget.gain_half_width_wh / wh : 0;
    add_half_width(doubt, options.coverage, budget);
    return budget;
}

} // namespace ullage
