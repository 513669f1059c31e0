// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/table_output.h"

#include "text/command_parts.h"
#include "text/commands.h"

#include <filesystem>

namespace ullage {

Result<TableFormat> asked_format(const TableOutput& output) {
    Result<TableFormat> format = output.format.empty()
                                     ? table_format_of_ending(std::filesystem::path(output.path).extension().string()).value_or(TableFormat::text)
                                     : table_format_from(output.format);
    if (format && format.value() == TableFormat::xlsx && output.path.empty())
        return Error{Failure::bad_input, "xlsx is no text for a terminal", "--format", "name a file with --output"};
    return format;
}

int put_table(const Table& table, TableFormat format, const TableOutput& output, std::ostream& out, std::ostream& err) {
    if (output.path.empty()) return print(table_text(table, format), out, err);
    if (const Result<void> written = write_table(table, format, output.path); !written) return refuse(err, written.error());
    return exit_good;
}

} // namespace ullage
