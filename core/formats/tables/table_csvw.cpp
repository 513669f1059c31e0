// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/language.h"
#include "base/version.h"
#include "formats/json/quantity_json.h"
#include "formats/tables/inside/distinct_rows.h"
#include "formats/tables/inside/table_flat.h"
#include "formats/tables/inside/table_formats.h"
#include "formats/tables/table_printed.h"
#include "formats/text/table_unicode.h"

#include <fmt/format.h>

#include <cctype>

namespace ullage {

namespace {

/// Everything but unreserved characters as %XX (RFC 3986, 2.3): a file name as a relative URL.
std::string url_of(std::string_view file_name) {
    std::string url;
    for (const char c : file_name) {
        const auto byte = static_cast<unsigned char>(c);
        const bool unreserved = byte < 0x80 && (std::isalnum(byte) || std::string_view("-._~").find(c) != std::string_view::npos);
        url += unreserved ? std::string(1, c) : fmt::format("%{:02X}", byte);
    }
    return url;
}

/// Kinds as a regular expression, by which a reader can check them.
Json kind_datatype() {
    std::string kinds;
    for (const Kind kind : {Kind::measured, Kind::projected, Kind::at_least, Kind::bracket, Kind::not_known})
        kinds += (kinds.empty() ? "" : "|") + std::string(kind_text(kind));
    return {{"base", "string"}, {"format", kinds}};
}

Json datatype_of(const TableColumn& column, Part part) {
    if (is_number(part)) return "double";
    if (part == Part::kind) return kind_datatype();
    return part == Part::text && column.instant ? "dateTimeStamp" : "string";
}

Message meaning_of(const TableColumn& column, Part part) {
    switch (part) {
    case Part::text: return {};
    case Part::value:
        return column.content == TableColumn::Content::quantity ? say(phrase("tables", "value; the columns that follow say how far it is known"))
                                                                : Message();
    case Part::unit: return say(phrase("tables", "unit of %1"), column.key);
    case Part::lower: return say(phrase("tables", "lower end of the 95 % interval of %1"), column.key);
    case Part::upper: return say(phrase("tables", "upper end of the 95 % interval of %1"), column.key);
    case Part::kind: return say(phrase("tables", "how far %1 is known"), column.key);
    case Part::reason: return say(phrase("tables", "why %1 is not simply measured, or what it assumes"), column.key);
    }
    return {};
}

Json column_json(const TableHead& table, const FlatColumn& flat) {
    const TableColumn& column = table.columns[flat.column];
    // The key stands in the header line, so it has to be among the titles.
    Json titles = Json::array({flat.key});
    if (flat.title != flat.key) titles.push_back(flat.title);
    Json json{{"name", flat.key}, {"titles", std::move(titles)}, {"datatype", datatype_of(column, flat.part)}};
    if (is_number(flat.part) && !column.unit.empty()) json["schema:unitText"] = one_line(column.unit);
    if (const Message meaning = meaning_of(column, flat.part); !meaning.empty()) json["dc:description"] = meaning;
    return json;
}

/// The identifying columns where they tell all rows apart, else none.
Json primary_key(const StreamedTable& table) {
    Json key = Json::array();
    std::vector<std::size_t> columns;
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        if (!table.columns[c].identifies) continue;
        key.push_back(table.columns[c].key);
        columns.push_back(c);
    }
    return tell_rows_apart(table, columns) ? key : Json::array();
}

} // namespace

std::string csv_metadata(const StreamedTable& table, const std::string& file_name) {
    Json json{{"@context", {"http://www.w3.org/ns/csvw", {{"@language", language_in_use().code()}}}}, {"url", url_of(file_name)}};
    json["dc:title"] = table.title;
    json["dc:creator"] = "Ullage " + std::string(program_version());
    if (!table.remarks.empty()) json["dc:description"] = table.remarks;
    for (const auto& [heading, text] : table.method) json["schema:measurementTechnique"].push_back(say(phrase("tables", "%1: %2"), heading, text));
    json["rdfs:comment"] = say(phrase("tables", "A text that a spreadsheet would run as a formula has an apostrophe in front."));
    json["dialect"] = {{"encoding", "utf-8"}, {"delimiter", ","},    {"lineTerminators", "\r\n"}, {"quoteChar", "\""},         {"doubleQuote", true},
                       {"header", true},      {"headerRowCount", 1}, {"skipBlankRows", false},    {"skipInitialSpace", false}, {"trim", false}};
    Json columns = Json::array();
    for (const FlatColumn& flat : flat_columns(table)) columns.push_back(column_json(table, flat));
    json["tableSchema"] = {{"null", ""}, {"columns", std::move(columns)}};
    if (Json key = primary_key(table); !key.empty()) json["tableSchema"]["primaryKey"] = std::move(key);
    return json_text(json);
}

} // namespace ullage
