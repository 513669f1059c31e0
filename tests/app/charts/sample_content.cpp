// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/charts/sample_content.h"

#include <cmath>

namespace ullage::sample {
namespace {

ChartSeries fraction_curve(const QString& name, CurveColour colour, Marker marker, double full, double draw_w, double measured_from,
                           double measured_to, std::vector<ChartSeries>& all) {
    const auto fraction = [&](double load_w) { return full * load_w / (load_w + draw_w); };
    const auto stretch = [&](const QString& part, double from, double to, CurveLine line) {
        ChartSeries curve{.id = name + part, .group = name, .name = {}, .colour = colour, .marker = Marker::none, .line = line};
        for (int n = 0; n <= 20; ++n) {
            const double load_w = from * std::pow(to / from, n / 20.0);
            curve.points.push_back({load_w, fraction(load_w)});
            if (line == CurveLine::solid) curve.band.push_back({load_w, fraction(load_w) - 0.016, fraction(load_w) + 0.016});
        }
        all.push_back(curve);
    };
    stretch(QStringLiteral(" below"), 10, measured_from, CurveLine::dashed);
    stretch(QStringLiteral(" between"), measured_from, measured_to, CurveLine::solid);
    stretch(QStringLiteral(" above"), measured_to, 1000, CurveLine::dashed);
    all.back().name = name;
    ChartSeries drains{
        .id = name + QStringLiteral(" drains"), .group = name, .name = {}, .colour = colour, .marker = marker, .line = CurveLine::none};
    for (const double load_w : {measured_from * 1.3, measured_to * 0.8}) drains.points.push_back({load_w, fraction(load_w)});
    return drains;
}

} // namespace

ChartContent drain() {
    ChartContent content;
    content.description = QStringLiteral("Energy of a drain over time");
    content.x = {.title = QStringLiteral("hours since start"), .unit = QStringLiteral("h"), .minimum = 0.0};
    content.y = {.title = QStringLiteral("energy / Wh"), .unit = QStringLiteral("Wh"), .include_zero = true};
    ChartSeries gauge{.id = QStringLiteral("gauge"),
                      .group = {},
                      .name = QStringLiteral("gauge-implied"),
                      .colour = CurveColour::gauge_implied,
                      .marker = Marker::square};
    ChartSeries delivered{.id = QStringLiteral("delivered"), .group = {}, .name = QStringLiteral("delivered")};
    const double rows[][3] = {{0, 0, 0},       {1.1, 60, 71},    {2.6, 156, 166},  {4.1, 252, 262},  {5.5, 348, 352}, {7.2, 348, 462},
                              {8.4, 348, 540}, {10.9, 576, 700}, {12.2, 684, 781}, {13.3, 828, 851}, {14.6, 984, 936}};
    for (const auto& row : rows) {
        gauge.points.push_back({row[0], row[1]});
        delivered.points.push_back({row[0], row[2]});
        delivered.band.push_back({row[0], row[2] * 0.985, row[2] * 1.015});
        delivered.notes.push_back(QStringLiteral("meter A"));
    }
    content.series = {gauge, delivered};
    content.regions = {{5.3, 8.6, QStringLiteral("stuck"), RegionRole::doubt}, {16.1, 17.4, QStringLiteral("cut-off"), RegionRole::grey}};
    content.horizontal_lines = {{1200, QStringLiteral("rated 1200")}};
    content.empty_text = QStringLiteral("No readings yet. Type the gauge and the register below and press Record.");
    return content;
}

ChartContent fraction_over_load() {
    ChartContent content;
    content.description = QStringLiteral("Usable fraction over load");
    content.x = {.title = QStringLiteral("load / W"), .unit = QStringLiteral("W"), .minimum = 10.0, .maximum = 1000.0, .logarithmic = true};
    content.y = {.title = QStringLiteral("usable fraction"), .unit = {}, .minimum = 0.0, .maximum = 1.0};
    const auto one = fraction_curve(QStringLiteral("Osk 1200"), CurveColour::good, Marker::circle, 0.84, 14, 50, 420, content.series);
    content.series.push_back(one);
    const auto two = fraction_curve(QStringLiteral("Pelm 900"), CurveColour::error, Marker::triangle, 0.79, 38, 50, 420, content.series);
    content.series.push_back(two);
    content.series.push_back({.id = QStringLiteral("Tarrow 2k"),
                              .group = {},
                              .name = QStringLiteral("Tarrow 2k, one load only"),
                              .colour = CurveColour::delivered,
                              .marker = Marker::diamond,
                              .line = CurveLine::none,
                              .steps = false,
                              .points = {{180, 0.905}},
                              .notes = {},
                              .band = {{180, 0.875, 0.935}},
                              .band_shape = BandShape::bars});
    content.horizontal_bands = {{0.75, 0.80, {}}};
    content.vertical_lines = {{180, QStringLiteral("180 W"), CurveColour::delivered}};
    return content;
}

ChartContent long_trace(int count) {
    ChartContent content;
    content.description = QStringLiteral("Load trace");
    content.x = {.title = QStringLiteral("hours since start"), .unit = QStringLiteral("h")};
    content.y = {.title = QStringLiteral("load / W"), .unit = QStringLiteral("W")};
    ChartSeries trace{.id = QStringLiteral("trace"), .group = {}, .name = QStringLiteral("load"), .marker = Marker::none};
    for (int n = 0; n < count; ++n) {
        const double hours = 10.0 * n / count;
        trace.points.push_back({hours, 64 + 3 * std::sin(hours * 7) + (n * 7919 % 13) * 0.2});
    }
    trace.points[static_cast<std::size_t>(count) / 3].y = 180;
    trace.points[static_cast<std::size_t>(count) / 2].y = 2;
    content.series = {trace};
    return content;
}

BarContent bars() {
    BarContent content;
    content.description = QStringLiteral("Usable fraction of four units");
    content.axis = {.title = QStringLiteral("usable fraction"), .unit = {}, .minimum = 0.0, .maximum = 1.0};
    content.bars = {
        {QStringLiteral("Tarrow 2k"), 0.805, 0.789, 0.821, QString::fromUtf8("0.805 ± 0.016"), QStringLiteral("measured, 180 W")},
        {QStringLiteral("Osk 1200"), 0.781, 0.752, 0.797, QString::fromUtf8("0.781"), QStringLiteral("at 180 W from 2 drains")},
        {QStringLiteral("Pelm 900"), 0.662, 0.640, 0.684, {}, QStringLiteral("at 180 W from 2 drains"), CurveColour::gauge_implied},
        {QStringLiteral("Ystrad Mini, the long-named one"), std::nullopt, std::nullopt, std::nullopt, {}, QStringLiteral("no drain yet")}};
    content.bands = {{0.75, 0.80, QStringLiteral("commonly seen")}};
    content.empty_text = QStringLiteral("Nothing to compare yet.");
    return content;
}

VesselRowContent vessels() {
    VesselRowContent content;
    content.description = QStringLiteral("Three units at one height scale");
    content.columns = {{QStringLiteral("Tarrow 2k"), {2000, 1610.0, 1578.0, 1642.0, 60.0, 0.75, 0.80}, {}},
                       {QStringLiteral("Osk 1200"), {1200, 937.0, 918.0, 956.0, 70.0, 0.75, 0.80}, {}},
                       {QStringLiteral("Pelm 900"), {900, 596.0, 576.0, 616.0, 170.0, 0.75, 0.80}, {}},
                       {QStringLiteral("Ystrad Mini"), {600, std::nullopt, std::nullopt, std::nullopt, std::nullopt, 0.75, 0.80}, {}}};
    content.empty_text = QStringLiteral("No units to compare yet.");
    return content;
}

} // namespace ullage::sample
