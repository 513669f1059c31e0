// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/version.h"
#include "exchange/quantity_json.h"
#include "exchange/table_formats.h"
#include "exchange/table_printed.h"

namespace ullage {

namespace {

std::string_view content_text(TableColumn::Content content) {
    switch (content) {
    case TableColumn::Content::text: return "text";
    case TableColumn::Content::number: return "number";
    case TableColumn::Content::quantity: return "quantity";
    }
    return "text";
}

Json cell_json(const TableColumn& column, const TableCell& cell) {
    if (const auto* quantity = std::get_if<Quantity>(&cell)) return quantity_json(*quantity);
    const auto& text = std::get<std::string>(cell);
    // An empty text among numbers means that nothing belongs there.
    if (text.empty() && column.content != TableColumn::Content::text) return nullptr;
    return text;
}

} // namespace

std::string json_table(const Table& table) {
    Json json{{"program", "ullage"}, {"version", std::string(program_version())}, {"title", table.title}};
    json["columns"] = Json::array();
    for (const TableColumn& column : table.columns)
        json["columns"].push_back({{"key", column.key},
                                   {"title", column.title},
                                   {"unit", column.unit},
                                   {"content", std::string(content_text(column.content))}});
    json["rows"] = Json::array();
    for (const auto& row : table.rows) {
        Json object = Json::object();
        for (std::size_t c = 0; c < table.columns.size(); ++c)
            object[table.columns[c].key] = cell_json(table.columns[c], cell_at(row, c));
        json["rows"].push_back(std::move(object));
    }
    json["remarks"] = table.remarks;
    json["method"] = Json::array();
    for (const auto& [heading, text] : table.method) json["method"].push_back({{"heading", heading}, {"text", text}});
    return json_text(json);
}

} // namespace ullage
