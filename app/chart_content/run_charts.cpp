// SPDX-License-Identifier: GPL-3.0-or-later
#include "chart_content/run_charts.h"

#include "base/number.h"
#include "chart_content/thinned_points.h"
#include "measure/load_steps.h"
#include "models/finding_stretch.h"
#include "style/clauses.h"
#include "style/numbers.h"
#include "style/words.h"
#include "unit/known_depths.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <string_view>

namespace ullage {

namespace {

constexpr double least_difference_pt = 0.1;
constexpr std::size_t most_drawn = 2000; ///< points of a curve: two for each column of pixels of a wide window

/// "Socket meter A, ±1 %"; empty without a meter.
QString meter_words(const RunRecord& record) {
    if (!record.meter) return {};
    const QString words = text_of(record.meter->name);
    if (!record.meter->certificate.number.empty() && !record.meter->points.empty()) return words + ullage::tr(", calibrated");
    return record.meter->limit_percent ? words + QStringLiteral(", ±%1\u00A0%").arg(text_of(say_digits(exact_text(*record.meter->limit_percent))))
                                       : words;
}

/// What stands at a stretch that a finding names, see names_a_stretch().
QString stretch_word(FindingKind kind) {
    if (kind == FindingKind::stuck) return ullage::tr("stuck");
    return kind == FindingKind::jump ? ullage::tr("jump") : ullage::tr("rebound");
}

/// Builds one chart of a run; x is hours since the first reading.
class Builder {
    Q_DECLARE_TR_FUNCTIONS(ullage::Builder)

public:
    Builder(const RunRecord& record, const RunAnalysis& analysis) : record_(record), analysis_(analysis) {
        chart.content.x.title = tr("hours since start");
        chart.content.x.unit = QStringLiteral("h");
        chart.content.x.minimum = 0.0;
        chart.content.subject = joined_clauses({text_of(record.unit.name + ", " + run_title(record, analysis.energy)), meter_words(record)});
        shade();
    }

    [[nodiscard]] double hours(UtcMs time_ms) const { return hours_between(analysis_.energy.start_ms, time_ms); }
    /// The same, no later than the cut-off: nothing is delivered after it.
    [[nodiscard]] double on_hours(UtcMs time_ms) const {
        const auto& cut_off = analysis_.energy.cut_off;
        return cut_off ? std::min(hours(time_ms), cut_off->estimate_h) : hours(time_ms);
    }

    /// A point of `series` that stands for reading `at` of the record, or (no_reading) for the last sample of a log.
    void add(ChartSeries& series, double x, double y, std::size_t at) {
        series.points.push_back({x, y});
        stands_for_.push_back(at);
    }

    /// Takes over a series whose points have been added; the next one begins. What so many points say is told only for those that are drawn.
    void finish(ChartSeries series) {
        const std::vector<std::size_t> drawn = points_to_draw(series.points, most_drawn);
        const bool has_band = series.band.size() == series.points.size();
        std::vector<ReadingId>& readings = chart.readings[series.id];
        for (std::size_t place = 0; place < drawn.size(); ++place) {
            series.points[place] = series.points[drawn[place]];
            if (has_band) series.band[place] = series.band[drawn[place]];
            const std::size_t at = stands_for_[drawn[place]];
            if (at == no_reading) {
                series.notes.push_back(tr("by the log"));
                readings.push_back({});
                continue;
            }
            const Reading& reading = record_.readings[at];
            series.notes.push_back(text_of(clock_text(reading.values.time_ms, record_.run.time_zone)));
            readings.push_back(reading.uuid);
        }
        series.points.resize(drawn.size());
        if (has_band) series.band.resize(drawn.size());
        stands_for_.clear();
        if (!series.points.empty()) chart.content.series.push_back(std::move(series));
    }

    RunChart chart;

private:
    void shade() {
        std::map<ReadingId, std::optional<double>> ends;
        for (const Finding& finding : analysis_.gauge.findings)
            if (names_a_stretch(finding))
                for (const ReadingId& uuid : {std::cref(finding.readings.front()), std::cref(finding.readings.back())}) ends[uuid];
        if (ends.empty()) return;
        for (const Reading& reading : record_.readings)
            if (const auto end = ends.find(reading.uuid); end != ends.end()) end->second = hours(reading.values.time_ms);
        for (const Finding& finding : analysis_.gauge.findings) {
            if (!names_a_stretch(finding)) continue;
            const auto from = ends[finding.readings.front()], to = ends[finding.readings.back()];
            if (from && to) chart.content.regions.push_back({*from, *to, stretch_word(finding.kind), RegionRole::doubt});
        }
    }

    const RunRecord& record_;
    const RunAnalysis& analysis_;
    std::vector<std::size_t> stands_for_; ///< of the series at work, point for point
};

ChartSeries series_of(const char* id, const QString& name, CurveColour colour, Marker marker) {
    ChartSeries series;
    series.id = QLatin1String(id);
    series.name = name;
    series.colour = colour;
    series.marker = marker;
    return series;
}

ChartSeries delivered_series(Builder& builder, const RunRecord& record, const RunAnalysis& analysis) {
    const QString name = record.run.kind == RunKind::charge ? tr("energy in") : tr("delivered");
    ChartSeries series = series_of("delivered", name, CurveColour::delivered, Marker::circle);
    const EnergyAnalysis& energy = analysis.energy;
    const double total_wh = energy.track.total_wh();
    const double gain = total_wh > 0 ? energy.budget.gain_half_width_wh / total_wh : 0.0;
    for (const RegisterPoint& point : energy.track.points) {
        const double x = builder.on_hours(point.time_ms);
        builder.add(series, x, point.delivered_wh, point.reading);
        if (gain > 0) series.band.push_back({x, point.delivered_wh * (1 - gain), point.delivered_wh * (1 + gain)});
    }
    return series;
}

ChartSeries gauge_implied_series(Builder& builder, const RunRecord& record, double rated_wh) {
    ChartSeries series = series_of("gauge_implied", tr("gauge-implied"), CurveColour::gauge_implied, Marker::square);
    const double sign = record.run.kind == RunKind::charge ? -1 : 1; // a charge raises the gauge
    std::optional<double> first_percent;
    for (std::size_t i = 0; i < record.readings.size(); ++i) {
        const Reading& reading = record.readings[i];
        if (reading.withdrawn || !reading.values.gauge_percent) continue;
        if (!first_percent) first_percent = reading.values.gauge_percent;
        builder.add(series, builder.on_hours(reading.values.time_ms), sign * rated_wh * (*first_percent - *reading.values.gauge_percent) / 100.0, i);
    }
    return series;
}

/// The gauge as a log showed it, both ends of each of its steps.
ChartSeries gauge_log_series(Builder& builder, const RunRecord& record, const RunAnalysis& analysis, double rated_wh) {
    ChartSeries series = series_of("gauge_log", tr("gauge-implied, by the log"), CurveColour::gauge_implied, Marker::none);
    const EnergyAnalysis& energy = analysis.energy;
    if (!record.gauge_log || !energy.gauge_log || !energy.gauge_log->used || energy.points.empty()) return series;
    const double sign = record.run.kind == RunKind::charge ? -1 : 1, first_percent = energy.points.front().gauge_percent;
    const auto add = [&](UtcMs time_ms, double percent) {
        builder.add(series, builder.on_hours(time_ms), sign * rated_wh * (first_percent - percent) / 100.0, no_reading);
    };
    for (const PairedPoint& point : energy.shown)
        if (point.reading == no_reading) add(point.time_ms, point.gauge_percent);
    return series;
}

/// What of the range is still to come at `now_ms`.
void shade_cut_off(Builder& builder, const RunForecast& forecast, std::optional<UtcMs> now_ms) {
    constexpr double most_times_so_far = 3;
    const double so_far = builder.hours(std::max(*forecast.last_reading_ms, now_ms.value_or(*forecast.last_reading_ms)));
    const double from = std::max(so_far, builder.hours(forecast.cut_off->lower_ms)), to = builder.hours(forecast.cut_off->upper_ms);
    const double end = std::min(to, most_times_so_far * so_far);
    if (end <= so_far) return;
    builder.chart.content.x.maximum = end;
    if (from < end) builder.chart.content.regions.push_back({from, end, tr("cut-off expected"), RegionRole::grey});
}

/// Marks the cut-off; where it is known as a range alone, that.
void mark_cut_off(Builder& builder, const CutOffMoment& moment) {
    constexpr double worth_shading = 0.02; ///< of the run
    builder.chart.content.vertical_lines.push_back({moment.estimate_h, tr("cut-off"), CurveColour::accent});
    if (moment.upper_h - moment.lower_h > worth_shading * moment.estimate_h)
        builder.chart.content.regions.push_back({moment.lower_h, moment.upper_h, tr("off somewhere here"), RegionRole::grey});
}

/// Both courses ahead of a drain that is told twice, as bands in the colours of gauge and meter.
void add_courses_ahead(Builder& builder, const RunRecord& record, const RunAnalysis& analysis, const TwoAccounts& accounts) {
    ChartContent& content = builder.chart.content;
    const double from_h = builder.hours(accounts.from_ms), now_wh = analysis.energy.track.total_wh();
    const Quantity &right_h = accounts.right.hours_left, &wrong_h = accounts.wrong.hours_left, &come = accounts.wrong.to_come_wh;
    const auto& points = analysis.energy.points;
    if (!accounts.right.ruled_out && right_h.lower && right_h.upper && *right_h.lower > 0 && record.unit.rated_energy_wh && !points.empty()) {
        const double implied_wh = *record.unit.rated_energy_wh * (points.front().gauge_percent - points.back().gauge_percent) / 100;
        const double rest_wh = *record.unit.rated_energy_wh - implied_wh;
        ChartSeries series = series_of("right_ahead", tr("gauge right: empty here"), CurveColour::gauge_implied, Marker::none);
        for (const double h : {0.0, *right_h.lower, *right_h.upper})
            series.band.push_back({from_h + h, implied_wh + rest_wh * h / *right_h.upper, implied_wh + rest_wh * std::min(1.0, h / *right_h.lower)});
        series.points = {{from_h, implied_wh}, {from_h + *right_h.upper, *record.unit.rated_energy_wh}};
        series.line = CurveLine::dashed;
        content.series.push_back(std::move(series));
    }
    if (!accounts.wrong.ruled_out && wrong_h.lower && wrong_h.upper && *wrong_h.lower > 0 && come.lower && come.upper) {
        ChartSeries series = series_of("wrong_ahead", tr("gauge wrong: still to come"), CurveColour::delivered, Marker::none);
        for (const double h : {0.0, *wrong_h.lower, *wrong_h.upper})
            series.band.push_back({from_h + h, now_wh + *come.lower * std::min(1.0, h / *wrong_h.lower), now_wh + *come.upper * h / *wrong_h.upper});
        series.points = {{from_h, now_wh}, {from_h + *wrong_h.upper, now_wh + *come.upper}};
        series.line = CurveLine::dashed;
        content.series.push_back(std::move(series));
    }
}

/// Whether the two depths are two curves to the eye; under a steady load they are one.
bool depths_differ(const std::vector<ReferenceDepth>& depths) {
    return std::ranges::any_of(depths, [](const ReferenceDepth& depth) {
        return depth.stored_percent && std::abs(depth.stored_percent->value - depth.delivered_percent.value) >= least_difference_pt;
    });
}

ChartSeries stored_error_series(Builder& builder, const RunAnalysis& analysis, const std::vector<ReferenceDepth>& depths) {
    ChartSeries series = series_of("stored_error", tr("by stored depth"), CurveColour::good, Marker::diamond);
    for (const ReferenceDepth& depth : depths) {
        if (!depth.stored_error_pt) continue;
        builder.add(series, depth.hours, depth.stored_error_pt->value, analysis.energy.points[depth.point].reading);
        series.band.push_back({depth.hours, depth.stored_error_pt->lower, depth.stored_error_pt->upper});
    }
    return series;
}

/// The error against the share of what is expected to come out, with that share at the ends of the range.
void add_expected_errors(Builder& builder, const EnergyAnalysis& energy, const ExpectedWhole& expected, ChartSeries& series) {
    for (const PairedPoint& point : energy.points) {
        const auto error_pt = [&point](double whole_wh) { return point.gauge_percent - 100 * (1 - point.delivered_wh / whole_wh); };
        const double x = builder.on_hours(point.time_ms);
        builder.add(series, x, error_pt(expected.estimate_wh), point.reading);
        series.band.push_back({x, error_pt(expected.upper_wh), error_pt(expected.lower_wh)});
    }
}

ChartSeries noted_power(Builder& builder, const RunRecord& record, std::optional<double> ReadingValues::*power, ChartSeries series) {
    series.line = CurveLine::none;
    for (std::size_t i = 0; i < record.readings.size(); ++i) {
        const Reading& reading = record.readings[i];
        if (!reading.withdrawn && reading.values.*power) builder.add(series, builder.hours(reading.values.time_ms), *(reading.values.*power), i);
    }
    return series;
}

} // namespace

ReadingId RunChart::readingAt(const QString& series_id, int index) const {
    const auto found = readings.find(series_id);
    if (found == readings.end() || index < 0 || index >= static_cast<int>(found->second.size())) return {};
    return found->second[static_cast<std::size_t>(index)];
}

std::vector<int> RunChart::pointsOf(const QString& series_id, const std::vector<ReadingId>& wanted) const {
    std::vector<int> points;
    const auto found = readings.find(series_id);
    if (found == readings.end()) return points;
    for (std::size_t i = 0; i < found->second.size(); ++i)
        if (std::ranges::find(wanted, found->second[i]) != wanted.end()) points.push_back(static_cast<int>(i));
    return points;
}

RunChart energy_chart(const RunRecord& record, const RunAnalysis& analysis, const RunForecast* forecast, const TwoAccounts* accounts,
                      std::optional<UtcMs> now_ms) {
    Builder builder(record, analysis);
    ChartContent& content = builder.chart.content;
    content.y.title = tr("energy / Wh");
    content.y.unit = QStringLiteral("Wh");
    content.y.include_zero = true;
    content.description = tr("Gauge-implied and delivered energy against hours since the start");
    content.key = tr("Circles: delivered, by the meter, with its error limit as an area. Squares: what the gauge implies. Shaded: where the gauge is "
                     "doubted. Dotted: rated energy and cut-off.");
    content.empty_text = tr("No energy yet: record the meter's register at the start, then again and again.");
    const auto rated_wh = record.unit.rated_energy_wh;
    if (rated_wh) {
        builder.finish(gauge_log_series(builder, record, analysis, *rated_wh));
        builder.finish(gauge_implied_series(builder, record, *rated_wh));
        content.horizontal_lines.push_back({*rated_wh, tr("rated %1").arg(text_of(say_digits(exact_text(*rated_wh))))});
    }
    builder.finish(delivered_series(builder, record, analysis));
    if (analysis.energy.cut_off && !content.series.empty()) mark_cut_off(builder, *analysis.energy.cut_off);
    if (forecast != nullptr && forecast->cut_off && !content.series.empty()) shade_cut_off(builder, *forecast, now_ms);
    if (accounts != nullptr && accounts->told && !content.series.empty()) add_courses_ahead(builder, record, analysis, *accounts);
    return builder.chart;
}

RunChart gauge_error_chart(const RunRecord& record, const RunAnalysis& analysis, const std::vector<ReferenceDepth>& depths,
                           const std::optional<ExpectedWhole>& expected) {
    Builder builder(record, analysis);
    ChartContent& content = builder.chart.content;
    const bool both = depths_differ(depths);
    content.y.title = expected ? tr("gauge error / pt, if %1 Wh come out").arg(shown_number(expected->estimate_wh, 0))
                      : both   ? tr("gauge error / pt")
                               : tr("gauge error / pt, against %1").arg(text_of(say_error_basis(analysis.gauge.basis)));
    content.y.unit = QStringLiteral("pt");
    content.y.include_zero = true;
    content.description = tr("Gauge error in percentage points against hours since the start");
    content.key = tr("Above 0 the gauge shows more than is left, below 0 less. Area: 95 % interval. Shaded: where the gauge is doubted.");
    if (expected)
        content.key =
            tr("Above 0 the gauge shows more than is left, below 0 less, of the %1 Wh that the drain is expected to deliver to its cut-off. "
               "Area: if it comes at the ends of its range, %2 to %3 Wh. Shaded: where the gauge is doubted.")
                .arg(shown_number(expected->estimate_wh, 0), shown_number(expected->lower_wh, 0), shown_number(expected->upper_wh, 0));
    content.y.above_zero = tr("shows too much");
    content.y.below_zero = tr("shows too little");
    content.empty_text = tr("No gauge error yet: it needs readings of gauge and register, and the unit's rated energy or a "
                            "drain from full to cut-off.");
    ChartSeries series = series_of("error", both ? tr("by share delivered") : tr("gauge error"), CurveColour::error, Marker::triangle);
    if (expected) add_expected_errors(builder, analysis.energy, *expected, series);
    else
        for (const GaugeErrorPoint& point : analysis.gauge.errors) {
            builder.add(series, point.hours, point.error_pt, analysis.energy.points[point.point].reading);
            series.band.push_back({point.hours, point.lower_pt, point.upper_pt});
        }
    if (!series.points.empty()) content.horizontal_lines.push_back({0.0, {}});
    builder.finish(std::move(series));
    if (both) builder.finish(stored_error_series(builder, analysis, depths));
    return builder.chart;
}

RunChart gauge_error_picture(const RunRecord& record, const RunAnalysis& analysis, const UnitFit& unit_fit) {
    const RunForecast forecast = forecast_at_last_reading(record, analysis.energy, unit_fit, analysis.energy.options);
    return gauge_error_chart(record, analysis, known_depths(record, analysis, unit_fit), expected_whole(record, analysis.energy, &forecast));
}

RunChart load_chart(const RunRecord& record, const RunAnalysis& analysis) {
    Builder builder(record, analysis);
    ChartContent& content = builder.chart.content;
    content.y.title = tr("load / W");
    content.y.unit = QStringLiteral("W");
    content.y.include_zero = true;
    content.description = tr("Mean load between register readings against hours since the start");
    content.key = tr("Steps: mean load from one register reading to the next. Diamonds: power on the meter. Triangles: power on the unit's display.");
    content.empty_text = tr("No load yet: it follows from two readings of the meter's register.");
    ChartSeries load = series_of("load", tr("mean load"), CurveColour::delivered, Marker::circle);
    load.steps = true;
    const auto steps = load_steps(analysis.energy.track, record.run.end);
    // A step stands for the reading at its end, where the table shows its load too.
    for (const LoadStep& step : steps) builder.add(load, builder.hours(step.from_ms), step.mean_w, step.to_reading);
    if (!steps.empty()) builder.add(load, builder.hours(steps.back().to_ms), steps.back().mean_w, steps.back().to_reading);
    builder.finish(std::move(load));
    builder.finish(noted_power(builder, record, &ReadingValues::meter_w, series_of("meter_w", tr("meter"), CurveColour::good, Marker::diamond)));
    builder.finish(noted_power(builder, record, &ReadingValues::display_w,
                               series_of("display_w", tr("unit's display"), CurveColour::vermilion, Marker::triangle)));
    return builder.chart;
}

} // namespace ullage
