// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/table_output.h"

#include "cli/text/command_options.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "formats/files/whole_file.h"

#include <filesystem>
#include <optional>
#include <ostream>
#include <string_view>
#include <utility>

namespace ullage {

Result<TableFormat> asked_format(const TableOutput& output) {
    const std::string ending = std::filesystem::path(output.path).extension().string();
    const std::optional<TableFormat> by_ending = table_format_of_ending(ending);
    if (output.format.empty() && !by_ending && !ending.empty())
        return Error{Failure::bad_input, say(phrase("commands", "`%1` is the ending of no table"), ending), output.path,
                     say(phrase("commands", "use .txt, .csv, .md, .html, .xlsx, .json or .tex, or name the --format"))};
    Result<TableFormat> format = output.format.empty() ? by_ending.value_or(TableFormat::text) : table_format_from(output.format);
    if (format && format.value() == TableFormat::xlsx && output.path.empty())
        return Error{Failure::bad_input, say(phrase("commands", "xlsx is no text for a terminal")), "--format",
                     say(phrase("commands", "name a file with --output"))};
    return format;
}

Result<void> check_output(TableFormat format, const TableOutput& output, std::vector<std::string> inputs) {
    if (output.path.empty()) return {};
    return check_table_target(format, output.path, replacing_of(output.force, std::move(inputs)));
}

int put_table(const StreamedTable& table, TableFormat format, const TableOutput& output, std::vector<std::string> inputs, std::ostream& out,
              std::ostream& err, const Message& but) {
    if (output.path.empty()) {
        (void)table_text(table, format, [&out](std::string_view piece) { return static_cast<bool>(out << piece); });
        return print({}, out, err, but); // tells whether all of it went through
    }
    const Result<void> written = write_table(table, format, output.path, replacing_of(output.force, std::move(inputs)));
    return written ? exit_good : refuse(err, with_done(written.error(), but));
}

int put_text(const std::string& text, const TableOutput& output, std::vector<std::string> inputs, std::ostream& out, std::ostream& err) {
    if (output.path.empty()) return print(text, out, err);
    const Result<void> written = write_whole_file(output.path, text, replacing_of(output.force, std::move(inputs)));
    return written ? exit_good : refuse(err, written.error());
}

} // namespace ullage
