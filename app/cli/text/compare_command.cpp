// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/load_lists_source.h"
#include "cli/text/runs_source.h"
#include "comparison/fair_comparison.h"
#include "formats/results/comparison_columns.h"
#include "formats/results/comparison_table.h"
#include "formats/text/table_unicode.h"
#include "model/tags.h"
#include "sizing/load_totals.h"

#include <algorithm>
#include <filesystem>
#include <iterator>
#include <map>
#include <optional>
#include <ostream>
#include <set>
#include <utility>

namespace ullage {

namespace {

bool wanted(const Unit& unit, const CompareArguments& arguments) {
    if (!arguments.makers.empty() && !std::ranges::count(arguments.makers, unit.maker)) return false;
    if (!std::ranges::all_of(arguments.tags, [&](const std::string& tag) { return has_tag(unit.tags, tag); })) return false;
    if (arguments.least_wh && unit.rated_energy_wh.value_or(0) < *arguments.least_wh) return false;
    return !arguments.most_wh || (unit.rated_energy_wh && *unit.rated_energy_wh <= *arguments.most_wh);
}

/// A file of a load list, or a list by its name from the first logbook that has it.
Result<LoadList> asked_load_list(const CompareArguments& arguments, const std::vector<LoadList>& known) {
    const auto is_sheet = [](const std::string& path) { return std::filesystem::path(path).extension() == ".csv"; };
    if (is_sheet(arguments.load_list)) return load_list_of_file(arguments.load_list);
    const bool no_logbook =
        std::ranges::all_of(arguments.sources, [&](const std::string& source) { return is_sheet(source) || std::filesystem::is_directory(source); });
    if (no_logbook)
        return Error{Failure::not_found, say(phrase("commands", "run sheets hold no load lists")), arguments.load_list,
                     say(phrase("commands", "name a logbook that has it, or a file of a load list (.csv)"))};
    return load_list_named(known, arguments.load_list, "--load-list");
}

/// The columns that were asked for in a comparison of units, or those for whoever reads the format. Errors: a key or a set that there is not.
Result<Table> with_asked_columns(const Table& table, const CompareArguments& arguments, TableFormat format,
                                 const std::map<std::string, std::string>& sets) {
    const bool for_programs = format == TableFormat::csv || format == TableFormat::json || format == TableFormat::xlsx;
    std::string set(for_programs ? spreadsheet_set : readers_set);
    if (arguments.columns.size() > 1) return with_columns(table, arguments.columns);
    if (!arguments.columns.empty()) set = arguments.columns.front();
    std::optional<std::vector<std::string>> wanted = ready_columns(set);
    if (const auto own = sets.find(set); !wanted && !set.empty() && own != sets.end()) wanted = column_keys_from(own->second);
    if (!wanted) return with_columns(table, arguments.columns);
    Result<Table> chosen = with_columns(table, columns_for(table, *wanted));
    // A workbook has room for both.
    if (chosen && arguments.columns.empty()) chosen.value().for_readers = columns_for(table, *ready_columns(readers_set));
    return chosen;
}

/// What the other tables of the command have.
Result<Table> with_asked_columns(const Table& table, const CompareArguments& arguments) {
    return arguments.columns.empty() ? Result<Table>(table) : with_columns(table, arguments.columns);
}

/// One line for a filter that no unit passes; empty where the sources hold none at all.
Error nothing_left(const CompareArguments& arguments, std::size_t units) {
    std::string named;
    const auto name = [&named](const std::string& option, bool given) {
        if (given) named += (named.empty() ? "" : ", ") + option;
    };
    name("--maker", !arguments.makers.empty());
    name("--tag", !arguments.tags.empty());
    name("--least-wh", arguments.least_wh.has_value());
    name("--most-wh", arguments.most_wh.has_value());
    return {Failure::not_found, say_count(units, phrases("commands", "none of %n units passes the filter", "none of %n unit passes the filter")),
            named, say(phrase("commands", "leave one of these options out, or correct it"))};
}

/// The units that are wanted. Their ranks stay those among all units that were drained; one without a drain is not missed.
Result<std::pair<Comparison, FairComparison>> compared(const CompareArguments& arguments, SourcedRuns& runs, const std::optional<CommonLoad>& load) {
    const auto is_wanted = [&arguments](const Unit& unit) { return wanted(unit, arguments); };
    std::set<UnitId> drained, all, left;
    for (const RunRecord& record : runs.records) {
        all.insert(record.unit.uuid);
        if (record.run.kind == RunKind::drain) drained.insert(record.unit.uuid);
        if (is_wanted(record.unit)) left.insert(record.unit.uuid);
    }
    if (left.empty() && !all.empty()) return nothing_left(arguments, all.size());
    std::erase_if(runs.records, [&](const RunRecord& record) { return !left.contains(record.unit.uuid) && !drained.contains(record.unit.uuid); });
    const CompareRows rows = arguments.every_drain ? CompareRows::every_drain : CompareRows::one_per_unit;
    Comparison comparison = compare_as_tested(runs.records, rows, runs.method);
    name_sources(comparison, rows, runs.source_of);
    FairComparison fair = compare_at(comparison, load);
    if (left.size() < all.size()) keep_ranked_units(comparison, fair, is_wanted);
    return std::pair(std::move(comparison), std::move(fair));
}

} // namespace

int compare_command(const CompareArguments& arguments, std::ostream& out, std::ostream& err) {
    const Result<TableFormat> format = asked_format(arguments.output);
    if (!format) {
        (void)refuse(err, format.error());
        return exit_usage;
    }
    if (arguments.least_wh && arguments.most_wh && *arguments.least_wh > *arguments.most_wh) {
        (void)refuse(err, {Failure::bad_input, say(phrase("commands", "no unit is rated above the least and below the most")),
                           "--least-wh, --most-wh", say(phrase("commands", "exchange the two"))});
        return exit_usage;
    }
    std::vector<Message> notices;
    Result<SourcedRuns> runs = runs_from_all(arguments.sources, notices);
    if (!runs) return refuse(err, runs.error());
    tell(err, notices);
    std::optional<CommonLoad> load;
    if (!arguments.load_list.empty()) {
        const Result<LoadList> list = asked_load_list(arguments, runs.value().load_lists);
        if (!list) return refuse(err, list.error());
        load = common_load_of(list.value());
        if (!load)
            return refuse(err, {Failure::bad_input, say(phrase("commands", "the load list takes nothing")), list.value().name,
                                say(phrase("commands", "give it appliances, or name a load with --at-load"))});
    }
    if (arguments.at_load_w) load = CommonLoad{*arguments.at_load_w, arguments.duty_percent / 100, {}};
    const auto both = compared(arguments, runs.value(), load);
    if (!both) return refuse(err, both.error());
    const auto& [comparison, fair] = both.value();
    const auto figure = std::ranges::find(all_pair_figures, arguments.pairs_of, pair_figure_key);
    const PairFigure pairs_of = figure == std::end(all_pair_figures) ? PairFigure::usable_fraction : *figure;
    const Result<Table> table = arguments.by_model ? with_asked_columns(models_table(comparison, fair), arguments)
                                : arguments.pairs
                                    ? with_asked_columns(pairs_table(comparison, fair, pairs_of), arguments)
                                    : with_asked_columns(comparison_table(comparison, fair), arguments, format.value(), runs.value().column_sets);
    if (!table) {
        (void)refuse(err, table.error());
        return exit_usage;
    }
    std::vector<std::string> inputs = arguments.sources;
    inputs.push_back(arguments.load_list);
    return put_table(table.value(), format.value(), arguments.output, std::move(inputs), out, err);
}

} // namespace ullage
