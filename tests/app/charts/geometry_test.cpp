// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/charts/sample_content.h"
#include "charts/decimation.h"
#include "charts/label_layout.h"
#include "charts/line_layout.h"
#include "charts/polyline.h"
#include "charts/ticks.h"
#include "charts/vessel.h"

#include <gtest/gtest.h>

#include <tuple>

#include <QApplication>

#include <algorithm>
#include <cmath>
#include <limits>
#include <random>

namespace ullage {
namespace {

std::vector<ChartPoint> noise(std::size_t count) {
    std::mt19937_64 random(7);
    std::vector<ChartPoint> points;
    for (std::size_t n = 0; n < count; ++n)
        points.push_back({(static_cast<double>(n) + 0.5) / 1000.0, static_cast<double>(random() % 100000) / 100.0});
    return points;
}

ChartLook plain_look() { return {light_palette(), light_palette().panel, QApplication::font()}; }

void expect_apart(const std::vector<ChartLabel>& labels) {
    for (std::size_t a = 0; a < labels.size(); ++a)
        for (std::size_t b = a + 1; b < labels.size(); ++b)
            EXPECT_FALSE(labels[a].place.adjusted(0, 0.01, 0, -0.01).intersects(labels[b].place.adjusted(0, 0.01, 0, -0.01)))
                << labels[a].text.toStdString() << " and " << labels[b].text.toStdString();
}

} // namespace

TEST(Decimation, keeps_first_lowest_highest_and_last_of_every_pixel_column) {
    const auto points = noise(100000);
    const int columns = 500;
    const auto kept = visible_indices(points, 0, 100, columns);
    EXPECT_LE(kept.size(), static_cast<std::size_t>(4 * columns + 4));
    EXPECT_TRUE(std::is_sorted(kept.begin(), kept.end()));
    EXPECT_EQ(std::adjacent_find(kept.begin(), kept.end()), kept.end());
    // The straightforward search, column by column.
    for (int column = 0; column < columns; ++column) {
        std::size_t lowest = points.size();
        std::size_t highest = points.size();
        for (std::size_t n = static_cast<std::size_t>(column) * 200; n < static_cast<std::size_t>(column + 1) * 200; ++n) {
            if (static_cast<int>(points[n].x / (100.0 / columns)) != column) continue;
            if (lowest == points.size() || points[n].y < points[lowest].y) lowest = n;
            if (highest == points.size() || points[n].y > points[highest].y) highest = n;
        }
        EXPECT_TRUE(std::binary_search(kept.begin(), kept.end(), lowest)) << column;
        EXPECT_TRUE(std::binary_search(kept.begin(), kept.end(), highest)) << column;
    }
}

TEST(Decimation, few_points_are_all_kept_with_one_neighbour_on_each_side) {
    const auto points = noise(3000);
    const auto kept = visible_indices(points, 1.0, 2.0, 100);
    ASSERT_EQ(kept.size(), 1002U);
    EXPECT_EQ(kept.front(), 999U);
    EXPECT_EQ(kept.back(), 2000U);
}

TEST(Decimation, a_view_without_points_keeps_the_neighbours_that_a_line_crosses_it_between) {
    const std::vector<ChartPoint> points{{0, 1}, {10, 2}};
    EXPECT_EQ(visible_indices(points, 4, 5, 100), (std::vector<std::size_t>{0, 1}));
    EXPECT_TRUE(visible_indices({}, 4, 5, 100).empty());
}

TEST(Ticks, steps_are_1_2_or_5_times_a_power_of_ten) {
    EXPECT_DOUBLE_EQ(nice_step(0.7), 1);
    EXPECT_DOUBLE_EQ(nice_step(1.0), 1);
    EXPECT_DOUBLE_EQ(nice_step(1.01), 2);
    EXPECT_DOUBLE_EQ(nice_step(230), 500);
    EXPECT_DOUBLE_EQ(nice_step(0.0031), 0.005);
}

TEST(Ticks, a_linear_scale_covers_the_data_in_whole_steps) {
    const TickScale scale = linear_ticks(0, 1248, 8, true);
    EXPECT_DOUBLE_EQ(scale.minimum, 0);
    EXPECT_DOUBLE_EQ(scale.maximum, 1400);
    EXPECT_DOUBLE_EQ(scale.step, 200);
    EXPECT_EQ(scale.values.size(), 8U);
    const TickScale inside = linear_ticks(3.3, 7.9, 5, false);
    EXPECT_DOUBLE_EQ(inside.minimum, 3.3);
    EXPECT_DOUBLE_EQ(inside.maximum, 7.9);
    EXPECT_DOUBLE_EQ(inside.values.front(), 4);
    EXPECT_DOUBLE_EQ(inside.values.back(), 7);
}

TEST(Ticks, hours_go_by_steps_that_a_clock_and_a_calendar_know) {
    for (const auto& [hours, most, step] :
         {std::tuple(12.9, 14, 1.0), std::tuple(12.9, 7, 2.0), std::tuple(12.9, 5, 3.0), std::tuple(30.0, 6, 6.0), std::tuple(52.0, 6, 12.0),
          std::tuple(100.0, 5, 24.0), std::tuple(200.0, 5, 48.0), std::tuple(2.0, 8, 0.5)})
        EXPECT_DOUBLE_EQ(hour_ticks(0, hours, most, true).step, step) << hours << " h in " << most;
}

TEST(Ticks, a_scale_without_width_or_without_numbers_is_still_a_scale) {
    for (const auto& [lo, hi] :
         {std::pair(5.0, 5.0), std::pair(0.0, 0.0), std::pair(9.0, -2.0), std::pair(std::numeric_limits<double>::quiet_NaN(), 3.0)}) {
        const TickScale scale = linear_ticks(lo, hi, 6, true);
        EXPECT_LT(scale.minimum, scale.maximum);
        EXPECT_GE(scale.values.size(), 2U);
    }
    const TickScale log = log_ticks(-1, 0, 6, true);
    EXPECT_GT(log.minimum, 0);
    EXPECT_LT(log.minimum, log.maximum);
}

TEST(Ticks, a_logarithmic_scale_has_1_2_5_and_thins_to_decades) {
    EXPECT_EQ(log_ticks(10, 1000, 8, true).values, (std::vector<double>{10, 20, 50, 100, 200, 500, 1000}));
    const TickScale wide = log_ticks(1, 1e6, 8, true);
    ASSERT_EQ(wide.values.size(), 7U);
    EXPECT_DOUBLE_EQ(wide.values[3], 1000);
}

TEST(Ticks, labels_have_just_the_digits_that_tell_them_apart) {
    EXPECT_EQ(tick_text(0.4, 0.2).toStdString(), "0.4");
    EXPECT_EQ(tick_text(600, 200).toStdString(), "600");
    EXPECT_EQ(tick_text(0.05, 0.05).toStdString(), "0.05");
    EXPECT_EQ(tick_text(0, 0.1).toStdString(), "0.0");
}

TEST(Labels, never_overlap_and_stay_within_their_column) {
    std::mt19937_64 random(11);
    for (int trial = 0; trial < 300; ++trial) {
        std::vector<LabelPlace> wanted;
        for (std::size_t n = 0; n < 1 + random() % 12; ++n)
            wanted.push_back({static_cast<double>(random() % 300), 10.0 + static_cast<double>(random() % 10)});
        const auto middles = spread_labels(wanted, 0, 300);
        ASSERT_EQ(middles.size(), wanted.size());
        for (std::size_t a = 0; a < wanted.size(); ++a) {
            EXPECT_GE(middles[a] - wanted[a].height / 2, -1e-9);
            EXPECT_LE(middles[a] + wanted[a].height / 2, 300 + 1e-9);
            for (std::size_t b = a + 1; b < wanted.size(); ++b)
                EXPECT_GE(std::fabs(middles[a] - middles[b]), (wanted[a].height + wanted[b].height) / 2 - 1e-9);
        }
    }
}

TEST(Labels, a_label_with_room_stays_where_it_belongs) {
    EXPECT_EQ(spread_labels({{50, 10}, {200, 10}}, 0, 300), (std::vector<double>{50, 200}));
    EXPECT_EQ(spread_labels({{100, 10}, {100, 10}}, 0, 300), (std::vector<double>{95, 105}));
}

TEST(LineLayout, names_at_the_curves_ends_do_not_overlap_at_any_size_or_text_size) {
    for (const double text : {1.0, 2.0}) {
        ChartLook look = plain_look();
        look.font = scaled_font(look.font, text);
        for (const QSizeF size : {QSizeF(1030, 420), QSizeF(524, 440), QSizeF(420, 300)}) {
            for (const ChartContent& content : {sample::drain(), sample::fraction_over_load()}) {
                const LineLayout layout = line_layout(content, look, size, std::nullopt, {});
                ASSERT_EQ(layout.labels.size(), 3U);
                expect_apart(layout.labels);
                for (const ChartLabel& label : layout.labels) EXPECT_TRUE(QRectF(QPointF(), size).contains(label.place)) << label.text.toStdString();
                EXPECT_GE(layout.plot.width(), size.width() * 0.39);
            }
        }
    }
}

TEST(LineLayout, twenty_curves_that_end_together_have_twenty_names_apart) {
    ChartContent content;
    for (int n = 0; n < 20; ++n) {
        ChartSeries series{.id = QString::number(n), .name = QStringLiteral("curve %1").arg(n)};
        series.points = {{0, 0}, {1, 100 + n * 0.01}};
        content.series.push_back(series);
    }
    const LineLayout layout = line_layout(content, plain_look(), {700, 500}, std::nullopt, {});
    ASSERT_EQ(layout.labels.size(), 20U);
    expect_apart(layout.labels);
}

TEST(LineLayout, pixels_and_values_are_each_others_inverse_on_both_kinds_of_axis) {
    for (const ChartContent& content : {sample::drain(), sample::fraction_over_load()}) {
        const LineLayout layout = line_layout(content, plain_look(), {600, 400}, std::nullopt, {});
        for (const double x : {11.0, 12.5, 17.0}) EXPECT_NEAR(layout.valueX(layout.pixelX(x)), x, 1e-9);
        EXPECT_NEAR(layout.pixelX(layout.x.minimum), layout.plot.left(), 1e-9);
        EXPECT_NEAR(layout.pixelY(layout.y.maximum), layout.plot.top(), 1e-9);
    }
}

TEST(Zoom, keeps_the_value_under_the_pointer_and_never_leaves_the_whole) {
    const ChartWindow whole{0, 20};
    const auto in = zoomed_window(whole, whole, 5, 0.5, 0, false);
    ASSERT_TRUE(in);
    EXPECT_NEAR(in->from, 2.5, 1e-12);
    EXPECT_NEAR(in->to, 12.5, 1e-12);
    const auto moved = zoomed_window(*in, whole, 5, 1, -5, false);
    ASSERT_TRUE(moved);
    EXPECT_NEAR(moved->from, 0, 1e-12);
    EXPECT_NEAR(moved->to, 10, 1e-12);
    EXPECT_FALSE(zoomed_window(*in, whole, 5, 100, 0, false));
    const auto deepest = zoomed_window(whole, whole, 5, 1e-12, 0, false);
    ASSERT_TRUE(deepest);
    EXPECT_NEAR(deepest->to - deepest->from, 20e-4, 1e-9);
}

TEST(Curves, are_cut_at_the_window_and_broken_where_a_value_is_missing) {
    const std::vector<ChartPoint> points{{0, 0}, {10, 10}, {20, std::numeric_limits<double>::quiet_NaN()}, {30, 5}, {40, 5}};
    const std::vector<std::size_t> all{0, 1, 2, 3, 4};
    const auto pieces = curve_pieces(points, all, false, {}, QRectF(QPointF(5, 0), QPointF(35, 20)));
    ASSERT_EQ(pieces.size(), 2U);
    EXPECT_EQ(pieces[0], (QList<QPointF>{{5, 5}, {10, 10}}));
    EXPECT_EQ(pieces[1], (QList<QPointF>{{30, 5}, {35, 5}}));
}

TEST(Curves, with_steps_hold_each_value_until_the_next) {
    const auto pieces = curve_pieces({{0, 1}, {2, 3}}, {0, 1}, true, {}, QRectF(QPointF(0, 0), QPointF(5, 5)));
    ASSERT_EQ(pieces.size(), 1U);
    EXPECT_EQ(pieces[0], (QList<QPointF>{{0, 1}, {2, 1}, {2, 3}}));
}

TEST(Vessel, heights_are_in_proportion_to_the_rated_energy) {
    const VesselData vessel{1000, 600.0, 580.0, 620.0, 100.0, 0.75, 0.80};
    const VesselGeometry g = vessel_geometry(vessel, QRectF(10, 20, 60, 200));
    EXPECT_DOUBLE_EQ(g.body.top(), 20);
    EXPECT_DOUBLE_EQ(g.fill_y.value(), 220 - 120);
    EXPECT_DOUBLE_EQ(g.no_load_y.value(), 220 - 140);
    EXPECT_DOUBLE_EQ(g.interval_lower_y.value(), 220 - 116);
    EXPECT_DOUBLE_EQ(g.interval_upper_y.value(), 220 - 124);
    EXPECT_DOUBLE_EQ(g.band_lower_y.value(), 220 - 150);
    EXPECT_DOUBLE_EQ(g.band_upper_y.value(), 220 - 160);
}

TEST(Vessel, what_is_not_known_has_no_place) {
    const VesselGeometry g = vessel_geometry({1000, std::nullopt, 1.0, 2.0, 3.0, {}, {}}, QRectF(0, 0, 10, 100));
    EXPECT_FALSE(g.fill_y);
    EXPECT_FALSE(g.no_load_y);
    EXPECT_FALSE(g.interval_lower_y);
    EXPECT_FALSE(g.band_lower_y);
    EXPECT_FALSE(vessel_geometry({0, 5.0, {}, {}, {}, {}, {}}, QRectF(0, 0, 10, 100)).fill_y);
}

TEST(Vessel, more_than_rated_stands_above_the_rim) {
    const VesselData vessel{1000, 1100.0, 1080.0, 1120.0, {}, {}, {}};
    EXPECT_DOUBLE_EQ(vessel_top_wh(vessel), 1120);
    EXPECT_DOUBLE_EQ(vessel_geometry(vessel, QRectF(0, 50, 10, 100)).fill_y.value(), 40);
}

TEST(VesselRow, stands_on_one_line_at_one_height_scale_within_its_area) {
    const VesselRowContent content = sample::vessels();
    const QRectF area(0, 0, 600, 300);
    const VesselRowLayout layout = vessel_row_layout(content, area, plain_look());
    ASSERT_EQ(layout.bodies.size(), 4U);
    for (std::size_t n = 0; n < 4; ++n) {
        EXPECT_TRUE(area.contains(layout.bodies[n]));
        EXPECT_DOUBLE_EQ(layout.bodies[n].bottom(), layout.bodies[0].bottom());
        EXPECT_NEAR(layout.bodies[n].height() / layout.bodies[0].height(), content.columns[n].vessel.rated_wh / 2000, 1e-12);
    }
}

TEST(VesselRow, says_what_is_not_known) {
    EXPECT_EQ(vessel_value_text(sample::vessels().columns[3]).toStdString(), "not known");
    EXPECT_EQ(vessel_value_text(sample::vessels().columns[1]).toStdString(), "937 ± 19 Wh");
}

} // namespace ullage
