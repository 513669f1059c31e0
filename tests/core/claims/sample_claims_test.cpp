// SPDX-License-Identifier: GPL-3.0-or-later
// The sample scenario's runs that test other claims than the rated energy, against what is true of them.
#include "claims/claims.h"
#include "support/scenario.h"
#include "support/scenario_claims.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ullage::test {
namespace {

/// The runs of the Osk 1200 in order of time, under names of their own.
const std::vector<RunRecord>& osk_runs() {
    static const std::vector<RunRecord> runs = [] {
        std::vector<RunRecord> all;
        for (const ScenarioRun& run : sample_scenario())
            if (run.simulated.record.unit.name == "Osk 1200") all.push_back(run.simulated.record);
        for (const ClaimRun& run : sample_claim_runs()) all.push_back(run.record);
        for (std::size_t r = 0; r < all.size(); ++r) {
            all[r].run.uuid = RunId("run" + std::to_string(r + 1));
            all[r].run.meter_uuid = MeterId(all[r].meter->name);
        }
        return all;
    }();
    return runs;
}

const UnitClaims& osk_claims() {
    static const UnitClaims claims = check_claims(osk_runs().front().unit, addresses_of(osk_runs()), fit_unit(osk_runs()), EnergyPrice{0.30, "EUR"});
    return claims;
}

const ClaimCheck& check(const std::string& key) { return *std::ranges::find(osk_claims().checks, key, &ClaimCheck::key); }

TEST(SampleClaims, the_numbers_of_the_runs_follow_those_of_the_drains) {
    for (std::size_t r = 0; r < osk_runs().size(); ++r) EXPECT_EQ(osk_runs()[r].number, static_cast<int>(r) + 1);
}

TEST(SampleClaims, the_charge_closes_a_round_trip_whose_interval_holds_the_truth) {
    const RoundTrip& trip = osk_claims().round_trip;
    ASSERT_EQ(trip.cycles.size(), 1u);
    EXPECT_EQ(trip.cycles[0].ends, "from full to cut-off and back");
    // 893.3 Wh delivered (sample-data/README.md) out of 1101/0.90 Wh from the wall; the battery's content varies by 0.25 % from run to run.
    const double truth = 893.3 / (1101 / 0.90);
    EXPECT_NEAR(*trip.efficiency.value, truth, *trip.efficiency.half_width() + 0.005 * truth);
    // Of ±2 % the common part cancels; a quarter is each power's own, and a cycle repeats within 0.5 %.
    EXPECT_LT(*trip.efficiency.half_width(), std::hypot(0.0065, 1.96 * 0.005 * truth));
}

TEST(SampleClaims, the_charge_time_holds_this_meter_does_not_decide_the_rated_output_and_the_peak_holds_below_its_trip) {
    EXPECT_EQ(check("charge_time_h").verdict, ClaimVerdict::holds) << check("charge_time_h").evidence;
    // Held 1008.0 ± 9.6 W, and 1000 W are claimed.
    EXPECT_EQ(check("rated_output_w").verdict, ClaimVerdict::not_decided) << check("rated_output_w").evidence;
    EXPECT_LE(*check("rated_output_w").measured.lower, 1004);
    EXPECT_GE(*check("rated_output_w").measured.upper, 1004);
    EXPECT_EQ(check("peak_output_w").verdict, ClaimVerdict::holds) << check("peak_output_w").evidence;
    EXPECT_NE(check("peak_output_w").evidence.text().find("above the claim"), std::string::npos) << check("peak_output_w").evidence;
    EXPECT_EQ(check("rated_energy_wh").verdict, ClaimVerdict::not_reached);
    EXPECT_EQ(check("pv_max_w").verdict, ClaimVerdict::not_tested);
}

TEST(SampleClaims, the_cost_of_an_output_left_on_follows_from_the_no_load_draw) {
    const StandingDraw& on = osk_claims().draws.output_on;
    ASSERT_TRUE(on.draw_w.value);
    ASSERT_TRUE(on.cost_per_day);
    EXPECT_NEAR(*on.cost_per_day, *on.draw_w.value * 24 / 1000 / *osk_claims().round_trip.efficiency.value * 0.30, 1e-9);
    EXPECT_EQ(osk_claims().draws.output_off.draw_w.kind, Kind::not_known);
}

} // namespace
} // namespace ullage::test
