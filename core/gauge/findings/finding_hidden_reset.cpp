// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/quantity.h"
#include "gauge/feasibility.h"
#include "gauge/findings/findings.h"
#include "model/meter_gain.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <string>

namespace ullage {
namespace {

constexpr double least_rest_steps = 5;
constexpr double load_agrees_share = 0.85; ///< of the lowest load beside a gap: no energy is missing from it

/// What a stretch between two paired points holds.
struct Stretch {
    double fall_pt = 0, wh = 0, hours = 0;
};

Stretch stretch(const GaugeEvidence& evidence, std::size_t from, std::size_t to) {
    const PairedPoint& a = evidence.energy.points[from];
    const PairedPoint& b = evidence.energy.points[to];
    return {a.gauge_percent - b.gauge_percent, b.delivered_wh - a.delivered_wh, b.hours - a.hours};
}

/// The most energy that one point of the gauge can stand for, seen from the socket; infinite where the label does not say.
double most_wh_per_point(const GaugeEvidence& evidence) {
    const std::optional<double> most_wh = most_held_wh(evidence.record.unit, evidence.energy.track.total_wh(), evidence.options);
    const auto& meter = evidence.record.meter;
    const auto limit_percent = meter ? error_limit_percent(*meter) : std::nullopt;
    if (!most_wh || !limit_percent) return std::numeric_limits<double>::infinity();
    return *most_wh * (1 + *limit_percent / 100) / 100;
}

/// How far an accurate gauge may have fallen over a part of the run, going by the rest of it; absent where the rest is too short to go by.
std::optional<double> most_honest_fall_pt(const GaugeEvidence& evidence, const Stretch& part) {
    const Stretch rest{evidence.fall_pt - part.fall_pt, evidence.delivered_wh - part.wh, evidence.hours - part.hours};
    if (rest.fall_pt < least_rest_steps * evidence.step_pt || rest.wh <= 0 || rest.hours <= 0) return std::nullopt;
    const double without_draw_pt = rest.fall_pt * part.wh / rest.wh;
    // fall = rest.fall (wh + P t) / (rest.wh + P rest.t) moves one way only with the draw P: the ends of its range are the extremes.
    double with_draw_pt = rest.fall_pt * part.hours / rest.hours;
    if (const double wh_per_point = most_wh_per_point(evidence); std::isfinite(wh_per_point)) {
        const double most_w = std::max(0.0, (rest.fall_pt * wh_per_point - rest.wh) / rest.hours);
        with_draw_pt = rest.fall_pt * (part.wh + most_w * part.hours) / (rest.wh + most_w * rest.hours);
    }
    return std::max(without_draw_pt, with_draw_pt);
}

/// How far a fall lies beyond the steepest honest one.
struct Excess {
    double most_pt = 0, beyond_pt = 0, threshold_pt = 0;
};

std::optional<Excess> excess(const GaugeEvidence& evidence, std::size_t from, std::size_t to) {
    const Stretch part = stretch(evidence, from, to);
    const std::optional<double> most_pt = most_honest_fall_pt(evidence, part);
    if (!most_pt) return std::nullopt;
    const double honest_pt = (1 + honest_slope_spread) * *most_pt;
    return Excess{*most_pt, part.fall_pt - honest_pt, 2 * evidence.step_pt + 3 * evidence.u_fall_pt(from, to)};
}

/// Whether the whole later register could have flowed between the two readings.
bool could_have_been_zeroed(const GaugeEvidence& evidence, const RegisterPoint& before, const RegisterPoint& after, double limit_w) {
    const double hours = hours_between(before.time_ms, after.time_ms) + evidence.options.moment_doubt_min / 60;
    return before.register_wh > 0 && after.register_wh >= before.register_wh && after.register_wh <= limit_w * hours;
}

bool is_corrected(const GaugeEvidence& evidence, const RegisterPoint& after) {
    const ReadingId& uuid = evidence.record.readings[after.reading].uuid;
    return std::ranges::any_of(evidence.energy.track.register_corrections,
                               [&](const RegisterCorrection& register_correction) { return register_correction.reading_uuid == uuid; });
}

/// Whether the mean load over the gap is what the intervals beside it and the noted powers say: then nothing is missing from the register, and what
/// the gauge did it did alone.
bool cleared_by_load(const GaugeEvidence& evidence, std::size_t after) {
    const std::vector<RegisterPoint>& track = evidence.energy.track.points;
    const double step_wh = evidence.register_step_wh;
    const auto mean_w = [&](std::size_t to, double extra_wh) {
        const double hours = hours_between(track[to - 1].time_ms, track[to].time_ms);
        return hours > 0 ? std::optional((track[to].delivered_wh - track[to - 1].delivered_wh + extra_wh) / hours) : std::nullopt;
    };
    const std::optional<double> gap_w = mean_w(after, step_wh);
    if (!gap_w) return false;
    std::vector<double> beside_w;
    if (after >= 2)
        if (const auto before = mean_w(after - 1, -step_wh)) beside_w.push_back(*before);
    if (after + 1 < track.size())
        if (const auto later = mean_w(after + 1, -step_wh)) beside_w.push_back(*later);
    for (const std::size_t end : {after - 1, after})
        if (track[end].reading != no_reading)
            if (const auto& watts = evidence.record.readings[track[end].reading].values.meter_w) beside_w.push_back(*watts);
    return !beside_w.empty() && *gap_w >= load_agrees_share * *std::ranges::min_element(beside_w) && *gap_w > 0;
}

/// The doubt about two neighbouring register readings, when there is one.
std::optional<Finding> judge(const GaugeEvidence& evidence, const RegisterPoint& before, const RegisterPoint& after) {
    const std::vector<PairedPoint>& points = evidence.energy.points;
    const auto past = std::ranges::upper_bound(points, before.time_ms, {}, &PairedPoint::time_ms);
    const auto at = std::ranges::lower_bound(points, after.time_ms, {}, &PairedPoint::time_ms);
    if (past == points.begin() || at == points.end()) return std::nullopt;
    const auto from = static_cast<std::size_t>(past - points.begin()) - 1, to = static_cast<std::size_t>(at - points.begin());
    const std::optional<Excess> fall = excess(evidence, from, to);
    const Stretch part = stretch(evidence, from, to);
    if (!fall || fall->beyond_pt <= fall->threshold_pt || part.fall_pt < jump_steepness * (1 + honest_slope_spread) * fall->most_pt)
        return std::nullopt;
    // A gauge that had stood still before only catches up. Where the rest is too short to go by, nothing speaks against a reset.
    if (const std::optional<Excess> since_start = excess(evidence, 0, to); since_start && since_start->beyond_pt <= since_start->threshold_pt)
        return std::nullopt;
    const double correction = typical_correction(evidence.record.meter);
    const double wh_per_point = (evidence.delivered_wh - part.wh) / (evidence.fall_pt - part.fall_pt);
    const double implied_wh = part.fall_pt * wh_per_point;
    const double most_implied_wh = (1 + honest_slope_spread) * (part.fall_pt + 2 * evidence.step_pt) * wh_per_point;
    if (most_implied_wh < correction * after.register_wh) return std::nullopt;

    const double missing_wh = correction * before.register_wh;
    Finding finding{FindingKind::hidden_reset};
    finding.sentence =
        say(phrase("gauge", "Between %1 and %2 the register rose by only %3 while the gauge fell by %4, as after some %5: the register may have "
                            "been zeroed unseen and have passed its old value again, so that %6 or more are missing, or the gauge jumped; "
                            "this run cannot tell which."),
            evidence.clock_at(from), evidence.clock_at(to), say_energy(part.wh), say_points(part.fall_pt), say_energy(implied_wh),
            say_energy(missing_wh));
    finding.evidence =
        say(phrase("gauge", "fell by %1 pt more than the steepest accurate gauge, going by the rest of the run; doubted beyond %2 pt where the "
                            "whole later register could have flowed in the gap"),
            say_number(fall->beyond_pt, 1), say_number(fall->threshold_pt, 1));
    finding.readings = {evidence.reading_uuid(from), evidence.reading_uuid(to)};
    finding.size = missing_wh;
    finding.size_unit = "Wh";
    finding.statistic_name = "fall beyond the steepest honest one, pt";
    finding.statistic = fall->beyond_pt;
    finding.threshold = fall->threshold_pt;
    return finding;
}

} // namespace

void find_hidden_reset(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    // A log is read so often that no reset hides in it.
    if (evidence.record.run.kind != RunKind::drain || evidence.energy.track.log || !evidence.judgeable()) return;
    const std::vector<RegisterPoint>& track = evidence.energy.track.points;
    const double limit_w = believable_load_w(evidence.record.unit, evidence.options);
    for (std::size_t i = 1; i < track.size(); ++i) {
        if (!could_have_been_zeroed(evidence, track[i - 1], track[i], limit_w) || is_corrected(evidence, track[i]) || cleared_by_load(evidence, i))
            continue;
        std::optional<Finding> finding = judge(evidence, track[i - 1], track[i]);
        if (!finding) continue;
        // The same fall told as a jump of the gauge would convict it of what the register may have done.
        std::erase_if(findings, [&](const Finding& other) { return other.kind == FindingKind::jump && other.readings == finding->readings; });
        findings.push_back(std::move(*finding));
    }
}

} // namespace ullage
