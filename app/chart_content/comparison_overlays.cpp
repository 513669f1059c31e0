// SPDX-License-Identifier: GPL-3.0-or-later
#include "chart_content/comparison_overlays.h"

#include "chart_content/comparison_pictures.h"
#include "chart_content/unit_charts.h"
#include "style/words.h"

#include <algorithm>
#include <array>
#include <set>

namespace ullage {

namespace {

struct Look {
    CurveColour colour;
    Marker marker;
};

/// Neighbours differ in colour and in shape.
constexpr std::array<Look, most_overlaid> looks{{{CurveColour::delivered, Marker::circle},
                                                 {CurveColour::gauge_implied, Marker::square},
                                                 {CurveColour::error, Marker::triangle},
                                                 {CurveColour::good, Marker::diamond},
                                                 {CurveColour::vermilion, Marker::circle},
                                                 {CurveColour::ink, Marker::square}}};

ChartSeries series_of(const ComparisonRow& row, std::size_t place, const char* part) {
    ChartSeries series;
    series.group = raw_text(row.unit.uuid.text() + row.run.uuid.text());
    series.id = series.group + QLatin1String(part);
    series.colour = looks[place].colour;
    series.marker = looks[place].marker;
    return series;
}

} // namespace

ChartContent gauge_error_overlay(const Comparison& comparison, const std::function<const RunAnalysis&(const RunId&)>& analysis) {
    ChartContent content;
    content.description = tr("Gauge error of the units against what they had delivered");
    content.x.title = tr("share delivered / %");
    content.x.unit = QStringLiteral("%");
    content.x.minimum = 0;
    content.x.maximum = 100;
    content.y.title = tr("gauge error / pt");
    content.y.unit = QStringLiteral("pt");
    content.y.include_zero = true;
    content.y.above_zero = tr("shows too much");
    content.y.below_zero = tr("shows too little");
    content.key = tr("Above 0 the gauge shows more than is left, below 0 less. Areas: 95 % intervals.");
    content.empty_text = tr("No drain from full to cut-off with gauge and register read together.");
    std::size_t place = 0;
    const bool one_unit =
        std::ranges::all_of(comparison.rows, [&](const ComparisonRow& row) { return row.unit.uuid == comparison.rows.front().unit.uuid; });
    for (const ComparisonRow& row : comparison.rows) {
        if (place == looks.size()) break;
        const GaugeAnalysis& gauge = analysis(row.run.uuid).gauge;
        if (gauge.basis != ErrorBasis::delivered_depth || gauge.errors.empty()) continue;
        ChartSeries series = series_of(row, place++, "error");
        series.name = text_of(one_unit && comparison.rows.size() > 1 ? row.run_title : Message(row.unit.name));
        for (const GaugeErrorPoint& point : gauge.errors) {
            series.points.push_back({point.depth_percent, point.error_pt});
            series.band.push_back({point.depth_percent, point.lower_pt, point.upper_pt});
            series.notes.push_back(text_of(row.run_title));
        }
        content.series.push_back(std::move(series));
    }
    if (!content.series.empty()) content.horizontal_lines.push_back({0, tr("no error")});
    return content;
}

ChartContent fraction_overlay(const Comparison& comparison, const FairComparison& fair) {
    ChartContent content;
    content.description = tr("Usable fraction of the units against load");
    content.key = tr("Points: drains. Lines: what all drains of a unit say together, with the 95 % interval as an area.");
    content.x.title = tr("load / W");
    content.x.unit = QStringLiteral("W");
    content.x.logarithmic = true;
    content.y.title = tr("usable fraction / %");
    content.y.unit = QStringLiteral("%");
    content.y.minimum = 0;
    content.y.maximum = 100;
    content.empty_text = tr("No full drain of a unit with a stated rated energy.");
    std::size_t place = 0;
    std::set<UnitId> seen;
    for (const ComparisonRow& row : comparison.rows) {
        const double rated_wh = row.unit.rated_energy_wh.value_or(0);
        if (place == looks.size() || rated_wh <= 0 || !seen.insert(row.unit.uuid).second) continue;
        const UnitFit& fit = comparison.fits[row.fit];
        ChartSeries curve = series_of(row, place, "curve"), drains = series_of(row, place, "drains");
        curve.marker = Marker::none;
        if (fit.parameters)
            for (const LoadPrediction& prediction : predict_curve(fit, row.unit, curve_loads(fit, row.unit))) {
                if (!prediction.within_tested_loads || !prediction.usable_fraction.value) continue;
                curve.points.push_back({prediction.load_w, 100 * *prediction.usable_fraction.value});
                if (prediction.usable_fraction.lower)
                    curve.band.push_back(
                        {prediction.load_w, 100 * *prediction.usable_fraction.lower, 100 * prediction.usable_fraction.upper.value_or(1)});
            }
        drains.line = CurveLine::none;
        for (const DrainSummary& drain : fit.drains) {
            if (!drain.used || drain.mean_load_w <= 0) continue;
            drains.points.push_back({drain.mean_load_w, 100 * drain.delivered_wh / rated_wh});
            drains.notes.push_back(text_of(row.unit.name + ", " + drain.title));
        }
        if (curve.points.empty() && drains.points.empty()) continue;
        std::vector<std::size_t> order(drains.points.size());
        for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
        std::ranges::sort(order, {}, [&](std::size_t i) { return drains.points[i].x; });
        ChartSeries sorted = drains;
        for (std::size_t i = 0; i < order.size(); ++i) {
            sorted.points[i] = drains.points[order[i]];
            sorted.notes[i] = drains.notes[order[i]];
        }
        (curve.points.size() > 1 ? curve : sorted).name = text_of(row.unit.name);
        if (curve.points.size() > 1) content.series.push_back(std::move(curve));
        if (!sorted.points.empty()) content.series.push_back(std::move(sorted));
        ++place;
    }
    if (fair.load && !content.series.empty()) content.vertical_lines.push_back({fair.load->mean_w(), tr("compared here"), CurveColour::accent});
    return content;
}

} // namespace ullage
