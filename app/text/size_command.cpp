// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/sizing_output.h"
#include "exchange/table_unicode.h"
#include "exchange/whole_file.h"
#include "text/command_parts.h"
#include "text/commands.h"
#include "text/sizing_source.h"

#include <ostream>

namespace ullage {

namespace {

Result<Table> one_table(const SizeArguments& arguments, const Sizing& sizing) {
    if (arguments.table == "course") return sizing_course_table(sizing);
    if (arguments.table == "rules") return sizing_rules_table(sizing);
    if (arguments.table != "months") return sizing_table(sizing);
    if (sizing.months.empty())
        return Error{Failure::bad_input, "no month's sun is stated", "--month-sun-hours",
                     "name twelve figures, January first"};
    return sizing_months_table(sizing);
}

/// The whole sizing as text or JSON.
int put_whole(const std::string& text, const SizeArguments& arguments, std::ostream& out, std::ostream& err) {
    if (arguments.output.path.empty()) return print(text, out, err);
    if (const Result<void> written = write_whole_file(arguments.output.path, text); !written)
        return refuse(err, written.error());
    return exit_good;
}

} // namespace

int size_command(const SizeArguments& arguments, std::ostream& out, std::ostream& err) {
    const Result<TableFormat> format = asked_format(arguments.output);
    if (!format) {
        (void)refuse(err, format.error());
        return exit_usage;
    }
    std::vector<std::string> notices;
    const Result<Sizing> sizing =
        sizing_from(arguments.source, arguments.load_list, arguments.unit, arguments.choices, notices);
    for (const std::string& notice : notices)
        err << "ullage: " << one_line(notice) << '\n';
    if (!sizing) return refuse(err, sizing.error());
    if (arguments.table.empty() && format.value() == TableFormat::text)
        return put_whole(sizing_text(sizing.value()), arguments, out, err);
    if (arguments.table.empty() && format.value() == TableFormat::json)
        return put_whole(sizing_json(sizing.value()), arguments, out, err);
    const Result<Table> table = one_table(arguments, sizing.value());
    if (!table) return refuse(err, table.error());
    return put_table(table.value(), format.value(), arguments.output, out, err);
}

} // namespace ullage
