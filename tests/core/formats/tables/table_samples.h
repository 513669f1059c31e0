// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table.h"

#include <string>

namespace ullage::test {

inline const std::string hostile_formula = "=1+1";
inline const std::string hostile_markup = "<script>alert(\"x\" & 'y')</script>";
inline const std::string hostile_pipes = "a|b *c* `d` [e](f) \\";
inline const std::string hostile_lines = "first\nsecond, \"quoted\"\r\nthird";
inline const std::string hostile_letters = "\xF0\x9F\x94\x8B caf\xC3\xA9 \xE9\x9B\xBB"; // a battery, é, an ideograph
inline const std::string ill_formed = "bad \xC3( \x1B[31m \x01";

/// Five units whose texts attack each format, with every kind of quantity. Numbers have digits that rounding would lose.
inline Table hostile_table() {
    using Content = TableColumn::Content;
    Table table;
    table.title = "Hostile & <odd> [units]";
    table.columns = {{"unit", "unit", "", Content::text, 0},
                     {"rated_wh", "rated energy", "Wh", Content::number, 0},
                     {"delivered_wh", "delivered energy", "Wh", Content::quantity, 0},
                     {"usable_fraction", "usable fraction", "1", Content::quantity, 3},
                     {"price_per_kwh", "price", "", Content::number, 2},
                     {"remark", "remark", "", Content::text, 0}};
    const auto rated = [](double wh) { return known("rated_wh", "Wh", wh, std::nullopt, Kind::measured); };
    const auto price = [](double each, const char* unit) { return known("price_per_kwh", unit, each, std::nullopt, Kind::measured); };
    table.rows = {
        {hostile_formula, rated(1200), known("delivered_wh", "Wh", 937.4321234567, 18.91, Kind::measured),
         known("usable_fraction", "1", 0.78119343621392, 0.01575, Kind::measured), price(0.71, "EUR/kWh"), hostile_markup},
        {hostile_markup, rated(900), known("delivered_wh", "Wh", 596.0625, 20.4, Kind::projected, "assumes an accurate gauge | from 80 to 20 %"),
         known("usable_fraction", "1", 0.6623, 0.0224, Kind::projected, "assumes an accurate gauge | from 80 to 20 %"), price(0.83, "CHF/kWh"),
         hostile_pipes},
        {hostile_pipes, rated(2000), Quantity{"delivered_wh", "Wh", 1610.5, 1578.25, std::nullopt, Kind::at_least, "=energy may be missing"},
         Quantity{"usable_fraction", "1", std::nullopt, 0.8613, 0.9487, Kind::bracket, "found off"}, std::string(), hostile_lines},
        {hostile_lines, not_known("rated_wh", "Wh", "not stated"), not_known("delivered_wh", "Wh", "no register noted"),
         not_known("usable_fraction", "1", "no rated energy <stated>"), not_known("price_per_kwh", "", "no price stated"), ""},
        {hostile_letters, rated(1e-7), known("delivered_wh", "Wh", 3, std::nullopt, Kind::measured, "the meter's error limit is not stated"),
         known("usable_fraction", "1", 0.5, 0.5, Kind::measured), price(12, "EUR/kWh"), ill_formed},
    };
    table.remarks = {"# no heading | <b>", "1. no list"};
    table.method = {{"How & why", "Divided; see *JCGM 100:2008*, a < b."}, {"=cmd", "+more"}};
    return table;
}

} // namespace ullage::test
