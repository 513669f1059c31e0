// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/table.h"
#include "support/temp_folder.h"
#include "table_samples.h"

#include <gtest/gtest.h>
#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <limits>

namespace ullage::test {
namespace {

std::string file_text(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

std::size_t files_in(const std::filesystem::path& folder) {
    return static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator(folder), {}));
}

TEST(TableJson, every_number_reads_back_and_absent_ones_are_null) {
    const Table table = hostile_table();
    const auto json = nlohmann::json::parse(table_text(table, TableFormat::json));
    ASSERT_EQ(json.at("rows").size(), table.rows.size());
    for (std::size_t r = 0; r < table.rows.size(); ++r) {
        for (std::size_t c : {2u, 3u}) {
            const auto& quantity = std::get<Quantity>(table.rows[r][c]);
            const auto& cell = json["rows"][r].at(table.columns[c].key);
            const auto expect_same = [&](const char* name, const std::optional<double>& number) {
                if (number) EXPECT_EQ(cell.at(name).get<double>(), *number);
                else EXPECT_TRUE(cell.at(name).is_null());
            };
            expect_same("value", quantity.value);
            expect_same("lower", quantity.lower);
            expect_same("upper", quantity.upper);
            EXPECT_EQ(cell.at("kind"), kind_text(quantity.kind));
            EXPECT_EQ(cell.at("reason"), quantity.reason);
            EXPECT_EQ(cell.at("unit"), quantity.unit);
        }
    }
    EXPECT_EQ(json["rows"][3]["unit"], hostile_lines);
    EXPECT_TRUE(json["rows"][2]["price_per_kwh"].is_null());
    EXPECT_EQ(json["method"][0]["heading"], "How & why");
    EXPECT_EQ(json["columns"][2]["content"], "quantity");
}

TEST(TableFormats, absent_and_undefined_numbers_are_never_printed) {
    Table table;
    table.columns = {{"a", "first", "W", TableColumn::Content::quantity, 1}, {"b", "second", "W", TableColumn::Content::number, 1}};
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double infinity = std::numeric_limits<double>::infinity();
    table.rows = {{not_known("a", "W", "too few readings"), std::string()},
                  {Quantity{"a", "W", nan, -infinity, infinity, Kind::measured, {}}, known("b", "W", nan, nan, Kind::measured)},
                  {}};
    for (const TableFormat format : {TableFormat::text, TableFormat::csv, TableFormat::markdown, TableFormat::json, TableFormat::latex}) {
        const std::string text = table_text(table, format);
        for (const char* wrong : {"nan", "NaN", "inf", "0"}) {
            // The version number in JSON and LaTeX has a 0 of its own.
            if ((format == TableFormat::json || format == TableFormat::latex) && std::string(wrong) == "0") continue;
            EXPECT_EQ(text.find(wrong), std::string::npos) << wrong << " in\n" << text;
        }
    }
    const std::string html = table_text(table, TableFormat::html);
    EXPECT_EQ(html.find("data-number"), html.find("data-number", html.find("<script>") - 1)) << "no cell has a number";
    EXPECT_NE(html.find(">not known"), std::string::npos);
}

TEST(TableFormats, known_names_are_found_and_others_are_answered_with_the_list) {
    EXPECT_EQ(table_format_from("markdown").value(), TableFormat::markdown);
    EXPECT_EQ(table_format_from("xlsx").value(), TableFormat::xlsx);
    const auto wrong = table_format_from("pdf");
    ASSERT_FALSE(wrong.ok());
    EXPECT_EQ(wrong.error().sentence(), "`pdf` is no format of a table; use text, csv, markdown, html, xlsx, json or latex");
}

TEST(WriteTable, writes_the_same_bytes_as_the_text) {
    const TempFolder folder;
    for (const TableFormat format :
         {TableFormat::text, TableFormat::csv, TableFormat::markdown, TableFormat::html, TableFormat::json, TableFormat::latex}) {
        ASSERT_TRUE(write_table(hostile_table(), format, folder / "t").ok());
        EXPECT_EQ(file_text(folder / "t"), table_text(hostile_table(), format));
    }
    EXPECT_EQ(files_in(folder.path()), 2u) << "the table and the description that CSV has";
}

TEST(WriteTable, a_folder_or_device_is_refused) {
    const TempFolder folder;
    for (const TableFormat format : {TableFormat::csv, TableFormat::xlsx}) {
        const auto result = write_table(hostile_table(), format, folder.path().string());
        ASSERT_FALSE(result.ok());
        EXPECT_EQ(result.error().failure, Failure::refused);
        EXPECT_EQ(write_table(hostile_table(), format, "/dev/null").error().failure, Failure::refused);
    }
}

TEST(WriteTable, a_missing_folder_is_named_and_nothing_is_left) {
    const TempFolder folder;
    for (const TableFormat format : {TableFormat::csv, TableFormat::xlsx}) {
        const auto result = write_table(hostile_table(), format, folder / "none/t");
        ASSERT_FALSE(result.ok());
        EXPECT_EQ(result.error().failure, Failure::io);
        EXPECT_NE(result.error().sentence().find("none/t"), std::string::npos);
    }
    EXPECT_EQ(files_in(folder.path()), 0u);
}

TEST(WriteTable, a_table_that_cannot_be_made_leaves_the_old_file) {
    const TempFolder folder;
    ASSERT_TRUE(write_table(hostile_table(), TableFormat::csv, folder / "t").ok());
    const std::string before = file_text(folder / "t");
    Table endless;
    endless.columns = {{"a", "a", "", TableColumn::Content::text, 0}};
    endless.rows.resize(1'048'576);
    const auto result = write_table(endless, TableFormat::xlsx, folder / "t");
    ASSERT_FALSE(result.ok());
    EXPECT_EQ(result.error().failure, Failure::refused);
    EXPECT_EQ(file_text(folder / "t"), before);
    EXPECT_EQ(files_in(folder.path()), 2u);
}

TEST(WriteTable, a_link_is_followed_and_permissions_are_kept) {
    namespace fs = std::filesystem;
    const TempFolder folder;
    ASSERT_TRUE(write_table(hostile_table(), TableFormat::csv, folder / "real").ok());
    fs::permissions(folder / "real", fs::perms::owner_read | fs::perms::owner_write);
    fs::create_symlink("real", folder / "link");
    ASSERT_TRUE(write_table(hostile_table(), TableFormat::markdown, folder / "link").ok());
    EXPECT_TRUE(fs::is_symlink(folder / "link"));
    EXPECT_EQ(file_text(folder / "real"), table_text(hostile_table(), TableFormat::markdown));
    EXPECT_EQ(fs::status(folder / "real").permissions(), fs::perms::owner_read | fs::perms::owner_write);
}

} // namespace
} // namespace ullage::test
