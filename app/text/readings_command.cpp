// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/comparison_table.h"
#include "exchange/table_unicode.h"
#include "text/command_parts.h"
#include "text/commands.h"
#include "text/runs_source.h"

#include <ostream>

namespace ullage {

namespace {

/// Its rows are made as they are asked for.
StreamedTable table_of(RunTable which, bool one_run, const std::vector<RunRecord>& records, const std::vector<RunAnalysis>& analyses) {
    if (one_run) return table_of_run(which, records.front(), analyses.front());
    std::vector<const RunRecord*> runs;
    std::vector<const RunAnalysis*> results;
    for (std::size_t r = 0; r < records.size(); ++r) {
        runs.push_back(&records[r]);
        results.push_back(&analyses[r]);
    }
    return table_of_runs(which, runs, results);
}

} // namespace

int readings_command(const ReadingsArguments& arguments, std::ostream& out, std::ostream& err) {
    const Result<TableFormat> format = asked_format(arguments.output);
    if (!format) {
        (void)refuse(err, format.error());
        return exit_usage;
    }
    std::vector<std::string> notices;
    Result<std::vector<RunRecord>> records = runs_from(arguments.logbook, notices);
    if (!records) return refuse(err, records.error());
    const Result<std::vector<RunRecord>> chosen = chosen_runs(std::move(records).value(), arguments.unit, arguments.run);
    if (!chosen) return refuse(err, chosen.error());
    for (const std::string& notice : notices) err << "ullage: " << one_line(notice) << '\n';
    const bool one_run = arguments.run.has_value() && chosen.value().size() == 1;
    std::vector<RunAnalysis> analyses;
    for (const RunRecord& record : chosen.value()) analyses.push_back(analyse_run(record));
    const RunTable which = arguments.intervals ? RunTable::intervals : RunTable::readings;
    return put_table(table_of(which, one_run, chosen.value(), analyses), format.value(), arguments.output, {arguments.logbook}, out, err);
}

} // namespace ullage
