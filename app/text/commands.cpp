// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/commands.h"

#include "base/version.h"
#include "formats/sheets/pv_sheet_text.h"
#include "formats/text/table_unicode.h"
#include "comparison/fair_comparison.h"
#include "text/command_options.h"
#include "text/command_parts.h"
#include "text/sizing_source.h"

#include <CLI/CLI.hpp>

#include <algorithm>
#include <array>
#include <ostream>

namespace ullage {

namespace {

constexpr std::array<std::string_view, 13> first_arguments{"import",   "import-trace", "analyse", "compare", "export-readings", "export-sheet",
                                                           "pv-check", "import-loads", "loads",   "size",    "--version",       "--help",
                                                           "-h"};

struct Arguments {
    ImportArguments import;
    ImportTraceArguments import_trace;
    AnalyseArguments analyse;
    CompareArguments compare;
    ReadingsArguments readings;
    ExportSheetArguments export_sheet;
    PvCheckArguments pv_check;
    ImportLoadsArguments import_loads;
    LoadsArguments loads;
    SizeArguments size;
};

constexpr const char* runs_help = "logbook, run sheet (.csv), or folder of run sheets";

void add_import(CLI::App& app, ImportArguments& arguments) {
    CLI::App* command = app.add_subcommand("import", "Bring run sheets into a logbook, made when missing");
    command->add_option("LOGBOOK", arguments.logbook, "logbook file")->required();
    command->add_option("SHEET", arguments.sheets, "run sheets, each whole or not at all")->required();
}

void add_import_trace(CLI::App& app, ImportTraceArguments& arguments) {
    CLI::App* command = app.add_subcommand("import-trace", "Bring the log of a meter into a run; how it is read is detected and said");
    command->add_option("FILE", arguments.file, "log file: rows of text with a time and a register or power")->required();
    command->add_option("--logbook", arguments.logbook, "logbook file")->required();
    command->add_option("--unit", arguments.unit, "name of the unit");
    command->add_option("--run", arguments.run, "number of the run")->required()->check(above_zero());
    command->add_option("--meter", arguments.meter, "meter that wrote the log; that of the run where not given");
    command->add_option("--map", arguments.map, "columns, counted from 1: time=1,date=2,register=3:kWh,power=4:W,voltage=5:V,current=6:A")
        ->delimiter(',');
    command->add_option("--date-order", arguments.date_order, "day-first, month-first or year-first")
        ->check(CLI::IsMember({"day-first", "month-first", "year-first"}));
    command->add_option("--times", arguments.times, "what h:mm:ss means: clock (time of day) or elapsed")->check(CLI::IsMember({"clock", "elapsed"}));
    command->add_option("--decimal", arguments.decimal, "decimal sign: comma or point")->check(CLI::IsMember({"comma", "point"}));
    command->add_option("--delimiter", arguments.delimiter, "tab, semicolon, bar, comma or blanks")
        ->check(CLI::IsMember({"tab", "semicolon", "bar", "comma", "blanks"}));
    command->add_option("--register-unit", arguments.register_unit, "unit of a register that names none: Wh, kWh or J")
        ->check(CLI::IsMember({"Wh", "kWh", "J"}));
    command->add_option("--zone", arguments.zone, "time zone of times without an offset; that of the run where not given");
    command->add_option("--start", arguments.start, "when the log was started, for times that count from the start or name no date");
    CLI::Option* offset =
        command->add_option("--offset", arguments.offset, "added to the times of the log, [-]h:mm:ss: how far the meter's clock was behind");
    command->add_option("--clock-offset", arguments.clock_offset, "the same in seconds, or `estimate`: from the hand readings of the run")
        ->excludes(offset);
    command->add_option("--gap-limit", arguments.gap_limit_s, "longest time between rows that is no gap, s")->check(above_zero());
    CLI::Option* preview = command->add_flag("--preview", arguments.preview, "say what would be taken, import nothing");
    CLI::Option* follow =
        command->add_flag("--follow", arguments.follow, "another program is still writing it: go on taking what it gains, until interrupted");
    follow->excludes(preview);
    command->add_option("--until-quiet", arguments.quiet_s, "end following when the log has gained nothing for so long, s")
        ->check(above_zero())
        ->needs(follow);
}

void add_analyse(CLI::App& app, AnalyseArguments& arguments) {
    CLI::App* command =
        app.add_subcommand("analyse", "Say what each run shows, and when one still running should end (as of its last reading)");
    command->add_option("LOGBOOK", arguments.logbook, runs_help)->required();
    command->add_option("--unit", arguments.unit, "only runs of this unit");
    command->add_option("--run", arguments.run, "only this run of the unit")->check(above_zero());
    command->add_option("--format", arguments.format, "text or json")->check(CLI::IsMember({"text", "json"}));
    command
        ->add_option("--kwh-price", arguments.kwh_price, "price of a kWh, in the currency of the unit, for the cost of what a unit takes for itself")
        ->check(zero_or_more());
}

void add_output(CLI::App& command, TableOutput& output) {
    command.add_option("--format", output.format, "form of the table")->check(CLI::IsMember(table_format_names()));
    command.add_option("--output", output.path, "file to write; its ending chooses the format where none is given");
    add_force_option(command, output.force);
}

void add_compare(CLI::App& app, CompareArguments& arguments) {
    CLI::App* command = app.add_subcommand("compare", "Compare the units of one or several logbooks, as tested or at one load");
    command->add_option("LOGBOOK", arguments.sources, "logbooks, run sheets (.csv) and folders of run sheets, one or several")->required();
    command->add_flag("--every-drain", arguments.every_drain, "a row for each drain instead of one for each unit");
    auto* load = command->add_option("--at-load", arguments.at_load_w, "common load, W: units are moved to it where their drains allow")
                     ->check(above_zero());
    command->add_option("--duty", arguments.duty_percent, "share of the time that the load is on, %")->check(between(0.1, 100))->needs(load);
    command->add_option("--load-list", arguments.load_list, "common load from a load list: its name in the logbook, or a file (.csv)")
        ->excludes(load);
    auto* pairs = command->add_flag("--pairs", arguments.pairs, "the differences between units: resolved by these meters or not");
    std::vector<std::string> figures;
    for (const PairFigure figure : all_pair_figures) figures.emplace_back(pair_figure_key(figure));
    command->add_option("--pairs-of", arguments.pairs_of, "figure that is compared")->check(CLI::IsMember(figures))->needs(pairs);
    command->add_option("--columns", arguments.columns, "keys of the columns wanted, in order")->delimiter(',')->allow_extra_args(false);
    command->add_option("--maker", arguments.makers, "only units of this maker")->allow_extra_args(false);
    command->add_option("--tag", arguments.tags, "only units with this tag; named several times: with every one of them")->allow_extra_args(false);
    command->add_option("--least-wh", arguments.least_wh, "only units rated at this or more, Wh");
    command->add_option("--most-wh", arguments.most_wh, "only units rated at this or less, Wh");
    add_output(*command, arguments.output);
}

void add_import_loads(CLI::App& app, ImportLoadsArguments& arguments) {
    CLI::App* command = app.add_subcommand("import-loads", "Bring load lists into a logbook, made when missing");
    command->add_option("FILE", arguments.files, "load lists (.csv), each whole or not at all")->required();
    command->add_option("--logbook", arguments.logbook, "logbook file")->required();
}

void add_loads(CLI::App& app, LoadsArguments& arguments) {
    CLI::App* command = app.add_subcommand("loads", "Say what load lists take: of one file, or all of a logbook");
    auto* file = command->add_option("FILE", arguments.file, "load list (.csv)");
    auto* logbook = command->add_option("--logbook", arguments.logbook, "logbook file")->excludes(file);
    auto* list = command->add_option("--list", arguments.list, "only this list of the logbook, with its appliances")->needs(logbook);
    command->add_flag("--sheet", arguments.sheet, "the list as a file that import-loads takes")->needs(list);
    add_output(*command, arguments.output);
}

void add_size(CLI::App& app, SizeArguments& arguments) {
    CLI::App* command = app.add_subcommand("size", "Say how long each unit carries a load list, how many are needed, and which PV array");
    command->add_option("LOGBOOK", arguments.source, runs_help)->required();
    command->add_option("--load-list", arguments.load_list, "a load list: its name in the logbook, or a file (.csv)")->required();
    command->add_option("--unit", arguments.unit, "only this unit");
    add_sizing_options(*command, arguments.choices);
    command->add_option("--table", arguments.table, "one table instead of all: units, months, rules or course")
        ->check(CLI::IsMember({"units", "months", "rules", "course"}));
    add_output(*command, arguments.output);
}

void add_readings(CLI::App& app, ReadingsArguments& arguments) {
    CLI::App* command = app.add_subcommand("export-readings", "Write the readings of one run or of all runs as a table");
    command->add_option("LOGBOOK", arguments.logbook, runs_help)->required();
    command->add_option("--unit", arguments.unit, "only runs of this unit");
    command->add_option("--run", arguments.run, "only this run of the unit")->check(above_zero());
    command->add_flag("--intervals", arguments.intervals, "the intervals between readings instead of the readings");
    add_output(*command, arguments.output);
}

void add_export_sheet(CLI::App& app, ExportSheetArguments& arguments) {
    CLI::App* command = app.add_subcommand("export-sheet", "Write one run as a run sheet");
    command->add_option("LOGBOOK", arguments.logbook, runs_help)->required();
    command->add_option("--unit", arguments.unit, "name of the unit")->required();
    command->add_option("--run", arguments.run, "number of the run")->required()->check(above_zero());
    command->add_option("--output", arguments.output, "file to write");
    add_force_option(*command, arguments.force);
}

void add_pv_check(CLI::App& app, PvCheckArguments& arguments) {
    CLI::App* command = app.add_subcommand("pv-check", "Check a PV string against the PV input of a unit: cold, hot, current, power");
    command->add_option("SHEET", arguments.sheet, "PV sheet: a file of lines `key: value`; the keys are the options below with _ for -");
    command->add_option("--logbook", arguments.logbook, "logbook that holds the unit, or the sheet")->type_name("LOGBOOK");
    command->add_option("--sheet-name", arguments.sheet_name, "a PV sheet of the logbook instead of a file")->needs("--logbook")->excludes("SHEET");
    for (const PvKey& key : pv_keys())
        command
            ->add_option_function<std::string>(
                pv_option(std::string(key.name)),
                [&arguments, name = std::string(key.name)](const std::string& value) { arguments.values.emplace_back(name, value); },
                std::string(key.help))
            ->type_name("VALUE");
    command->add_option("--format", arguments.format, "text or json")->check(CLI::IsMember({"text", "json"}));
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
    app.footer("With drawings: ullage pictures, ullage report, ullage tour; each has a --help of its own.");
    app.require_subcommand(1);
    Arguments arguments;
    add_import(app, arguments.import);
    add_import_trace(app, arguments.import_trace);
    add_analyse(app, arguments.analyse);
    add_compare(app, arguments.compare);
    add_readings(app, arguments.readings);
    add_export_sheet(app, arguments.export_sheet);
    add_pv_check(app, arguments.pv_check);
    add_import_loads(app, arguments.import_loads);
    add_loads(app, arguments.loads);
    add_size(app, arguments.size);
    check_numbers(app);
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
    if (app.got_subcommand("import-trace")) return import_trace_command(arguments.import_trace, out, err);
    if (app.got_subcommand("analyse")) return analyse_command(arguments.analyse, out, err);
    if (app.got_subcommand("compare")) return compare_command(arguments.compare, out, err);
    if (app.got_subcommand("export-readings")) return readings_command(arguments.readings, out, err);
    if (app.got_subcommand("pv-check")) return pv_check_command(arguments.pv_check, out, err);
    if (app.got_subcommand("import-loads")) return import_loads_command(arguments.import_loads, out, err);
    if (app.got_subcommand("size")) return size_command(arguments.size, out, err);
    if (app.got_subcommand("loads")) return loads_command(arguments.loads, out, err);
    return export_sheet_command(arguments.export_sheet, out, err);
}

} // namespace ullage
