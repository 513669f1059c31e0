// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/comparison_table.h"
#include "exchange/table_unicode.h"
#include "fleet/curve_projection.h"
#include "text/analysis_text.h"
#include "text/claims_text.h"
#include "text/command_parts.h"
#include "text/commands.h"
#include "text/forecast_text.h"
#include "text/runs_source.h"
#include "text/trace_text.h"
#include "text/unit_text.h"

#include <algorithm>
#include <ostream>

namespace ullage {

namespace {

/// The units of the chosen runs, each from all its runs: what one run says of its losses rests on the others too.
std::vector<UnitAnalysis> units_of(const std::vector<RunRecord>& chosen, std::vector<RunRecord> all) {
    std::erase_if(all, [&chosen](const RunRecord& record) {
        return std::ranges::none_of(chosen, [&record](const RunRecord& each) { return each.unit.uuid == record.unit.uuid; });
    });
    return analyse_units(all);
}

std::optional<EnergyPrice> price_of(const Unit& unit, const AnalyseArguments& arguments) {
    if (!arguments.kwh_price) return std::nullopt;
    return EnergyPrice{*arguments.kwh_price, unit.currency};
}

UnitClaims claims_of(const UnitAnalysis& unit, std::vector<RunRecord> records, const std::optional<EnergyPrice>& price) {
    std::erase_if(records, [&unit](const RunRecord& record) { return record.unit.uuid != unit.unit.uuid; });
    return check_claims(unit.unit, records, unit.fit, price);
}

} // namespace

int analyse_command(const AnalyseArguments& arguments, std::ostream& out, std::ostream& err) {
    std::vector<std::string> notices;
    const Result<OpenedSource> source = OpenedSource::open(arguments.logbook, notices);
    if (!source) return refuse(err, source.error());
    Result<std::vector<RunRecord>> records = source.value().runs();
    if (!records) return refuse(err, records.error());
    const std::vector<RunRecord> all = records.value();
    const Result<std::vector<RunRecord>> chosen = chosen_runs(std::move(records).value(), arguments.unit, arguments.run);
    if (!chosen) return refuse(err, chosen.error());
    const auto loads = source.value().loads(chosen.value());
    if (!loads) return refuse(err, loads.error());
    for (const std::string& notice : notices) err << "ullage: " << one_line(notice) << '\n';
    std::vector<RunAnalysis> analyses;
    for (const RunRecord& record : chosen.value()) analyses.push_back(analyse_run(record));
    const std::vector<UnitAnalysis> units = units_of(chosen.value(), all);
    for (std::size_t r = 0; r < analyses.size(); ++r)
        for (const UnitAnalysis& unit : units)
            if (unit.unit.uuid == chosen.value()[r].unit.uuid) project_through_curve(chosen.value()[r], unit.fit, analyses[r]);
    std::vector<UnitClaims> claims;
    for (const UnitAnalysis& unit : units) claims.push_back(claims_of(unit, all, price_of(unit.unit, arguments)));
    if (arguments.format == "json") return print(analyses_json(chosen.value(), analyses, units, claims, loads.value()), out, err);
    if (analyses.empty()) return print("There are no runs yet. Add one with: ullage import LOGBOOK SHEET\n", out, err);
    std::string text;
    for (std::size_t u = 0; u < units.size(); ++u) {
        const UnitAnalysis& unit = units[u];
        for (std::size_t r = 0; r < analyses.size(); ++r) {
            const RunRecord& record = chosen.value()[r];
            if (record.unit.uuid != unit.unit.uuid) continue;
            if (!text.empty()) text += '\n';
            text += analysis_text(record, analyses[r], split_losses(record, analyses[r], unit.fit)) + tested_text(record, analyses[r].energy);
            if (loads.value()[r]) text += load_text(*loads.value()[r]);
            if (record.run.end == RunEnd::still_running)
                text += forecast_text(forecast_at_last_reading(record, analyses[r].energy, unit.fit), record.run.time_zone);
        }
        if (!arguments.run) text += '\n' + unit_text(unit) + unit_claims_text(claims[u], price_of(unit.unit, arguments));
    }
    return print(text, out, err);
}

} // namespace ullage
