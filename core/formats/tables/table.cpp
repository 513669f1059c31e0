// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/table.h"

#include "formats/files/whole_file.h"
#include "formats/tables/inside/table_formats.h"

#include <algorithm>
#include <filesystem>
#include <iterator>
#include <memory>
#include <utility>

namespace ullage {

namespace {

struct FormatName {
    TableFormat format;
    std::string_view name, ending, other_ending;
};

constexpr FormatName format_names[] = {
    {TableFormat::text, "text", "txt", ""},     {TableFormat::csv, "csv", "csv", ""},    {TableFormat::markdown, "markdown", "md", "markdown"},
    {TableFormat::html, "html", "html", "htm"}, {TableFormat::xlsx, "xlsx", "xlsx", ""}, {TableFormat::json, "json", "json", ""},
    {TableFormat::latex, "latex", "tex", ""}};

/// Of the file beside one that may be replaced, about which nobody was asked.
Replacing beside_of(Replacing replacing) {
    if (replacing.consent == Replacing::Consent::ordinary) replacing.consent = Replacing::Consent::own;
    return replacing;
}

} // namespace

Table with_rows(Table table, const std::vector<std::size_t>& rows) {
    std::vector<TableRow> chosen;
    for (const std::size_t row : rows) chosen.push_back(table.rows[row]);
    table.rows = std::move(chosen);
    return table;
}

StreamedTable::StreamedTable(const Table& table) : TableHead(table), row_count(table.rows.size()) {
    each_row = [&rows = table.rows](const RowTaker& take) { return std::ranges::all_of(rows, take); };
}

StreamedTable::StreamedTable(Table&& table) : TableHead(table), row_count(table.rows.size()) {
    each_row = [rows = std::make_shared<const std::vector<TableRow>>(std::move(table.rows))](const RowTaker& take) {
        return std::ranges::all_of(*rows, take);
    };
}

Table collected(const StreamedTable& table) {
    Table all;
    static_cast<TableHead&>(all) = table;
    all.rows.reserve(table.row_count);
    table.each_row([&all](const TableRow& row) {
        all.rows.push_back(row);
        return true;
    });
    return all;
}

std::string csv_metadata_path(const std::string& csv_path) { return csv_path + "-metadata.json"; }

std::vector<std::string> table_format_names() {
    std::vector<std::string> names;
    for (const FormatName& known : format_names) names.emplace_back(known.name);
    return names;
}

Result<TableFormat> table_format_from(std::string_view name) {
    std::vector<Message> all;
    for (const FormatName& known : format_names) {
        if (known.name == name) return known.format;
        all.emplace_back(known.name);
    }
    return Error{
        Failure::bad_input, say(phrase("tables", "`%1` is no format of a table"), name), {}, say(phrase("tables", "use %1"), say_choice(all))};
}

std::string_view table_format_ending(TableFormat format) { return std::ranges::find(format_names, format, &FormatName::format)->ending; }

std::optional<TableFormat> table_format_of_ending(std::string_view ending) {
    if (!ending.starts_with('.')) return std::nullopt;
    ending.remove_prefix(1);
    for (const FormatName& known : format_names)
        if (known.ending == ending || (!known.other_ending.empty() && known.other_ending == ending)) return known.format;
    return std::nullopt;
}

bool table_text(const StreamedTable& table, TableFormat format, const TextTaker& take) {
    TextPieces out(take);
    switch (format) {
    case TableFormat::text: plain_table(table, out); break;
    case TableFormat::csv: csv_table(table, out); break;
    case TableFormat::markdown: markdown_table(table, out); break;
    case TableFormat::html: html_table(table, out); break;
    case TableFormat::json: json_table(table, out); break;
    case TableFormat::latex: latex_table(table, out); break;
    case TableFormat::xlsx: break;
    }
    return out.finish();
}

std::string table_text(const StreamedTable& table, TableFormat format) {
    std::string text;
    (void)table_text(table, format, [&text](std::string_view piece) {
        text += piece;
        return true;
    });
    return text;
}

Result<void> check_table_target(TableFormat format, const std::string& path, const Replacing& replacing) {
    if (const Result<OutputTarget> free = output_target(path, replacing); !free) return free.error();
    if (format != TableFormat::csv) return {};
    if (const Result<OutputTarget> free = output_target(csv_metadata_path(path), beside_of(replacing)); !free) {
        Error error = free.error();
        error.what = say(phrase("tables", "the description of the table cannot stand beside it: %1"), error.what);
        return error;
    }
    return {};
}

Result<void> write_table(const StreamedTable& table, TableFormat format, const std::string& path, const Replacing& replacing) {
    if (format == TableFormat::xlsx)
        return replace_file(path, replacing, [&](const std::string& temporary) -> Result<void> {
            const auto make = xlsx_table.get();
            return make ? make.value()(table, temporary) : make.error();
        });
    const auto text = [&](const TextTaker& take) { return table_text(table, format, take); };
    if (format != TableFormat::csv) return write_whole_file(path, text, replacing);
    if (Result<void> free = check_table_target(format, path, replacing); !free) return free;
    if (Result<void> written = write_whole_file(path, text, replacing); !written) return written;
    const std::string file_name = std::filesystem::path(path).filename().string();
    if (Result<void> described = write_whole_file(csv_metadata_path(path), csv_metadata(table, file_name), beside_of(replacing)); !described) {
        Error error = described.error();
        error.what = say(phrase("tables", "the table is written, but its description is not: %1"), error.what);
        return error;
    }
    return {};
}

} // namespace ullage
