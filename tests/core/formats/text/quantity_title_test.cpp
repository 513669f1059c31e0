// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/quantity_title.h"

#include "core/formats/tables/sample_tables.h"

#include <gtest/gtest.h>

#include <variant>

namespace ullage::test {
namespace {

TEST(QuantityTitle, a_key_has_title_unit_and_decimals_and_an_unknown_one_its_words) {
    EXPECT_EQ(quantity_title("delivered_wh"), "delivered energy");
    EXPECT_EQ(quantity_unit("delivered_wh"), "Wh");
    EXPECT_EQ(quantity_decimals("usable_fraction"), 3);
    EXPECT_EQ(quantity_title("swing_of_the_lamp"), "swing of the lamp");
    EXPECT_EQ(quantity_unit("swing_of_the_lamp"), "");
    EXPECT_EQ(quantity_decimals("swing_of_the_lamp"), 2);
}

TEST(QuantityTitle, what_an_analysis_computes_has_the_unit_of_its_key) {
    std::size_t seen = 0;
    for (const RunAnalysis& analysis : analysed_scenario().analyses)
        for (const Quantity& quantity : analysis.quantities) {
            EXPECT_EQ(quantity.unit, quantity_unit(quantity.key)) << quantity.key;
            ++seen;
        }
    EXPECT_GT(seen, 50U);
}

TEST(QuantityTitle, what_a_comparison_shows_has_the_unit_of_its_column) {
    const Comparison comparison = compare_as_tested(analysed_scenario().records);
    for (const Table& table : {comparison_table(comparison), comparison_table(comparison, compare_at(comparison, CommonLoad{120, 1, {}}))})
        for (const TableRow& row : table.rows)
            for (std::size_t column = 0; column < row.size(); ++column)
                if (const auto* figure = std::get_if<Quantity>(&row[column]); figure && !table.columns[column].unit.empty()) {
                    EXPECT_EQ(figure->unit, table.columns[column].unit) << figure->key;
                    EXPECT_EQ(figure->key, table.columns[column].key);
                }
}

} // namespace
} // namespace ullage::test
