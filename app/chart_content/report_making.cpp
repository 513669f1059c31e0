// SPDX-License-Identifier: GPL-3.0-or-later
#include "chart_content/report_making.h"

#include "chart_content/comparison_overlays.h"
#include "chart_content/pv_chart.h"
#include "chart_content/run_charts.h"
#include "chart_content/sizing_chart.h"
#include "chart_content/unit_charts.h"
#include "formats/report/report_numbers.h"
#include "style/numbers.h"
#include "style/words.h"
#include "unit/loss_split.h"

#include <algorithm>

namespace ullage {

namespace {

/// Texts of the program within drawings, in the reader's form of numbers.
class InForm {
public:
    explicit InForm(const ReportOptions& options) { form_.decimal_sign = options.decimal_sign; }

    void operator()(ChartContent& chart) const {
        for (ChartHorizontalLine& line : chart.horizontal_lines) put(line.label);
    }
    void operator()(BarContent& bars) const {
        for (ChartBar& bar : bars.bars) put(bar.value_text);
        for (ChartHorizontalBand& band : bars.bands) put(band.label);
    }
    void operator()(PhotoContent&) const {}
    void operator()(VesselRowContent& row) const {
        for (VesselColumn& column : row.columns) put(column.value_text);
    }

private:
    void put(QString& text) const { text = raw_text(form_.apply(utf8_of(text))); }

    NumberForm form_;
};

bool has_points(const ChartContent& chart) {
    return std::any_of(chart.series.begin(), chart.series.end(), [](const ChartSeries& series) { return !series.points.empty(); });
}

void add(ReportPictures& pictures, std::string key, PictureContent content, const ReportOptions& options) {
    std::visit(InForm(options), content);
    pictures.insert_or_assign(std::move(key), std::move(content));
}

void add_run_charts(ReportPictures& pictures, const ReportedRun& run, const UnitFit& unit_fit, const ReportOptions& options) {
    const auto chart = [&](const char* what, RunChart made) {
        if (has_points(made.content)) add(pictures, report_picture_key(what, run.record->run.uuid.text()), std::move(made.content), options);
    };
    chart("energy", energy_chart(*run.record, *run.analysis));
    chart("gauge_error", gauge_error_picture(*run.record, *run.analysis, unit_fit));
    chart("load", load_chart(*run.record, *run.analysis));
}

VesselRowContent run_vessel(const ReportedRun& run, const UnitFit& unit_fit) {
    const RunRecord& record = *run.record;
    const Quantity& delivered = run.analysis->energy.delivered_wh;
    VesselColumn column;
    column.name = text_of(record.unit.name);
    column.value_text = shown_quantity(delivered, 0).plain();
    column.vessel.rated_wh = record.unit.rated_energy_wh.value_or(0);
    column.vessel.delivered_wh = delivered.value;
    column.vessel.lower_wh = delivered.lower;
    column.vessel.upper_wh = delivered.upper;
    column.vessel.no_load_taken_wh = split_losses(record, *run.analysis, unit_fit).no_load_taken_wh.value;
    column.vessel.band_lower_fraction = expected_lower_fraction;
    column.vessel.band_upper_fraction = expected_upper_fraction;
    VesselRowContent content;
    content.columns.push_back(std::move(column));
    return content;
}

} // namespace

MadeReport make_run_report(const ReportedRun& run, const UnitFit& unit_fit, const ReportOptions& options) {
    MadeReport made{run_report(run, unit_fit, options), {}};
    if (run.record->run.kind == RunKind::drain || run.record->run.kind == RunKind::no_load_drain)
        add(made.pictures, report_picture_key("vessel", run.record->run.uuid.text()), run_vessel(run, unit_fit), options);
    add_run_charts(made.pictures, run, unit_fit, options);
    return made;
}

MadeReport make_unit_report(const ReportedUnit& unit, const UnitReportChoice& choice, const std::map<PhotoId, QImage>& photos,
                            const ReportOptions& options) {
    MadeReport made{unit_report(unit, choice, options), {}};
    const UnitAnalysis& analysis = *unit.analysis;
    const std::string& uuid = analysis.unit.uuid.text();
    std::map<RunId, const RunAnalysis*> analysis_of;
    UnitRuns records;
    for (const ReportedRun& run : unit.runs) {
        analysis_of[run.record->run.uuid] = run.analysis;
        records.push_back(run.record);
        add_run_charts(made.pictures, run, analysis.fit, options);
    }
    const Comparison one = compare_as_tested(records, CompareRows::one_per_unit, analysis.fit.options);
    if (!one.rows.empty() && analysis.unit.rated_energy_wh)
        add(made.pictures, report_picture_key("vessel", uuid), comparison_vessels(one, compare_at(one, std::nullopt), {}), options);
    const auto chart = [&](const char* key, ChartContent content) {
        if (has_points(content)) add(made.pictures, report_picture_key(key, uuid), std::move(content), options);
    };
    const std::vector<MeasuredDrain> drains =
        measured_drains(analysis.fit, [&](const RunId& run) -> const EnergyAnalysis& { return analysis_of.at(run)->energy; });
    chart(report_usable_key, usable_chart(analysis.fit, analysis.unit, drains, std::nullopt));
    chart(report_run_time_key, run_time_chart(analysis.fit, analysis.unit, drains, std::nullopt));
    const Comparison every = compare_as_tested(records, CompareRows::every_drain, analysis.fit.options);
    chart(report_gauge_overlay_key, gauge_error_overlay(every, [&](const RunId& run) -> const RunAnalysis& { return *analysis_of.at(run); }));
    if (analysis.gauge_drift.lead) chart(report_gauge_drift_key, gauge_drift_chart(analysis.fit, analysis.gauge_drift));
    for (const auto& [photo, image] : photos) made.pictures.insert_or_assign(photo.text(), PhotoContent{image, {}});
    return made;
}

MadeReport make_comparison_report(const Comparison& comparison, const FairComparison& fair, const std::vector<ReportedRun>& runs,
                                  const std::vector<UnitAnalysis>& units, const ReportOptions& options, const ExpectationBand& band) {
    MadeReport made{comparison_report(comparison, fair, runs, units, options), {}};
    if (!comparison.rows.empty()) {
        add(made.pictures, std::string(report_vessels_key), comparison_vessels(comparison, fair, band), options);
        add(made.pictures, std::string(report_bars_key), comparison_bars(comparison, fair, band), options);
    }
    const auto overlay = [&](std::string_view key, ChartContent content) {
        if (has_points(content)) add(made.pictures, std::string(key), std::move(content), options);
    };
    overlay(report_against_load_key, fraction_overlay(comparison, fair));
    std::map<RunId, const RunAnalysis*> analysis_of;
    for (const ReportedRun& run : runs) analysis_of[run.record->run.uuid] = run.analysis;
    overlay(report_gauge_errors_key, gauge_error_overlay(comparison, [&](const RunId& run) -> const RunAnalysis& { return *analysis_of.at(run); }));
    for (const ReportedRun& run : runs) {
        const auto unit = std::ranges::find(units, run.record->unit.uuid, [](const UnitAnalysis& each) { return each.unit.uuid; });
        add_run_charts(made.pictures, run, unit == units.end() ? UnitFit() : unit->fit, options);
    }
    return made;
}

MadeReport make_sizing_report_of(const Sizing& sizing, const ReportOptions& options) {
    MadeReport made{sizing_report(sizing, options), {}};
    for (std::size_t unit = 0; unit < sizing.units.size(); ++unit)
        if (sizing.courses[unit])
            add(made.pictures, report_picture_key("course", sizing.units[unit].unit.uuid.text()), sizing_chart(sizing, unit), options);
    return made;
}

MadeReport make_pv_report_of(const PvSheetText& sheet, const ReportOptions& options) {
    const PvCheck check = check_pv(sheet);
    MadeReport made{pv_report(sheet, check, options), {}};
    if (ChartContent chart = pv_chart(sheet.sheet, sheet.limits, check); has_points(chart))
        add(made.pictures, std::string(report_pv_key), std::move(chart), options);
    return made;
}

} // namespace ullage
