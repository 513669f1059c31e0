// SPDX-License-Identifier: GPL-3.0-or-later
#include "ensemble/few_drains.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage::test {
namespace {

Band time_band(bool found) {
    Band band;
    band.most = 1;
    band.reason = found ? "a bracket holds all that is possible"
                        : "allows for five minutes where the simulated tester is up to four late, and for a start that is exact here";
    return band;
}

Band sure_bracket_band() {
    Band band;
    band.least = 0.99;
    band.most = 1;
    band.reason = "a bracket holds all that is possible";
    return band;
}

Band printed_band() {
    Band band;
    band.most = 1;
    band.most_refused = 1;
    band.reason = "printed only where the readings tell; what a quadratic loss would change is allowed for in full";
    return band;
}

void add_draw(const std::string& name, const RunAnalysis& analysis, const RunTruth& truth, Report& report) {
    const std::pair<const Quantity*, double> parts[] = {{&analysis.gauge.own_draw_w, truth.no_load_draw_w},
                                                        {&analysis.gauge.own_energy_wh, truth.deliverable_wh}};
    const char* names[] = {"P*", "E*"};
    for (std::size_t i = 0; i < 2; ++i) {
        const auto& [quantity, true_value] = parts[i];
        if (quantity->kind == Kind::bracket) report.result(name, std::string(names[i]) + ", bracket", *quantity, true_value, sure_bracket_band());
        else if (quantity->value) report.result(name, std::string(names[i]) + ", printed", *quantity, true_value, printed_band());
    }
}

/// How far a gauge reading between start and cut-off lies outside what the true shares of energy and time allow an accurate gauge, at most: with
/// half a step, and 2.2 points for charge against energy.
double outside_true_shares_pt(const SimulatedRun& run) {
    double worst_pt = 0;
    for (std::size_t i = 1; i + 1 < run.truth.readings.size(); ++i) {
        if (!run.record.readings[i].values.gauge_percent) continue;
        const double energy = run.truth.readings[i].delivered_wh / run.truth.full_drain_wh,
                     time = run.truth.readings[i].hours / run.truth.cut_off_hours;
        const double shown = *run.record.readings[i].values.gauge_percent;
        worst_pt = std::max(
            {worst_pt, shown - 100 * (1 - std::min(energy, time)) - charge_for_energy_pt - 0.5, 100 * (1 - std::max(energy, time)) - 0.5 - shown});
    }
    return worst_pt;
}

/// What five minutes of lateness and a register step leave open, and the smallest size of a finding.
double resolution_pt(const SimulatedRun& run) {
    return least_size_pt + 100 * noticed_within_min / 60 / run.truth.cut_off_hours + 100 * *run.record.meter->step_wh / run.truth.full_drain_wh;
}

bool doubts_register(const RunAnalysis& analysis) { return has_finding(analysis, FindingKind::hidden_reset); }

} // namespace

RunSetup few_drain(FewFamily family, int readings, std::uint64_t seed) {
    const bool varied = seed % 3 == 0;
    const std::vector<NamedLoad>& loads = varied ? varying_loads() : few_loads();
    RunSetup setup = few_readings_under(loads[seed / 3 % loads.size()].second, seed);
    Random random(seed + 23);
    setup.gauge = few_family_gauge(family, setup, random);
    spread_readings(readings, Discharge(setup.physics, setup.load).end_hours(), random, setup);
    setup.tester.noticed_within_min.reset();
    if (seed % 4 == 0) {
        setup.tester.end = RunEnd::found_off;
        setup.tester.found_after_h = random.uniform(0.1, 6);
    } else {
        setup.tester.end_late_min = random.uniform(0, 4);
    }
    return setup;
}

std::string gauge_accusation(const RunAnalysis& analysis) {
    for (const Finding& finding : analysis.gauge.findings)
        if (finding.weight == Weight::fault || (finding.weight == Weight::doubt && finding.kind != FindingKind::lone_reading))
            return finding.sentence + " (" + finding.evidence + ")";
    return {};
}

void report_few_drain(const std::string& name, FewFamily family, const RunSetup& setup, const SimulatedRun& run, Report& report) {
    const bool found = setup.tester.end == RunEnd::found_off;
    const RunAnalysis analysis = analyse_run(run.record);
    report.result(name, "delivered", analysis.energy.delivered_wh, run.truth.delivered_wh, energy_band());
    report.result(name, found ? "run time, found off" : "run time", analysis.energy.duration_h, run.truth.output_on_h, time_band(found));
    report.result(name, found ? "mean load, found off" : "mean load", analysis.energy.mean_load_w, run.truth.delivered_wh / run.truth.output_on_h,
                  time_band(found));
    add_draw(name, analysis, run.truth, report);
    if (family == FewFamily::honest) report.honest(name, !gauge_accusation(analysis).empty(), gauge_accusation(analysis));
    // Where nobody saw it go off, the shares of time are not known.
    else if (!found && outside_true_shares_pt(run) > 2 * resolution_pt(run))
        report.planted(name, "gauge off by twice what the shares resolve", !first_accusation(analysis).empty(), analysis.gauge.verdict);
    report.honest(name + ", register", doubts_register(analysis), {});
}

} // namespace ullage::test
