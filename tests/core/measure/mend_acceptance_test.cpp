// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/mend_acceptance.h"

#include "support/record_builder.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

using test::RecordBuilder;

/// Applies what accepting the only mend of a record writes down.
MendAcceptance accept_only_mend(RunRecord& record) {
    const RegisterTrack track = unwrap_register(record);
    EXPECT_EQ(track.mends.size(), 1u);
    for (Reading& reading : record.readings) {
        if (reading.uuid != track.mends.front().reading_uuid) continue;
        const auto acceptance = accept_mend(track.mends.front(), reading);
        EXPECT_TRUE(acceptance.has_value());
        if (acceptance->withdraw) reading.withdrawn = true;
        else reading.values = acceptance->values;
        return *acceptance;
    }
    ADD_FAILURE() << "the mend names no reading";
    return {};
}

TEST(MendAcceptance, an_accepted_reset_becomes_a_mark_and_the_energy_stays_the_same) {
    RecordBuilder run;
    run.at(0, 100, 500).at(1, 93, 564).at(2, 87, 12).at(3, 80, 76).at(4, 74, 140);
    const double before_wh = unwrap_register(run.record()).total_wh();
    EXPECT_NE(accept_only_mend(run.record()).reason.find("without a mark"), std::string::npos);
    const RegisterTrack after = unwrap_register(run.record());
    EXPECT_DOUBLE_EQ(after.total_wh(), before_wh);
    ASSERT_EQ(after.mends.size(), 1u);
    EXPECT_EQ(after.mends.front().kind, MendKind::marked_zero);
}

TEST(MendAcceptance, an_accepted_typing_error_leaves_the_gauge_of_its_reading) {
    RecordBuilder run;
    run.at(0, 100, 4312).at(1, 93, 4376).at(2, 87, 444).at(3, 80, 4504).at(4, 74, 4568);
    EXPECT_FALSE(accept_only_mend(run.record()).withdraw);
    EXPECT_EQ(run.record().readings[2].values.gauge_percent, 87);
    EXPECT_FALSE(run.record().readings[2].values.register_wh.has_value());
    EXPECT_TRUE(unwrap_register(run.record()).mends.empty());
}

TEST(MendAcceptance, a_mistyped_register_with_nothing_beside_it_is_withdrawn) {
    RecordBuilder run;
    run.at(0, 100, 4312).at(1, 93, 4376).at(2, {}, 444).at(3, 80, 4504).at(4, 74, 4568);
    EXPECT_TRUE(accept_only_mend(run.record()).withdraw);
    EXPECT_TRUE(unwrap_register(run.record()).mends.empty());
}

TEST(MendAcceptance, a_second_entry_is_withdrawn) {
    RecordBuilder run;
    run.at(0, 100, 4312).at(1, 93, 4376).at(1, 93, 4376).at(2, 87, 4440);
    EXPECT_TRUE(accept_only_mend(run.record()).withdraw);
    EXPECT_TRUE(unwrap_register(run.record()).mends.empty());
}

TEST(MendAcceptance, what_the_readings_state_already_needs_none) {
    RecordBuilder run;
    run.record().meter->span_wh = 100000;
    run.at(0, 100, 99900).at(1, 93, 99964).at(2, 87, 28).at(3, 80, 92);
    const RegisterTrack track = unwrap_register(run.record());
    ASSERT_EQ(track.mends.size(), 1u);
    EXPECT_FALSE(accept_mend(track.mends.front(), run.record().readings[2]).has_value());
}

} // namespace
} // namespace ullage
