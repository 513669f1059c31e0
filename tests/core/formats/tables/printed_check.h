// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <regex>
#include <string>
#include <vector>

namespace ullage::test {

/// Half a unit of the last digit that a number is printed with, and a little for the conversion.
inline double half_a_digit(const std::string& number) {
    const auto point = number.find('.');
    const int decimals = point == std::string::npos ? 0 : static_cast<int>(number.size() - point - 1);
    return 0.5000001 * std::pow(10.0, -decimals);
}

/// `step` is what the number may be rounded to where that is more than its last digit says.
inline void expect_rounds(const std::string& printed, double exact, const std::string& cell, double step = 0) {
    EXPECT_NEAR(std::stod(printed), exact, std::max(half_a_digit(printed), 0.5000001 * step)) << cell;
}

/// Two digits of an interval of this half-width, or of a range of this width: tens and more from 100 on.
inline double step_of(double width) { return width < 99.5 ? 0 : std::pow(10.0, std::floor(std::log10(width * 1.005)) - 1); }

/// Holds "893 ± 17", "at least 400", "0.86 to 0.95", "12" or "not known" against the quantity. `unit` may follow.
inline void expect_printed(const std::string& cell, const Quantity& quantity) {
    static const std::regex form("(?:(-?[0-9.]+)(?: ± ([0-9.]+))?|at (least|most) (-?[0-9.]+)|(-?[0-9.]+) to (-?[0-9.]+))(?: [^0-9]*)?");
    if (cell == "not known") {
        EXPECT_TRUE(quantity.kind == Kind::not_known || (!quantity.value && !quantity.lower && !quantity.upper)) << cell;
        return;
    }
    std::smatch parts;
    ASSERT_TRUE(std::regex_match(cell, parts, form)) << "`" << cell << "`";
    if (parts[1].matched) {
        ASSERT_TRUE(quantity.value.has_value()) << cell;
        const double step = parts[2].matched ? step_of(quantity.half_width().value_or(0)) : 0;
        expect_rounds(parts[1], *quantity.value, cell, step);
        EXPECT_EQ(parts[2].matched, quantity.lower && quantity.upper) << cell;
        if (parts[2].matched) expect_rounds(parts[2], *quantity.half_width(), cell, step);
    } else if (parts[3].matched) {
        const auto limit = parts[3] == "least" ? (quantity.lower ? quantity.lower : quantity.value) : quantity.upper;
        ASSERT_TRUE(limit.has_value()) << cell;
        expect_rounds(parts[4], *limit, cell, step_of(quantity.half_width().value_or(0)));
    } else {
        ASSERT_TRUE(quantity.lower && quantity.upper) << cell;
        const double step = step_of(*quantity.upper - *quantity.lower);
        expect_rounds(parts[5], *quantity.lower, cell, step);
        expect_rounds(parts[6], *quantity.upper, cell, step);
    }
}

/// A kind that is not `measured` stands in the note that the cell's mark names (0: no mark), and so does the reason.
inline void expect_noted(int mark, const std::vector<std::string>& notes, const TableColumn& column, const Quantity& quantity) {
    const bool plain = column.content == TableColumn::Content::number && quantity.value;
    if (plain || (quantity.kind == Kind::measured && quantity.reason.empty())) {
        EXPECT_EQ(mark, 0) << column.key;
        return;
    }
    ASSERT_GE(mark, 1) << column.key;
    ASSERT_LE(mark, static_cast<int>(notes.size())) << column.key;
    const std::string& note = notes[static_cast<std::size_t>(mark - 1)];
    if (quantity.kind != Kind::measured) {
        EXPECT_EQ(note.rfind(kind_text(quantity.kind), 0), 0u) << note;
    }
    EXPECT_NE(note.find(quantity.reason), std::string::npos) << note;
}

} // namespace ullage::test
