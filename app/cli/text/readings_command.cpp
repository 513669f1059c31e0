// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/runs_source.h"
#include "formats/results/comparison_table.h"
#include "formats/text/table_unicode.h"

#include <ostream>

namespace ullage {

int readings_command(const ReadingsArguments& arguments, std::ostream& out, std::ostream& err) {
    const Result<TableFormat> format = asked_format(arguments.output);
    if (!format) {
        (void)refuse(err, format.error());
        return exit_usage;
    }
    std::vector<Message> notices;
    const Result<OpenedSource> source = OpenedSource::open(arguments.logbook, notices);
    if (!source) return refuse(err, source.error());
    const Result<std::unique_ptr<Casebook>> casebook = source.value().casebook();
    if (!casebook) return refuse(err, casebook.error());
    const Result<UnitRuns> chosen = chosen_runs(addresses_of(casebook.value()->runs()), arguments.unit, arguments.run);
    if (!chosen) return refuse(err, chosen.error());
    tell(err, notices);
    const UnitRuns& runs = chosen.value();
    std::vector<const RunAnalysis*> analyses; // which the casebook keeps
    for (const RunRecord* run : runs) analyses.push_back(casebook.value()->analysis(run->run.uuid).get());
    const RunTable which = arguments.intervals ? RunTable::intervals : arguments.gauge_steps ? RunTable::gauge_steps : RunTable::readings;
    const bool one_run = arguments.run.has_value() && runs.size() == 1;
    const StreamedTable table = one_run ? table_of_run(which, *runs.front(), *analyses.front()) : table_of_runs(which, runs, analyses);
    return put_table(table, format.value(), arguments.output, {arguments.logbook}, out, err);
}

} // namespace ullage
