// SPDX-License-Identifier: GPL-3.0-or-later
// When the gain of a meter cancels in a round trip, and when it must not.
#include "run_analysis/round_trip.h"

#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <vector>

namespace ullage {
namespace {

using test::RecordBuilder;

/// A charge from cut-off to full with 1040 Wh, then a full drain of 850 Wh, both at 100 W.
struct Cycle {
    RunRecord charge, drain;

    Cycle() {
        RecordBuilder in, out;
        in.at(0, 0, 100).at(5.2, 50, 620).at(10.4, 100, 1140);
        charge = in.record();
        charge.run.kind = RunKind::charge;
        charge.run.uuid = RunId("charge");
        charge.run.end = RunEnd::stopped_by_tester;
        charge.run.charge_source = ChargeSource::wall;
        charge.run.started_full = false;
        out.at(11, 100, 2000).at(15, 50, 2400).at(19.5, 0, 2850);
        drain = out.record();
        drain.run.uuid = RunId("drain");
    }

    [[nodiscard]] Quantity efficiency() const { return round_trip({&charge, &drain}, {analyse_energy(charge), analyse_energy(drain)}).efficiency; }
};

TEST(RoundTripMeters, the_gain_of_one_meter_that_measured_both_cancels) {
    const Quantity efficiency = Cycle().efficiency();
    EXPECT_NEAR(efficiency.value.value(), 850.0 / 1040, 1e-9);
    Cycle worse;
    worse.charge.meter->limit_percent = worse.drain.meter->limit_percent = 20;
    EXPECT_NEAR(efficiency.half_width().value(), worse.efficiency().half_width().value(), 1e-9) << "whatever the meter's limit is";
    EXPECT_NE(efficiency.reason.text().find("its gain cancels"), std::string::npos) << efficiency.reason;
}

TEST(RoundTripMeters, meters_that_nobody_stated_cancel_nothing_and_leave_no_interval) {
    for (const int unstated : {1, 2, 3}) { // the charge, the drain, both
        Cycle cycle;
        for (RunRecord* run : {&cycle.charge, &cycle.drain}) {
            if (!(unstated & (run == &cycle.charge ? 1 : 2))) continue;
            run->meter.reset();
            run->run.meter_uuid.reset();
        }
        const Quantity efficiency = cycle.efficiency();
        EXPECT_NEAR(efficiency.value.value(), 850.0 / 1040, 1e-9);
        EXPECT_FALSE(efficiency.half_width().has_value()) << unstated;
        EXPECT_NE(efficiency.reason.text().find("no gain cancels"), std::string::npos) << efficiency.reason;
    }
}

TEST(RoundTripMeters, a_meter_swapped_within_the_drain_shares_its_error_with_no_other_run) {
    Cycle cycle;
    RecordBuilder out;
    out.at(11, 100, 2000).at(15, 50, 2400).at(15, {}, 50, MarkKind::meter_swapped).at(19.5, 0, 500);
    const RunRecord swapped = out.record();
    cycle.drain.readings = swapped.readings;
    EXPECT_FALSE(cycle.efficiency().half_width().has_value()) << "which meter took over is not stated";
    cycle.drain.second_meter = Meter{MeterId("other"), "Other", 1.0, 1.0, std::nullopt, 1.0, {}};
    cycle.drain.run.second_meter_uuid = MeterId("other");
    const auto half = cycle.efficiency().half_width();
    ASSERT_TRUE(half.has_value());
    EXPECT_GT(*half, 0.008) << "1 % of either meter, not cancelled";
}

} // namespace
} // namespace ullage
