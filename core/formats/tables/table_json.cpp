// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/language.h"
#include "base/version.h"
#include "formats/json/quantity_json.h"
#include "formats/tables/inside/table_formats.h"
#include "formats/tables/table_printed.h"

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
    const std::string text = std::get<Message>(cell);
    // An empty text among numbers means that nothing belongs there.
    if (text.empty() && column.content != TableColumn::Content::text) return nullptr;
    return text;
}

Json row_json(const TableHead& table, const TableRow& row) {
    Json object = Json::object();
    for (std::size_t c = 0; c < table.columns.size(); ++c) object[table.columns[c].key] = cell_json(table.columns[c], cell_at(row, c));
    return object;
}

constexpr std::string_view object_begin = "{", object_end = "\n}\n";

/// The text of an object that stands `depth` blanks deep, without a line feed at its end. Lines end between its parts only: in strings they are
/// escaped.
std::string inner_text(const Json& json, std::size_t depth) {
    const std::string text = json_text(json);
    std::string inner(depth, ' ');
    for (const char c : std::string_view(text).substr(0, text.size() - 1)) {
        inner += c;
        if (c == '\n') inner.append(depth, ' ');
    }
    return inner;
}

} // namespace

void json_table(const StreamedTable& table, TextPieces& out) {
    const SpeakingIn for_machines(english());
    Json head{{"program", "ullage"}, {"version", std::string(program_version())}, {"format_version", json_format_version}, {"title", table.title}};
    if (!table.answer.empty()) head["answer"] = table.answer;
    head["columns"] = Json::array();
    for (const TableColumn& column : table.columns)
        head["columns"].push_back(
            {{"key", column.key}, {"title", column.title}, {"unit", column.unit}, {"content", std::string(content_text(column.content))}});
    Json foot = Json::object();
    foot["remarks"] = table.remarks;
    foot["method"] = Json::array();
    for (const auto& [heading, text] : table.method) foot["method"].push_back({{"heading", heading}, {"text", text}});

    // The rows stand between the two, so that they need not be one object with them.
    const std::string before = json_text(head), after = json_text(foot);
    out.text() += std::string_view(before).substr(0, before.size() - object_end.size());
    out.text() += ",\n  \"rows\": [";
    bool any = false;
    const bool whole = table.each_row([&](const TableRow& row) {
        out.text() += any ? ",\n" : "\n";
        any = true;
        out.text() += inner_text(row_json(table, row), 4);
        return out.pass_on();
    });
    if (!whole) return;
    out.text() += any ? "\n  ]," : "],";
    out.text() += std::string_view(after).substr(object_begin.size());
}

} // namespace ullage
