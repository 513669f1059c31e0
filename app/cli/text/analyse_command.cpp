// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/analysis_text.h"
#include "cli/text/claims_text.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/forecast_text.h"
#include "cli/text/runs_source.h"
#include "cli/text/trace_text.h"
#include "cli/text/unit_text.h"
#include "formats/results/comparison_table.h"
#include "formats/results/meters_in_series_output.h"
#include "formats/text/table_unicode.h"
#include "formats/text/text_lines.h"

#include <algorithm>
#include <ostream>
#include <utility>

namespace ullage {

namespace {

std::optional<EnergyPrice> price_of(const Unit& unit, const AnalyseArguments& arguments) {
    if (!arguments.kwh_price) return std::nullopt;
    return EnergyPrice{*arguments.kwh_price, unit.currency};
}

/// The chosen runs, those of a unit together, and what their traces say of the load.
struct Chosen {
    std::vector<RunId> run_uuids;
    std::vector<std::optional<LoadStatistics>> loads;
};

std::string text_of(const Casebook& casebook, const Chosen& chosen, const AnalyseArguments& arguments) {
    std::string text;
    for (std::size_t r = 0; r < chosen.run_uuids.size(); ++r) {
        const auto record = casebook.run(chosen.run_uuids[r]);
        const auto analysis = casebook.analysis(record->run.uuid);
        const UnitId& unit_uuid = record->unit.uuid;
        if (!text.empty()) text += '\n';
        text +=
            analysis_text(*record, *analysis, split_losses(*record, *analysis, *casebook.fit(unit_uuid))) + tested_text(*record, analysis->energy);
        if (chosen.loads[r]) text += load_text(*chosen.loads[r]);
        if (record->run.end == RunEnd::still_running)
            text += forecast_text(*casebook.forecast_at_last_reading(record->run.uuid), record->run.time_zone);
        text += accounts_text(*casebook.accounts(record->run.uuid), record->run);
        const bool last_of_unit = r + 1 == chosen.run_uuids.size() || casebook.run(chosen.run_uuids[r + 1])->unit.uuid != unit_uuid;
        if (!last_of_unit || arguments.run) continue;
        const std::optional<EnergyPrice> price = price_of(record->unit, arguments);
        text += '\n' + unit_text(*casebook.unit_analysis(unit_uuid)) + unit_claims_text(*casebook.claims(unit_uuid, price), price);
    }
    SharedRuns runs;
    for (const RunId& uuid : chosen.run_uuids) runs.push_back(casebook.run(uuid));
    text += meters_in_series_text(meters_in_series(addresses_of(runs)));
    return text;
}

} // namespace

int analyse_command(const AnalyseArguments& arguments, std::ostream& out, std::ostream& err) {
    std::vector<Message> notices;
    Casebook casebook;
    Chosen chosen;
    { // The logbook, which may be as large as its runs, is let go before they are analysed.
        const Result<OpenedSource> source = OpenedSource::open(arguments.logbook, notices);
        if (!source) return refuse(err, source.error());
        Result<std::vector<RunRecord>> records = source.value().runs();
        if (!records) return refuse(err, records.error());
        const Result<MeasureOptions> method = source.value().method();
        if (!method) return refuse(err, method.error());
        casebook.set_options(method.value());
        casebook.set_runs(shared(std::move(records).value()));
        const SharedRuns all = casebook.runs();
        const Result<UnitRuns> runs = chosen_runs(addresses_of(all), arguments.unit, arguments.run);
        if (!runs) return refuse(err, runs.error());
        std::vector<UnitId> units; // in order of first appearance
        for (const RunRecord* run : runs.value())
            if (std::ranges::find(units, run->unit.uuid) == units.end()) units.push_back(run->unit.uuid);
        SharedRuns needed; // what one run says of its losses rests on the others of its unit too
        for (const UnitId& unit : units)
            for (const auto& run : casebook.runs_of(unit)) {
                needed.push_back(run);
                if (std::ranges::find(runs.value(), run.get()) == runs.value().end()) continue;
                const Result<std::optional<LoadStatistics>> load = source.value().load(*run);
                if (!load) return refuse(err, load.error());
                chosen.run_uuids.push_back(run->run.uuid);
                chosen.loads.push_back(load.value());
            }
        // How drains repeat is told by all of them, not only by those that are shown.
        casebook.set_options(casebook.options());
        casebook.set_runs(std::move(needed));
    }
    tell(err, notices);
    if (arguments.format == "json") return print(analyses_json(casebook, chosen.run_uuids, arguments.kwh_price, chosen.loads), out, err);
    if (chosen.run_uuids.empty())
        return print(line_of(say(phrase("commands", "There are no runs yet. Add one with: ullage import LOGBOOK SHEET"))), out, err);
    return print(fitted_lines(text_of(casebook, chosen, arguments)), out, err);
}

} // namespace ullage
