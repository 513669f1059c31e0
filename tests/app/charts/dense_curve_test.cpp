// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/charts/sample_content.h"
#include "charts/line_chart.h"
#include "charts/picture.h"
#include "style/theme.h"

#include <gtest/gtest.h>

#include <QSvgRenderer>

#include <cstdlib>

namespace ullage {
namespace {

constexpr int dense_points = 50000;

// `off_by`: how much red, green and blue may differ in all; a line between two pixels fills neither.
int pixels_of(const QImage& image, const QColor& colour, const QRect& area, int off_by = 0) {
    const auto like = [&](const QColor& other) {
        return std::abs(other.red() - colour.red()) + std::abs(other.green() - colour.green()) + std::abs(other.blue() - colour.blue()) <= off_by;
    };
    int found = 0;
    for (int y = area.top(); y <= area.bottom(); ++y)
        for (int x = area.left(); x <= area.right(); ++x) found += image.rect().contains(x, y) && like(image.pixelColor(x, y)) ? 1 : 0;
    return found;
}

ChartContent unnamed_trace() {
    ChartContent content = sample::long_trace(dense_points);
    content.series.front().name.clear(); // else its name is written in its colour
    return content;
}

} // namespace

TEST(DenseCurve, is_painted_in_its_colour_inside_the_plot_and_follows_the_zoom) {
    LineChart chart;
    chart.resize(640, 400);
    chart.setContent(unnamed_trace());
    chart.show();
    const QColor colour = current_palette().delivered;
    const auto spike = [&] {
        const QPoint at = chart.pixelOf(10.0 / 3, 120).toPoint(); // half-way up the one spike to 180 W
        return pixels_of(chart.grab().toImage(), colour, QRect(at - QPoint(2, 3), QSize(5, 7)), 120);
    };
    EXPECT_GT(spike(), 0);
    const QImage whole = chart.grab().toImage();
    const QRect plot = chart.plotArea().toAlignedRect();
    EXPECT_GT(pixels_of(whole, colour, plot), plot.width());
    EXPECT_EQ(pixels_of(whole, colour, whole.rect()), pixels_of(whole, colour, plot.adjusted(-1, -1, 1, 1)));
    chart.zoomTo(3.2, 3.5);
    EXPECT_GT(spike(), 0) << "where the zoom has moved it";
    chart.zoomTo(6, 9);
    const QPoint empty = chart.pixelOf(7, 120).toPoint();
    EXPECT_EQ(pixels_of(chart.grab().toImage(), colour, QRect(empty - QPoint(50, 3), QSize(101, 7)), 120), 0);
}

TEST(DenseCurve, is_in_the_png_and_in_the_svg_at_one_place) {
    const PictureSpec spec{.size = {640, 400}, .ground = QColor(Qt::white), .font = {}};
    const auto png = render_picture(unnamed_trace(), spec);
    const auto svg = svg_picture(unnamed_trace(), spec);
    ASSERT_TRUE(png && svg);
    QImage drawn(640, 400, QImage::Format_RGB32);
    drawn.fill(Qt::white);
    QSvgRenderer renderer(svg.value());
    ASSERT_TRUE(renderer.isValid());
    QPainter painter(&drawn);
    renderer.render(&painter);
    painter.end();
    const QColor colour = light_palette().delivered;
    int in_png = 0, in_both = 0;
    for (int y = 0; y < 400; ++y)
        for (int x = 0; x < 640; ++x) {
            if (png.value().pixelColor(x, y) != colour) continue;
            ++in_png;
            in_both += pixels_of(drawn, colour, QRect(x - 1, y - 1, 3, 3)) > 0 ? 1 : 0;
        }
    EXPECT_GT(in_png, 640);
    EXPECT_GT(in_both, 95 * in_png / 100);
}

} // namespace ullage
