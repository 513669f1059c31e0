// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/commands.h"

#include "base/version.h"
#include "exchange/table_unicode.h"
#include "text/command_parts.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <array>
#include <ostream>

namespace ullage {

namespace {

constexpr std::array<std::string_view, 8> first_arguments{"import", "analyse", "compare", "export-readings", "export-sheet",
                                                          "--version", "--help", "-h"};

struct Arguments {
    ImportArguments import;
    AnalyseArguments analyse;
    CompareArguments compare;
    ReadingsArguments readings;
    ExportSheetArguments export_sheet;
};

constexpr const char* runs_help = "logbook, run sheet (.csv), or folder of run sheets";

void add_import(CLI::App& app, ImportArguments& arguments) {
    CLI::App* command = app.add_subcommand("import", "Bring run sheets into a logbook, made when missing");
    command->add_option("LOGBOOK", arguments.logbook, "logbook file")->required();
    command->add_option("SHEET", arguments.sheets, "run sheets, each whole or not at all")->required();
}

void add_analyse(CLI::App& app, AnalyseArguments& arguments) {
    CLI::App* command =
        app.add_subcommand("analyse", "Say what each run shows, and when one still running should end (as of its last reading)");
    command->add_option("LOGBOOK", arguments.logbook, runs_help)->required();
    command->add_option("--unit", arguments.unit, "only runs of this unit");
    command->add_option("--run", arguments.run, "only this run of the unit")->check(CLI::PositiveNumber);
    command->add_option("--format", arguments.format, "text or json")->check(CLI::IsMember({"text", "json"}));
}

void add_output(CLI::App& command, TableOutput& output) {
    command.add_option("--format", output.format, "text, csv, markdown, html, xlsx, json or latex")->check(CLI::IsMember(table_format_names()));
    command.add_option("--output", output.path, "file to write; its ending chooses the format where none is given");
}

void add_compare(CLI::App& app, CompareArguments& arguments) {
    CLI::App* command = app.add_subcommand("compare", "Compare the units of one or several logbooks, as tested or at one load");
    command->add_option("LOGBOOK", arguments.sources, "logbooks, run sheets (.csv) and folders of run sheets, one or several")->required();
    command->add_flag("--every-drain", arguments.every_drain, "a row for each drain instead of one for each unit");
    auto* load = command->add_option("--at-load", arguments.at_load_w, "common load, W: units are moved to it where their drains allow")
                     ->check(CLI::PositiveNumber);
    command->add_option("--duty", arguments.duty_percent, "share of the time that the load is on, %")->check(CLI::Range(0.1, 100.0))->needs(load);
    command->add_flag("--pairs", arguments.pairs, "the differences between units: resolved by these meters or not");
    command->add_option("--columns", arguments.columns, "keys of the columns wanted, in order")->delimiter(',')->allow_extra_args(false);
    command->add_option("--maker", arguments.makers, "only units of this maker")->allow_extra_args(false);
    command->add_option("--least-wh", arguments.least_wh, "only units rated at this or more, Wh");
    command->add_option("--most-wh", arguments.most_wh, "only units rated at this or less, Wh");
    add_output(*command, arguments.output);
}

void add_readings(CLI::App& app, ReadingsArguments& arguments) {
    CLI::App* command = app.add_subcommand("export-readings", "Write the readings of one run or of all runs as a table");
    command->add_option("LOGBOOK", arguments.logbook, runs_help)->required();
    command->add_option("--unit", arguments.unit, "only runs of this unit");
    command->add_option("--run", arguments.run, "only this run of the unit")->check(CLI::PositiveNumber);
    command->add_flag("--intervals", arguments.intervals, "the intervals between readings instead of the readings");
    add_output(*command, arguments.output);
}

void add_export_sheet(CLI::App& app, ExportSheetArguments& arguments) {
    CLI::App* command = app.add_subcommand("export-sheet", "Write one run as a run sheet");
    command->add_option("LOGBOOK", arguments.logbook, runs_help)->required();
    command->add_option("--unit", arguments.unit, "name of the unit")->required();
    command->add_option("--run", arguments.run, "number of the run")->required()->check(CLI::PositiveNumber);
    command->add_option("--output", arguments.output, "file to write");
}

int usage_problem(std::ostream& err, const std::string& what) {
    err << "ullage: " << one_line(what) << "; see ullage --help\n";
    return exit_usage;
}

} // namespace

bool is_text_command(std::string_view first_argument) {
    return std::ranges::find(first_arguments, first_argument) != first_arguments.end();
}

int run_text_command(std::span<const std::string> args, std::ostream& out, std::ostream& err) {
    CLI::App app("Ullage: what a storage unit delivers, against what its label and its gauge say", "ullage");
    app.set_version_flag("--version", "ullage " + std::string(program_version()));
    app.footer("With drawings: ullage pictures, ullage report; each has a --help of its own.");
    app.require_subcommand(1);
    Arguments arguments;
    add_import(app, arguments.import);
    add_analyse(app, arguments.analyse);
    add_compare(app, arguments.compare);
    add_readings(app, arguments.readings);
    add_export_sheet(app, arguments.export_sheet);
    try {
        app.parse(std::vector<std::string>(args.rbegin(), args.rend())); // the library takes them from the back
    } catch (const CLI::CallForHelp&) {
        const auto chosen = app.get_subcommands();
        return print(chosen.empty() ? app.help() : chosen.front()->help(), out, err);
    } catch (const CLI::CallForVersion& version) {
        return print(std::string(version.what()) + '\n', out, err);
    } catch (const CLI::ParseError& error) {
        return usage_problem(err, error.what());
    }
    if (app.got_subcommand("import")) return import_command(arguments.import, out, err);
    if (app.got_subcommand("analyse")) return analyse_command(arguments.analyse, out, err);
    if (app.got_subcommand("compare")) return compare_command(arguments.compare, out, err);
    if (app.got_subcommand("export-readings")) return readings_command(arguments.readings, out, err);
    return export_sheet_command(arguments.export_sheet, out, err);
}

} // namespace ullage
