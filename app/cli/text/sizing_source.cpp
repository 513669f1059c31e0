// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/sizing_source.h"

#include "cli/text/command_parts.h"
#include "cli/text/load_lists_source.h"
#include "cli/text/runs_source.h"
#include "comparison/comparison.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <deque>
#include <filesystem>

namespace ullage {

namespace {

bool is_list_file(const std::string& name) { return std::filesystem::path(name).extension() == ".csv"; }

/// A file of a load list, or the list of this name in the source.
Result<LoadList> asked_list(const OpenedSource& source, const std::string& path, const std::string& name) {
    if (is_list_file(name)) return load_list_of_file(name);
    const Result<std::vector<LoadList>> lists = source.load_lists();
    if (!lists) return lists.error();
    return load_list_named(lists.value(), name, path);
}

} // namespace

Result<Sizing> sizing_from(const std::string& source, const std::string& load_list, const std::string& unit, const SizingChoices& choices,
                           std::vector<Message>& notices) {
    if (const Result<void> good = check(choices); !good) return good.error();
    const Result<OpenedSource> opened = OpenedSource::open(source, notices);
    if (!opened) return opened.error();
    const Result<LoadList> list = asked_list(opened.value(), source, load_list);
    if (!list) return list.error();
    const Result<std::unique_ptr<Casebook>> casebook = opened.value().casebook();
    if (!casebook) return casebook.error();
    Result<std::vector<Unit>> units = opened.value().units();
    if (!units) return units.error();
    if (!unit.empty()) {
        std::vector<std::string> known;
        for (const Unit& each : units.value()) known.push_back(each.name);
        std::erase_if(units.value(), [&](const Unit& each) { return each.name != unit; });
        if (units.value().empty())
            return Error{Failure::not_found, say(phrase("commands", "there is no unit named `%1`"), unit), source,
                         say(phrase("commands", "use one of %1"), say_names(known))};
    }
    const UnitFit without_runs = fit_unit(std::vector<RunRecord>());
    std::deque<UnitClaims> claims;
    std::vector<UnitToSize> to_size;
    for (const Unit& each : units.value()) {
        const auto fit = casebook.value()->fit(each.uuid); // which the casebook keeps
        claims.push_back(casebook.value()->claims(each.uuid).value_or(UnitClaims()));
        to_size.push_back({&each, fit ? fit.get() : &without_runs, &claims.back()});
    }
    return size_for(list.value(), to_size, choices);
}

void add_sizing_options(CLI::App& command, SizingChoices& choices) {
    command.add_option("--autonomy-days", choices.autonomy_days, say(phrase("commands", "days to be carried without sun")));
    command.add_option("--peak-sun-hours", choices.peak_sun_hours, say(phrase("commands", "peak-sun hours a day, of the worst month that counts")));
    command.add_option("--derating", choices.derating, say(phrase("commands", "what is left of the array's label at the battery, 0 to 1")));
    command.add_option("--array-to-load", choices.array_to_load,
                       say(phrase("commands", "array energy over daily load that the rule asks for, 1 or more")));
    command.add_option_function<double>(
        "--array", [&choices](double watts) { choices.array_w = watts; },
        say(phrase("commands", "PV array that is there, W; that of the rule where not given")));
    command
        .add_option_function<std::vector<double>>(
            "--month-sun-hours",
            [&choices](const std::vector<double>& hours) {
                for (std::size_t month = 0; month < std::min(hours.size(), choices.month_sun_hours.size()); ++month)
                    choices.month_sun_hours[month] = hours[month];
            },
            say(phrase("commands", "peak-sun hours a day of the twelve months, January first, with commas")))
        ->delimiter(',')
        ->expected(months_of_year)
        ->allow_extra_args(false);
    command.add_option("--units", choices.units, say(phrase("commands", "units side by side in the course of the charge")));
    command.add_option("--expect-lower", choices.expected_lower,
                       say(phrase("commands", "share of the rated energy expected of untested units, lower end")));
    command.add_option("--expect-upper", choices.expected_upper, say(phrase("commands", "the same, upper end")));
    command.add_option("--inverter-efficiency", choices.inverter_efficiency, say(phrase("commands", "of the battery rule, 0 to 1")));
    command.add_option("--depth", choices.most_depth, say(phrase("commands", "deepest discharge of the battery rule, 0 to 1")));
    command.add_option("--end-of-life", choices.end_of_life, say(phrase("commands", "share of the capacity left at the end of life, 0 to 1")));
    command.add_option("--temperature-factor", choices.temperature_factor, say(phrase("commands", "of the battery rule, 1 or more")));
    command.add_option("--margin", choices.margin, say(phrase("commands", "of the battery rule, 1 to 2")));
}

} // namespace ullage
