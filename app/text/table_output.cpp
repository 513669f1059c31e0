// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/table_output.h"

#include "text/command_parts.h"
#include "text/commands.h"

#include <array>
#include <filesystem>
#include <utility>

namespace ullage {

namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, 9> formats_of_endings{
    {{".txt", "text"}, {".csv", "csv"}, {".md", "markdown"}, {".markdown", "markdown"},
     {".html", "html"}, {".htm", "html"}, {".xlsx", "xlsx"}, {".json", "json"}, {".tex", "latex"}}};

std::string format_name(const TableOutput& output) {
    if (!output.format.empty()) return output.format;
    const std::string ending = std::filesystem::path(output.path).extension().string();
    for (const auto& [known, format] : formats_of_endings)
        if (known == ending) return std::string(format);
    return "text";
}

} // namespace

std::vector<std::string> table_format_names() { return {"text", "csv", "markdown", "html", "xlsx", "json", "latex"}; }

Result<TableFormat> asked_format(const TableOutput& output) {
    Result<TableFormat> format = table_format_from(format_name(output));
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
