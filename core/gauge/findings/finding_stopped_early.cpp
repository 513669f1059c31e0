// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/quantity.h"
#include "gauge/findings/findings.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

/// Whether the register was read up to the end: else nothing tells what was delivered after the last paired reading.
bool register_reaches_end(const GaugeEvidence& evidence) {
    const std::vector<Reading>& readings = evidence.record.readings;
    const auto last = std::find_if(readings.rbegin(), readings.rend(), [](const Reading& reading) { return !reading.withdrawn; });
    return last != readings.rend() && hours_between(evidence.energy.track.points.back().time_ms, last->values.time_ms) <= complete_within_h;
}

} // namespace

void find_stopped_early(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    const Run& run = evidence.record.run;
    const bool cut_off = run.end == RunEnd::cut_off_seen || run.end == RunEnd::found_off;
    // With nothing connected only time tells how far an accurate gauge would have come.
    const bool by_time_only =
        run.kind == RunKind::no_load_drain && evidence.energy.points.size() >= 4 && evidence.fall_pt >= 5 * evidence.step_pt && evidence.hours > 0;
    if (!cut_off || !(by_time_only || (run.kind == RunKind::drain && evidence.judgeable()))) return;
    if (!by_time_only && !register_reaches_end(evidence)) return;
    const PairedPoint& last = evidence.energy.points.back();
    const double rest_wh = std::max(0.0, evidence.energy.track.total_wh() - last.delivered_wh);
    // The output may have run on until the upper end of the duration's bracket.
    const double end_h = evidence.energy.duration_h.upper.value_or(last.hours);
    const double rest_h = rest_wh > 0 || by_time_only ? std::max(0.0, end_h - last.hours) : 0.0;
    const double by_energy_pt = by_time_only ? 0.0 : evidence.fall_pt * rest_wh / evidence.delivered_wh;
    const double most_pt = (1 + honest_slope_spread) * std::max(by_energy_pt, evidence.fall_pt * rest_h / evidence.hours);
    const double lowest_percent = last.gauge_percent - most_pt - evidence.step_pt / 2;
    const double threshold = std::max(least_size_pt, 2 * evidence.step_pt);
    if (lowest_percent < threshold) return;

    const double shown = std::max(0.0, last.gauge_percent - by_energy_pt);
    Finding finding{FindingKind::stopped_early};
    finding.weight = lowest_percent >= fault_from_pt ? Weight::fault : Weight::doubt;
    finding.sentence = rest_wh > 0
                           ? say(phrase("gauge", "Off at about %1 shown: the gauge ended early, or the unit stopped with energy left; this run "
                                                 "cannot tell which."),
                                 say_gauge(std::round(shown)))
                           : say(phrase("gauge", "Off at %1 shown: the gauge ended early, or the unit stopped with energy left; this run cannot "
                                                 "tell which."),
                                 say_gauge(std::round(shown)));
    finding.evidence =
        say(phrase("gauge", "last gauge reading %1 at %2, %3 before the cut-off; at least %4 % then; threshold %5 %"), say_gauge(last.gauge_percent),
            evidence.clock_at(evidence.energy.points.size() - 1), say_energy(rest_wh), say_number(lowest_percent, 1), say_number(threshold, 1));
    finding.readings = {evidence.reading_uuid(evidence.energy.points.size() - 1)};
    finding.size = shown;
    finding.size_unit = "pt";
    finding.statistic_name = "lowest gauge at the cut-off, %";
    finding.statistic = lowest_percent;
    finding.threshold = threshold;
    findings.push_back(std::move(finding));
}

} // namespace ullage
