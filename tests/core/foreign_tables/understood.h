// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/number.h"
#include "foreign_tables/table_runs.h"
#include "support/source_dir.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <string>

namespace ullage::test {

inline constexpr UtcMs table_now_ms = 1'767'225'600'000; ///< 2026-01-01
inline const std::string table_zone = "Europe/Berlin";

inline std::string table_bytes(const std::string& name) {
    std::ifstream file(source_dir() / "tests/corpus/tables" / name, std::ios::binary);
    EXPECT_TRUE(file.good()) << name;
    return {std::istreambuf_iterator<char>(file), {}};
}

/// A sheet of a table of the corpus, the first unless another is asked for.
inline TableReading understood(const std::string& name, const TableAnswers& answers = {}, std::size_t sheet = 0) {
    const Result<TableBook> book = read_table_book(table_bytes(name), name);
    EXPECT_TRUE(book.ok()) << (book ? "" : book.error().sentence());
    return book ? understand_table(book.value().sheets.at(sheet), answers, table_zone, table_now_ms) : TableReading();
}

inline TableReading understood_text(const std::string& text, const TableAnswers& answers = {}) {
    const Result<TableBook> book = read_table_book(text, "text");
    EXPECT_TRUE(book.ok()) << (book ? "" : book.error().sentence());
    return book ? understand_table(book.value().sheets.at(0), answers, table_zone, table_now_ms) : TableReading();
}

/// "2025-05-14T18:00+02:00 100 % 12310 Wh 205 W shown 210 W cut-off `remark`".
inline std::string reading_line(const ReadingValues& values) {
    std::string text = format_iso8601(values.time_ms, table_zone);
    const auto add = [&text](const std::optional<double>& value, const std::string& before, const std::string& unit) {
        if (value) text += before + exact_text(*value) + unit;
    };
    add(values.gauge_percent, " ", " %");
    add(values.register_wh, " ", " Wh");
    add(values.second_register_wh, " second ", " Wh");
    add(values.meter_w, " ", " W");
    add(values.display_w, " shown ", " W");
    if (values.mark) text += " " + std::string(mark_text(*values.mark));
    if (!values.remark.empty()) text += " `" + values.remark + "`";
    return text;
}

inline std::vector<std::string> reading_lines(const ForeignRun& run) {
    std::vector<std::string> lines;
    for (const ReadingValues& values : run.readings) lines.push_back(reading_line(values));
    return lines;
}

/// The questions of a reading, such as "date_order".
inline std::vector<TableQuestion> asked(const TableReading& reading) {
    std::vector<TableQuestion> about;
    for (const OpenTableQuestion& question : reading.questions) about.push_back(question.about);
    return about;
}

} // namespace ullage::test
