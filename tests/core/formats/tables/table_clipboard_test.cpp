// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/table_clipboard.h"

#include "formats/text/spreadsheet_text.h"
#include "table_samples.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ullage::test {
namespace {

Table texts(const std::vector<std::string>& cells) {
    Table table;
    table.columns = {{"a", "a", "", TableColumn::Content::text, 0}};
    for (const std::string& cell : cells) table.rows.push_back({cell});
    return table;
}

// OWASP, "CSV Injection": = + - @ tab CR, in its later editions also LF and the full-width forms. CWE-1236 names the same cure.
TEST(SpreadsheetText, a_formula_gets_an_apostrophe_that_can_be_taken_off_again) {
    for (const char* text : {"=1+1", "+1", "-1", "@sum", "\tx", "\rx", "\nx", "＝1", "＋1", "－1", "＠x"})
        EXPECT_EQ(spreadsheet_text(text), "'" + std::string(text));
    for (const char* text : {"", "1=1", "'", "'quoted'", "drain - 64 W", "−5"}) EXPECT_EQ(spreadsheet_text(text), text);
    EXPECT_EQ(spreadsheet_text("'=1"), "''=1") << "else it would read back as =1";
}

TEST(SpreadsheetText, blanks_that_nobody_sees_do_not_hide_a_formula) {
    for (const char* text : {" =1", "\u00A0=1", "\uFEFF=1", "\u200B\u3000+1", " \t-1", "' =1", "\u202E@x"}) {
        EXPECT_TRUE(looks_like_formula(text)) << text;
        EXPECT_EQ(unguarded_text(guarded_text(text)), text);
        EXPECT_EQ(guarded_text(text), "'" + std::string(text));
    }
    for (const char* text : {"'", "''", "'a", " a=1", "", " "}) EXPECT_EQ(unguarded_text(guarded_text(text)), text);
    EXPECT_EQ(guarded_text(" a=1"), " a=1");
}

TEST(TableClipboard, texts_are_no_formulas_and_break_no_row_in_either_form) {
    const ClipboardTable clip = clipboard_table(texts({"=1+1", "a\tb\nc", "\"quoted\" text", "<b>&", "+x"}));
    EXPECT_EQ(clip.text, "a\n'=1+1\na b c\n\"\"\"quoted\"\" text\"\n<b>&\n'+x\n");
    EXPECT_NE(clip.html.find("<td>&#39;=1+1</td>"), std::string::npos);
    EXPECT_NE(clip.html.find("<td>&lt;b&gt;&amp;</td>"), std::string::npos);
    EXPECT_EQ(clip.html.find("<b>"), std::string::npos);
}

TEST(TableClipboard, a_negative_number_stays_a_number) {
    Table table;
    table.columns = {{"a", "gauge error", "pt", TableColumn::Content::number, 0}};
    table.rows = {{known("a", "pt", -17.25, std::nullopt, Kind::measured)}};
    EXPECT_EQ(clipboard_table(table).text, "gauge error (pt)\n-17.25\n");
    EXPECT_EQ(clipboard_table(table, ',').text, "gauge error (pt)\n-17,25\n");
}

TEST(TableClipboard, interval_and_kind_have_columns_of_their_own) {
    const std::string text = clipboard_table(hostile_table()).text;
    const std::string head = text.substr(0, text.find('\n'));
    EXPECT_NE(head.find("delivered energy (Wh)\tdelivered energy, lower\tdelivered energy, upper\tdelivered energy, kind\tdelivered energy, reason"),
              std::string::npos);
    EXPECT_EQ(std::count(text.begin(), text.end(), '\n'), 6);
}

} // namespace
} // namespace ullage::test
