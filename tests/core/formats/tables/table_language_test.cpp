// SPDX-License-Identifier: GPL-3.0-or-later
// Tables in a language that is not English.
#include "formats/tables/table.h"
#include "formats/tables/table_clipboard.h"
#include "support/marked_language.h"
#include "support/temp_folder.h"
#include "xlsx_reader.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>

namespace ullage::test {
namespace {

Table spoken_table() {
    using Content = TableColumn::Content;
    Table table;
    table.title = say(phrase("test", "Units"));
    table.columns = {{"unit", say(phrase("test", "unit")), {}, Content::text, 0},
                     {"usable_fraction", say(phrase("test", "usable fraction")), "1", Content::quantity, 3},
                     {"price", say(phrase("test", "price")), "EUR", Content::number, 2}};
    table.rows = {{Message("Osk 1.5"), known("usable_fraction", "1", 0.78125, 0.0158, Kind::projected, say(phrase("test", "assumes much"))),
                   known("price", "EUR", 0.71, std::nullopt, Kind::measured)},
                  {say(phrase("test", "together")), not_known("usable_fraction", "1", say(phrase("test", "not tested"))),
                   known("price", "EUR", 12.5, std::nullopt, Kind::measured)}};
    table.remarks = {say(phrase("test", "A remark."))};
    table.method = {{say(phrase("test", "How")), say(phrase("test", "By division."))}};
    return table;
}

std::string in_marked(const Table& table, TableFormat format) {
    const SpeakingIn speaking(marked_language);
    return table_text(table, format);
}

bool says(const std::string& text, const std::string& part) { return text.find(part) != std::string::npos; }

std::string described_text(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

TEST(TableLanguage, forms_for_people_are_in_the_language_with_its_decimal_sign) {
    for (const TableFormat format : {TableFormat::text, TableFormat::markdown, TableFormat::html, TableFormat::latex}) {
        const std::string text = in_marked(spoken_table(), format);
        for (const char* part : {"Units", "usable", "together", "assumes much", "A remark.", "How", "By division."})
            EXPECT_TRUE(says(text, part)) << text;
        EXPECT_TRUE(says(text, "78,1")) << text;
        EXPECT_TRUE(says(text, "0,71")) << text;
        EXPECT_TRUE(says(text, "Osk 1.5")) << "a name keeps its point\n" << text;
        EXPECT_FALSE(says(text, "78.1")) << text;
    }
    const std::string text = in_marked(spoken_table(), TableFormat::text);
    for (const char* part : {"§Units", "§usable", "§together", "§A remark.", "§How"}) EXPECT_TRUE(says(text, part)) << text;
    EXPECT_TRUE(says(text, "§projected: §assumes much")) << text;
    EXPECT_TRUE(says(in_marked(spoken_table(), TableFormat::html), "<html lang=\"de\"")) << "browsers are told";
}

TEST(TableLanguage, json_is_in_english_whatever_is_spoken) {
    const std::string english = table_text(spoken_table(), TableFormat::json);
    EXPECT_TRUE(says(english, "\"usable fraction\"")) << english;
    EXPECT_EQ(in_marked(spoken_table(), TableFormat::json), english);
}

TEST(TableLanguage, csv_keeps_its_keys_kinds_and_numbers) {
    const std::string english = table_text(spoken_table(), TableFormat::csv), marked = in_marked(spoken_table(), TableFormat::csv);
    EXPECT_EQ(marked.substr(0, marked.find('\n')), english.substr(0, english.find('\n')));
    EXPECT_TRUE(says(marked, ",projected,")) << marked;
    EXPECT_TRUE(says(marked, ",0.78125,")) << marked;
    EXPECT_TRUE(says(marked, "§assumes much")) << marked;
}

TEST(TableLanguage, the_description_of_a_csv_file_says_in_which_language_its_titles_are) {
    const TempFolder folder;
    const std::string path = folder / "table.csv";
    const SpeakingIn speaking(marked_language);
    ASSERT_TRUE(write_table(spoken_table(), TableFormat::csv, path).ok());
    const std::string described = described_text(csv_metadata_path(path));
    EXPECT_TRUE(says(described, "\"@language\": \"de\"")) << described;
    EXPECT_TRUE(says(described, "§usable fraction")) << described;
    EXPECT_TRUE(says(described, "\"name\": \"usable_fraction_kind\"")) << described;
}

TEST(TableLanguage, a_workbook_keeps_numbers_that_a_spreadsheet_counts_with) {
    const TempFolder folder;
    const std::string path = folder / "table.xlsx";
    const SpeakingIn speaking(marked_language);
    ASSERT_TRUE(write_table(spoken_table(), TableFormat::xlsx, path).ok());
    const auto readable = xlsx_cells(path, 1), data = xlsx_cells(path, 2);
    EXPECT_EQ(readable.at("A1").value, "§Units");
    EXPECT_EQ(readable.at("B4").value, "78,1 ± 1,6 [1]");
    EXPECT_FALSE(readable.at("C4").is_text) << "0,71 is a number";
    EXPECT_EQ(readable.at("C4").value, "0.71");
    EXPECT_EQ(data.at("B1").value, "§usable fraction");
    EXPECT_EQ(data.at("B2").value, "0.78125");
    EXPECT_FALSE(data.at("B2").is_text);
    EXPECT_EQ(data.at("E2").value, "§projected") << "for people";
}

TEST(TableLanguage, the_clipboard_has_the_titles_of_the_language) {
    const SpeakingIn speaking(marked_language);
    const std::string text = clipboard_table(spoken_table(), ',').text;
    EXPECT_TRUE(says(text, "§usable fraction")) << text;
    EXPECT_TRUE(says(text, "0,78125")) << text;
}

} // namespace
} // namespace ullage::test
