// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "model/run_record.h"
#include "text/table_output.h"

#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

// The commands themselves, after their arguments have been read. Each returns an exit code.

struct ImportArguments {
    std::string logbook;
    std::vector<std::string> sheets;
};
/// Brings run sheets into a logbook, made when missing. Each sheet goes in whole or not at all, and one that is refused
/// does not hold up the others. A run that the logbook holds already (same unit and maker, kind and readings) is left out and said.
[[nodiscard]] int import_command(const ImportArguments& arguments, std::ostream& out, std::ostream& err);

struct AnalyseArguments {
    std::string logbook;
    std::string unit; ///< empty for every unit
    std::optional<int> run;
    std::string format = "text";
};
[[nodiscard]] int analyse_command(const AnalyseArguments& arguments, std::ostream& out, std::ostream& err);

struct CompareArguments {
    std::vector<std::string> sources; ///< logbooks, run sheets and folders of them, at least one
    bool every_drain = false;
    std::optional<double> at_load_w;       ///< a common load; absent: as tested
    double duty_percent = 100;             ///< share of the time that it is on
    bool pairs = false;                    ///< the differences between units instead of the units
    std::vector<std::string> columns;      ///< keys; empty: all
    std::vector<std::string> makers;       ///< only units of these; empty: all
    std::optional<double> least_wh, most_wh; ///< only units rated within
    TableOutput output;
};
[[nodiscard]] int compare_command(const CompareArguments& arguments, std::ostream& out, std::ostream& err);

struct ReadingsArguments {
    std::string logbook;
    std::string unit; ///< empty for every unit
    std::optional<int> run;
    bool intervals = false; ///< the intervals between readings instead
    TableOutput output;
};
/// The readings of one run, or of several with unit, maker and run in front of each row, as a table in any format.
[[nodiscard]] int readings_command(const ReadingsArguments& arguments, std::ostream& out, std::ostream& err);

struct ExportSheetArguments {
    std::string logbook;
    std::string unit;
    int run = 0;
    std::string output; ///< empty: standard output
};
[[nodiscard]] int export_sheet_command(const ExportSheetArguments& arguments, std::ostream& out, std::ostream& err);

/// "ullage: SENTENCE" on one line of `err`; returns the exit code for bad input.
int refuse(std::ostream& err, const Error& error);

/// Writes a result to `out` and checks that it went through.
int print(const std::string& text, std::ostream& out, std::ostream& err);

} // namespace ullage
