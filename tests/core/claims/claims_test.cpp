// SPDX-License-Identifier: GPL-3.0-or-later
#include "claims/claims.h"
#include "support/record_builder.h"
#include "unit/unit_analysis.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

using test::RecordBuilder;

constexpr double day_h = 24;

/// The run moved by `hours`, under names of its own.
RunRecord placed(RunRecord record, double hours, int number) {
    record.number = number;
    record.run.uuid = RunId("run" + std::to_string(number));
    for (Reading& reading : record.readings) reading.values.time_ms += static_cast<UtcMs>(hours * ms_per_hour);
    return record;
}

RunRecord drain(double hours, int number, double wh, double from_percent = 100, double to_percent = 0) {
    RecordBuilder run;
    run.at(0, from_percent, 0).at(5, (from_percent + to_percent) / 2, wh / 2).at(10, to_percent, wh);
    if (from_percent < 100) run.record().run.started_full = false;
    if (to_percent > 0) run.record().run.end = RunEnd::stopped_by_tester;
    return placed(run.record(), hours, number);
}

RunRecord charge(double hours, int number, double wh, double from_percent = 0, double to_percent = 100) {
    RecordBuilder run;
    run.at(0, from_percent, 5000).at(1, (from_percent + to_percent) / 2, 5000 + 0.6 * wh).at(1.5, to_percent - 5, 5000 + 0.9 * wh);
    run.at(2, to_percent, 5000 + wh);
    run.record().run.kind = RunKind::charge;
    run.record().run.started_full = false;
    run.record().run.end = RunEnd::stopped_by_tester;
    run.record().run.charge_source = ChargeSource::wall;
    return placed(run.record(), hours, number);
}

std::vector<EnergyAnalysis> energies_of(const std::vector<RunRecord>& records) {
    std::vector<EnergyAnalysis> all;
    for (const RunRecord& record : records) all.push_back(analyse_energy(record));
    return all;
}

UnitClaims claims_of(const std::vector<RunRecord>& records, std::optional<EnergyPrice> price = {}) {
    return check_claims(records.front().unit, addresses_of(records), fit_unit(records), price);
}

const ClaimCheck& check(const UnitClaims& claims, const std::string& key) { return *std::ranges::find(claims.checks, key, &ClaimCheck::key); }

// The constructed check of the reference sheet on protocol PNNL-22010 Rev. 2 (formula from memory): sums, not the mean of the ratios.
TEST(RoundTrips, three_cycles_give_the_ratio_of_the_sums_and_not_the_mean_of_the_ratios) {
    const double charged_wh[] = {1160, 1150, 1155}, delivered_wh[] = {980, 990, 985};
    std::vector<RunRecord> records{drain(0, 1, 970)};
    for (int i = 0; i < 3; ++i) {
        records.push_back(charge(day_h * (2 * i + 1), 2 * i + 2, charged_wh[i]));
        records.push_back(drain(day_h * (2 * i + 2), 2 * i + 3, delivered_wh[i]));
    }
    const RoundTrip trip = round_trip(addresses_of(records), energies_of(records));
    ASSERT_EQ(trip.cycles.size(), 3u);
    EXPECT_NEAR(*trip.efficiency.value, 0.852813853, 1e-9);
    EXPECT_GT(std::abs(*trip.efficiency.value - 0.852837001), 1e-5);
    EXPECT_EQ(trip.cycles[0].ends, "from cut-off to full and back");
    EXPECT_NE(trip.boundary.text().find("From AC at the wall to AC at the socket"), std::string::npos) << trip.boundary;
}

TEST(RoundTrips, the_gain_of_one_meter_cancels_and_that_of_two_does_not) {
    std::vector<RunRecord> records{drain(0, 1, 970), charge(day_h, 2, 1150), drain(2 * day_h, 3, 980)};
    const double shared = *round_trip(addresses_of(records), energies_of(records)).efficiency.half_width();
    // Full and cut-off repeat within 0.5 %: 1.96 · 0.5 % = 0.98 %, beside which two register steps of 1 Wh are little.
    EXPECT_NEAR(shared / 0.852, 0.0098, 0.0004);
    records[1].meter->uuid = MeterId("other");
    records[1].run.meter_uuid = MeterId("other");
    const RoundTrip apart = round_trip(addresses_of(records), energies_of(records));
    // Two rectangular limits of 1 %: a triangle of 2 %, 95 % within 2 (1 - sqrt 0.05) = 1.55 %; the larger one convolved with the other as normal
    // gives 1.6 %; with repeatability, hypot(1.6 %, 0.98 %).
    EXPECT_NEAR(*apart.efficiency.half_width() / *apart.efficiency.value, 0.0187, 0.001);
    EXPECT_NE(apart.efficiency.reason.text().find("do not cancel"), std::string::npos);
    records[1].meter->limit_percent.reset();
    const RoundTrip unknown = round_trip(addresses_of(records), energies_of(records));
    EXPECT_TRUE(unknown.efficiency.value);
    EXPECT_FALSE(unknown.efficiency.half_width());
}

TEST(RoundTrips, carry_the_repeatability_that_a_logbook_states) {
    const std::vector<RunRecord> records{drain(0, 1, 970), charge(day_h, 2, 1150), drain(2 * day_h, 3, 980)};
    MeasureOptions stated;
    stated.repeatability_percent = 2;
    stated.repeatability_source = RepeatabilitySource::stated;
    const RoundTrip trip = check_claims(records.front().unit, addresses_of(records), fit_unit(records, stated)).round_trip;
    EXPECT_NEAR(*trip.efficiency.half_width() / *trip.efficiency.value, 1.96 * 0.02, 0.001);
}

TEST(RoundTrips, of_one_meter_only_the_part_common_to_both_powers_cancels) {
    std::vector<RunRecord> records{drain(0, 1, 970), charge(day_h, 2, 1150), drain(2 * day_h, 3, 980)};
    const double calibrated = *round_trip(addresses_of(records), energies_of(records)).efficiency.half_width();
    for (RunRecord& record : records) record.meter->load_part_percent.reset(); // a quarter of 1 % each, where the powers differ by more than two
    const RoundTrip trip = round_trip(addresses_of(records), energies_of(records));
    const bool unlike = are_unlike_loads(trip.cycles.front().charge_w, trip.cycles.front().drain_w);
    const double wider = *trip.efficiency.half_width();
    if (unlike) EXPECT_NEAR(wider * wider - calibrated * calibrated, std::pow(1.96 * 0.0025 * 0.852 * std::sqrt(2.0 / 3.0), 2), 3e-6);
    else EXPECT_DOUBLE_EQ(wider, calibrated);
}

TEST(RoundTrips, a_charge_that_came_first_from_an_empty_gauge_closes_a_cycle_with_the_drain_after_it) {
    std::vector<RunRecord> records{charge(0, 1, 1150), drain(day_h, 2, 980)};
    const RoundTrip trip = round_trip(addresses_of(records), energies_of(records));
    ASSERT_EQ(trip.cycles.size(), 1u) << trip.sentence;
    EXPECT_EQ(trip.cycles[0].ends, "from empty by its gauge to full and back");
    EXPECT_GT(trip.cycles[0].u_ends, 0.005);
    EXPECT_NEAR(*trip.efficiency.value, 980.0 / 1150, 1e-9);
}

TEST(RoundTrips, a_charger_left_plugged_in_makes_it_a_bracket_between_both) {
    std::vector<RunRecord> records{drain(0, 1, 970), charge(day_h, 2, 1150), drain(2 * day_h, 3, 980)};
    Reading later = records[1].readings.back();
    later.uuid = ReadingId(later.uuid.text() + "later");
    later.values.time_ms += 10 * 3'600'000;
    *later.values.register_wh += 60; // 6 W for ten hours
    records[1].readings.push_back(later);
    const RoundTrip trip = round_trip(addresses_of(records), energies_of(records));
    ASSERT_EQ(trip.cycles.size(), 1u) << trip.sentence;
    EXPECT_EQ(trip.efficiency.kind, Kind::bracket);
    EXPECT_LT(*trip.efficiency.lower, 980.0 / 1205);
    EXPECT_GT(*trip.efficiency.upper, 980.0 / 1160);
    EXPECT_NE(trip.efficiency.reason.text().find("60 Wh went in after"), std::string::npos) << trip.efficiency.reason;
}

TEST(RoundTrips, a_full_drain_and_the_charge_after_it_close_a_cycle_at_full) {
    const std::vector<RunRecord> records{drain(0, 1, 980), charge(day_h, 2, 1150)};
    const RoundTrip trip = round_trip(addresses_of(records), energies_of(records));
    ASSERT_EQ(trip.cycles.size(), 1u);
    EXPECT_EQ(trip.cycles[0].ends, "from full to cut-off and back");
    EXPECT_NEAR(trip.cycles[0].between_h, 14, 1e-9);
}

TEST(RoundTrips, equal_gauge_ends_close_a_cycle_and_say_what_they_assume) {
    std::vector<RunRecord> records{drain(0, 1, 490, 90, 40), charge(day_h, 2, 580, 40, 90)};
    const RoundTrip trip = round_trip(addresses_of(records), energies_of(records));
    ASSERT_EQ(trip.cycles.size(), 1u);
    EXPECT_EQ(trip.cycles[0].ends, "from 40 to 90 % and back by the gauge");
    EXPECT_NE(trip.efficiency.reason.text().find("assumes that equal gauge readings"), std::string::npos);
    // Each end is the difference of two readings with a step of 1 pt: u = 1/sqrt 3 of 50 pt, 1.15 %; repeatability 0.5 %.
    EXPECT_NEAR(*trip.efficiency.half_width() / *trip.efficiency.value, 1.96 * std::hypot(1 / std::sqrt(3.0) / 50, 0.005), 0.001);
    records[1] = charge(day_h, 2, 580, 40, 85);
    EXPECT_EQ(round_trip(addresses_of(records), energies_of(records)).efficiency.kind, Kind::not_known);
}

TEST(RoundTrips, an_open_cycle_or_one_with_energy_missing_tells_nothing) {
    std::vector<RunRecord> records{drain(0, 1, 980, 100, 30), charge(day_h, 2, 1150, 30, 100)};
    records[0].readings[1].values.register_wh = 900;
    records[0].readings[2].values.register_wh = 100; // reset without a mark
    EXPECT_EQ(round_trip(addresses_of(records), energies_of(records)).cycles.size(), 0u);
    const std::vector<RunRecord> alone{charge(0, 1, 1150)};
    const RoundTrip none = round_trip(addresses_of(alone), energies_of(alone));
    EXPECT_EQ(none.efficiency.kind, Kind::not_known);
    EXPECT_NE(none.sentence.text().find("no closed cycle"), std::string::npos);
}

TEST(Charges, energy_time_power_and_taper_are_those_of_the_readings) {
    RecordBuilder run;
    run.at(0, 0, 0).at(0.5, 30, 300).at(1, 60, 600).at(1.5, 85, 850).at(2, 96, 960).at(2.5, 100, 1000);
    run.record().run.kind = RunKind::charge;
    run.record().run.end = RunEnd::stopped_by_tester;
    run.record().readings[1].values.meter_w = 612;
    const ChargeRun found = analyse_charge(run.record(), analyse_energy(run.record()));
    EXPECT_NEAR(*found.charged_wh.value, 1000, 1e-9);
    EXPECT_NEAR(*found.mean_charge_w.value, 400, 1e-6);
    EXPECT_EQ(found.peak_charge_w.value, 612.0);
    EXPECT_EQ(found.peak_charge_w.kind, Kind::at_least);
    EXPECT_TRUE(found.ended_full);
    // Full came after the reading of 96 % at 2 h and by that of 100 % at 2.5 h.
    EXPECT_EQ(found.charge_time_h.kind, Kind::bracket);
    EXPECT_NEAR(*found.charge_time_h.lower, 2 - 1.0 / 60, 1e-9);
    EXPECT_NEAR(*found.charge_time_h.upper, 2.5 + 1.0 / 60, 1e-9);
    // 600, 600, 500, 220 and 80 W: from the reading at 1 h on.
    EXPECT_NEAR(*found.taper_h.value, 1.5, 1e-9);
    EXPECT_EQ(found.taper_gauge_percent, 60.0);
}

TEST(Charges, a_charge_that_was_not_seen_full_takes_at_least_its_time) {
    RecordBuilder run;
    run.at(0, 0, 0).at(1, 50, 500).at(2, 90, 900);
    run.record().run.kind = RunKind::charge;
    const ChargeRun found = analyse_charge(run.record(), analyse_energy(run.record()));
    EXPECT_EQ(found.charge_time_h.kind, Kind::at_least);
    EXPECT_FALSE(found.ended_full);
}

TEST(Charges, the_claimed_time_is_held_against_charges_from_cut_off_to_full_from_the_wall) {
    std::vector<RunRecord> records{drain(0, 1, 980), charge(day_h, 2, 1150)};
    const auto verdict = [&](std::optional<double> claimed_h) {
        for (RunRecord& record : records) record.unit.charge_time_h = claimed_h;
        return check(claims_of(records), "charge_time_h").verdict;
    };
    EXPECT_EQ(verdict(2.1), ClaimVerdict::holds);
    EXPECT_EQ(verdict(1.8), ClaimVerdict::not_decided) << "full was reached between 1.5 and 2 h";
    EXPECT_EQ(verdict(1.2), ClaimVerdict::does_not_hold);
    EXPECT_EQ(verdict({}), ClaimVerdict::not_tested);
    records[1].run.charge_source = ChargeSource::pv;
    EXPECT_EQ(verdict(2.1), ClaimVerdict::not_tested);
}

TEST(Charges, a_charge_from_PV_is_held_against_the_power_of_the_input) {
    std::vector<RunRecord> records{charge(0, 1, 1150)};
    records[0].run.charge_source = ChargeSource::pv;
    records[0].unit.pv_max_w = 800; // 690 W in the first hour
    EXPECT_EQ(check(claims_of(records), "pv_max_w").verdict, ClaimVerdict::not_reached);
    records[0].unit.pv_max_w = 600;
    EXPECT_EQ(check(claims_of(records), "pv_max_w").verdict, ClaimVerdict::holds);
}

/// A run at `watts` each for half an hour, ended by the given mark.
RunRecord output(RunKind kind, const std::vector<double>& watts, std::optional<MarkKind> last = {}) {
    RecordBuilder run;
    double wh = 0, hours = 0;
    run.at(0, 100, 0);
    for (std::size_t i = 0; i < watts.size(); ++i) {
        wh += 0.5 * watts[i];
        hours += 0.5;
        run.at(hours, 100 - wh / 20, std::round(wh), i + 1 < watts.size() ? std::optional(MarkKind::load_changed) : last);
    }
    run.record().run.kind = kind;
    run.record().run.end = RunEnd::stopped_by_tester;
    run.record().unit.peak_output_w = 3000;
    return run.record();
}

OutputRun tested(const RunRecord& record) { return analyse_output(record, analyse_energy(record)); }

TEST(Outputs, each_load_between_two_marks_is_a_step_with_its_load_and_gauge) {
    const OutputRun run = tested(output(RunKind::sustained_output, {500, 1000, 1500}));
    ASSERT_EQ(run.steps.size(), 3u);
    for (std::size_t i = 0; i < 3; ++i) {
        EXPECT_NEAR(*run.steps[i].watts.value, 500.0 * static_cast<double>(i + 1), 1e-6);
        EXPECT_NEAR(run.steps[i].hours(), 0.5, 1e-9);
    }
    EXPECT_NEAR(*run.steps[2].gauge_used_pt, 750.0 / 20, 1e-9);
    EXPECT_EQ(run.steps[0].end, OutputStep::End::load_changed);
    // ±1 % rectangular beside which the noted minutes count: u = 1500/60 · sqrt(2/3)/0.5 = 41 W.
    EXPECT_NEAR(*run.steps[2].watts.half_width(), 1.96 * std::hypot(15 / std::sqrt(3.0), 40.8), 2);
}

TEST(Outputs, a_load_at_the_claim_that_stands_is_held) {
    const OutputRun run = tested(output(RunKind::sustained_output, {500, 1510}));
    EXPECT_EQ(run.outcome, OutputOutcome::held);
    EXPECT_EQ(run.deciding, 1u);
    EXPECT_NE(run.sentence.text().find("for 30 min; 1500 W are claimed"), std::string::npos) << run.sentence;
}

TEST(Outputs, a_trip_below_the_claim_refutes_it_whatever_was_held_before) {
    const RunRecord record = output(RunKind::sustained_output, {1200, 1400}, MarkKind::output_tripped);
    const OutputRun run = tested(record);
    EXPECT_EQ(run.outcome, OutputOutcome::tripped);
    EXPECT_EQ(run.trips, 1);
    EXPECT_EQ(check(claims_of({record}), "rated_output_w").verdict, ClaimVerdict::does_not_hold);
}

// Of 1530 ± 86 W nobody knows whether it lies above 1500 W: the whole interval decides, a worse meter never makes a verdict easier (JCGM
// 106:2012, 8.3).
TEST(Outputs, a_trip_whose_interval_holds_the_claim_decides_nothing) {
    for (const double tripped_w : {1470.0, 1500.0, 1530.0}) {
        const RunRecord record = output(RunKind::sustained_output, {1000, tripped_w}, MarkKind::output_tripped);
        EXPECT_EQ(check(claims_of({record}), "rated_output_w").verdict, ClaimVerdict::not_decided) << tripped_w;
    }
}

TEST(Outputs, runs_that_disagree_decide_nothing_and_are_both_told) {
    RunRecord held = output(RunKind::sustained_output, {1000, 1700}),
              tripped = output(RunKind::sustained_output, {1000, 1300}, MarkKind::output_tripped);
    tripped.run.uuid = RunId("later");
    const ClaimCheck found = check(claims_of({held, tripped}), "rated_output_w");
    EXPECT_EQ(found.verdict, ClaimVerdict::not_decided);
    EXPECT_NE(found.evidence.text().find("Held"), std::string::npos) << found.evidence;
    EXPECT_NE(found.evidence.text().find("Tripped"), std::string::npos) << found.evidence;
}

TEST(Outputs, a_trip_above_the_claim_refutes_nothing) {
    const RunRecord held = output(RunKind::sustained_output, {1500, 1900}, MarkKind::output_tripped);
    EXPECT_EQ(tested(held).outcome, OutputOutcome::held);
    EXPECT_NE(tested(held).sentence.text().find("above the claim"), std::string::npos);
    const RunRecord untried = output(RunKind::sustained_output, {700, 1900}, MarkKind::output_tripped);
    EXPECT_TRUE(tested(untried).beyond_claim);
    EXPECT_EQ(check(claims_of({untried}), "rated_output_w").verdict, ClaimVerdict::not_decided);
}

TEST(Outputs, loads_below_the_claim_do_not_reach_it) {
    const RunRecord record = output(RunKind::sustained_output, {600, 900});
    EXPECT_EQ(tested(record).outcome, OutputOutcome::not_reached);
    EXPECT_EQ(check(claims_of({record}), "rated_output_w").verdict, ClaimVerdict::not_reached);
    RunRecord unstated = record;
    unstated.unit.rated_output_w.reset();
    EXPECT_EQ(tested(unstated).outcome, OutputOutcome::not_known);
    EXPECT_EQ(check(claims_of({unstated}), "rated_output_w").verdict, ClaimVerdict::not_tested);
}

TEST(Outputs, a_load_at_the_claim_must_stand_a_quarter_of_an_hour) {
    RecordBuilder run;
    run.at(0, 100, 0).at(10.0 / 60, 90, 255, MarkKind::load_changed).at(1, 85, 300);
    run.record().run.kind = RunKind::sustained_output;
    run.record().run.end = RunEnd::stopped_by_tester;
    const OutputRun found = tested(run.record());
    EXPECT_EQ(found.outcome, OutputOutcome::not_reached) << found.sentence;
    EXPECT_NE(found.sentence.text().find("15 min at least"), std::string::npos);
}

TEST(Outputs, a_peak_counts_from_watts_noted_and_was_carried_when_it_stood_between_two_readings) {
    RecordBuilder run;
    run.at(0, 100, 0).at(0.1, 99, 0, MarkKind::load_changed).at(0.1 + 1.0 / 60, 98, 50, MarkKind::output_tripped);
    run.at(0.2, 98, 50, MarkKind::output_reset).at(0.3, 98, 51);
    run.record().run.kind = RunKind::peak_output;
    run.record().run.end = RunEnd::stopped_by_tester;
    run.record().unit.peak_output_w = 3000;
    run.record().readings[1].values.meter_w = 3010;
    run.record().readings[2].values.meter_w = 3040;
    const OutputRun found = tested(run.record());
    EXPECT_EQ(found.trips, 1);
    EXPECT_EQ(found.resets, 1);
    ASSERT_GE(found.steps.size(), 2u);
    EXPECT_EQ(found.outcome, OutputOutcome::held) << found.sentence;
    run.record().unit.peak_output_w = 4000;
    EXPECT_EQ(tested(run.record()).outcome, OutputOutcome::tripped) << "at a load below the claim";
}

TEST(OwnDraw, a_standby_is_measured_by_the_charge_that_makes_good_for_it) {
    RecordBuilder standby;
    standby.at(0, 100, {}).at(72, 94, {});
    standby.record().run.kind = RunKind::standby;
    standby.record().run.end = RunEnd::stopped_by_tester;
    std::vector<RunRecord> records{standby.record(), charge(72, 2, 72, 94, 100)};
    const UnitClaims claims = claims_of(records, EnergyPrice{0.30, "EUR"});
    const StandingDraw& off = claims.draws.output_off;
    EXPECT_NEAR(*off.draw_w.value, 1.0, 1e-9);
    EXPECT_EQ(off.draw_w.kind, Kind::measured);
    EXPECT_NEAR(*off.per_day_wh.value, 24, 1e-9);
    EXPECT_NEAR(*off.per_month_wh.value, 24 * 365.25 / 12, 1e-9);
    EXPECT_NEAR(*off.cost_per_day, 0.024 * 0.30, 1e-12);
    EXPECT_NEAR(*off.cost_per_month, 0.024 * 0.30 * 365.25 / 12, 1e-12);
    EXPECT_EQ(off.basis, "as metered before the charger");
}

TEST(OwnDraw, without_a_charge_the_gauge_tells_and_says_what_it_assumes) {
    RecordBuilder standby;
    standby.at(0, 100, {}).at(100, 90, {});
    standby.record().run.kind = RunKind::standby;
    standby.record().run.end = RunEnd::stopped_by_tester;
    const UnitClaims claims = claims_of({standby.record()});
    const Quantity& draw = claims.draws.output_off.draw_w;
    EXPECT_NEAR(*draw.value, 1.0, 1e-9); // 10 % of 1000 Wh in 100 h
    EXPECT_EQ(draw.kind, Kind::projected);
    EXPECT_NEAR(*draw.half_width(), 0.1 * (1 - std::sqrt(0.05)), 1e-9);
    EXPECT_NE(draw.reason.text().find("assumes an accurate gauge"), std::string::npos);
    EXPECT_FALSE(claims.draws.output_off.cost_per_day);
}

TEST(OwnDraw, the_cost_of_an_output_left_on_holds_the_loss_of_the_round_trip_where_that_is_known) {
    RecordBuilder idle;
    idle.at(0, 100, 0).at(50, 0, 0);
    idle.record().run.kind = RunKind::no_load_drain;
    const std::vector<RunRecord> alone{idle.record()};
    const UnitClaims first = claims_of(alone, EnergyPrice{0.5, "EUR"});
    EXPECT_NEAR(*first.draws.output_on.draw_w.value, 20, 1e-9);
    EXPECT_NEAR(*first.draws.output_on.cost_per_day, 0.48 * 0.5, 1e-9);
    EXPECT_NE(first.draws.output_on.basis.text().find("without the charging loss"), std::string::npos);
    const std::vector<RunRecord> more{placed(idle.record(), 0, 1), charge(3 * day_h, 2, 1200), drain(4 * day_h, 3, 960)};
    const UnitClaims second = check_claims(more.front().unit, addresses_of(more), UnitFit{}, EnergyPrice{0.5, "EUR"});
    EXPECT_NEAR(*second.round_trip.efficiency.value, 0.8, 1e-9);
    EXPECT_NEAR(*second.draws.output_on.cost_per_day, 0.48 * 0.5 / 0.8, 1e-9);
}

TEST(Claims, the_rated_energy_holds_only_at_the_socket_and_is_else_called_not_reached) {
    EXPECT_EQ(check(claims_of({drain(0, 1, 800)}), "rated_energy_wh").verdict, ClaimVerdict::not_reached);
    EXPECT_EQ(check(claims_of({drain(0, 1, 1030)}), "rated_energy_wh").verdict, ClaimVerdict::holds);
    EXPECT_EQ(check(claims_of({drain(0, 1, 400, 100, 50)}), "rated_energy_wh").verdict, ClaimVerdict::not_tested);
}

} // namespace
} // namespace ullage
