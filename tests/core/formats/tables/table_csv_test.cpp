// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/table.h"
#include "formats/text/csv.h"
#include "table_samples.h"

#include <gtest/gtest.h>

#include <map>

namespace ullage::test {
namespace {

using Records = std::vector<std::map<std::string, std::string>>;

Records read_back(const std::string& text) {
    CsvReader reader(text);
    CsvRecord record;
    Records records;
    std::vector<std::string> heads;
    for (;;) {
        const Result<bool> more = reader.next(record);
        if (!more) {
            ADD_FAILURE() << more.error().sentence();
            return records;
        }
        if (!more.value()) return records;
        if (heads.empty()) {
            heads = record.fields;
            continue;
        }
        EXPECT_EQ(record.fields.size(), heads.size());
        auto& named = records.emplace_back();
        for (std::size_t i = 0; i < heads.size() && i < record.fields.size(); ++i) named[heads[i]] = record.fields[i];
    }
}

TEST(TableCsv, every_number_reads_back_as_the_same_double) {
    const Table table = hostile_table();
    const Records records = read_back(table_text(table, TableFormat::csv));
    ASSERT_EQ(records.size(), table.rows.size());
    for (std::size_t r = 0; r < records.size(); ++r) {
        for (std::size_t c : {2u, 3u}) {
            const auto& quantity = std::get<Quantity>(table.rows[r][c]);
            const std::string& key = table.columns[c].key;
            const auto expect_same = [&](const std::string& head, const std::optional<double>& number) {
                const std::string& field = records[r].at(head);
                if (!number) EXPECT_EQ(field, "") << head;
                else EXPECT_EQ(std::stod(field), *number) << head;
            };
            expect_same(key, quantity.value);
            expect_same(key + "_lower", quantity.lower);
            expect_same(key + "_upper", quantity.upper);
            EXPECT_EQ(records[r].at(key + "_kind"), kind_text(quantity.kind));
        }
    }
    EXPECT_EQ(records[4].at("rated_wh"), "1e-07");
}

TEST(TableCsv, a_text_that_looks_like_a_formula_gets_an_apostrophe) {
    Table table;
    table.columns = {{"a", "a", "", TableColumn::Content::text, 0}};
    for (const char* text : {"=1+1", "+1", "-1", "@sum", "\tx", "\rx", "1=1", ""}) table.rows.push_back({std::string(text)});
    const Records records = read_back(table_text(table, TableFormat::csv));
    const std::vector<std::string> expected{"'=1+1", "'+1", "'-1", "'@sum", "'\tx", "'\rx", "1=1", ""};
    ASSERT_EQ(records.size(), expected.size());
    for (std::size_t r = 0; r < expected.size(); ++r) EXPECT_EQ(records[r].at("a"), expected[r]);
    EXPECT_EQ(read_back(table_text(hostile_table(), TableFormat::csv))[2].at("delivered_wh_reason"), "'=energy may be missing");
}

TEST(TableCsv, a_negative_number_is_no_formula) {
    Table table;
    table.columns = {{"a", "a", "pt", TableColumn::Content::number, 0}};
    table.rows = {{known("a", "pt", -17.5, std::nullopt, Kind::measured)}};
    EXPECT_EQ(table_text(table, TableFormat::csv), "a\r\n-17.5\r\n");
}

TEST(TableCsv, quotes_commas_and_line_breaks_of_texts_survive) {
    const Records records = read_back(table_text(hostile_table(), TableFormat::csv));
    ASSERT_EQ(records.size(), 5u);
    EXPECT_EQ(records[3].at("unit"), hostile_lines);
    EXPECT_EQ(records[1].at("unit"), hostile_markup);
    EXPECT_EQ(records[4].at("unit"), hostile_letters);
}

TEST(TableCsv, records_end_in_crlf_as_rfc_4180_says) {
    Table table = hostile_table();
    table.rows.erase(table.rows.begin() + 2, table.rows.begin() + 4); // those with line breaks in a text
    const std::string text = table_text(table, TableFormat::csv);
    std::size_t lines = 0;
    for (std::size_t at = text.find('\n'); at != std::string::npos; at = text.find('\n', at + 1), ++lines) EXPECT_EQ(text[at - 1], '\r');
    EXPECT_EQ(lines, 4u);
    EXPECT_EQ(text.substr(text.size() - 2), "\r\n");
}

TEST(TableCsv, a_column_without_a_common_unit_names_each) {
    const Records records = read_back(table_text(hostile_table(), TableFormat::csv));
    EXPECT_EQ(records[0].at("price_per_kwh_unit"), "EUR/kWh");
    EXPECT_EQ(records[1].at("price_per_kwh_unit"), "CHF/kWh");
    EXPECT_EQ(records[2].at("price_per_kwh"), "");
    EXPECT_EQ(records[0].count("delivered_wh_unit"), 0u);
}

} // namespace
} // namespace ullage::test
