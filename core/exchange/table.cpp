// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/table.h"

#include "exchange/table_formats.h"
#include "exchange/whole_file.h"

#include <array>
#include <filesystem>
#include <utility>

namespace ullage {

namespace {

constexpr std::array<std::pair<std::string_view, TableFormat>, 7> format_names{{{"text", TableFormat::text},
                                                                                {"csv", TableFormat::csv},
                                                                                {"markdown", TableFormat::markdown},
                                                                                {"html", TableFormat::html},
                                                                                {"xlsx", TableFormat::xlsx},
                                                                                {"json", TableFormat::json},
                                                                                {"latex", TableFormat::latex}}};

} // namespace

Table with_rows(Table table, const std::vector<std::size_t>& rows) {
    std::vector<std::vector<TableCell>> chosen;
    for (const std::size_t row : rows) chosen.push_back(table.rows[row]);
    table.rows = std::move(chosen);
    return table;
}

std::string csv_metadata_path(const std::string& csv_path) { return csv_path + "-metadata.json"; }

Result<TableFormat> table_format_from(std::string_view name) {
    for (const auto& [known, format] : format_names)
        if (known == name) return format;
    return Error{Failure::bad_input, "`" + std::string(name) + "` is no format of a table", {},
                 "use text, csv, markdown, html, xlsx, json or latex"};
}

std::string table_text(const Table& table, TableFormat format) {
    switch (format) {
    case TableFormat::text: return plain_table(table);
    case TableFormat::csv: return csv_table(table);
    case TableFormat::markdown: return markdown_table(table);
    case TableFormat::html: return html_table(table);
    case TableFormat::json: return json_table(table);
    case TableFormat::latex: return latex_table(table);
    case TableFormat::xlsx: break;
    }
    return {};
}

Result<void> write_table(const Table& table, TableFormat format, const std::string& path) {
    if (format == TableFormat::xlsx)
        return replace_file(path, [&](const std::string& temporary) { return make_xlsx_table(table, temporary); });
    Result<void> written = write_whole_file(path, table_text(table, format));
    if (!written || format != TableFormat::csv) return written;
    const std::string file_name = std::filesystem::path(path).filename().string();
    if (Result<void> described = write_whole_file(csv_metadata_path(path), csv_metadata(table, file_name)); !described) {
        Error error = described.error();
        error.what = "the table is written, but its description is not: " + error.what;
        return error;
    }
    return {};
}

} // namespace ullage
