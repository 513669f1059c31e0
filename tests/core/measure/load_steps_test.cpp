// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/load_steps.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

TEST(LoadSteps, a_step_is_the_energy_between_two_register_readings_over_their_time) {
    RegisterTrack track;
    track.points = {{0, 0, 4312, 0}, {2, 7'200'000, 4442, 130}, {3, 9'000'000, 4442, 130}};
    const auto steps = load_steps(track, RunEnd::cut_off_seen);
    ASSERT_EQ(steps.size(), 2U);
    EXPECT_EQ(steps[0].from_reading, 0U);
    EXPECT_EQ(steps[0].to_reading, 2U);
    EXPECT_DOUBLE_EQ(steps[0].mean_w, 65.0);
    EXPECT_DOUBLE_EQ(steps[1].mean_w, 0.0);
}

TEST(LoadSteps, readings_of_the_same_moment_make_no_step) {
    RegisterTrack track;
    track.points = {{0, 0, 4312, 0}, {1, 0, 4313, 1}};
    EXPECT_TRUE(load_steps(track, RunEnd::cut_off_seen).empty());
    EXPECT_TRUE(load_steps({}, RunEnd::found_off).empty());
}

TEST(LoadSteps, the_step_over_an_unseen_cut_off_is_left_out) {
    RegisterTrack track;
    track.points = {{0, 0, 4312, 0}, {1, 3'600'000, 4376, 64}, {2, 36'000'000, 4400, 88}};
    const auto steps = load_steps(track, RunEnd::found_off);
    ASSERT_EQ(steps.size(), 1U);
    EXPECT_EQ(steps[0].to_reading, 1U);
    EXPECT_EQ(load_steps(track, RunEnd::stopped_by_tester).size(), 2U);
}

} // namespace
} // namespace ullage
