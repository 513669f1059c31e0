// SPDX-License-Identifier: GPL-3.0-or-later
#include "chart_content/unit_charts.h"

#include "base/number.h"
#include "chart_content/comparison_pictures.h"
#include "style/clauses.h"
#include "style/words.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

constexpr double lowest_load_w = 10;
constexpr int steps = 60;

double highest_load(const UnitFit& fit, const Unit& unit) {
    const double rated_w = unit.rated_output_w.value_or(0);
    return std::max(2 * lowest_load_w, rated_w > 0 ? rated_w : std::max(200.0, 2 * fit.highest_load_w));
}

/// The part of a prediction, or of a measured drain, that a chart shows.
using PredictedPart = Quantity LoadPrediction::*;
using MeasuredPart = Quantity MeasuredDrain::*;

ChartSeries curve(const char* id, CurveLine line, const std::vector<LoadPrediction>& predictions, PredictedPart part, double top) {
    ChartSeries series;
    series.id = QLatin1String(id);
    series.group = QStringLiteral("expected");
    series.colour = CurveColour::delivered;
    series.marker = Marker::none;
    series.line = line;
    for (const LoadPrediction& prediction : predictions) {
        const Quantity& quantity = prediction.*part;
        if (!quantity.value) continue;
        series.points.push_back({prediction.load_w, *quantity.value});
        // A band without an upper end goes to the top of the chart.
        if (quantity.lower) series.band.push_back({prediction.load_w, *quantity.lower, std::min(quantity.upper.value_or(top), top)});
    }
    return series;
}

/// The least steady load that is no extrapolation: drains under loads that are switched say little of a steady one below their powers.
double lowest_tested(const UnitFit& fit) { return std::max(fit.lowest_load_w, fit.lowest_power_w); }

/// Three parts of one curve, which meet at the ends of the tested loads.
void add_curve(ChartContent& content, const UnitFit& fit, const Unit& unit, PredictedPart part, double top) {
    if (!fit.parameters) return;
    std::vector<LoadPrediction> below, within, above;
    for (const LoadPrediction& prediction : predict_curve(fit, unit, curve_loads(fit, unit))) {
        if (prediction.load_w <= lowest_tested(fit)) below.push_back(prediction);
        if (prediction.within_tested_loads) within.push_back(prediction);
        if (prediction.load_w >= fit.highest_load_w) above.push_back(prediction);
    }
    std::vector<ChartSeries> parts = {curve("below", CurveLine::dashed, below, part, top), curve("within", CurveLine::solid, within, part, top),
                                      curve("above", CurveLine::dashed, above, part, top)};
    std::erase_if(parts, [](const ChartSeries& series) { return series.points.size() < 2; });
    if (!parts.empty()) parts.back().name = tr("expected");
    content.series.insert(content.series.end(), parts.begin(), parts.end());
}

void add_drains(ChartContent& content, const std::vector<MeasuredDrain>& drains, MeasuredPart part) {
    ChartSeries series;
    series.id = QStringLiteral("measured");
    series.colour = CurveColour::ink;
    series.marker = Marker::circle;
    series.line = CurveLine::none;
    series.band_shape = BandShape::bars;
    std::vector<const MeasuredDrain*> shown;
    for (const MeasuredDrain& drain : drains)
        if (drain.mean_load_w > 0 && ((drain.*part).value || (drain.*part).lower)) shown.push_back(&drain);
    std::ranges::sort(shown, {}, &MeasuredDrain::mean_load_w);
    for (const MeasuredDrain* drain : shown) {
        const Quantity& quantity = drain->*part;
        // A bracket has no value: its middle carries the mark, the bar shows what is known.
        const double middle = quantity.value ? *quantity.value : (*quantity.lower + quantity.upper.value_or(*quantity.lower)) / 2;
        series.points.push_back({drain->mean_load_w, middle});
        series.notes.push_back(drain->title);
        if (quantity.lower && quantity.upper) series.band.push_back({drain->mean_load_w, *quantity.lower, *quantity.upper});
    }
    if (!series.points.empty()) content.series.push_back(std::move(series));
}

ChartContent on_load_axis(const UnitFit& fit, const Unit& unit, std::optional<double> next_load_w) {
    ChartContent content;
    content.subject = text_of(unit.name + (unit.maker.empty() ? "" : " (" + unit.maker + ")"));
    content.key =
        tr("Points: drains with their 95 % intervals. Line: what all drains say together, solid between the tested loads, dashed beyond. Area: "
           "95 % interval.");
    content.x.title = tr("load / W");
    content.x.unit = QStringLiteral("W");
    content.x.logarithmic = true;
    content.x.minimum = lowest_load_w;
    content.x.maximum = highest_load(fit, unit);
    if (next_load_w) content.vertical_lines.push_back({*next_load_w, tr("next: %1 W").arg(*next_load_w, 0, 'g', 3), CurveColour::accent});
    content.empty_text = tr("No drain from full to cut-off yet: make one at any load.");
    return content;
}

ChartSeries error_curve(const char* id, const DrainSummary& drain, CurveColour colour, Marker marker, double coverage) {
    ChartSeries series;
    series.id = QLatin1String(id);
    series.name = tr("run %1").arg(drain.run_number);
    series.colour = colour;
    series.marker = marker;
    const GaugeCurve& curve = *drain.gauge_curve;
    for (std::size_t i = 0; i < curve.points.size(); ++i) {
        const double depth_percent = 100 * curve.points[i].delivered_wh / curve.total_wh;
        const double error_pt = curve.error_pt(i), half_pt = curve.error_half_width_pt(i, coverage);
        series.points.push_back({depth_percent, error_pt});
        series.notes.push_back(text_of(drain.title));
        series.band.push_back({depth_percent, error_pt - half_pt, error_pt + half_pt});
    }
    return series;
}

/// Room above everything that is sure to be shown: the measured bars and `least`.
/// The means of repeated drains with their intervals, a little beside their points; `per_wh` makes the shown figure of an energy.
void add_means(ChartContent& content, const UnitFit& fit, double per_wh) {
    constexpr double beside = 1.06;
    ChartSeries series;
    series.id = QStringLiteral("means");
    series.colour = CurveColour::delivered;
    series.marker = Marker::diamond;
    series.line = CurveLine::none;
    series.band_shape = BandShape::bars;
    for (const RepeatMean& mean : fit.repeats) {
        if (mean.count() < 2) continue;
        const double load_w = beside * mean.mean_load_w;
        series.points.push_back({load_w, mean.mean_wh * per_wh});
        series.notes.push_back(tr("mean of %1 drains").arg(mean.count()));
        if (mean.delivered_wh.lower && mean.delivered_wh.upper)
            series.band.push_back({load_w, *mean.delivered_wh.lower * per_wh, *mean.delivered_wh.upper * per_wh});
    }
    if (series.points.empty()) return;
    std::ranges::sort(series.points, {}, &ChartPoint::x);
    content.series.push_back(std::move(series));
}

/// Fractions are drawn in %.
void show_in_percent(ChartContent& content) {
    content.y.maximum = 100 * content.y.maximum.value_or(1);
    for (ChartHorizontalBand& band : content.horizontal_bands) {
        band.lower *= 100;
        band.upper *= 100;
    }
    for (ChartSeries& series : content.series) {
        for (ChartPoint& point : series.points) point.y *= 100;
        for (ChartBandPoint& point : series.band) {
            point.lower *= 100;
            point.upper *= 100;
        }
    }
}

double top_of(const std::vector<MeasuredDrain>& drains, MeasuredPart part, double least) {
    double top = least;
    for (const MeasuredDrain& drain : drains) {
        const Quantity& quantity = drain.*part;
        top = std::max({top, 1.1 * quantity.value.value_or(0), 1.1 * quantity.upper.value_or(0)});
    }
    return top;
}

} // namespace

std::vector<MeasuredDrain> measured_drains(const UnitFit& fit, const std::function<const EnergyAnalysis&(const RunId&)>& energy_of) {
    std::vector<MeasuredDrain> drains;
    for (const DrainSummary& drain : fit.drains) {
        if (!drain.used) continue;
        const EnergyAnalysis& energy = energy_of(drain.run_uuid);
        drains.push_back({text_of(drain.title), drain.mean_load_w, energy.delivered_wh, energy.usable_fraction, energy.duration_h});
    }
    return drains;
}

std::vector<double> curve_loads(const UnitFit& fit, const Unit& unit) {
    const double highest_w = highest_load(fit, unit);
    std::vector<double> loads = {lowest_tested(fit), fit.highest_load_w};
    for (int i = 0; i <= steps; ++i) loads.push_back(lowest_load_w * std::pow(highest_w / lowest_load_w, static_cast<double>(i) / steps));
    loads.back() = highest_w; // not above it by rounding, where nothing is predicted
    std::erase_if(loads, [highest_w](double load_w) { return load_w < lowest_load_w || load_w > highest_w; });
    std::ranges::sort(loads);
    const auto doubled = std::ranges::unique(loads);
    loads.erase(doubled.begin(), doubled.end());
    return loads;
}

ChartContent usable_chart(const UnitFit& fit, const Unit& unit, const std::vector<MeasuredDrain>& drains, std::optional<double> next_load_w) {
    ChartContent content = on_load_axis(fit, unit, next_load_w);
    content.y.minimum = 0.0;
    if (unit.rated_energy_wh.value_or(0) > 0) {
        const double top = top_of(drains, &MeasuredDrain::usable_fraction, 1.0);
        content.description = tr("Usable fraction against load: expected from all drains, and measured");
        content.y.title = tr("usable fraction / %");
        content.y.unit = QStringLiteral("%");
        content.y.maximum = top;
        content.horizontal_bands.push_back({expected_lower_fraction, expected_upper_fraction, tr("typical")});
        add_curve(content, fit, unit, &LoadPrediction::usable_fraction, top);
        add_drains(content, drains, &MeasuredDrain::usable_fraction);
        add_means(content, fit, 1 / *unit.rated_energy_wh);
        show_in_percent(content);
        return content;
    }
    const double expected_wh = fit.deliverable_at_no_time_cost_wh.value.value_or(0);
    const double top = top_of(drains, &MeasuredDrain::delivered_wh, std::max(1.0, 1.2 * expected_wh));
    content.description = tr("Deliverable energy against load: expected from all drains, and measured");
    content.y.title = tr("deliverable energy / Wh");
    content.y.unit = QStringLiteral("Wh");
    content.y.maximum = top;
    add_curve(content, fit, unit, &LoadPrediction::deliverable_wh, top);
    add_drains(content, drains, &MeasuredDrain::delivered_wh);
    add_means(content, fit, 1);
    return content;
}

ChartContent run_time_chart(const UnitFit& fit, const Unit& unit, const std::vector<MeasuredDrain>& drains, std::optional<double> next_load_w) {
    ChartContent content = on_load_axis(fit, unit, next_load_w);
    content.description = tr("Run time against load: expected from all drains, and measured");
    content.y.title = tr("run time / h");
    content.y.unit = QStringLiteral("h");
    content.y.logarithmic = true;
    // Twice what the lowest load may last at its best: bands without an upper end stop there.
    double top = top_of(drains, &MeasuredDrain::duration_h, 1.0);
    if (const auto longest = predict_at(fit, unit, lowest_load_w).run_time_h.value) top = std::max(top, 2 * *longest);
    add_curve(content, fit, unit, &LoadPrediction::run_time_h, top);
    add_drains(content, drains, &MeasuredDrain::duration_h);
    return content;
}

ChartContent gauge_drift_chart(const UnitFit& fit, const GaugeDrift& drift) {
    ChartContent content;
    content.description = tr("Gauge error against share delivered, run to run");
    content.x.title = tr("share delivered / %");
    content.x.unit = QStringLiteral("%");
    content.x.minimum = 0.0;
    content.x.maximum = 100.0;
    content.y.title = tr("gauge error / pt");
    content.y.unit = QStringLiteral("pt");
    content.y.include_zero = true;
    content.y.above_zero = tr("shows too much");
    content.y.below_zero = tr("shows too little");
    content.key = tr("Above 0 the gauge shows more than is left, below 0 less. Areas: 95 % intervals.");
    content.empty_text = tr("No gauge curve yet: it takes a drain from full to cut-off with the gauge read at six depths or more.");
    if (drift.lead) {
        const DrainComparison& lead = drift.comparisons[*drift.lead];
        content.series = {error_curve("earlier", fit.drains[lead.earlier], CurveColour::error, Marker::triangle, fit.options.coverage),
                          error_curve("later", fit.drains[lead.later], CurveColour::good, Marker::diamond, fit.options.coverage)};
        if (lead.curve_moved)
            content.vertical_lines.push_back(
                {lead.curve.depth_percent, tr("%1 pt").arg(text_of(say_signed(lead.curve.size_pt, 1))), CurveColour::accent});
    } else {
        const DrainSummary* last = nullptr;
        for (const DrainSummary& drain : fit.drains)
            if (drain.gauge_curve && (last == nullptr || drain.start_ms > last->start_ms)) last = &drain;
        if (last != nullptr) content.series = {error_curve("later", *last, CurveColour::good, Marker::diamond, fit.options.coverage)};
    }
    if (!content.series.empty()) content.horizontal_lines.push_back({0.0, {}});
    return content;
}

QString off_chart_text(const UnitFit& fit) {
    QStringList runs;
    for (const DrainSummary& drain : fit.drains)
        if (drain.used && drain.mean_load_w < lowest_load_w) runs << tr("run %1, %2").arg(drain.run_number).arg(text_of(drain.title));
    return runs.isEmpty() ? QString()
                          : tr("Not on the charts, as a load below %1 W has no place on their axis, but in the curves: %2.")
                                .arg(lowest_load_w, 0, 'g', 3)
                                .arg(joined_clauses(runs));
}

} // namespace ullage
