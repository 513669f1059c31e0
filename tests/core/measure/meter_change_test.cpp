// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/meter_change.h"

#include "support/record_builder.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

using test::RecordBuilder;

RecordBuilder drain() {
    RecordBuilder run;
    run.at(0, 100, 1000).at(4, 60, 1400).at(8, 20, 1800);
    return run;
}

TEST(MeterChange, tells_by_how_much_the_energy_of_its_runs_moved) {
    RecordBuilder one = drain(), two = drain(), other = drain();
    other.record().run.meter_uuid = other.record().meter->uuid = MeterId("another");
    Meter after = *one.record().meter;
    after.correction = 1.004;
    const MeterChange change = meter_change({&one.record(), &two.record(), &other.record()}, *one.record().meter, after);
    EXPECT_EQ(change.runs, 2);
    EXPECT_NEAR(change.lowest_percent, 0.4, 1e-9);
    EXPECT_NEAR(change.highest_percent, 0.4, 1e-9);
    EXPECT_EQ(change.sentence, "2 runs use this meter; their delivered energy moved by +0.40 %, and their intervals changed.");
}

TEST(MeterChange, an_edit_of_the_limit_alone_moves_intervals_but_no_energy) {
    RecordBuilder run = drain();
    Meter before = *run.record().meter;
    before.limit_percent.reset();
    EXPECT_EQ(meter_change({&run.record()}, before, *run.record().meter).sentence,
              "1 run uses this meter; its delivered energy did not move, but its interval changed.");
    before = *run.record().meter;
    before.remark = "older";
    EXPECT_EQ(meter_change({&run.record()}, before, *run.record().meter).sentence, "1 run uses this meter; its delivered energy did not move.");
    EXPECT_EQ(meter_change({}, before, before).sentence, "No run uses this meter yet.");
}

} // namespace
} // namespace ullage
