// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/results/comparison_table.h"

#include "base/version.h"
#include "formats/json/forecast_json.h"
#include "formats/json/quantity_json.h"
#include "formats/json/unit_analysis_json.h"
#include "formats/results/claims_output.h"
#include "formats/results/meters_in_series_output.h"
#include "unit/loss_split.h"

#include <algorithm>

namespace ullage {

namespace {

/// {uuid, time}; the time is null for a reading that the record does not hold.
Json reading_json(const RunRecord& record, const ReadingId& uuid) {
    const auto at = std::ranges::find(record.readings, uuid, &Reading::uuid);
    Json json{{"uuid", uuid.text()}, {"time", nullptr}};
    if (at != record.readings.end()) json["time"] = format_iso8601(at->values.time_ms, record.run.time_zone);
    return json;
}

Json quantities_json(const RunRecord& record, const std::vector<Quantity>& quantities) {
    Json list = Json::array();
    for (const Quantity& quantity : quantities) {
        Json json{{"key", quantity.key}, {"unit_label", record.unit.name}, {"run", record.number}};
        json.update(quantity_json(quantity));
        list.push_back(std::move(json));
    }
    return list;
}

Json findings_json(const RunRecord& record, const std::vector<Finding>& findings) {
    Json list = Json::array();
    for (const Finding& finding : findings) {
        Json readings = Json::array();
        for (const ReadingId& uuid : finding.readings) readings.push_back(reading_json(record, uuid));
        list.push_back({{"kind", std::string(finding_key(finding.kind))},
                        {"weight", std::string(weight_text(finding.weight))},
                        {"sentence", finding.sentence},
                        {"evidence", finding.evidence},
                        {"readings", std::move(readings)},
                        {"size", number_json(finding.size)},
                        {"size_unit", finding.size_unit},
                        {"statistic_name", finding.statistic_name},
                        {"statistic", number_json(finding.statistic)},
                        {"threshold", number_json(finding.threshold)}});
    }
    return list;
}

Json register_corrections_json(const RunRecord& record, const std::vector<RegisterCorrection>& register_corrections) {
    Json list = Json::array();
    for (const RegisterCorrection& register_correction : register_corrections)
        list.push_back({{"kind", std::string(register_correction_text(register_correction.kind))},
                        {"reading", reading_json(record, register_correction.reading_uuid)},
                        {"reason", register_correction.reason},
                        {"missing_wh", number_json(register_correction.missing_wh)}});
    return list;
}

Json budget_json(const Budget& budget) {
    Json lines = Json::array();
    for (const BudgetLine& line : budget.lines)
        lines.push_back({{"source", line.source},
                         {"shape", line.shape},
                         {"correlation", line.correlation},
                         {"evaluation", line.evaluation},
                         {"degrees_of_freedom", number_json(line.degrees_of_freedom)},
                         {"input_u", number_json(line.input_u)},
                         {"input_unit", line.input_unit},
                         {"sensitivity_wh", number_json(line.sensitivity)},
                         {"standard_wh", number_json(line.standard_wh)},
                         {"share", number_json(line.share)}});
    return {{"lines", std::move(lines)},
            {"combined_standard_wh", number_json(budget.combined_standard_wh)},
            {"half_width_wh", number_json(budget.half_width_wh)},
            {"coverage_factor", number_json(budget.coverage_factor)},
            {"effective_degrees_of_freedom", number_json(budget.effective_degrees_of_freedom)},
            {"half_width_method", budget.half_width_method}};
}

Json loss_split_json(const RunRecord& record, const LossSplit& split) {
    return {{"quantities", quantities_json(record, {split.undelivered_wh, split.no_load_taken_wh, split.rest_wh})}, {"sentence", split.sentence}};
}

/// As of the last reading; null for a run that has ended.
Json open_run_json(const RunRecord& record, const RunAnalysis& analysis, const UnitFit& unit_fit) {
    if (record.run.end != RunEnd::still_running) return nullptr;
    return forecast_json(forecast_at_last_reading(record, analysis.energy, unit_fit, unit_fit.options), record.run.time_zone);
}

bool tests_output(const Run& run) { return run.kind == RunKind::sustained_output || run.kind == RunKind::peak_output; }

Json load_json(const std::optional<LoadStatistics>& load) {
    if (!load) return nullptr;
    Json json{{"mean_w", load->mean_w},
              {"peak_w", load->peak_w},
              {"covered_h", load->covered_h},
              {"energy_wh", load->energy_wh},
              {"square_w2h", load->square_w2h},
              {"daily_wh", load->daily_wh},
              {"register_wh", nullptr},
              {"cycle", nullptr},
              {"gaps", load->gaps},
              {"gap_h", load->gap_h},
              {"gap_most_wh", load->gap_most_wh}};
    if (load->register_wh) json["register_wh"] = *load->register_wh;
    if (load->cycle)
        json["cycle"] = {{"on_w", load->cycle->on_w},
                         {"off_w", load->cycle->off_w},
                         {"duty", load->cycle->duty},
                         {"starts_per_hour", load->cycle->starts_per_hour}};
    return json;
}

Json gauge_log_json(const RunRecord& record, const EnergyAnalysis& energy) {
    if (!energy.gauge_log || !record.gauge_log) return nullptr;
    const GaugeLogUse& use = *energy.gauge_log;
    return {{"used", use.used},
            {"samples", record.gauge_log->samples},
            {"doubted", record.gauge_log->doubted},
            {"steps", use.steps},
            {"compared", use.compared},
            {"agreeing", use.agreeing},
            {"clock_half_s", number_json(use.clock_half_s)},
            {"sentence", use.sentence}};
}

/// Where the log of another meter stood in.
Json taken_over_json(const RunRecord& record, const RegisterTrack& track) {
    Json list = Json::array();
    if (!track.log) return list;
    for (const TakenOver& taken : track.log->taken_over)
        list.push_back({{"meter", taken.name},
                        {"from", format_iso8601(taken.from_ms, record.run.time_zone)},
                        {"to", format_iso8601(taken.to_ms, record.run.time_zone)},
                        {"delivered_wh", number_json(taken.part.delivered_wh)}});
    return list;
}

Json run_json(const RunRecord& record, const RunAnalysis& analysis, const UnitFit& unit_fit, const std::optional<LoadStatistics>& load) {
    return {{"unit", record.unit.name},
            {"run", record.number},
            {"title", run_title(record, analysis.energy)},
            {"kind", std::string(run_kind_text(record.run.kind))},
            {"ended", std::string(run_end_text(record.run.end))},
            {"quantities", quantities_json(record, analysis.quantities)},
            {"gauge_verdict", analysis.gauge.verdict},
            {"gauge_sharpening", analysis.gauge.sharpening},
            {"findings", findings_json(record, analysis.gauge.findings)},
            {"log_sentence", analysis.energy.log_sentence},
            {"gauge_log", gauge_log_json(record, analysis.energy)},
            {"taken_over", taken_over_json(record, analysis.energy.track)},
            {"meter_remarks", analysis.energy.meter_remarks},
            {"register_corrections", register_corrections_json(record, analysis.energy.track.register_corrections)},
            {"budget", budget_json(analysis.energy.budget)},
            {"loss_split", loss_split_json(record, split_losses(record, analysis, unit_fit))},
            {"forecast", open_run_json(record, analysis, unit_fit)},
            {"accounts", accounts_json(two_accounts(record, analysis.energy, unit_fit, unit_fit.options), record.run.time_zone)},
            {"load_by_trace", load_json(load)},
            {"losses_sentence", analysis.gauge.losses.sentence},
            {"least_gauge_error_sentence", analysis.gauge.feasibility.sentence},
            {"charge", record.run.kind == RunKind::charge ? charge_json(record.run, analyse_charge(record, analysis.energy)) : Json(nullptr)},
            {"output", tests_output(record.run) ? output_json(analyse_output(record, analysis.energy)) : Json(nullptr)}};
}

} // namespace

std::string analyses_json(const Casebook& casebook, const std::vector<RunId>& run_uuids, const std::optional<double>& price_per_kwh,
                          const std::vector<std::optional<LoadStatistics>>& loads) {
    Json json{{"program", "ullage"},
              {"version", std::string(program_version())},
              {"format_version", json_format_version},
              {"runs", Json::array()},
              {"units", Json::array()},
              {"meters_in_series", nullptr}};
    std::vector<UnitId> units; // in order of first appearance
    for (std::size_t r = 0; r < run_uuids.size(); ++r) {
        const auto record = casebook.run(run_uuids[r]);
        json["runs"].push_back(
            run_json(*record, *casebook.analysis(run_uuids[r]), *casebook.fit(record->unit.uuid), r < loads.size() ? loads[r] : std::nullopt));
        if (std::ranges::find(units, record->unit.uuid) == units.end()) units.push_back(record->unit.uuid);
    }
    for (const UnitId& uuid : units) {
        const auto analysis = casebook.unit_analysis(uuid);
        Json unit = unit_analysis_json(*analysis);
        std::optional<EnergyPrice> price;
        if (price_per_kwh) price = EnergyPrice{*price_per_kwh, analysis->unit.currency};
        unit["claims"] = unit_claims_json(*casebook.claims(uuid, price));
        json["units"].push_back(std::move(unit));
    }
    SharedRuns runs;
    for (const RunId& uuid : run_uuids) runs.push_back(casebook.run(uuid));
    json["meters_in_series"] = meters_in_series_json(meters_in_series(addresses_of(runs)));
    return json_text(json);
}

} // namespace ullage
