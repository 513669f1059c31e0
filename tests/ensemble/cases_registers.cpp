// SPDX-License-Identifier: GPL-3.0-or-later
#include "ensemble/cases.h"
#include "ensemble/specimen.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace ullage::test {
namespace {

/// Only a lower limit is stated: 95 % of a two-sided interval leaves 2.5 % below it, and what is missing lies above.
Band at_least_band() {
    Band band;
    band.least = 0.975;
    band.most = 1;
    band.reason = "only a lower limit, to be truly below the truth; the energy that no reading covers adds to the margin";
    return band;
}

Band zero_start_band() {
    Band band;
    band.most = 1;
    band.reason = "after a register was set to 0 the budget allows for rounding and for truncation of each reading; this meter does one of them";
    return band;
}

Band two_meters_band() {
    Band band;
    band.most = 1;
    band.reason = "of two meters the lesser gain limit counts as normal, which is a little wide, and so does the minute between them";
    return band;
}

Band short_gap_band() {
    Band band;
    band.most = 1;
    band.reason = "what may have flowed in a gap of up to two minutes is allowed for in full, below the value too, and never all of it did";
    return band;
}

using Change = std::function<void(RunSetup&, Random&, double end_h)>;
using Look = std::function<void(const SimulatedRun&, const RunAnalysis&)>;

/// `band` is for results that are `at least`, or for all where `measured_band` is not given. `change` plants what the case is about, `look` sees
/// what came of it beyond the delivered energy. With its register set right no gauge
/// of these cases may be accused.
void run_case(const std::string& name, std::uint64_t offset, std::uint64_t seeds, const Change& change, const Band& band, Report& report,
              const Look& look = {}, const std::optional<Band>& measured_band = {}) {
    for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
        RunSetup setup = specimen_under(LoadProfile::constant(90), seed);
        Random random(seed + 3);
        read_each(0.05, setup);
        change(setup, random, Discharge(setup.physics, setup.load).end_hours());
        const SimulatedRun run = simulate_run(setup, seed);
        const RunAnalysis analysis = analyse_run(run.record);
        const Quantity& delivered = analysis.energy.delivered_wh;
        report.result(name, "delivered", delivered, run.truth.delivered_wh, delivered.kind == Kind::at_least ? band : measured_band.value_or(band));
        report.honest(name, !first_accusation(analysis).empty(), first_accusation(analysis));
        if (look) look(run, analysis);
    }
}

bool has_correction(const RunAnalysis& analysis, RegisterCorrectionKind kind) {
    return std::ranges::any_of(analysis.energy.track.register_corrections,
                               [kind](const RegisterCorrection& register_correction) { return register_correction.kind == kind; });
}

void resets_and_swaps(std::uint64_t seeds, Report& report) {
    run_case(
        "zeroed with a mark, read before", 301'000'000, seeds,
        [](RunSetup& setup, Random& random, double end_h) {
            setup.faults = {{.kind = FaultKind::reset_with_mark, .hours = end_h * random.uniform(0.2, 0.8)}};
        },
        short_gap_band(), report);
    run_case(
        "zeroed with a mark, not read before", 302'000'000, seeds,
        [](RunSetup& setup, Random& random, double end_h) {
            setup.faults = {{.kind = FaultKind::reset_with_mark, .hours = end_h * random.uniform(0.2, 0.8), .read_before = false}};
        },
        at_least_band(), report, {}, short_gap_band());
    run_case(
        "zeroed at the start, 10 Wh steps", 303'000'000, seeds,
        [](RunSetup& setup, Random&, double) {
            setup.meter->start_wh = 0;
            setup.meter->zeroed_at_start = true;
            setup.meter->meter.step_wh = 10;
        },
        zero_start_band(), report);
    run_case(
        "swapped with a mark", 304'000'000, seeds,
        [](RunSetup& setup, Random& random, double end_h) {
            MeterSetup other = *setup.meter;
            other.start_wh = std::floor(random.uniform(0, 5000));
            setup.faults = {{.kind = FaultKind::swap_with_mark, .hours = end_h * random.uniform(0.2, 0.8), .new_meter = other}};
        },
        two_meters_band(), report);
    // Where the register had stood low and ran past its old value before the next reading, nothing shows: start high enough.
    run_case(
        "zeroed without a mark", 305'000'000, seeds,
        [](RunSetup& setup, Random& random, double end_h) {
            setup.meter->start_wh = std::floor(random.uniform(500, 5000));
            setup.faults = {{.kind = FaultKind::reset_without_mark, .hours = end_h * random.uniform(0.15, 0.85)}};
        },
        at_least_band(), report,
        [&report](const SimulatedRun&, const RunAnalysis& analysis) {
            report.planted("zeroed without a mark", "reset", has_correction(analysis, RegisterCorrectionKind::unmarked_reset));
        });
}

/// A row of the moment `hours`.
PlannedReading row(double hours) {
    PlannedReading reading;
    reading.hours = hours;
    return reading;
}

/// The register unread for up to two minutes: before it is zeroed with a mark, or before the end. Under a load of 400 W that is up to 13 Wh.
void short_gaps(std::uint64_t seeds, Report& report) {
    std::uint64_t offset = 331'000'000;
    for (const double watts : {90.0, 400.0})
        for (const bool at_end : {false, true}) {
            const std::string name = std::string(at_end ? "register read up to 2 min before the end, " : "zeroed up to 2 min after a reading, ") +
                                     (watts < 100 ? "90 W" : "400 W");
            for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
                RunSetup setup = specimen_under(LoadProfile::constant(watts), seed);
                Random random(seed + 3);
                const double end_h = Discharge(setup.physics, setup.load).end_hours();
                const double gap_h = random.uniform(0, 2) / 60;
                for (double hours = 0.08 * end_h; hours < 0.95 * end_h; hours += 0.08 * end_h) setup.tester.plan.push_back(row(hours));
                if (at_end) setup.tester.plan.push_back(row(end_h - gap_h));
                else setup.faults = {{.kind = FaultKind::reset_with_mark, .hours = setup.tester.plan[5].hours + gap_h, .read_before = false}};
                SimulatedRun run = simulate_run(setup, seed);
                if (at_end) run.record.readings.back().values.register_wh.reset();
                const RunAnalysis analysis = analyse_run(run.record);
                const Quantity& delivered = analysis.energy.delivered_wh;
                report.result(name, "delivered", delivered, run.truth.delivered_wh,
                              delivered.kind == Kind::at_least ? at_least_band() : short_gap_band());
                report.honest(name, !first_accusation(analysis).empty(), first_accusation(analysis));
            }
            offset += 1'000'000;
        }
}

/// A register that starts at 0, and readings with one long gap soon after the start: with it zeroed unseen in the gap, so that at the next
/// reading it has passed its old value again, and with nothing wrong under each load.
void hidden_resets(std::uint64_t seeds, Report& report) {
    std::uint64_t offset = 341'000'000;
    for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
        RunSetup setup = specimen_under(LoadProfile::constant(90), seed);
        Random random(seed + 3);
        const double end_h = Discharge(setup.physics, setup.load).end_hours();
        const double last_h = end_h * random.uniform(0.1, 0.2), zeroed_h = last_h + 0.01 * end_h;
        const double next_h = zeroed_h + last_h * random.uniform(1.05, 1.3);
        setup.meter->start_wh = 0;
        setup.meter->zeroed_at_start = true;
        setup.tester.plan = {row(last_h / 2), row(last_h)};
        for (double hours = next_h; hours < 0.97 * end_h; hours += 0.05 * end_h) setup.tester.plan.push_back(row(hours));
        setup.faults = {{.kind = FaultKind::reset_without_mark, .hours = zeroed_h}};
        const RunAnalysis analysis = analyse_run(simulate_run(setup, seed).record);
        report.planted("zeroed unseen, old value passed again", "doubt", has_finding(analysis, FindingKind::hidden_reset), analysis.gauge.verdict);
    }
    for (const auto& [load_name, load] : all_loads())
        for (const GaugeCounts counts : {GaugeCounts::stored_energy, GaugeCounts::charge}) {
            offset += 1'000'000;
            for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
                RunSetup setup = specimen_under(load, seed);
                Random random(seed + 3);
                const double end_h = Discharge(setup.physics, setup.load).end_hours();
                setup.gauge.counts = counts;
                setup.meter->start_wh = std::floor(random.uniform(0, 50));
                read_each(0.05, setup);
                const double from_h = end_h * random.uniform(0.03, 0.3);
                setup.tester.gaps = {{from_h, from_h + end_h * random.uniform(0.1, 0.4)}};
                const RunAnalysis analysis = analyse_run(simulate_run(setup, seed).record);
                const std::string accusation = first_accusation(analysis);
                report.honest("honest, register from near 0, a long gap", !accusation.empty(), load_name + ": " + accusation);
            }
        }
}

void rollovers_and_slips(std::uint64_t seeds, Report& report) {
    run_case(
        "rolls over at 10 000 Wh", 311'000'000, seeds,
        [](RunSetup& setup, Random& random, double) {
            setup.meter->meter.span_wh = 10'000;
            setup.meter->start_wh = std::floor(random.uniform(9'300, 9'990));
        },
        {}, report,
        [&report](const SimulatedRun&, const RunAnalysis& analysis) {
            report.planted("rolls over at 10 000 Wh", "rollover", has_correction(analysis, RegisterCorrectionKind::rollover));
        });
    run_case(
        "a typing error", 312'000'000, seeds,
        [](RunSetup& setup, Random& random, double end_h) {
            setup.faults = {{.kind = FaultKind::typing_error, .hours = end_h * random.uniform(0.05, 0.85), .least_wh = 100}};
        },
        {}, report,
        [&report](const SimulatedRun& run, const RunAnalysis& analysis) {
            if (run.truth.faults.empty()) return; // no reading was left to spoil
            const ReadingId& uuid = run.record.readings[run.truth.faults.front().after].uuid;
            const bool found = std::ranges::any_of(analysis.energy.track.register_corrections, [&](const RegisterCorrection& register_correction) {
                return register_correction.kind == RegisterCorrectionKind::typing_error && register_correction.reading_uuid == uuid;
            });
            report.planted("a typing error", "typing error", found);
        });
}

void sparse_readings(std::uint64_t seeds, Report& report) {
    run_case(
        "half the parts missing", 321'000'000, seeds,
        [](RunSetup& setup, Random&, double) {
            setup.tester.without_register = 0.5;
            setup.tester.without_gauge = 0.5;
        },
        {}, report);
    run_case(
        "three readings", 322'000'000, seeds,
        [](RunSetup& setup, Random&, double end_h) {
            setup.tester.interval_h = end_h / 2.2;
            setup.tester.jitter = 0.1;
        },
        {}, report);
    // One-sided: the register came into play late, or was not read at the end.
    for (const bool late : {true, false}) {
        const std::string name = late ? "register from the second hour on" : "register not read at the end";
        const std::uint64_t offset = late ? 323'000'000 : 324'000'000;
        for (std::uint64_t seed = offset; seed < offset + seeds; ++seed) {
            RunSetup setup = specimen_under(LoadProfile::constant(90), seed);
            SimulatedRun run = simulate_run(setup, seed);
            std::vector<Reading>& readings = run.record.readings;
            const std::size_t dropped = late ? 2 : 1;
            for (std::size_t i = 0; i < dropped; ++i) readings[late ? i : readings.size() - 1 - i].values.register_wh.reset();
            const RunAnalysis analysis = analyse_run(run.record);
            const Band band = analysis.energy.delivered_wh.kind == Kind::at_least ? at_least_band() : short_gap_band();
            report.result(name, "delivered", analysis.energy.delivered_wh, run.truth.delivered_wh, band);
            report.result(name, "usable fraction", analysis.energy.usable_fraction, run.truth.usable_fraction.value_or(0), band);
            report.honest(name, !first_accusation(analysis).empty(), first_accusation(analysis));
        }
    }
}

} // namespace

void run_registers(std::uint64_t seeds, Report& report) {
    resets_and_swaps(seeds, report);
    short_gaps(seeds, report);
    hidden_resets(seeds, report);
    rollovers_and_slips(seeds, report);
    sparse_readings(seeds, report);
}

} // namespace ullage::test
