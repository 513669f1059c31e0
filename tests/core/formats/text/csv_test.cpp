// SPDX-License-Identifier: GPL-3.0-or-later
// Grammar and examples: RFC 4180, section 2.
#include "formats/text/csv.h"

#include <gtest/gtest.h>

#include <random>

using namespace ullage;

namespace {

using Rows = std::vector<std::vector<std::string>>;

Rows rows_of(std::string_view text) {
    CsvReader reader(text);
    CsvRecord record;
    Rows rows;
    for (;;) {
        const auto more = reader.next(record);
        EXPECT_TRUE(more.ok()) << (more.ok() ? "" : more.error().sentence());
        if (!more || !more.value()) return rows;
        rows.push_back(record.fields);
    }
}

/// The first error of a text.
Error error_of(std::string_view text) {
    CsvReader reader(text);
    CsvRecord record;
    for (;;) {
        const auto more = reader.next(record);
        if (!more) return more.error();
        if (!more.value()) return {};
    }
}

} // namespace

TEST(Csv, reads_the_examples_of_rfc_4180) {
    EXPECT_EQ(rows_of("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n"), (Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    EXPECT_EQ(rows_of("aaa,bbb,ccc\r\nzzz,yyy,xxx"), (Rows{{"aaa", "bbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    EXPECT_EQ(rows_of("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"), (Rows{{"aaa", "b\r\nbb", "ccc"}, {"zzz", "yyy", "xxx"}}));
    EXPECT_EQ(rows_of("\"aaa\",\"b\"\"bb\",\"ccc\""), (Rows{{"aaa", "b\"bb", "ccc"}}));
}

TEST(Csv, blanks_and_empty_fields_are_kept) {
    EXPECT_EQ(rows_of(" a , b\n,,\n\n\"\"\n"), (Rows{{" a ", " b"}, {"", "", ""}, {""}, {""}}));
    EXPECT_EQ(rows_of("a,"), (Rows{{"a", ""}}));
    EXPECT_EQ(rows_of(""), Rows{});
    EXPECT_EQ(rows_of("\n"), (Rows{{""}}));
}

TEST(Csv, lines_are_counted_through_quoted_line_breaks) {
    CsvReader reader("a\n\"b\n\nc\",d\r\ne\n", 5);
    CsvRecord record;
    ASSERT_TRUE(reader.next(record).value());
    EXPECT_EQ(record.line, 5);
    ASSERT_TRUE(reader.next(record).value());
    EXPECT_EQ(record.line, 6);
    ASSERT_TRUE(reader.next(record).value());
    EXPECT_EQ(record.line, 9);
    EXPECT_FALSE(reader.next(record).value());
    EXPECT_TRUE(record.fields.empty());
    EXPECT_EQ(reader.line(), 10);
}

TEST(Csv, what_breaks_the_grammar_is_refused_with_its_place) {
    EXPECT_EQ(error_of("a,b\nc,d\"e\n").where, "line 2, character 4");
    EXPECT_NE(error_of("a,b\nc,d\"e\n").what.text().find("quote stands inside"), std::string::npos);
    EXPECT_EQ(error_of("ä,\"b\"c\n").where, "line 1, character 6") << "characters are counted, not bytes";
    EXPECT_EQ(error_of("a\nb,\"c\nd").where, "line 2, character 3") << "where the quote was opened";
    EXPECT_NE(error_of("a\nb,\"c\nd").what.text().find("never closed"), std::string::npos);
    EXPECT_NE(error_of("a\rb\n").what.text().find("carriage return"), std::string::npos);
    EXPECT_NE(error_of("\"a\"\rb\n").what.text().find("closing quote"), std::string::npos);
    EXPECT_EQ(error_of("\"a\nb\"x").where, "line 2, character 3");
    EXPECT_FALSE(error_of("\"").what.empty());
}

TEST(Csv, other_separators_are_noticed) {
    EXPECT_EQ(foreign_separator("time;gauge"), ';');
    EXPECT_EQ(foreign_separator("time\tgauge"), '\t');
    EXPECT_EQ(foreign_separator("time,a;b"), '\0');
    EXPECT_EQ(foreign_separator("time"), '\0');
}

TEST(Csv, fields_are_quoted_only_where_they_must_be) {
    std::string text;
    append_csv_record(text, {"a", "b c", "d,e", "f\"g", "h\ni", " j", "", "=k"});
    EXPECT_EQ(text, "a,b c,\"d,e\",\"f\"\"g\",\"h\ni\",\" j\",,=k\n");
    text.clear();
    append_csv_record(text, {""});
    EXPECT_EQ(text, "\"\"\n");
}

TEST(Csv, any_record_comes_back_as_it_was_written) {
    std::mt19937_64 random(4180);
    const std::string_view pieces[] = {"a", "\"", ",", "\n", "\r\n", "\r", " ", "\t", ";", "#", "é", "✓", "=", "'"};
    std::uniform_int_distribution<std::size_t> piece(0, std::size(pieces) - 1), length(0, 6), width(1, 5);
    for (int trial = 0; trial < 2000; ++trial) {
        Rows rows(length(random));
        std::string text;
        for (auto& row : rows) {
            row.resize(width(random));
            for (auto& field : row)
                for (std::size_t n = length(random); n > 0; --n) field += pieces[piece(random)];
            append_csv_record(text, row);
        }
        ASSERT_EQ(rows_of(text), rows) << text;
    }
}
