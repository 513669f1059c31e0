// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Reads each export form back by means that share no code with the writers but our CSV reader.

#include "formats/tables/table.h"
#include "formats/text/csv.h"
#include "xlsx_reader.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace ullage::test {

/// A cell as a form gives it back; parts that the form does not have are absent.
struct ReadCell {
    std::string text, unit, kind, reason;
    std::optional<double> value, lower, upper;
};
using ReadRow = std::map<std::string, ReadCell>; ///< by key of the column

inline std::optional<double> number_of(const std::string& text) {
    if (text.empty()) return std::nullopt;
    char* end = nullptr;
    const double number = std::strtod(text.c_str(), &end);
    EXPECT_EQ(*end, '\0') << "no number: " << text;
    return number;
}

inline std::string all_replaced(std::string text, const std::string& what, const std::string& by) {
    for (auto at = text.find(what); at != std::string::npos; at = text.find(what, at + by.size())) text.replace(at, what.size(), by);
    return text;
}

/// Takes off the apostrophe that keeps a spreadsheet from running a text.
inline std::string unguarded(const std::string& text) {
    static const std::vector<std::string> beginnings{"=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠"};
    const std::size_t first = text.find_first_not_of('\'');
    const bool guarded = first != 0 && first != std::string::npos && std::any_of(beginnings.begin(), beginnings.end(), [&](const auto& letter) {
                             return text.compare(first, letter.size(), letter) == 0;
                         });
    return guarded ? text.substr(1) : text;
}

/// Fields under heads such as "delivered_wh_lower" as cells.
inline ReadRow row_of_fields(const Table& table, const std::map<std::string, std::string>& fields) {
    ReadRow row;
    const auto field = [&](const std::string& head) {
        const auto at = fields.find(head);
        return at == fields.end() ? std::string() : at->second;
    };
    for (const TableColumn& column : table.columns) {
        ReadCell& cell = row[column.key];
        if (column.content == TableColumn::Content::text) {
            cell.text = unguarded(field(column.key));
            continue;
        }
        cell.value = number_of(field(column.key));
        cell.lower = number_of(field(column.key + "_lower"));
        cell.upper = number_of(field(column.key + "_upper"));
        cell.kind = field(column.key + "_kind");
        cell.reason = unguarded(field(column.key + "_reason"));
        cell.unit = field(column.key + "_unit");
    }
    return row;
}

inline std::vector<std::vector<std::string>> csv_records(const std::string& text) {
    CsvReader reader(text);
    std::vector<std::vector<std::string>> records;
    CsvRecord record;
    for (Result<bool> more = reader.next(record);; more = reader.next(record)) {
        if (!more) ADD_FAILURE() << more.error().sentence();
        if (!more || !more.value()) return records;
        records.push_back(record.fields);
    }
}

inline std::vector<ReadRow> rows_of_records(const Table& table, const std::vector<std::string>& heads,
                                            const std::vector<std::vector<std::string>>& records) {
    std::vector<ReadRow> rows;
    for (const auto& record : records) {
        EXPECT_EQ(record.size(), heads.size());
        std::map<std::string, std::string> fields;
        for (std::size_t i = 0; i < std::min(heads.size(), record.size()); ++i) fields[heads[i]] = record[i];
        rows.push_back(row_of_fields(table, fields));
    }
    return rows;
}

inline std::vector<ReadRow> read_csv(const Table& table, const std::string& text) {
    auto records = csv_records(text);
    if (records.empty()) return {};
    const std::vector<std::string> heads = records.front();
    records.erase(records.begin());
    return rows_of_records(table, heads, records);
}

/// Heads of CSV in the order of the columns, for forms that have the same fields under titles.
inline std::vector<std::string> csv_heads(const Table& table) { return csv_records(table_text(table, TableFormat::csv)).at(0); }

inline std::vector<ReadRow> read_json(const Table& table, const std::string& text) {
    std::vector<ReadRow> rows;
    const auto json = nlohmann::json::parse(text);
    const auto number = [](const nlohmann::json& any) { return any.is_null() ? std::nullopt : std::optional(any.get<double>()); };
    for (const auto& object : json.at("rows")) {
        ReadRow& row = rows.emplace_back();
        for (const TableColumn& column : table.columns) {
            const auto& any = object.at(column.key);
            ReadCell& cell = row[column.key];
            if (any.is_string()) cell.text = any;
            if (any.is_object())
                cell = {
                    "", any.at("unit"), any.at("kind"), any.at("reason"), number(any.at("value")), number(any.at("lower")), number(any.at("upper"))};
        }
    }
    return rows;
}

/// Elements of one name with their attributes and inner XML, in order; knows no nesting of the same name.
struct Element {
    std::map<std::string, std::string> attributes;
    std::string inner;
};
inline std::vector<Element> elements(const std::string& xml, const std::vector<std::string>& names) {
    std::vector<Element> found;
    for (std::size_t at = xml.find('<'); at != std::string::npos; at = xml.find('<', at)) {
        const std::size_t name_end = xml.find_first_of(" >", at);
        const std::string name = xml.substr(at + 1, name_end - at - 1);
        if (std::find(names.begin(), names.end(), name) == names.end()) {
            ++at;
            continue;
        }
        Element& one = found.emplace_back();
        std::size_t in = name_end;
        while (xml[in] == ' ') {
            const std::size_t equals = xml.find("=\"", in);
            const std::size_t quote = xml.find('"', equals + 2);
            one.attributes[xml.substr(in + 1, equals - in - 1)] = xml.substr(equals + 2, quote - equals - 2);
            in = quote + 1;
        }
        const std::size_t close = xml.find("</" + name + ">", in);
        if (close == std::string::npos) {
            ADD_FAILURE() << name << " is never closed";
            return found;
        }
        one.inner = xml.substr(in + 1, close - in - 1);
        at = close;
    }
    return found;
}

inline std::string text_of(const std::string& inner) {
    std::string text;
    bool within = false;
    for (const char c : inner) {
        if (c == '<' || c == '>') within = c == '<';
        else if (!within) text += c;
    }
    return xml_decoded(all_replaced(text, "&#39;", "'"));
}

/// The body of an HTML table: rows of cells.
inline std::vector<std::vector<Element>> html_rows(const std::string& html) {
    std::vector<std::vector<Element>> rows;
    for (const Element& row : elements(html, {"tr"})) rows.push_back(elements(row.inner, {"td", "th"}));
    return rows;
}

inline std::vector<ReadRow> read_html(const Table& table, const std::string& html) {
    std::vector<ReadRow> rows;
    auto parsed = html_rows(html);
    parsed.erase(parsed.begin()); // heads
    for (const auto& cells : parsed) {
        EXPECT_EQ(cells.size(), table.columns.size());
        ReadRow& row = rows.emplace_back();
        for (std::size_t c = 0; c < std::min(cells.size(), table.columns.size()); ++c) {
            const auto attribute = [&](const char* name) {
                const auto at = cells[c].attributes.find(name);
                return at == cells[c].attributes.end() ? std::string() : at->second;
            };
            ReadCell& cell = row[table.columns[c].key];
            cell.text = text_of(cells[c].inner);
            const bool quantity = table.columns[c].content == TableColumn::Content::quantity;
            cell.value = number_of(attribute(quantity ? "data-value" : "data-number"));
            cell.lower = number_of(attribute("data-lower"));
            cell.upper = number_of(attribute("data-upper"));
            cell.kind = attribute("data-kind");
        }
    }
    return rows;
}

inline std::vector<ReadRow> read_xlsx(const Table& table, const std::string& path) {
    const auto cells = xlsx_data(path);
    std::vector<std::string> heads = csv_heads(table);
    // A column of instants has its local time as a number beside it.
    for (const TableColumn& column : table.columns)
        if (column.instant) heads.insert(std::find(heads.begin(), heads.end(), column.key) + 1, column.key + " local");
    std::vector<ReadRow> rows;
    for (std::size_t r = 0; r < table.rows.size(); ++r) {
        std::map<std::string, std::string> fields;
        for (std::size_t h = 0; h < heads.size(); ++h) {
            const std::string letters = h < 26 ? std::string(1, static_cast<char>('A' + h))
                                               : std::string(1, static_cast<char>('A' + h / 26 - 1)) + static_cast<char>('A' + h % 26);
            const auto at = cells.find(letters + std::to_string(r + 2));
            if (at != cells.end()) fields[heads[h]] = at->second.value;
        }
        rows.push_back(row_of_fields(table, fields));
    }
    return rows;
}

} // namespace ullage::test
