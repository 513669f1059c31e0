// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/comparison_table.h"
#include "exchange/table_unicode.h"
#include "text/command_parts.h"
#include "text/commands.h"
#include "text/runs_source.h"

#include <ostream>

namespace ullage {

int compare_command(const CompareArguments& arguments, std::ostream& out, std::ostream& err) {
    const Result<TableFormat> format = asked_format(arguments.output);
    if (!format) {
        (void)refuse(err, format.error());
        return exit_usage;
    }
    std::vector<std::string> notices;
    const Result<std::vector<RunRecord>> records = runs_from(arguments.logbook, notices);
    if (!records) return refuse(err, records.error());
    for (const std::string& notice : notices) err << "ullage: " << one_line(notice) << '\n';
    const Comparison comparison =
        compare_as_tested(records.value(), arguments.every_drain ? CompareRows::every_drain : CompareRows::one_per_unit);
    return put_table(comparison_table(comparison), format.value(), arguments.output, out, err);
}

} // namespace ullage
