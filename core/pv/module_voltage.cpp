// SPDX-License-Identifier: GPL-3.0-or-later
#include "pv/module_voltage.h"

#include "base/number.h"

#include <fmt/format.h>

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

std::string degrees(double value) { return signed_text(value, std::floor(value) == value ? 0 : 1); }

std::string plain_degrees(double value) { return value < 0 ? degrees(value) : fixed_text(value, std::floor(value) == value ? 0 : 1); }

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
    if (!sheet.voc_v) return {{}, "the open-circuit voltage of the module is not stated"};
    if (!sheet.coldest_c) return {{}, "the coldest ambient temperature is not stated"};
    if (sheet.voc_coefficient)
        return {at_cell_temperature(*sheet.voc_v, *sheet.voc_coefficient, *sheet.coldest_c),
                "by the maker's coefficient of " + coefficient_text(*sheet.voc_coefficient)};
    if (!sheet.crystalline_silicon)
        return {{}, "the maker's coefficient of Voc is not stated, and the table of factors is for crystalline silicon only"};
    const std::optional<double> factor = cold_voltage_factor(*sheet.coldest_c);
    if (!factor) return {{}, "the table of factors ends at −40 °C; the maker's coefficient of Voc is needed"};
    return {*sheet.voc_v * *factor, fmt::format("by the factor {:.2f} of NEC Table 690.7(A), as no coefficient is stated", *factor), true};
}

HotCell hottest_cell(const PvSheet& sheet) {
    if (sheet.hottest_cell_c) return {sheet.hottest_cell_c, fmt::format("a cell at {} °C, as stated", plain_degrees(*sheet.hottest_cell_c))};
    if (!sheet.hottest_c) return {{}, "neither the hottest ambient nor the hottest cell temperature is stated"};
    const double noct_c = sheet.noct_c.value_or(usual_noct_c), irradiance = sheet.irradiance_w_m2.value_or(pv_standard_w_m2);
    const double cell_c = cell_temperature_c(*sheet.hottest_c, noct_c, irradiance);
    return {cell_c, fmt::format("a cell at {} °C: {} °C ambient, NOCT {} °C{}, {} W/m²", plain_degrees(std::round(cell_c * 10) / 10),
                                plain_degrees(*sheet.hottest_c), plain_degrees(noct_c), sheet.noct_c ? "" : " (assumed)", fixed_text(irradiance, 0))};
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
