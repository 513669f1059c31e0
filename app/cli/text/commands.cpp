// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/commands.h"

#include "cli/text/command_options.h"
#include "cli/text/command_parts.h"
#include "cli/text/sizing_source.h"
#include "comparison/fair_comparison.h"
#include "formats/results/comparison_columns.h"
#include "formats/sheets/pv_sheet_text.h"

#include <CLI/CLI.hpp>

#include <memory>
#include <ostream>

namespace ullage {

namespace {

constexpr Phrase runs_help = phrase("commands", "logbook, run sheet (.csv), or folder of run sheets");

/// Answers to what a foreign table leaves open.
void add_table_options(CLI::App& command, TableImportArguments& table) {
    command.add_option("--sheet", table.sheet, say(phrase("commands", "sheet of a workbook: its name, or its number from 1")));
    command
        .add_option(
            "--map", table.map,
            say(phrase("commands",
                       "columns of a table, by number, letter or title: 1=time,B=gauge,Plug=register:kWh; roles are time, date, elapsed, gauge, "
                       "register, load-power, display-power, mark, remark, run, unit, unused")))
        ->delimiter(',');
    command.add_option("--date-order", table.date_order, say(phrase("commands", "day-first or month-first")))
        ->check(CLI::IsMember({"day-first", "month-first"}));
    command.add_option("--decimal", table.decimal, say(phrase("commands", "decimal sign: comma or point")))->check(CLI::IsMember({"comma", "point"}));
    command.add_option("--delimiter", table.delimiter, say(phrase("commands", "tab, semicolon, bar, comma or blanks")))
        ->check(CLI::IsMember({"tab", "semicolon", "bar", "comma", "blanks"}));
    command.add_option("--register-unit", table.register_unit, say(phrase("commands", "unit of a register that names none: Wh, kWh or J")))
        ->check(CLI::IsMember({"Wh", "kWh", "J"}));
    command.add_option("--elapsed-unit", table.elapsed_unit, say(phrase("commands", "unit of times that count from the start: h, min or s")))
        ->check(CLI::IsMember({"h", "min", "s"}));
    command.add_option("--gauge", table.gauge, say(phrase("commands", "a gauge of 0.69 is a share (69 %) or percent")))
        ->check(CLI::IsMember({"share", "percent"}));
    command.add_option("--times", table.times, say(phrase("commands", "what h:mm means: clock (time of day) or elapsed")))
        ->check(CLI::IsMember({"clock", "elapsed"}));
    command.add_option("--runs", table.runs, say(phrase("commands", "what begins anew behind an empty row: separate runs, or one")))
        ->check(CLI::IsMember({"separate", "one"}));
    command
        .add_option("--rows-as", table.rows_as,
                    say(phrase("commands",
                               "keep rows as the log of a meter, with the first, the last and those with a remark as readings, or all as readings; "
                               "where not given a run of 1000 rows or more, at most two minutes apart, is a log")))
        ->check(CLI::IsMember({"log", "readings"}));
    command.add_option("--year", table.year, say(phrase("commands", "year of dates that name none")))->check(CLI::Range(1980, 2199));
    command
        .add_option("--start", table.starts, say(phrase("commands", "when the run began, where its table names no date; again for each further run")))
        ->allow_extra_args(false);
    command.add_option("--zone", table.zone, say(phrase("commands", "time zone of the table; that of this machine where not given")));
    command.add_option("--unit", table.unit, say(phrase("commands", "name of the unit, where the table names none")));
    command
        .add_option("--rated-wh", table.rated_wh,
                    say(phrase("commands", "rated energy of a unit that the logbook does not know, Wh, or not-known; of several UNIT=WH for each")))
        ->allow_extra_args(false);
    command.add_option("--meter", table.meter, say(phrase("commands", "name of the meter, or not-known")));
    command.add_option("--meter-limit", table.meter_limit,
                       say(phrase("commands", "error limit of a meter that the logbook does not know, % of reading, or not-known")));
    command.add_option("--second-meter", table.second_meter,
                       say(phrase("commands", "name of the meter of the column second-register, or not-known")));
    command.add_option("--second-meter-limit", table.second_meter_limit,
                       say(phrase("commands", "its error limit where the logbook does not know it, or not-known")));
    command
        .add_option("--ended", table.ended,
                    say(phrase("commands", "how a run ended whose table does not say: cut-off, found-off, stopped, running or not-known")))
        ->check(CLI::IsMember({"cut-off", "found-off", "stopped", "running", "not-known"}));
    command.add_option("--started-full", table.started_full, say(phrase("commands", "yes, no or not-known")))
        ->check(CLI::IsMember({"yes", "no", "not-known"}));
    command.add_option("--kind", table.kind, say(phrase("commands", "drain, no-load-drain, charge or standby; drain where not given")))
        ->check(CLI::IsMember({"drain", "no-load-drain", "charge", "standby"}));
    command.add_option("--load", table.load, say(phrase("commands", "the load, in your words")));
    command.add_flag("--preview", table.preview, say(phrase("commands", "say how a table is understood, import nothing")));
}

void add_import(CLI::App& command, ImportArguments& arguments) {
    command.add_option("LOGBOOK", arguments.logbook, say(phrase("commands", "logbook file")))->required();
    command
        .add_option(
            "SHEET", arguments.sheets,
            say(phrase("commands",
                       "run sheets, foreign tables of readings (CSV, XLSX, ODS, HTML), or folders of export-folder, each whole or not at all")))
        ->required();
    add_table_options(command, arguments.table);
}

void add_import_trace(CLI::App& command, ImportTraceArguments& arguments) {
    command
        .add_option("FILE", arguments.file,
                    say(phrase("commands", "log file: rows of text with a time and a register, a power or the gauge of the unit")))
        ->required();
    command.add_option("--logbook", arguments.logbook, say(phrase("commands", "logbook file")))->required();
    command.add_option("--unit", arguments.unit, say(phrase("commands", "name of the unit")));
    command.add_option("--run", arguments.run, say(phrase("commands", "number of the run")))->required()->check(above_zero());
    command.add_option(
        "--meter", arguments.meter,
        say(phrase("commands", "meter that wrote the log; that of the run where not given; another than the run's is compared with it")));
    command
        .add_option(
            "--map", arguments.map,
            say(phrase("commands",
                       "columns, counted from 1: time=1,date=2,register=3:kWh,power=4:W,voltage=5:V,current=6:A of a meter; gauge=7,output=8:W "
                       "of the unit itself")))
        ->delimiter(',');
    command.add_option("--date-order", arguments.date_order, say(phrase("commands", "day-first, month-first or year-first")))
        ->check(CLI::IsMember({"day-first", "month-first", "year-first"}));
    command.add_option("--times", arguments.times, say(phrase("commands", "what h:mm:ss means: clock (time of day) or elapsed")))
        ->check(CLI::IsMember({"clock", "elapsed"}));
    command.add_option("--decimal", arguments.decimal, say(phrase("commands", "decimal sign: comma or point")))
        ->check(CLI::IsMember({"comma", "point"}));
    command.add_option("--delimiter", arguments.delimiter, say(phrase("commands", "tab, semicolon, bar, comma or blanks")))
        ->check(CLI::IsMember({"tab", "semicolon", "bar", "comma", "blanks"}));
    command.add_option("--register-unit", arguments.register_unit, say(phrase("commands", "unit of a register that names none: Wh, kWh or J")))
        ->check(CLI::IsMember({"Wh", "kWh", "J"}));
    command.add_option("--zone", arguments.zone, say(phrase("commands", "time zone of times without an offset; that of the run where not given")));
    command.add_option("--start", arguments.start,
                       say(phrase("commands", "when the log was started, for times that count from the start or name no date")));
    CLI::Option* offset = command.add_option(
        "--offset", arguments.offset, say(phrase("commands", "added to the times of the log, [-]h:mm:ss: how far the meter's clock was behind")));
    command
        .add_option("--clock-offset", arguments.clock_offset,
                    say(phrase("commands", "the same in seconds, or `estimate`: from the hand readings of the run")))
        ->excludes(offset);
    command.add_option("--gap-limit", arguments.gap_limit_s, say(phrase("commands", "longest time between rows that is no gap, s")))
        ->check(above_zero());
    CLI::Option* preview = command.add_flag("--preview", arguments.preview, say(phrase("commands", "say what would be taken, import nothing")));
    CLI::Option* follow = command.add_flag(
        "--follow", arguments.follow, say(phrase("commands", "another program is still writing it: go on taking what it gains, until interrupted")));
    follow->excludes(preview);
    command.add_option("--until-quiet", arguments.quiet_s, say(phrase("commands", "end following when the log has gained nothing for so long, s")))
        ->check(above_zero())
        ->needs(follow);
}

void add_analyse(CLI::App& command, AnalyseArguments& arguments) {
    command.add_option("LOGBOOK", arguments.logbook, say(runs_help))->required();
    command.add_option("--unit", arguments.unit, say(phrase("commands", "only runs of this unit")));
    command.add_option("--run", arguments.run, say(phrase("commands", "only this run of the unit")))->check(above_zero());
    command.add_option("--format", arguments.format, say(phrase("commands", "text or json")))->check(CLI::IsMember({"text", "json"}));
    command
        .add_option("--kwh-price", arguments.kwh_price,
                    say(phrase("commands", "price of a kWh, in the currency of the unit, for the cost of what a unit takes for itself")))
        ->check(zero_or_more());
}

void add_output(CLI::App& command, TableOutput& output) {
    command.add_option("--format", output.format, say(phrase("commands", "form of the table")))->check(CLI::IsMember(table_format_names()));
    command.add_option("--output", output.path, say(phrase("commands", "file to write; its ending chooses the format where none is given")));
    add_force_option(command, output.force);
}

/// The keys of the columns, in lines that fit a terminal.
std::string columns_help() {
    constexpr std::size_t widest = 100;
    std::string text = say(phrase("commands", "Columns of the comparison:")), line = "\n ";
    for (const ColumnName& column : comparison_columns()) {
        if (line.size() + 1 + column.key.size() > widest) {
            text += line;
            line = "\n ";
        }
        line += ' ' + column.key;
    }
    return text + line + '\n' +
           say(phrase("commands", "Without --columns a table for people has those for readers; csv, json and xlsx have all.")).text();
}

void add_compare(CLI::App& command, CompareArguments& arguments) {
    command
        .add_option("LOGBOOK", arguments.sources, say(phrase("commands", "logbooks, run sheets (.csv) and folders of run sheets, one or several")))
        ->required();
    command.add_flag("--every-drain", arguments.every_drain, say(phrase("commands", "a row for each drain instead of one for each unit")));
    auto* load =
        command
            .add_option("--at-load", arguments.at_load_w, say(phrase("commands", "common load, W: units are moved to it where their drains allow")))
            ->check(above_zero());
    command.add_option("--duty", arguments.duty_percent, say(phrase("commands", "share of the time that the load is on, %")))
        ->check(between(0.1, 100))
        ->needs(load);
    command
        .add_option("--load-list", arguments.load_list,
                    say(phrase("commands", "common load from a load list: its name in the logbook, or a file (.csv)")))
        ->excludes(load);
    auto* by_model = command.add_flag("--by-model", arguments.by_model, say(phrase("commands", "the models that units name, by their specimens")));
    auto* pairs =
        command
            .add_flag("--pairs", arguments.pairs, say(phrase("commands", "the differences between units: clearly different or too close to call")))
            ->excludes(by_model);
    std::vector<std::string> figures;
    for (const PairFigure figure : all_pair_figures) figures.emplace_back(pair_figure_key(figure));
    command.add_option("--pairs-of", arguments.pairs_of, say(phrase("commands", "figure that is compared")))
        ->check(CLI::IsMember(figures))
        ->needs(pairs);
    command
        .add_option("--columns", arguments.columns,
                    say(phrase("commands", "keys of the columns wanted, in order; or readers, spreadsheet, or a set that the logbook keeps")))
        ->delimiter(',')
        ->allow_extra_args(false);
    command.footer(columns_help());
    command.add_option("--maker", arguments.makers, say(phrase("commands", "only units of this maker")))->allow_extra_args(false);
    command.add_option("--tag", arguments.tags, say(phrase("commands", "only units with this tag; named several times: with every one of them")))
        ->allow_extra_args(false);
    command.add_option("--least-wh", arguments.least_wh, say(phrase("commands", "only units rated at this or more, Wh")))->check(zero_or_more());
    command.add_option("--most-wh", arguments.most_wh, say(phrase("commands", "only units rated at this or less, Wh")))->check(above_zero());
    add_output(command, arguments.output);
}

void add_import_loads(CLI::App& command, ImportLoadsArguments& arguments) {
    command.add_option("FILE", arguments.files, say(phrase("commands", "load lists (.csv), each whole or not at all")))->required();
    command.add_option("--logbook", arguments.logbook, say(phrase("commands", "logbook file")))->required();
}

void add_loads(CLI::App& command, LoadsArguments& arguments) {
    auto* file = command.add_option("FILE", arguments.file, say(phrase("commands", "load list (.csv)")));
    auto* logbook = command.add_option("--logbook", arguments.logbook, say(phrase("commands", "logbook file")))->excludes(file);
    auto* list =
        command.add_option("--list", arguments.list, say(phrase("commands", "only this list of the logbook, with its appliances")))->needs(logbook);
    command.add_flag("--sheet", arguments.sheet, say(phrase("commands", "the list as a file that import-loads takes")))->needs(list);
    add_output(command, arguments.output);
}

void add_size(CLI::App& command, SizeArguments& arguments) {
    command.add_option("LOGBOOK", arguments.source, say(runs_help))->required();
    command.add_option("--load-list", arguments.load_list, say(phrase("commands", "a load list: its name in the logbook, or a file (.csv)")))
        ->required();
    command.add_option("--unit", arguments.unit, say(phrase("commands", "only this unit")));
    add_sizing_options(command, arguments.choices);
    command.add_option("--table", arguments.table, say(phrase("commands", "one table instead of all: units, months, rules or course")))
        ->check(CLI::IsMember({"units", "months", "rules", "course"}));
    add_output(command, arguments.output);
}

void add_readings(CLI::App& command, ReadingsArguments& arguments) {
    command.add_option("LOGBOOK", arguments.logbook, say(runs_help))->required();
    command.add_option("--unit", arguments.unit, say(phrase("commands", "only runs of this unit")));
    command.add_option("--run", arguments.run, say(phrase("commands", "only this run of the unit")))->check(above_zero());
    CLI::Option* intervals =
        command.add_flag("--intervals", arguments.intervals, say(phrase("commands", "the intervals between readings instead of the readings")));
    command
        .add_flag("--gauge-steps", arguments.gauge_steps,
                  say(phrase("commands", "the steps of the gauge by its log, each timed to the sample, instead of the readings")))
        ->excludes(intervals);
    add_output(command, arguments.output);
}

void add_export_sheet(CLI::App& command, ExportSheetArguments& arguments) {
    command.add_option("LOGBOOK", arguments.logbook, say(runs_help))->required();
    command.add_option("--unit", arguments.unit, say(phrase("commands", "name of the unit")))->required();
    command.add_option("--run", arguments.run, say(phrase("commands", "number of the run")))->required()->check(above_zero());
    command.add_option("--output", arguments.output, say(phrase("commands", "file to write")));
    add_force_option(command, arguments.force);
}

void add_export_folder(CLI::App& command, ExportFolderArguments& arguments) {
    command.add_option("LOGBOOK", arguments.logbook, say(phrase("commands", "logbook file")))->required();
    command.add_option("--into", arguments.into, say(phrase("commands", "folder to make")))->required();
}

void add_join(CLI::App& command, JoinArguments& arguments) {
    command.add_option("LOGBOOK", arguments.logbook, say(phrase("commands", "logbook that is added to")))->required();
    command.add_option("OTHER", arguments.other, say(phrase("commands", "logbook that is only read")))->required();
    command
        .add_option(
            "--take-other", arguments.take_other,
            say(phrase(
                "commands",
                "differences that are taken from the other logbook: `all`, `newer` (changed there alone) or ids that --dry-run shows; the rest "
                "stays as it is in LOGBOOK")))
        ->delimiter(',')
        ->allow_extra_args(false);
    command.add_flag("--dry-run", arguments.dry_run, say(phrase("commands", "say what would come of it, change nothing")));
    add_output(command, arguments.output);
}

void add_backup(CLI::App& command, BackupArguments& arguments) {
    constexpr int most_days = 3650;
    command.add_option("LOGBOOK", arguments.logbook, say(phrase("commands", "logbook file")))->required();
    command.add_option("--into", arguments.into, say(phrase("commands", "folder of the copies; beside the logbook where not given")));
    command
        .add_option("--days", arguments.days,
                    say(phrase("commands", "older copies of this logbook are removed, but for the newest; 30 where not given")))
        ->check(CLI::Range(1, most_days));
    command.add_flag("--list", arguments.list, say(phrase("commands", "list the copies that there are, make none")));
}

void add_pv_check(CLI::App& command, PvCheckArguments& arguments) {
    command.add_option("SHEET", arguments.sheet,
                       say(phrase("commands", "PV sheet: a file of lines `key: value`; the keys are the options below with _ for -")));
    command.add_option("--logbook", arguments.logbook, say(phrase("commands", "logbook that holds the unit, or the sheet")))->type_name("LOGBOOK");
    command.add_option("--sheet-name", arguments.sheet_name, say(phrase("commands", "a PV sheet of the logbook instead of a file")))
        ->needs("--logbook")
        ->excludes("SHEET");
    for (const PvKey& key : pv_keys())
        command
            .add_option_function<std::string>(
                pv_option(std::string(key.name)),
                [&arguments, name = std::string(key.name)](const std::string& value) { arguments.values.emplace_back(name, value); }, say(key.help))
            ->type_name("VALUE");
    command.add_option("--format", arguments.format, say(phrase("commands", "text or json")))->check(CLI::IsMember({"text", "json"}));
}

/// A row of the table: `add` adds the options, `run` is the command itself.
template <class Arguments>
Command row(std::string_view name, const Phrase& summary, void (*add)(CLI::App&, Arguments&),
            int (*run)(const Arguments&, std::ostream&, std::ostream&)) {
    return {name, summary, [add, run](CLI::App& command) -> Command::Run {
                const auto arguments = std::make_shared<Arguments>();
                add(command, *arguments);
                return [arguments, run](std::ostream& out, std::ostream& err) { return run(*arguments, out, err); };
            }};
}

} // namespace

const std::vector<Command>& text_commands() {
    static const std::vector<Command> commands{
        row("import", phrase("commands", "Bring run sheets and foreign tables of readings into a logbook, made when missing"), add_import,
            import_command),
        row("import-trace", phrase("commands", "Bring the log of a meter into a run; how it is read is detected and said"), add_import_trace,
            import_trace_command),
        row("analyse", phrase("commands", "Say what each run shows, and when one still running should end (as of its last reading)"), add_analyse,
            analyse_command),
        row("compare", phrase("commands", "Compare the units of one or several logbooks, as tested or at one load"), add_compare, compare_command),
        row("export-readings", phrase("commands", "Write the readings of one run or of all runs as a table"), add_readings, readings_command),
        row("export-sheet", phrase("commands", "Write one run as a run sheet"), add_export_sheet, export_sheet_command),
        row("export-folder", phrase("commands", "Write a whole logbook as a folder: run sheets, photos, logs, lists"), add_export_folder,
            export_folder_command),
        row("join", phrase("commands", "Bring what another logbook has into a logbook, and say what differs"), add_join, join_command),
        row("backup", phrase("commands", "Make the copy of the day of a logbook, or list its copies"), add_backup, backup_command),
        row("pv-check", phrase("commands", "Check a PV string against the PV input of a unit: cold, hot, current, power"), add_pv_check,
            pv_check_command),
        row("import-loads", phrase("commands", "Bring load lists into a logbook, made when missing"), add_import_loads, import_loads_command),
        row("loads", phrase("commands", "Say what load lists take: of one file, or all of a logbook"), add_loads, loads_command),
        row("size", phrase("commands", "Say how long each unit carries a load list, how many are needed, and which PV array"), add_size,
            size_command)};
    return commands;
}

} // namespace ullage
