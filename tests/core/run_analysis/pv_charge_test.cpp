// SPDX-License-Identifier: GPL-3.0-or-later
#include "claims/claims.h"
#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

using test::RecordBuilder;

/// A charge from one panel: `watts` in each of its hours, read at each hour, beginning at `hour`.
RunRecord panel(int number, const std::string& name, const std::string& meter, const std::vector<double>& watts, double hour = 9) {
    RecordBuilder run;
    double register_wh = 1000;
    run.at(hour, 20, register_wh);
    for (std::size_t h = 0; h < watts.size(); ++h) {
        register_wh += watts[h];
        run.at(hour + static_cast<double>(h) + 1, 20 + 5.0 * static_cast<double>(h + 1), register_wh);
    }
    RunRecord& record = run.record();
    record.run.kind = RunKind::charge;
    record.run.charge_source = ChargeSource::pv;
    record.run.end = RunEnd::stopped_by_tester;
    record.run.load = name;
    record.number = number;
    record.run.uuid = RunId("panel" + std::to_string(number));
    record.meter->uuid = MeterId(meter);
    record.meter->limit_percent = 1;
    return record;
}

UnitClaims pv_claims_of(std::vector<RunRecord> records, double pv_max_w = 400) {
    for (RunRecord& record : records) record.unit.pv_max_w = pv_max_w;
    return check_claims(records.front().unit, addresses_of(records), fit_unit(records));
}

const ClaimCheck& pv_claim(const UnitClaims& claims) { return *std::ranges::find(claims.checks, "pv_max_w", &ClaimCheck::key); }

double half_width(const Quantity& quantity) { return (*quantity.upper - *quantity.lower) / 2; }

} // namespace

TEST(PvCharges, panels_that_charge_together_have_each_its_energy_and_a_total_whose_peak_is_of_one_time) {
    // The east panel is best in the morning, the west panel in the afternoon: their peaks do not fall together.
    const UnitClaims claims = pv_claims_of({panel(1, "east", "a", {200, 180, 120, 60}), panel(2, "west", "b", {60, 130, 180, 190})});
    ASSERT_EQ(claims.pv_charges.size(), 1U);
    const PvCharge& charge = claims.pv_charges[0];
    ASSERT_EQ(charge.panels.size(), 2U);
    EXPECT_EQ(charge.panels[0].panel, "east");
    EXPECT_NEAR(*charge.panels[0].charged_wh.value, 560, 1e-9);
    EXPECT_NEAR(*charge.panels[1].charged_wh.value, 560, 1e-9);
    EXPECT_NEAR(*charge.charged_wh.value, 1120, 1e-9);
    EXPECT_EQ(charge.peak_charge_w.kind, Kind::at_least);
    EXPECT_NEAR(*charge.peak_charge_w.value, 310, 1e-6) << "180 and 130 W in the second hour, not 200 and 190 W";
    EXPECT_EQ(pv_claim(claims).verdict, ClaimVerdict::not_reached);
    EXPECT_EQ(pv_claim(claims).run_uuids, (std::vector<RunId>{RunId("panel1"), RunId("panel2")}));
    EXPECT_EQ(
        charge.sentence,
        "Charge from PV by 2 panels together: 1120.0 ± 8.8 Wh, peak at least 307 W; run 1 (east): 560.0 ± 5.4 Wh; run 2 (west): 560.0 ± 5.4 Wh");
}

TEST(PvCharges, gains_of_two_meters_partly_cancel_and_those_of_one_add) {
    const std::vector<double> watts{200, 200, 200};
    const Quantity two = pv_claims_of({panel(1, "", "a", watts), panel(2, "", "b", watts)}).pv_charges[0].charged_wh;
    const Quantity one = pv_claims_of({panel(1, "", "a", watts), panel(2, "", "a", watts)}).pv_charges[0].charged_wh;
    // Two rectangular gains of 6 Wh each: their sum is triangular, of half-width 12 Wh, with 95 % within (1 - sqrt(0.05)) of it (JCGM
    // 101:2008, 6.4.5). The convolution of one with the other as normal comes to 0.3 Wh of that, the register's step to less.
    EXPECT_NEAR(half_width(two), 12 * (1 - std::sqrt(0.05)), 0.4);
    EXPECT_NEAR(half_width(one), 12 * 0.95, 0.1);
}

TEST(PvCharges, charges_after_one_another_are_each_their_own_and_a_charge_from_the_wall_is_none) {
    RunRecord wall = panel(3, "", "a", {300, 300}, 60);
    wall.run.charge_source = ChargeSource::wall;
    const UnitClaims claims = pv_claims_of({panel(1, "", "a", {200, 200}), panel(2, "", "a", {210, 190}, 33), wall});
    ASSERT_EQ(claims.pv_charges.size(), 2U);
    EXPECT_EQ(claims.pv_charges[0].panels.size(), 1U);
    EXPECT_NEAR(*pv_claim(claims).measured.value, 210, 1e-6);
}

TEST(PvCharges, one_panel_of_several_closes_no_round_trip) {
    RecordBuilder drain;
    drain.at(0, 100, 0).at(5, 50, 450).at(10, 0, 900);
    RunRecord before = drain.record();
    before.number = 1;
    before.run.uuid = RunId("drain");
    const std::vector<double> watts{300, 300, 300};
    std::vector<RunRecord> records{before, panel(2, "", "a", watts, 12), panel(3, "", "b", watts, 12)};
    for (RunRecord& record : records)
        if (record.run.kind == RunKind::charge) record.readings.back().values.gauge_percent = 100;
    EXPECT_TRUE(pv_claims_of(records).round_trip.cycles.empty());
    records.pop_back();
    EXPECT_EQ(pv_claims_of(records).round_trip.cycles.size(), 1U) << "the same with one panel alone";
}

TEST(PvCharges, without_an_error_limit_there_is_no_interval_and_missing_energy_leaves_the_total_open) {
    std::vector<RunRecord> records{panel(1, "", "a", {200, 200}), panel(2, "", "b", {200, 200})};
    records[1].meter->limit_percent.reset();
    EXPECT_FALSE(pv_claims_of(records).pv_charges[0].charged_wh.upper);
    EXPECT_NEAR(*pv_claims_of(records).pv_charges[0].charged_wh.value, 800, 1e-9);
}

} // namespace ullage
