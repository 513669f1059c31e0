// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/register_correction_acceptance.h"

#include "support/record_builder.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

using test::RecordBuilder;

/// Applies what accepting the only register correction of a record writes down.
RegisterCorrectionAcceptance accept_only_correction(RunRecord& record) {
    const RegisterTrack track = unwrap_register(record);
    EXPECT_EQ(track.register_corrections.size(), 1u);
    for (Reading& reading : record.readings) {
        if (reading.uuid != track.register_corrections.front().reading_uuid) continue;
        const auto acceptance = accept_register_correction(track.register_corrections.front(), reading);
        EXPECT_TRUE(acceptance.has_value());
        if (acceptance->withdraw) reading.withdrawn = true;
        else reading.values = acceptance->values;
        return *acceptance;
    }
    ADD_FAILURE() << "the register_correction names no reading";
    return {};
}

TEST(RegisterCorrectionAcceptance, an_accepted_reset_becomes_a_mark_and_the_energy_stays_the_same) {
    RecordBuilder run;
    run.at(0, 100, 500).at(1, 93, 564).at(2, 87, 12).at(3, 80, 76).at(4, 74, 140);
    const double before_wh = unwrap_register(run.record()).total_wh();
    EXPECT_NE(accept_only_correction(run.record()).reason.find("without a mark"), std::string::npos);
    const RegisterTrack after = unwrap_register(run.record());
    EXPECT_DOUBLE_EQ(after.total_wh(), before_wh);
    ASSERT_EQ(after.register_corrections.size(), 1u);
    EXPECT_EQ(after.register_corrections.front().kind, RegisterCorrectionKind::marked_zero);
}

TEST(RegisterCorrectionAcceptance, an_accepted_typing_error_leaves_the_gauge_of_its_reading) {
    RecordBuilder run;
    run.at(0, 100, 4312).at(1, 93, 4376).at(2, 87, 444).at(3, 80, 4504).at(4, 74, 4568);
    EXPECT_FALSE(accept_only_correction(run.record()).withdraw);
    EXPECT_EQ(run.record().readings[2].values.gauge_percent, 87);
    EXPECT_FALSE(run.record().readings[2].values.register_wh.has_value());
    EXPECT_TRUE(unwrap_register(run.record()).register_corrections.empty());
}

TEST(RegisterCorrectionAcceptance, a_mistyped_register_with_nothing_beside_it_is_withdrawn) {
    RecordBuilder run;
    run.at(0, 100, 4312).at(1, 93, 4376).at(2, {}, 444).at(3, 80, 4504).at(4, 74, 4568);
    EXPECT_TRUE(accept_only_correction(run.record()).withdraw);
    EXPECT_TRUE(unwrap_register(run.record()).register_corrections.empty());
}

TEST(RegisterCorrectionAcceptance, a_second_entry_is_withdrawn) {
    RecordBuilder run;
    run.at(0, 100, 4312).at(1, 93, 4376).at(1, 93, 4376).at(2, 87, 4440);
    EXPECT_TRUE(accept_only_correction(run.record()).withdraw);
    EXPECT_TRUE(unwrap_register(run.record()).register_corrections.empty());
}

TEST(RegisterCorrectionAcceptance, what_the_readings_state_already_needs_none) {
    RecordBuilder run;
    run.record().meter->span_wh = 100000;
    run.at(0, 100, 99900).at(1, 93, 99964).at(2, 87, 28).at(3, 80, 92);
    const RegisterTrack track = unwrap_register(run.record());
    ASSERT_EQ(track.register_corrections.size(), 1u);
    EXPECT_FALSE(accept_register_correction(track.register_corrections.front(), run.record().readings[2]).has_value());
}

} // namespace
} // namespace ullage
