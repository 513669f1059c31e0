// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/usable.h"

#include "base/number.h"
#include "measure/inside/clauses.h"
#include "measure/inside/missing_energy.h"
#include "numerics/monte_carlo.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace ullage {
namespace {

constexpr double refuse_beyond = 0.10; ///< relative half-width from the gauge steps alone
constexpr double resolve_to = 0.05;

/// 95 % half-width of the difference of two readings with step g: a triangular distribution of half-width g.
double gauge_drop_half_width(double gauge_step) { return gauge_step * (1 - std::sqrt(0.05)); }

Message say_percent(double percent) { return say_digits(exact_text(std::round(percent * 100) / 100) + " %"); }

struct EndToEnd {
    double drop_pt = 0, delivered_wh = 0, u_pairing_wh = 0, from_percent = 0, to_percent = 0;
    double rise_pt = 0; ///< of all rises between that its step does not explain
};

std::optional<EndToEnd> end_to_end(const std::vector<PairedPoint>& points, double gauge_step) {
    if (points.size() < 2) return std::nullopt;
    const PairedPoint& a = points.front();
    const PairedPoint& b = points.back();
    double rise_pt = 0;
    for (std::size_t i = 1; i < points.size(); ++i) {
        const double rise = points[i].gauge_percent - points[i - 1].gauge_percent;
        if (rise >= 2 * std::max(gauge_step, 1e-3)) rise_pt += rise;
    }
    return EndToEnd{a.gauge_percent - b.gauge_percent,
                    b.delivered_wh - a.delivered_wh,
                    std::hypot(a.u_pairing_wh, b.u_pairing_wh),
                    a.gauge_percent,
                    b.gauge_percent,
                    rise_pt};
}

/// What the energy between the first and the last of these holds for times in which some may be missing.
double estimate_between(const RegisterTrack& track, const std::vector<PairedPoint>& points) {
    double estimate_wh = 0;
    for (const MissingGap& gap : track.missing_gaps)
        if (gap.inside && track.points[gap.point].time_ms > points.front().time_ms && track.points[gap.point].time_ms <= points.back().time_ms)
            estimate_wh += gap.estimate_wh;
    return estimate_wh;
}

/// Why the gauge drop carries no projection, or nothing.
std::optional<Message> drop_too_small(const EndToEnd& ends, double gauge_step) {
    const double half_width = gauge_drop_half_width(gauge_step);
    if (ends.drop_pt > half_width / refuse_beyond) return std::nullopt;
    const double needed = std::ceil(half_width / resolve_to);
    const double more = std::max(1.0, needed - ends.drop_pt);
    return say(phrase("measure", "the gauge fell by only %1 points; about %2 more would resolve ±5 %"),
               say_digits(exact_text(std::max(0.0, ends.drop_pt))), say_number(more, 0));
}

/// Standard uncertainty of everything but the gain in D / drop, as energy.
double independent_wh(const EndToEnd& ends, const Budget& budget, double gauge_step) {
    const double from_gauge_wh = ends.delivered_wh * gauge_step / (std::sqrt(6.0) * ends.drop_pt);
    return std::sqrt(budget.independent_wh * budget.independent_wh + ends.u_pairing_wh * ends.u_pairing_wh + from_gauge_wh * from_gauge_wh);
}

Quantity measured(const RunRecord& record, const RegisterTrack& track, const Budget& budget, double rated_wh) {
    const double fraction = track.total_wh() / rated_wh;
    std::optional<double> half_width;
    if (budget.half_width_wh) half_width = *budget.half_width_wh / rated_wh;
    std::vector<Message> clauses{say(phrase("measure", "from full to cut-off, at this load"))};
    if (!half_width) clauses.push_back(budget.half_width_method);
    Quantity result = known("usable_fraction", "1", fraction, half_width, Kind::measured, say_joined(clauses, "; "));
    if (track.energy_may_be_missing) inherit_missing(track, 1 / rated_wh, track.missing_estimate_wh, result);
    if (record.run.end == RunEnd::found_off && !track.energy_may_be_missing)
        result.reason = with_clause(result.reason, say(phrase("measure", "found off, the register held its value")));
    return result;
}

/// A projection over a gauge that rose, or over a register that lost energy, says less than it did: it keeps its name, and the floor of what it may
/// be is what was delivered. Where nobody can say how much was lost, only that floor is left. `estimate` is what the result holds for lost energy.
/// What the projection would have been is told where it gave way to that floor.
std::optional<Message> lower_by_doubts(const RegisterTrack& track, const EndToEnd& ends, const Budget& whole, double rated_wh, double estimate,
                                       Quantity& result) {
    if (ends.rise_pt <= 0 && !track.missing_inside) return std::nullopt;
    const double floor = std::max(0.0, track.total_wh() - track.missing_estimate_wh - whole.half_width_wh.value_or(0)) / rated_wh;
    if (ends.rise_pt > 0) {
        // Either the gauge was right before the rise or after it: the smaller answer stands, the larger bounds it.
        *result.value *= ends.drop_pt / (ends.drop_pt + ends.rise_pt);
        if (result.lower) result.lower = std::min({floor, *result.lower, *result.value});
    }
    if (!track.missing_inside) return std::nullopt;
    if (track.missing_most_wh && result.lower && result.upper) {
        const double scale = *result.upper / std::max(1e-9, ends.delivered_wh);
        result.lower = std::max(0.0, std::min(*result.lower - estimate, *result.value));
        *result.upper += std::max(0.0, *track.missing_most_wh - track.missing_estimate_wh) * scale;
        return std::nullopt;
    }
    const Message projected = say(phrase("measure", "projected it would be %1"), say_number(*result.value, 2));
    result.kind = Kind::at_least;
    result.value = floor;
    if (result.lower) result.lower = floor;
    result.upper.reset();
    return projected;
}

} // namespace

std::vector<Message> projection_remarks(const RunRecord& record, const RegisterTrack& track, const std::vector<PairedPoint>& points,
                                        const Budget& budget) {
    std::vector<Message> remarks;
    if (!record.run.started_full.has_value()) remarks.push_back(say(phrase("measure", "whether it started full is not stated")));
    else if (!*record.run.started_full) remarks.push_back(say(phrase("measure", "it did not start full")));
    if (record.run.end == RunEnd::still_running) remarks.push_back(say(phrase("measure", "the run is still open")));
    else if (record.run.end == RunEnd::stopped_by_tester) remarks.push_back(say(phrase("measure", "stopped before the cut-off")));
    if (!budget.half_width_wh) remarks.push_back(budget.half_width_method);
    const std::optional<EndToEnd> ends = end_to_end(points, record.unit.gauge_step_percent);
    if (ends && ends->rise_pt > 0)
        remarks.push_back(say(phrase("measure", "the gauge rose by %1 points on the way, so that from what was delivered on all may be"),
                              say_digits(exact_text(std::round(ends->rise_pt * 100) / 100))));
    if (track.missing_inside) remarks.push_back(track.missing_reason);
    return remarks;
}

bool is_full_drain(const RunRecord& record) {
    return record.run.kind == RunKind::drain && record.run.started_full.value_or(false) &&
           (record.run.end == RunEnd::cut_off_seen || record.run.end == RunEnd::found_off);
}

Quantity usable_fraction(const RunRecord& record, const RegisterTrack& track, const std::vector<PairedPoint>& points, const Budget& budget,
                         const MeasureOptions& options) {
    const auto refuse = [](const Message& reason) { return not_known("usable_fraction", "1", reason); };
    if (record.run.kind != RunKind::drain)
        return refuse(say(phrase("measure", "a %1 run does not measure it"), say_run_kind(record.run.kind)) +
                      say(phrase("advice", "; make a drain")));
    const std::optional<double> rated_wh = record.unit.rated_energy_wh;
    if (!rated_wh || *rated_wh <= 0) return refuse(say(phrase("measure", "the rated energy of the unit is not stated")));
    if (!track.usable()) return refuse(say(phrase("measure", "fewer than two register readings")));
    if (is_full_drain(record)) return measured(record, track, budget, *rated_wh);

    const std::optional<EndToEnd> ends = end_to_end(points, record.unit.gauge_step_percent);
    if (!ends) return refuse(say(phrase("measure", "fewer than two gauge readings within the register's readings")));
    if (const auto reason = drop_too_small(*ends, record.unit.gauge_step_percent)) return refuse(*reason);
    const double scale = 100 / ends->drop_pt / *rated_wh;
    const Budget part = energy_budget(record, track, ends->delivered_wh, options);
    std::optional<double> half_width;
    if (part.half_width_wh)
        half_width =
            scale * half_width_of_sum(part.gain_half_width_wh, independent_wh(*ends, part, record.unit.gauge_step_percent), options.coverage);
    std::vector<Message> clauses{
        say(phrase("measure", "assumes an accurate gauge from %1 to %2"), say_percent(ends->from_percent), say_percent(ends->to_percent))};
    std::ranges::copy(projection_remarks(record, track, points, part), std::back_inserter(clauses));
    Quantity result = known("usable_fraction", "1", ends->delivered_wh * scale, half_width, Kind::projected);
    if (const auto projected = lower_by_doubts(track, *ends, budget, *rated_wh, estimate_between(track, points) * scale, result))
        clauses.push_back(*projected);
    result.reason = say_joined(clauses, "; ");
    return result;
}

Quantity wh_per_gauge_point(const RunRecord& record, const RegisterTrack& track, const std::vector<PairedPoint>& points, const Budget& budget,
                            const MeasureOptions& options) {
    const auto refuse = [](const Message& reason) { return not_known("wh_per_gauge_point", "Wh/pt", reason); };
    const std::optional<EndToEnd> ends = end_to_end(points, record.unit.gauge_step_percent);
    if (!ends) return refuse(say(phrase("measure", "fewer than two gauge readings within the register's readings")));
    if (record.run.kind == RunKind::charge) return refuse(say(phrase("measure", "a charge run delivers nothing")));
    if (const auto reason = drop_too_small(*ends, record.unit.gauge_step_percent)) return refuse(*reason);
    std::optional<double> half_width;
    if (budget.half_width_wh) {
        const double gain_wh = budget.gain_half_width_wh * (points.back().delivered_wh > 0 ? ends->delivered_wh / points.back().delivered_wh : 1.0);
        half_width = half_width_of_sum(gain_wh, independent_wh(*ends, budget, record.unit.gauge_step_percent), options.coverage) / ends->drop_pt;
    }
    std::vector<Message> clauses{say(phrase("measure", "end to end, from %1 to %2"), say_percent(ends->from_percent), say_percent(ends->to_percent))};
    if (!half_width) clauses.push_back(budget.half_width_method);
    Quantity result = known("wh_per_gauge_point", "Wh/pt", ends->delivered_wh / ends->drop_pt, half_width, Kind::measured, say_joined(clauses, "; "));
    // What left no trace in the register is not in the energy of these points either.
    if (track.missing_inside) inherit_missing(track, 1 / ends->drop_pt, estimate_between(track, points), result);
    return result;
}

} // namespace ullage
