// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/register.h"

#include "support/record_builder.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

using test::RecordBuilder;

/// Kinds of the assumptions made, in order.
std::vector<RegisterCorrectionKind> kinds(const RegisterTrack& track) {
    std::vector<RegisterCorrectionKind> result;
    for (const RegisterCorrection& register_correction : track.register_corrections) result.push_back(register_correction.kind);
    return result;
}

TEST(Register, a_register_that_only_grows_needs_no_correction) {
    RecordBuilder run;
    run.at(0, 100, 4312).at(1, 93, 4376).at(2, 87, 4440).at(3, 80, 4503);
    const RegisterTrack track = unwrap_register(run.record());
    EXPECT_DOUBLE_EQ(track.total_wh(), 191);
    EXPECT_TRUE(track.register_corrections.empty());
    EXPECT_FALSE(track.energy_may_be_missing);
    EXPECT_EQ(track.segments, 1u);
    EXPECT_EQ(track.zero_starts, 0u);
}

TEST(Register, the_meters_correction_multiplies_every_difference) {
    RecordBuilder run;
    run.record().meter->correction = 1.02;
    run.at(0, 100, 100).at(1, 90, 200);
    EXPECT_DOUBLE_EQ(unwrap_register(run.record()).total_wh(), 102);
}

TEST(Register, a_marked_zero_right_after_a_reading_loses_nothing) {
    RecordBuilder run;
    run.at(0, 100, 500).at(1, 93, 564).at(1.01, {}, 0, MarkKind::meter_zeroed).at(2, 87, 63).at(3, 80, 127);
    const RegisterTrack track = unwrap_register(run.record());
    EXPECT_DOUBLE_EQ(track.total_wh(), 64 + 127);
    EXPECT_EQ(kinds(track), std::vector{RegisterCorrectionKind::marked_zero});
    EXPECT_FALSE(track.energy_may_be_missing);
    EXPECT_EQ(track.segments, 2u);
    EXPECT_EQ(track.zero_starts, 1u);
}

TEST(Register, a_marked_zero_long_after_the_last_reading_says_what_may_be_missing) {
    RecordBuilder run;
    run.at(0, 100, 500).at(1, 93, 564).at(2, {}, 0, MarkKind::meter_zeroed).at(3, 80, 64).at(4, 73, 128);
    const RegisterTrack track = unwrap_register(run.record());
    EXPECT_DOUBLE_EQ(track.total_wh(), 64 + 128);
    EXPECT_TRUE(track.missing_inside);
    ASSERT_EQ(track.register_corrections.size(), 1u);
    ASSERT_TRUE(track.register_corrections[0].missing_wh.has_value());
    EXPECT_NEAR(*track.register_corrections[0].missing_wh, 64, 2);
}

TEST(Register, a_mark_without_a_register_value_zeroes_it_for_the_next_reading) {
    RecordBuilder run;
    run.at(0, 100, 500).at(1, 93, 564).at(1.02, {}, {}, MarkKind::meter_zeroed).at(2, 87, 63);
    const RegisterTrack track = unwrap_register(run.record());
    EXPECT_DOUBLE_EQ(track.total_wh(), 64 + 63);
    EXPECT_EQ(kinds(track), std::vector{RegisterCorrectionKind::marked_zero});
}

TEST(Register, a_swapped_meter_starts_from_its_own_register) {
    RecordBuilder run;
    run.at(0, 100, 500).at(1, 93, 564).at(1.02, {}, 91234, MarkKind::meter_swapped).at(2, 87, 91297);
    const RegisterTrack track = unwrap_register(run.record());
    EXPECT_DOUBLE_EQ(track.total_wh(), 64 + 63);
    EXPECT_EQ(kinds(track), std::vector{RegisterCorrectionKind::marked_swap});
}

TEST(Register, a_rollover_is_read_where_the_span_explains_it) {
    RecordBuilder run;
    run.record().meter->span_wh = 100000;
    run.at(0, 100, 99900).at(1, 93, 99964).at(2, 87, 28).at(3, 80, 92);
    const RegisterTrack track = unwrap_register(run.record());
    EXPECT_DOUBLE_EQ(track.total_wh(), 64 + 64 + 64);
    EXPECT_EQ(kinds(track), std::vector{RegisterCorrectionKind::rollover});
    EXPECT_FALSE(track.energy_may_be_missing);
}

TEST(Register, a_drop_to_zero_without_a_mark_is_proposed_as_reset_and_energy_is_at_least) {
    RecordBuilder run;
    run.at(0, 100, 500).at(1, 93, 564).at(2, 87, 12).at(3, 80, 76).at(4, 74, 140);
    const RegisterTrack track = unwrap_register(run.record());
    EXPECT_DOUBLE_EQ(track.total_wh(), 64 + 140);
    EXPECT_EQ(kinds(track), std::vector{RegisterCorrectionKind::unmarked_reset});
    EXPECT_TRUE(track.missing_inside);
    EXPECT_NEAR(track.register_corrections[0].missing_wh.value_or(0), 52, 2);
}

TEST(Register, a_mistyped_reading_is_left_out_not_taken_for_a_reset) {
    RecordBuilder low;
    low.at(0, 100, 4312).at(1, 93, 4376).at(2, 87, 444).at(3, 80, 4504).at(4, 74, 4568);
    EXPECT_DOUBLE_EQ(unwrap_register(low.record()).total_wh(), 256);
    EXPECT_EQ(kinds(unwrap_register(low.record())), std::vector{RegisterCorrectionKind::typing_error});

    RecordBuilder high;
    high.at(0, 100, 4312).at(1, 93, 4376).at(2, 87, 44440).at(3, 80, 4504).at(4, 74, 4568);
    EXPECT_DOUBLE_EQ(unwrap_register(high.record()).total_wh(), 256);
    EXPECT_EQ(kinds(unwrap_register(high.record())), std::vector{RegisterCorrectionKind::typing_error});
}

TEST(Register, a_mistyped_first_reading_is_left_out) {
    RecordBuilder run;
    run.at(0, 100, 43120).at(1, 93, 4376).at(2, 87, 4440).at(3, 80, 4504);
    const RegisterTrack track = unwrap_register(run.record());
    EXPECT_EQ(kinds(track), std::vector{RegisterCorrectionKind::typing_error});
    EXPECT_DOUBLE_EQ(track.total_wh(), 128);
    EXPECT_TRUE(track.energy_may_be_missing) << "energy before the first good register reading is not covered";
}

TEST(Register, the_same_reading_entered_twice_counts_once) {
    RecordBuilder run;
    run.at(0, 100, 4312).at(1, 93, 4376).at(1, 93, 4376).at(2, 87, 4440);
    const RegisterTrack track = unwrap_register(run.record());
    EXPECT_EQ(kinds(track), std::vector{RegisterCorrectionKind::duplicate});
    EXPECT_EQ(track.points.size(), 3u);
    EXPECT_DOUBLE_EQ(track.total_wh(), 128);
}

TEST(Register, a_reading_entered_late_is_put_in_its_place_and_said) {
    RecordBuilder run;
    run.at(0, 100, 4312).at(2, 87, 4440).at(1, 93, 4376).at(3, 80, 4504);
    sort_by_time(run.record().readings);
    const RegisterTrack track = unwrap_register(run.record());
    EXPECT_EQ(kinds(track), std::vector{RegisterCorrectionKind::late_entry});
    EXPECT_EQ(track.register_corrections[0].reading_uuid, ReadingId("r3"));
    EXPECT_DOUBLE_EQ(track.total_wh(), 192);
}

TEST(Register, a_withdrawn_reading_takes_no_part) {
    RecordBuilder run;
    run.at(0, 100, 4312).at(1, 93, 9999).at(2, 87, 4440);
    run.record().readings[1].withdrawn = true;
    const RegisterTrack track = unwrap_register(run.record());
    EXPECT_TRUE(track.register_corrections.empty());
    EXPECT_DOUBLE_EQ(track.total_wh(), 128);
}

TEST(Register, a_missing_first_or_last_register_reading_makes_energy_at_least) {
    RecordBuilder first;
    first.at(0, 100, {}).at(1, 93, 4376).at(2, 87, 4440).at(3, 80, 4504);
    EXPECT_TRUE(unwrap_register(first.record()).energy_may_be_missing);
    EXPECT_FALSE(unwrap_register(first.record()).missing_inside);

    RecordBuilder last;
    last.at(0, 100, 4312).at(1, 93, 4376).at(2, 87, 4440).at(3, 80, {});
    EXPECT_TRUE(unwrap_register(last.record()).energy_may_be_missing);
    last.record().run.end = RunEnd::still_running;
    EXPECT_FALSE(unwrap_register(last.record()).energy_may_be_missing) << "an open run is not over";
}

TEST(Register, nonsense_and_emptiness_are_survived) {
    RecordBuilder empty;
    EXPECT_FALSE(unwrap_register(empty.record()).usable());
    RecordBuilder nonsense;
    for (int i = 0; i < 20; ++i) nonsense.at(i * 0.01, 50, (i % 2) ? 9e6 - i * 1e5 : i * 3e5);
    EXPECT_GE(unwrap_register(nonsense.record()).total_wh(), 0);
}

} // namespace
} // namespace ullage
