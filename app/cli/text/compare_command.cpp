// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/load_lists_source.h"
#include "cli/text/runs_source.h"
#include "formats/results/comparison_table.h"
#include "formats/text/table_unicode.h"
#include "model/tags.h"
#include "sizing/load_totals.h"

#include <algorithm>
#include <filesystem>
#include <iterator>
#include <optional>
#include <ostream>
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
        return Error{Failure::not_found, "run sheets hold no load lists", arguments.load_list,
                     "name a logbook that has it, or a file of a load list (.csv)"};
    return load_list_named(known, arguments.load_list, "--load-list");
}

} // namespace

int compare_command(const CompareArguments& arguments, std::ostream& out, std::ostream& err) {
    const Result<TableFormat> format = asked_format(arguments.output);
    if (!format) {
        (void)refuse(err, format.error());
        return exit_usage;
    }
    std::vector<std::string> notices;
    Result<SourcedRuns> runs = runs_from_all(arguments.sources, notices);
    if (!runs) return refuse(err, runs.error());
    std::erase_if(runs.value().records, [&](const RunRecord& record) { return !wanted(record.unit, arguments); });
    for (const std::string& notice : notices) err << "ullage: " << one_line(notice) << '\n';
    const CompareRows rows = arguments.every_drain ? CompareRows::every_drain : CompareRows::one_per_unit;
    Comparison comparison = compare_as_tested(runs.value().records, rows, runs.value().method);
    name_sources(comparison, rows, runs.value().source_of);
    std::optional<CommonLoad> load;
    if (!arguments.load_list.empty()) {
        const Result<LoadList> list = asked_load_list(arguments, runs.value().load_lists);
        if (!list) return refuse(err, list.error());
        load = common_load_of(list.value());
        if (!load)
            return refuse(
                err, {Failure::bad_input, "the load list takes nothing", list.value().name, "give it appliances, or name a load with --at-load"});
    }
    if (arguments.at_load_w) load = CommonLoad{*arguments.at_load_w, arguments.duty_percent / 100, {}};
    const FairComparison fair = compare_at(comparison, load);
    const auto figure = std::ranges::find(all_pair_figures, arguments.pairs_of, pair_figure_key);
    const PairFigure pairs_of = figure == std::end(all_pair_figures) ? PairFigure::usable_fraction : *figure;
    Table table = arguments.by_model ? models_table(comparison, fair)
                  : arguments.pairs  ? pairs_table(comparison, fair, pairs_of)
                                     : comparison_table(comparison, fair);
    if (!arguments.columns.empty()) {
        Result<Table> chosen = with_columns(table, arguments.columns);
        if (!chosen) {
            (void)refuse(err, chosen.error());
            return exit_usage;
        }
        table = std::move(chosen.value());
    } else {
        table = without_unused(table);
    }
    std::vector<std::string> inputs = arguments.sources;
    inputs.push_back(arguments.load_list);
    return put_table(table, format.value(), arguments.output, std::move(inputs), out, err);
}

} // namespace ullage
