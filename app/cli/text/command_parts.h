// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "cli/text/table_output.h"
#include "formats/sheets/pv_sheet_text.h"
#include "model/run_record.h"
#include "sizing/sizing_choices.h"

#include <iosfwd>
#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace ullage {

// The commands themselves, after their arguments have been read. Each returns an exit code.

/// What is said of foreign tables, for all that one call brings in; empty: as detected, or asked for.
struct TableImportArguments {
    std::string sheet;            ///< its name, or its number from 1
    std::vector<std::string> map; ///< COLUMN=ROLE[:UNIT]
    std::string date_order, decimal, delimiter, register_unit, elapsed_unit, gauge, times, runs, rows_as;
    std::optional<int> year;
    std::vector<std::string> starts;                     ///< of the runs in their order
    std::string zone;                                    ///< empty: the machine's
    std::string unit;                                    ///< of runs whose table names none
    std::vector<std::string> rated_wh;                   ///< a value or "not-known", of several new units UNIT=VALUE each
    std::string meter, meter_limit, ended, started_full; ///< a value or "not-known"
    std::string second_meter, second_meter_limit;        ///< likewise, of the column `second-register`
    std::string kind, load;
    bool preview = false;

    bool operator==(const TableImportArguments&) const = default;
};

struct ImportArguments {
    std::string logbook;
    std::vector<std::string> sheets;
    TableImportArguments table{};
};
/// Brings run sheets, foreign tables of readings and folders of export-folder into a logbook, made when missing. Each goes in whole or not at all,
/// and one that is refused does not hold up the others. Of another folder all run sheets come in. A run that the logbook holds already (same unit and
/// maker, kind and readings) is left out and said.
[[nodiscard]] int import_command(const ImportArguments& arguments, std::ostream& out, std::ostream& err);

struct AnalyseArguments {
    std::string logbook;
    std::string unit; ///< empty for every unit
    std::optional<int> run;
    std::string format = "text";
    std::optional<double> kwh_price; ///< in the currency of each unit; absent: no costs
};
[[nodiscard]] int analyse_command(const AnalyseArguments& arguments, std::ostream& out, std::ostream& err);

struct ImportLoadsArguments {
    std::string logbook;
    std::vector<std::string> files;
};
/// Brings load lists into a logbook, made when missing; a list that the logbook holds already is left out and said.
[[nodiscard]] int import_loads_command(const ImportLoadsArguments& arguments, std::ostream& out, std::ostream& err);

struct LoadsArguments {
    std::string file;    ///< a load list, or
    std::string logbook; ///< a logbook, one of the two
    std::string list;    ///< of the logbook: only this one, with its appliances
    bool sheet = false;  ///< as a file that import-loads takes
    TableOutput output;
};
/// The totals of a load list, or of all that a logbook holds.
[[nodiscard]] int loads_command(const LoadsArguments& arguments, std::ostream& out, std::ostream& err);

struct SizeArguments {
    std::string source;    ///< a logbook, run sheet or folder of run sheets
    std::string load_list; ///< a file (.csv) or the name of one in the logbook
    std::string unit;      ///< empty for all
    SizingChoices choices;
    std::string table; ///< units, months, rules or course; empty: all of it as text or JSON, the units in other formats
    TableOutput output;
};
/// What carries a load list, for how long; see sizing_from().
[[nodiscard]] int size_command(const SizeArguments& arguments, std::ostream& out, std::ostream& err);

struct CompareArguments {
    std::vector<std::string> sources; ///< logbooks, run sheets and folders of them, at least one
    bool every_drain = false;
    std::optional<double> at_load_w; ///< a common load; absent: as tested
    double duty_percent = 100;       ///< share of the time that it is on
    std::string load_list;           ///< or the load of this list: a file (.csv) or the name of one in the logbook
    bool by_model = false;           ///< the models that units name, by their specimens, instead of the units
    bool pairs = false;              ///< the differences between units instead of the units
    std::string pairs_of;            ///< key of the figure that differs; empty: usable fraction
    /// Keys, or the name of a set: "readers", "spreadsheet" or one that a logbook keeps. Empty: for readers where people read the format, else all.
    std::vector<std::string> columns;
    std::vector<std::string> makers;         ///< only units of these; empty: all
    std::vector<std::string> tags;           ///< only units that have every one of these
    std::optional<double> least_wh, most_wh; ///< only units rated within
    TableOutput output;
};
[[nodiscard]] int compare_command(const CompareArguments& arguments, std::ostream& out, std::ostream& err);

struct ReadingsArguments {
    std::string logbook;
    std::string unit; ///< empty for every unit
    std::optional<int> run;
    bool intervals = false;   ///< the intervals between readings instead
    bool gauge_steps = false; ///< the steps of the gauge by its log instead
    TableOutput output;
};
/// The readings of one run, or of several with unit, maker and run in front of each row, as a table in any format.
[[nodiscard]] int readings_command(const ReadingsArguments& arguments, std::ostream& out, std::ostream& err);

struct ExportSheetArguments {
    std::string logbook;
    std::string unit;
    int run = 0;
    std::string output; ///< empty: standard output
    bool force = false; ///< replacing_of()
};
[[nodiscard]] int export_sheet_command(const ExportSheetArguments& arguments, std::ostream& out, std::ostream& err);

struct ExportFolderArguments {
    std::string logbook;
    std::string into;
};
/// Writes all that a logbook holds into a new folder: run sheets, photos, logs, lists (formats/folder/logbook_folder.h).
[[nodiscard]] int export_folder_command(const ExportFolderArguments& arguments, std::ostream& out, std::ostream& err);

struct JoinArguments {
    std::string logbook, other;
    std::vector<std::string> take_other; ///< "all", "newer", or the beginnings of ids
    bool dry_run = false;
    TableOutput output;
};
/// Brings what another logbook has into one, by identifiers, all or nothing (joining/join.h); asks nothing, and keeps this logbook's where they
/// differ.
[[nodiscard]] int join_command(const JoinArguments& arguments, std::ostream& out, std::ostream& err);

struct BackupArguments {
    std::string logbook;
    std::string into; ///< empty: beside the logbook
    int days = 30;
    bool list = false;
};
/// Makes the automatic copy of a logbook (store/backup.h), or lists the copies that there are.
[[nodiscard]] int backup_command(const BackupArguments& arguments, std::ostream& out, std::ostream& err);

struct PvCheckArguments {
    std::string sheet;                                       ///< a PV sheet file; empty: none
    std::string logbook;                                     ///< whose units and PV sheets may be named; empty: none
    std::string sheet_name;                                  ///< of a PV sheet of the logbook; empty: none
    std::vector<std::pair<std::string, std::string>> values; ///< keys of formats/sheets/pv_sheet_text.h with values, which go before the sheet's
    std::string format = "text";
};
/// The sheet that is asked for, with the limits of its unit where the logbook has it. Notices as of opened_logbook(). Errors name
/// file and field.
[[nodiscard]] Result<PvSheetText> asked_pv_sheet(const PvCheckArguments& arguments, std::vector<Message>& notices);
/// Checks a PV string against a PV input; the verdict does not change the exit code.
[[nodiscard]] int pv_check_command(const PvCheckArguments& arguments, std::ostream& out, std::ostream& err);
/// The option of a key: "voc_v" is "--voc-v".
[[nodiscard]] std::string pv_option(const std::string& key);

struct ImportTraceArguments {
    std::string file, logbook;
    std::string unit; ///< may be empty where one unit alone has runs
    int run = 0;
    std::string meter;                                                ///< empty: that of the run
    std::vector<std::string> map;                                     ///< ROLE=NUMBER[:UNIT]
    std::string date_order, times, decimal, delimiter, register_unit; ///< empty: as detected
    std::string zone;                                                 ///< empty: that of the run
    std::string start;                                                ///< ISO 8601; empty: the first reading of the run
    std::string offset;                                               ///< [-]h:mm:ss; empty: none
    std::string clock_offset;                                         ///< seconds or "estimate"; empty: as `offset`
    std::optional<double> gap_limit_s;
    bool preview = false;
    bool follow = false;           ///< another program is still writing it: go on taking what it gains
    std::optional<double> quiet_s; ///< with `follow`: end when it has gained nothing for so long
};
/// Brings the log of a meter into a run: says how it is read, what was taken and which rows were not. With an open question, or with `preview`,
/// nothing is imported. Of a log that goes on where one of the run's ended only the rest is taken.
[[nodiscard]] int import_trace_command(const ImportTraceArguments& arguments, std::ostream& out, std::ostream& err);

/// "ullage: SENTENCE" on one line of `err`; returns the exit code for bad input.
int refuse(std::ostream& err, const Error& error);

/// "ullage: NOTICE" on one line of `err`, for each.
void tell(std::ostream& err, const std::vector<Message>& notices);

/// What is said on one line, with its line feed.
[[nodiscard]] std::string line_of(const Message& words);

/// "a or b or c": what a question offers.
[[nodiscard]] Message say_alternatives(const std::vector<Message>& choices);
/// "`a`, `b`": names of things as they stand.
[[nodiscard]] Message say_names(const std::vector<std::string>& names);

/// The error, with what is done all the same behind its remedy. `but` may be empty.
[[nodiscard]] Error with_done(Error error, const Message& but);

/// Writes a result to `out` and checks that it went through. `but`: what is done all the same, for the message: whoever reads no result must not
/// believe that there is none.
int print(const std::string& text, std::ostream& out, std::ostream& err, const Message& but = {});

} // namespace ullage
