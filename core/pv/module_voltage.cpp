// SPDX-License-Identifier: GPL-3.0-or-later
#include "pv/module_voltage.h"

#include "base/message.h"
#include "base/number.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

struct FactorRow {
    double lowest_c; ///< the row holds down to here
    double factor;
};

// NEC Table 690.7(A). The rows 19 to 5 °C are from memory; the others were seen in two published copies.
constexpr FactorRow factors[] = {{20, 1.02},  {15, 1.04},  {10, 1.06},  {5, 1.08},   {0, 1.10},   {-5, 1.12}, {-10, 1.14},
                                 {-15, 1.16}, {-20, 1.18}, {-25, 1.20}, {-30, 1.21}, {-35, 1.23}, {-40, 1.25}};

constexpr double usual_noct_c = 45;
constexpr PvCoefficient steep_vmp{-0.40, PvPerDegree::percent};

Message say_plain_degrees(double value) {
    const int decimals = std::floor(value) == value ? 0 : 1;
    return value < 0 ? say_signed(value, decimals) : say_number(value, decimals);
}

} // namespace

double at_cell_temperature(double at_standard, const PvCoefficient& coefficient, double cell_c) {
    const double above_c = cell_c - pv_standard_c;
    return coefficient.per == PvPerDegree::percent ? at_standard * (1 + coefficient.value * above_c / 100)
                                                   : at_standard + coefficient.value * above_c / 1000;
}

std::optional<double> cold_voltage_factor(double ambient_c) {
    if (ambient_c >= pv_standard_c) return 1.0;
    for (const FactorRow& row : factors)
        if (ambient_c >= row.lowest_c) return row.factor;
    return std::nullopt;
}

double cell_temperature_c(double ambient_c, double noct_c, double irradiance_w_m2) { return ambient_c + (noct_c - 20) * irradiance_w_m2 / 800; }

double dc_power_w(double standard_w, double power_percent_per_c, double irradiance_w_m2, double cell_c) {
    return irradiance_w_m2 / pv_standard_w_m2 * standard_w * (1 + power_percent_per_c * (cell_c - pv_standard_c) / 100);
}

ColdVoltage cold_voltage(const PvSheet& sheet) {
    if (!sheet.voc_v) return {{}, say(phrase("pv", "the open-circuit voltage of the module is not stated"))};
    if (!sheet.coldest_c) return {{}, say(phrase("pv", "the coldest ambient temperature is not stated"))};
    if (sheet.voc_coefficient)
        return {at_cell_temperature(*sheet.voc_v, *sheet.voc_coefficient, *sheet.coldest_c),
                say(phrase("pv", "by the maker's coefficient of %1"), say_digits(coefficient_text(*sheet.voc_coefficient)))};
    if (!sheet.crystalline_silicon)
        return {{}, say(phrase("pv", "the maker's coefficient of Voc is not stated, and the table of factors is for crystalline silicon only"))};
    const std::optional<double> factor = cold_voltage_factor(*sheet.coldest_c);
    if (!factor) return {{}, say(phrase("pv", "the table of factors ends at −40 °C; the maker's coefficient of Voc is needed"))};
    return {*sheet.voc_v * *factor, say(phrase("pv", "by the factor %1 of NEC Table 690.7(A), as no coefficient is stated"), say_number(*factor, 2)),
            true};
}

HotCell hottest_cell(const PvSheet& sheet) {
    if (sheet.hottest_cell_c)
        return {sheet.hottest_cell_c, say(phrase("pv", "a cell at %1 °C, as stated"), say_plain_degrees(*sheet.hottest_cell_c))};
    if (!sheet.hottest_c) return {{}, say(phrase("pv", "neither the hottest ambient nor the hottest cell temperature is stated"))};
    const double noct_c = sheet.noct_c.value_or(usual_noct_c), irradiance = sheet.irradiance_w_m2.value_or(pv_standard_w_m2);
    const double cell_c = cell_temperature_c(*sheet.hottest_c, noct_c, irradiance);
    return {cell_c, say(sheet.noct_c ? phrase("pv", "a cell at %1 °C: %2 °C ambient, NOCT %3 °C, %4 W/m²")
                                     : phrase("pv", "a cell at %1 °C: %2 °C ambient, NOCT %3 °C (assumed), %4 W/m²"),
                        say_plain_degrees(std::round(cell_c * 10) / 10), say_plain_degrees(*sheet.hottest_c), say_plain_degrees(noct_c),
                        say_number(irradiance, 0))};
}

HotCoefficient vmp_coefficient(const PvSheet& sheet) {
    if (sheet.vmp_coefficient) return {sheet.vmp_coefficient, false};
    if (sheet.crystalline_silicon) return {steep_vmp, true};
    return {};
}

std::string coefficient_text(const PvCoefficient& coefficient) {
    std::string number = exact_text(coefficient.value);
    if (number.starts_with('-')) number.replace(0, 1, "−");
    return number + (coefficient.per == PvPerDegree::percent ? " %/°C" : " mV/°C");
}

} // namespace ullage
