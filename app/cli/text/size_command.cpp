// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/sizing_source.h"
#include "formats/results/sizing_output.h"
#include "formats/text/table_unicode.h"
#include "formats/text/text_lines.h"

#include <ostream>

namespace ullage {

namespace {

Result<Table> one_table(const SizeArguments& arguments, const Sizing& sizing) {
    if (arguments.table == "course") return sizing_course_table(sizing);
    if (arguments.table == "rules") return sizing_rules_table(sizing);
    if (arguments.table != "months") return sizing_table(sizing);
    if (sizing.list_needs.months.empty())
        return Error{Failure::bad_input, say(phrase("commands", "no month's sun is stated")), "--month-sun-hours",
                     say(phrase("commands", "name twelve figures, January first"))};
    return sizing_months_table(sizing);
}

} // namespace

int size_command(const SizeArguments& arguments, std::ostream& out, std::ostream& err) {
    const Result<TableFormat> format = asked_format(arguments.output);
    if (!format) {
        (void)refuse(err, format.error());
        return exit_usage;
    }
    std::vector<Message> notices;
    const Result<Sizing> sizing = sizing_from(arguments.source, arguments.load_list, arguments.unit, arguments.choices, notices);
    tell(err, notices);
    if (!sizing) return refuse(err, sizing.error());
    const std::vector<std::string> inputs{arguments.source, arguments.load_list};
    if (arguments.table.empty() && format.value() == TableFormat::text)
        return put_text(fitted_lines(sizing_text(sizing.value())), arguments.output, inputs, out, err);
    if (arguments.table.empty() && format.value() == TableFormat::json)
        return put_text(sizing_json(sizing.value()), arguments.output, inputs, out, err);
    const Result<Table> table = one_table(arguments, sizing.value());
    if (!table) return refuse(err, table.error());
    return put_table(table.value(), format.value(), arguments.output, inputs, out, err);
}

} // namespace ullage
