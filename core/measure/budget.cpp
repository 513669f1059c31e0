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
BudgetLine line_of(const Message& source, std::string shape, std::string correlation, double sensitivity, double input_u, std::string input_unit) {
    BudgetLine line;
    line.source = source;
    line.shape = std::move(shape);
    line.correlation = std::move(correlation);
    line.standard_wh = sensitivity * input_u;
    line.input_u = input_u;
    line.input_unit = std::move(input_unit);
    line.sensitivity = sensitivity;
    return line;
}

constexpr const char* one_sided = "rectangular, one-sided";
constexpr const char* of_one_meter = "common to all readings of this meter";

/// What is known of the gain of all meters of a run.
struct GainDoubt {
    std::vector<double> rectangles_wh; ///< half-widths, a meter each
    double normal_wh = 0;
    Message not_stated; ///< why there is no interval
};

Message why_no_limit(const RunRecord& record, const MeterPart& part) {
    if (const Meter* meter = meter_of(record, part))
        return part.meter == MeterOfRun::first ? say(phrase("measure", "no interval: the error limit of the meter is not stated"))
                                               : say(phrase("measure", "no interval: the error limit of meter %1 is not stated"), meter->name);
    if (part.meter == MeterOfRun::other)
        return say(phrase("measure", "no interval: the log of a meter that is not stated stands in, so its error limit is not known"));
    if (!record.meter && !record.second_meter) return say(phrase("measure", "no interval: no meter is stated, so its error limit is not known"));
    return say(phrase("measure", "no interval: another meter took over and is not stated, so its error limit is not known; name it as the second "
                                 "meter of the run"));
}

/// The source of a line of the gain; with the name of the meter where several measured.
Message say_gain(const Message& percent, const std::string& name) {
    return name.empty() ? say(phrase("measure", "meter gain, limit ±%1 %"), percent)
                        : say(phrase("measure", "meter gain of %2, limit ±%1 %"), percent, name);
}
Message say_gain_by_certificate(const Message& percent, const std::string& name) {
    return name.empty() ? say(phrase("measure", "meter gain by its certificate, u = %1 %"), percent)
                        : say(phrase("measure", "meter gain of %2 by its certificate, u = %1 %"), percent, name);
}

/// A line for what is stated of each meter's gain. `scale`: the energy of the budget over that of the track.
GainDoubt add_gains(const RunRecord& record, const RegisterTrack& track, double scale, Budget& budget) {
    GainDoubt doubt;
    double bounding_square = 0;
    for (const MeterPart& part : track.meters) {
        const double wh = std::abs(scale * part.delivered_wh), limit_wh = std::abs(scale * part.limit_wh), u_wh = std::abs(scale * part.u_wh);
        const Meter* meter = meter_of(record, part); // without one there is neither limit nor certificate
        if (!part.is_stated || (meter == nullptr && track.meters.size() == 1)) doubt.not_stated = why_no_limit(record, part);
        const std::string name = track.meters.size() > 1 && meter != nullptr ? meter->name : std::string();
        if (limit_wh > 0) {
            const double percent = 100 * limit_wh / wh;
            budget.lines.push_back(line_of(say_gain(say_digits(exact_text(std::round(percent * 1e6) / 1e6)), name), "rectangular", of_one_meter,
                                           wh / 100, percent / std::sqrt(3.0), "%"));
            doubt.rectangles_wh.push_back(limit_wh);
        }
        if (u_wh > 0) {
            const double percent = 100 * u_wh / wh;
            budget.lines.push_back(line_of(say_gain_by_certificate(say_number(percent, 3), name), "normal", of_one_meter, wh / 100, percent, "%"));
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
    budget.lines.push_back(
        line_of(say_count(track.short_gaps.size(),
                          phrases("measure", "%n short gaps without register (%1), up to %2 Wh", "%n short gap without register (%1), up to %2 Wh"),
                          duration_text(hours), say_number(most_wh, 1)),
                one_sided, "independent", 1, std::hypot(budget.unread_mean_wh, std::sqrt(squares)), "Wh"));
}

/// Register steps at both ends of each stretch.
void add_register_step(const RunRecord& record, const RegisterTrack& track, Budget& budget) {
    RegisterStep step = register_step(record);
    if (track.log) step.wh = track.log->step_wh;
    const double correction = typical_correction(record.meter);
    const auto read_at_start = static_cast<double>(track.segments - std::min(track.segments, track.zero_starts));
    const auto zeroed = static_cast<double>(track.zero_starts);
    const Message step_words = say(step.stated  ? phrase("measure", "register step %1 Wh")
                                   : step.found ? phrase("measure", "register step %1 Wh (found from the readings)")
                                                : phrase("measure", "register step %1 Wh (as the readings show)"),
                                   say_digits(exact_text(step.wh)));
    if (read_at_start > 0) {
        const Message read = read_at_start > 1
                                 ? say_count(static_cast<long>(read_at_start),
                                             phrases("measure", "two readings in each of %n stretches", "two readings in each of %n stretch"))
                                 : say(phrase("measure", "two readings"));
        budget.lines.push_back(
            line_of(say_joined({step_words, read}, ", "), "triangular", "independent", correction, step.wh * std::sqrt(read_at_start / 6.0), "Wh"));
    }
    if (zeroed > 0)
        budget.lines.push_back(
            line_of(say_joined({step_words, say(phrase("measure", "read once after a start at 0, rounding or truncation unknown"))}, ", "),
                    "rectangular", "independent", correction, step.wh * std::sqrt(zeroed / 3.0), "Wh"));
}

/// Steps of the power and what it did between samples.
void add_integration(const LogUse& log, Budget& budget) {
    budget.lines.push_back(line_of(say(phrase("measure", "power step %1 W of the log, all the time alike, rounding or truncation unknown"),
                                       say_digits(exact_text(log.power_step_w))),
                                   "rectangular", "independent", 1, log.step_half_width_wh / std::sqrt(3.0), "Wh"));
    budget.lines.push_back(
        line_of(say(phrase("measure", "power between the samples of the log")), "normal", "independent", 1, log.u_sampling_wh, "Wh"));
}

/// Start and end of the run as noted, against the log.
void add_moments(const LogUse& log, Budget& budget) {
    if (log.u_wh.empty()) return;
    budget.lines.push_back(line_of(say(phrase("measure", "noted moments of start and end against the log's clock, interpolated between its samples")),
                                   "rectangular", "independent", 1, std::hypot(log.u_wh.front(), log.u_wh.back()), "Wh"));
}

/// The ends of each stretch over which the log of another meter stood in.
void add_taken_over(const LogUse& log, Budget& budget) {
    for (const TakenOver& taken : log.taken_over)
        budget.lines.push_back(
            line_of(say(taken.name.empty() ? phrase("measure", "log of another meter standing in for %1, its ends against both clocks")
                                           : phrase("measure", "log of %2 standing in for %1, its ends against both clocks"),
                        duration_text(hours_between(taken.from_ms, taken.to_ms)), taken.name),
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
    std::vector<Message> parts;
    if (normal_variance == 0)
        parts.push_back(
            say(phrase("measure", "95 % of a rectangular gain of ±%1 Wh convolved with an independent part of %2 Wh standard uncertainty"),
                say_number(widest_wh, 1), say_number(about_mean_wh, 1)));
    else if (widest_wh > 0)
        parts.push_back(say(phrase("measure", "95 % of a rectangular gain of ±%1 Wh convolved with a normal part of %2 Wh standard uncertainty"),
                            say_number(widest_wh, 1), say_number(normal_wh, 1)));
    else parts.push_back(say(phrase("measure", "95 % of a normal part of %1 Wh standard uncertainty"), say_number(normal_wh, 1)));
    if (budget.unread_mean_wh > 0)
        parts.push_back(
            say(phrase("measure", "and %1 Wh for what may have flowed while the register was not read"), say_number(budget.unread_mean_wh, 1)));
    budget.half_width_method = say_joined(parts, ", ");
    if (budget.combined_standard_wh > 0) budget.coverage_factor = *budget.half_width_wh / budget.combined_standard_wh;
}

} // namespace

Message say_shape(const BudgetLine& line) {
    if (line.shape == "rectangular") return say(phrase("measure", "rectangular"));
    if (line.shape == one_sided) return say(phrase("measure", "rectangular, one-sided"));
    if (line.shape == "triangular") return say(phrase("measure", "triangular"));
    return say(phrase("measure", "normal"));
}

Message say_correlation(const BudgetLine& line) {
    return line.correlation == of_one_meter ? say(phrase("measure", "common to all readings of this meter")) : say(phrase("measure", "independent"));
}

Message say_freedom(const std::optional<double>& degrees_of_freedom) {
    return degrees_of_freedom ? say_number(*degrees_of_freedom, 1) : Message("∞");
}

Message say_sensitivity(const BudgetLine& line) {
    // Three digits tell what a change of the input would do.
    const int decimals = std::clamp(2 - static_cast<int>(std::floor(std::log10(std::max(line.sensitivity, 1e-6)))), 0, 6);
    return say_digits(exact_text(std::stod(fixed_text(line.sensitivity, decimals))) + " Wh/" + line.input_unit);
}

Message say_combined_uncertainty(const Budget& budget) {
    const Message combined = say_number(budget.combined_standard_wh, 2);
    if (!budget.coverage_factor) return say(phrase("measure", "combined standard uncertainty %1 Wh"), combined);
    return say(phrase("measure", "combined standard uncertainty %1 Wh, k = %2, effective degrees of freedom %3"), combined,
               say_number(*budget.coverage_factor, 2), say_freedom(budget.effective_degrees_of_freedom));
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
