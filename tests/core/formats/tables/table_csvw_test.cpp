// SPDX-License-Identifier: GPL-3.0-or-later
// W3C Recommendations of 17 December 2015: "Metadata Vocabulary for Tabular Data" and "Model for Tabular Data and Metadata on the Web".
#include "formats/tables/inside/table_formats.h"
#include "read_back.h"
#include "sample_tables.h"
#include "support/temp_folder.h"

#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <regex>
#include <set>

namespace ullage::test {
namespace {

using Json = nlohmann::json;

Json metadata_of(const Table& table, const std::string& file_name = "t.csv") { return Json::parse(csv_metadata(table, file_name)); }

std::string file_text(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

/// Whether the whole of a text is of this form. To make a form takes far longer than to ask it.
bool has_form(const std::string& text, const std::string& form) {
    static std::map<std::string, std::regex> made;
    return std::regex_match(text, made.try_emplace(form, form).first->second);
}

/// True where `field` is of the datatype (Metadata Vocabulary, 5.11; lexical forms of XML Schema 1.1 part 2, 3.3.5 and 3.4.28).
bool fits(const std::string& field, const Json& datatype) {
    if (datatype.is_object()) return has_form(field, datatype.at("format").get<std::string>());
    if (datatype == "double") return has_form(field, "[+-]?([0-9]+(\\.[0-9]*)?|\\.[0-9]+)([eE][+-]?[0-9]+)?");
    if (datatype == "dateTimeStamp")
        return has_form(field, "[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}(\\.[0-9]+)?(Z|[+-][0-9]{2}:[0-9]{2})");
    return datatype == "string";
}

TEST(CsvMetadata, each_column_has_the_name_that_heads_it_and_its_fields_fit_the_datatype) {
    for (const Table& table : every_table()) {
        SCOPED_TRACE(table.title);
        const Json columns = metadata_of(table).at("tableSchema").at("columns");
        const auto records = csv_records(table_text(table, TableFormat::csv));
        ASSERT_EQ(columns.size(), records.at(0).size());
        std::set<std::string> names;
        for (std::size_t c = 0; c < columns.size(); ++c) {
            const std::string name = columns[c].at("name");
            EXPECT_TRUE(names.insert(name).second) << name << " is there twice";
            EXPECT_TRUE(has_form(name, "[A-Za-z0-9][A-Za-z0-9_.]*")) << name;
            // A header cell has to be among the titles (Metadata Vocabulary, 5.6, on column titles).
            const Json& titles = columns[c].at("titles");
            EXPECT_NE(std::find(titles.begin(), titles.end(), Json(records[0][c])), titles.end()) << name;
            for (std::size_t r = 1; r < records.size(); ++r)
                EXPECT_TRUE(records[r][c].empty() || fits(records[r][c], columns[c].at("datatype"))) << name << ": " << records[r][c];
        }
    }
}

TEST(CsvMetadata, says_unit_meaning_and_kind_of_a_quantity) {
    const Json columns = metadata_of(hostile_table()).at("tableSchema").at("columns");
    const auto named = [&](const std::string& name) {
        for (const Json& column : columns)
            if (column.at("name") == name) return column;
        ADD_FAILURE() << name;
        return Json();
    };
    EXPECT_EQ(named("delivered_wh").at("schema:unitText"), "Wh");
    EXPECT_EQ(named("delivered_wh_lower").at("schema:unitText"), "Wh");
    EXPECT_EQ(named("delivered_wh_upper").at("dc:description"), "upper end of the 95 % interval of delivered_wh");
    EXPECT_EQ(named("delivered_wh").at("titles")[1], "delivered energy (Wh)");
    EXPECT_FALSE(named("price_per_kwh").contains("schema:unitText")) << "each row has a unit of its own";
    EXPECT_EQ(named("price_per_kwh_unit").at("datatype"), "string");
    EXPECT_TRUE(fits("at least", named("delivered_wh_kind").at("datatype")));
    EXPECT_FALSE(fits("guessed", named("delivered_wh_kind").at("datatype")));
}

TEST(CsvMetadata, has_the_context_and_the_dialect_that_the_file_is_in) {
    const Json json = metadata_of(hostile_table());
    EXPECT_EQ(json.at("@context"), Json::parse(R"(["http://www.w3.org/ns/csvw", {"@language": "en"}])"));
    const Json& dialect = json.at("dialect");
    EXPECT_EQ(dialect.at("encoding"), "utf-8");
    EXPECT_EQ(dialect.at("delimiter"), ",");
    EXPECT_EQ(dialect.at("lineTerminators"), "\r\n");
    EXPECT_EQ(dialect.at("quoteChar"), "\"");
    EXPECT_TRUE(dialect.at("doubleQuote").get<bool>());
    EXPECT_EQ(dialect.at("headerRowCount"), 1);
    EXPECT_FALSE(dialect.at("trim").get<bool>());
    EXPECT_EQ(json.at("tableSchema").at("null"), "");
    EXPECT_EQ(json.at("dc:title"), hostile_table().title);
    EXPECT_EQ(json.at("schema:measurementTechnique")[0], "How & why: Divided; see *JCGM 100:2008*, a < b.");
}

TEST(CsvMetadata, the_primary_key_tells_rows_apart_and_is_left_out_where_it_would_not) {
    Table table = every_table()[4]; // readings of several runs
    EXPECT_EQ(metadata_of(table).at("tableSchema").at("primaryKey"), Json::parse(R"(["unit", "maker", "run", "time"])"));
    std::set<std::vector<std::string>> seen;
    auto records = csv_records(table_text(table, TableFormat::csv));
    for (std::size_t r = 1; r < records.size(); ++r) EXPECT_TRUE(seen.insert({records[r][0], records[r][1], records[r][2], records[r][3]}).second);
    table.rows.push_back(table.rows.front());
    EXPECT_FALSE(metadata_of(table).at("tableSchema").contains("primaryKey"));
    EXPECT_FALSE(metadata_of(hostile_table()).at("tableSchema").contains("primaryKey"));
}

TEST(CsvMetadata, stands_beside_the_file_under_the_name_that_readers_look_for) {
    const TempFolder folder;
    const std::string path = folder / "a & b é.csv";
    ASSERT_TRUE(write_table(hostile_table(), TableFormat::csv, path).ok());
    const std::string beside = file_text(folder / "a & b é.csv-metadata.json");
    ASSERT_FALSE(beside.empty());
    EXPECT_EQ(Json::parse(beside).at("url"), "a%20%26%20b%20%C3%A9.csv"); // RFC 3986, 2.1: UTF-8 bytes as %XX
    EXPECT_EQ(Json::parse(beside).at("tableSchema").at("columns").size(), csv_records(file_text(path)).at(0).size());
}

TEST(CsvMetadata, where_it_cannot_stand_there_is_no_table_either) {
    const TempFolder folder;
    std::filesystem::create_directory(folder / "t.csv-metadata.json");
    const auto written = write_table(hostile_table(), TableFormat::csv, folder / "t.csv");
    ASSERT_FALSE(written.ok());
    EXPECT_NE(written.error().sentence().find("the description of the table cannot stand beside it"), std::string::npos)
        << written.error().sentence();
    EXPECT_FALSE(std::filesystem::exists(folder / "t.csv"));
}

TEST(CsvMetadata, a_row_that_begins_with_a_number_sign_is_no_comment) {
    // Comment lines begin with # where a reader goes by the default dialect; a quoted field does not.
    Table table;
    table.columns = {{"a", "a", "", TableColumn::Content::text, 0}, {"b", "b", "", TableColumn::Content::text, 0}};
    table.rows = {{std::string("#3 \"bench\""), std::string("#x")}};
    EXPECT_EQ(table_text(table, TableFormat::csv), "a,b\r\n\"#3 \"\"bench\"\"\",#x\r\n");
}

} // namespace
} // namespace ullage::test
