// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/comparison_table.h"
#include "exchange/table_unicode.h"
#include "unit/curve_projection.h"
#include "text/analysis_text.h"
#include "text/claims_text.h"
#include "text/command_parts.h"
#include "text/commands.h"
#include "text/forecast_text.h"
#include "text/runs_source.h"
#include "text/trace_text.h"
#include "text/unit_text.h"

#include <map>
#include <ostream>
#include <set>

namespace ullage {

namespace {

std::optional<EnergyPrice> price_of(const Unit& unit, const AnalyseArguments& arguments) {
    if (!arguments.kwh_price) return std::nullopt;
    return EnergyPrice{*arguments.kwh_price, unit.currency};
}

/// The chosen runs and all that is said of them. A run may hold a million readings: none is held twice.
struct Analysed {
    std::vector<RunRecord> records;
    std::vector<RunAnalysis> analyses;            ///< of each record
    std::vector<std::size_t> unit_of;             ///< of each record, into `units`
    std::vector<UnitAnalysis> units;
    std::vector<UnitClaims> claims;               ///< of each unit
};

/// The units of the chosen runs, each from all its runs: what one run says of its losses rests on the others too.
Analysed analysed(std::vector<RunRecord> all, const std::vector<std::size_t>& chosen, const AnalyseArguments& arguments) {
    Analysed result;
    std::map<std::string, std::size_t> place_of_unit;
    for (const std::size_t place : chosen) place_of_unit.emplace(all[place].unit.uuid, 0);
    std::vector<std::vector<RunRecord>> by_unit;
    std::set<std::string> wanted; // runs
    for (const std::size_t place : chosen) wanted.insert(all[place].run.uuid);
    std::set<std::string> met;
    for (RunRecord& record : all) {
        const auto unit = place_of_unit.find(record.unit.uuid);
        if (unit == place_of_unit.end()) continue;
        if (met.insert(record.unit.uuid).second) {
            unit->second = by_unit.size();
            by_unit.emplace_back();
        }
        by_unit[unit->second].push_back(std::move(record));
    }
    for (const std::vector<RunRecord>& runs : by_unit) {
        const Unit& unit = runs.front().unit;
        result.units.push_back(analyse_unit(unit, fit_unit(runs)));
        result.claims.push_back(check_claims(unit, addresses_of(runs), result.units.back().fit, price_of(unit, arguments)));
    }
    for (std::size_t u = 0; u < by_unit.size(); ++u)
        for (RunRecord& record : by_unit[u]) {
            if (!wanted.contains(record.run.uuid)) continue;
            result.unit_of.push_back(u);
            result.records.push_back(std::move(record));
        }
    by_unit.clear();
    for (std::size_t r = 0; r < result.records.size(); ++r) {
        result.analyses.push_back(analyse_run(result.records[r]));
        project_through_curve(result.records[r], result.units[result.unit_of[r]].fit, result.analyses.back());
    }
    return result;
}

} // namespace

int analyse_command(const AnalyseArguments& arguments, std::ostream& out, std::ostream& err) {
    std::vector<std::string> notices;
    std::vector<RunRecord> all;
    std::vector<std::size_t> chosen;
    std::vector<std::optional<LoadStatistics>> loads;
    { // The logbook, which may be as large as its runs, is let go before they are analysed.
        const Result<OpenedSource> source = OpenedSource::open(arguments.logbook, notices);
        if (!source) return refuse(err, source.error());
        Result<std::vector<RunRecord>> records = source.value().runs();
        if (!records) return refuse(err, records.error());
        all = std::move(records).value();
        const Result<std::vector<std::size_t>> places = chosen_places(all, arguments.unit, arguments.run);
        if (!places) return refuse(err, places.error());
        chosen = places.value();
        for (const std::size_t place : chosen) {
            const Result<std::optional<LoadStatistics>> load = source.value().load(all[place]);
            if (!load) return refuse(err, load.error());
            loads.push_back(load.value());
        }
    }
    for (const std::string& notice : notices) err << "ullage: " << one_line(notice) << '\n';
    const Analysed result = analysed(std::move(all), chosen, arguments);
    const auto& [records, analyses, unit_of, units, claims] = result;
    if (arguments.format == "json") return print(analyses_json(records, analyses, units, claims, loads), out, err);
    if (analyses.empty()) return print("There are no runs yet. Add one with: ullage import LOGBOOK SHEET\n", out, err);
    std::string text;
    for (std::size_t r = 0; r < analyses.size(); ++r) {
        const RunRecord& record = records[r];
        const UnitAnalysis& unit = units[unit_of[r]];
        if (!text.empty()) text += '\n';
        text += analysis_text(record, analyses[r], split_losses(record, analyses[r], unit.fit)) + tested_text(record, analyses[r].energy);
        if (loads[r]) text += load_text(*loads[r]);
        if (record.run.end == RunEnd::still_running)
            text += forecast_text(forecast_at_last_reading(record, analyses[r].energy, unit.fit), record.run.time_zone);
        const bool last_of_unit = r + 1 == analyses.size() || unit_of[r + 1] != unit_of[r];
        if (last_of_unit && !arguments.run) text += '\n' + unit_text(unit) + unit_claims_text(claims[unit_of[r]], price_of(unit.unit, arguments));
    }
    return print(text, out, err);
}

} // namespace ullage
