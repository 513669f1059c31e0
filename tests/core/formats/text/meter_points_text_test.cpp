// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/meter_points_text.h"
#include "model/limits.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

TEST(MeterPointsText, points_are_read_in_any_order_and_written_by_load) {
    const auto points = meter_points_from(" 500 1.001 0.25 2 ;; 100 0.998\n2000 1.002 0.4");
    ASSERT_TRUE(points.ok()) << points.error().sentence();
    EXPECT_EQ(points.value(), (std::vector<MeterPoint>{{100, 0.998, {}, {}}, {500, 1.001, 0.25, 2.0}, {2000, 1.002, 0.4, {}}}));
    EXPECT_EQ(meter_points_text(points.value()), "100 0.998; 500 1.001 0.25 2; 2000 1.002 0.4");
    EXPECT_TRUE(meter_points_from(" ; ").value().empty());
    EXPECT_EQ(meter_points_text({}), "");
}

TEST(MeterPointsText, what_is_no_point_is_refused_and_named) {
    for (const char* text : {"100", "100 1 0.3 2 7", "100 x", "100 0", "100 1 -1", "100 1; 100 1.1"})
        EXPECT_FALSE(meter_points_from(text).ok()) << text;
    EXPECT_NE(meter_points_from("100 1; 200").error().what.text().find("`200`"), std::string::npos);
    std::string many;
    for (std::size_t i = 0; i <= most_meter_points; ++i) many += std::to_string(i) + " 1;";
    EXPECT_FALSE(meter_points_from(many).ok());
}

} // namespace
} // namespace ullage
