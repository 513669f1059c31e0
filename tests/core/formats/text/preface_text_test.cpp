// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/utf8.h"
#include "formats/text/preface_text.h"

#include <gtest/gtest.h>

#include <random>

using namespace ullage;

TEST(PrefaceText, ordinary_values_stand_for_themselves) {
    for (const char* value : {"Brook 500", "12\" lamp, two", "100 % sure: #1", "é ✓", "a \"b\" c", "=1+1", "x,,y"})
        EXPECT_EQ(escaped_preface(value), value);
}

TEST(PrefaceText, what_a_line_cannot_hold_is_escaped) {
    EXPECT_EQ(escaped_preface("two\nlines\r\n"), "two\\nlines\\r\\n");
    EXPECT_EQ(escaped_preface(" a b "), "\\sa b\\s");
    EXPECT_EQ(escaped_preface("\ta\t"), "\\ta\\t");
    EXPECT_EQ(escaped_preface("a,"), "a\\,");
    EXPECT_EQ(escaped_preface("a, ,"), "a\\,\\s\\,");
    EXPECT_EQ(escaped_preface("C:\\new"), "C:\\\\new");
    EXPECT_EQ(escaped_preface("a,=1; +2,b"), "a\\c=1\\e +2,b") << "a spreadsheet cuts the line there and would run the rest";
}

TEST(PrefaceText, padding_is_dropped) {
    EXPECT_EQ(unescaped_preface("  Brook 500 ,,,,,, ").value(), "Brook 500");
    EXPECT_EQ(unescaped_preface("a\\,,,").value(), "a,");
    EXPECT_EQ(unescaped_preface("a\\\\,,").value(), "a\\");
    EXPECT_EQ(unescaped_preface(",,,").value(), "");
    EXPECT_EQ(unescaped_preface("").value(), "");
}

TEST(PrefaceText, an_escape_without_meaning_is_refused) {
    for (const char* text : {"C:\\data", "a\\", "\\x", "\\\\\\"}) {
        const auto value = unescaped_preface(text);
        ASSERT_FALSE(value.ok()) << text;
        EXPECT_EQ(value.error().remedy, "write `\\\\` for a backslash");
    }
}

TEST(PrefaceText, every_value_comes_back) {
    std::mt19937_64 random(11);
    const std::string_view pieces[] = {"a", "\\", "n", "s", ",", "\n", "\r", " ", "\t", "\"", "#", ":", "%", "é"};
    std::uniform_int_distribution<std::size_t> piece(0, std::size(pieces) - 1), length(0, 7);
    for (int trial = 0; trial < 20'000; ++trial) {
        std::string value;
        for (std::size_t n = length(random); n > 0; --n) value += pieces[piece(random)];
        const std::string text = escaped_preface(value);
        ASSERT_EQ(text.find_first_of("\r\n"), std::string::npos);
        const auto back = unescaped_preface(" " + text + " ,,");
        ASSERT_TRUE(back.ok()) << text;
        ASSERT_EQ(back.value(), value) << text;
    }
}

TEST(Utf8, well_formed_and_ill_formed_sequences_are_told_apart) {
    // Unicode 15.0, table 3-7, and the example of ill-formed sequences in table 3-8: C0 AF, E0 80 BF, F0 81
    // 82 41.
    for (const char* good : {"", "plain", "é", "✓", "\xF0\x9F\x94\x8B", "\xED\x9F\xBF", "\xEE\x80\x80", "\xF4\x8F\xBF\xBF"})
        EXPECT_FALSE(first_bad_utf8(good).has_value()) << good;
    const std::pair<const char*, std::size_t> bad[] = {
        {"ab\xC0\xAF", 2},       {"\xE0\x80\xBF", 0}, {"\xF0\x81\x82\x41", 0}, {"\xED\xA0\x80", 0}, {"\xF4\x90\x80\x80", 0},
        {"\xF5\x80\x80\x80", 0}, {"é\x80", 2},        {"a\xE2\x9C", 1},        {"\xFF", 0},         {"caf\xE9 au lait", 3}};
    for (const auto& [text, position] : bad) EXPECT_EQ(first_bad_utf8(text), position) << text;
}
