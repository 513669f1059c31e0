// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/table.h"

#include "exchange/table_formats.h"
#include "exchange/whole_file.h"

#include <array>
#include <utility>

namespace ullage {

namespace {

constexpr std::array<std::pair<std::string_view, TableFormat>, 6> format_names{{{"text", TableFormat::text},
                                                                                {"csv", TableFormat::csv},
                                                                                {"markdown", TableFormat::markdown},
                                                                                {"html", TableFormat::html},
                                                                                {"xlsx", TableFormat::xlsx},
                                                                                {"json", TableFormat::json}}};

} // namespace

Result<TableFormat> table_format_from(std::string_view name) {
    for (const auto& [known, format] : format_names)
        if (known == name) return format;
    return Error{Failure::bad_input, "`" + std::string(name) + "` is no format of a table", {},
                 "use text, csv, markdown, html, xlsx or json"};
}

std::string table_text(const Table& table, TableFormat format) {
    switch (format) {
    case TableFormat::text: return plain_table(table);
    case TableFormat::csv: return csv_table(table);
    case TableFormat::markdown: return markdown_table(table);
    case TableFormat::html: return html_table(table);
    case TableFormat::json: return json_table(table);
    case TableFormat::xlsx: break;
    }
    return {};
}

Result<void> write_table(const Table& table, TableFormat format, const std::string& path) {
    if (format == TableFormat::xlsx)
        return replace_file(path, [&](const std::string& temporary) { return make_xlsx_table(table, temporary); });
    return write_whole_file(path, table_text(table, format));
}

} // namespace ullage
