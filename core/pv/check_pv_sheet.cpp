// SPDX-License-Identifier: GPL-3.0-or-later
#include "pv/module_voltage.h"

#include "model/limits.h"
#include "pv/pv_check.h"

#include <cmath>

namespace ullage {

namespace {

constexpr double steepest_percent = 1;
constexpr int most_modules = 1000;

Error wrong(const char* key, const Phrase& what, const Phrase& remedy) { return {Failure::bad_input, say(what), key, say(remedy)}; }

Result<void> above_zero(const char* key, const std::optional<double>& value, const NumberRange& range) {
    if (value && !(std::isfinite(*value) && *value > 0))
        return wrong(key, phrase("pv", "the value is not above 0"), phrase("pv", "enter what the module's label says"));
    return check_number(key, value, range);
}

Result<void> within(const char* key, const std::optional<double>& value, double lowest, double highest, const Phrase& remedy) {
    if (value && !(*value >= lowest && *value <= highest)) return wrong(key, phrase("pv", "the value is out of range"), remedy);
    return {};
}

/// `at_standard`: the value that the coefficient belongs to, for its steepness in percent.
Result<void> sound(const char* key, const std::optional<PvCoefficient>& coefficient, const std::optional<double>& at_standard) {
    if (!coefficient) return {};
    if (!(coefficient->value < 0))
        return wrong(key, phrase("pv", "the coefficient is not below 0, though these values fall as the cell warms"),
                     phrase("pv", "enter it with its minus sign, such as -0.27 %/°C"));
    double percent = -coefficient->value;
    if (coefficient->per == PvPerDegree::milli) {
        if (!at_standard) return {};
        percent = percent / 10 / *at_standard;
    }
    if (percent > steepest_percent)
        return wrong(key, phrase("pv", "the coefficient is steeper than 1 % per °C"), phrase("pv", "check whether it is in %/°C or in mV/°C"));
    return {};
}

} // namespace

Result<void> check_pv_sheet(const PvSheet& sheet) {
    if (auto good = above_zero("voc_v", sheet.voc_v, voltage_range); !good) return good;
    if (auto good = above_zero("vmp_v", sheet.vmp_v, voltage_range); !good) return good;
    if (auto good = above_zero("isc_a", sheet.isc_a, current_range); !good) return good;
    if (auto good = above_zero("imp_a", sheet.imp_a, current_range); !good) return good;
    if (auto good = check_text("name", sheet.name, longest_name); !good) return good;
    if (auto good = check_text("module", sheet.module, longest_name); !good) return good;
    if (auto good = check_text("remark", sheet.remark, longest_remark); !good) return good;
    if (sheet.voc_v && sheet.vmp_v && *sheet.vmp_v > *sheet.voc_v)
        return wrong("vmp_v", phrase("pv", "Vmp lies above Voc"), phrase("pv", "check whether the two are exchanged"));
    if (sheet.isc_a && sheet.imp_a && *sheet.imp_a > *sheet.isc_a)
        return wrong("imp_a", phrase("pv", "Imp lies above Isc"), phrase("pv", "check whether the two are exchanged"));
    if (auto good = sound("voc_coefficient", sheet.voc_coefficient, sheet.voc_v); !good) return good;
    if (auto good = sound("vmp_coefficient", sheet.vmp_coefficient, sheet.vmp_v); !good) return good;
    if (sheet.power_coefficient && sheet.power_coefficient->per != PvPerDegree::percent)
        return wrong("power_coefficient", phrase("pv", "the coefficient of power is not in percent"), phrase("pv", "give it in %/°C"));
    if (auto good = sound("power_coefficient", sheet.power_coefficient, {}); !good) return good;
    if (sheet.series < 1 || sheet.series > most_modules)
        return wrong("series", phrase("pv", "the number of modules in a string is out of range"), phrase("pv", "give 1 to 1000"));
    if (sheet.parallel < 1 || sheet.parallel > most_modules)
        return wrong("parallel", phrase("pv", "the number of strings is out of range"), phrase("pv", "give 1 to 1000"));
    if (auto good = within("voc_tolerance_percent", sheet.voc_tolerance_percent, 0, most_voc_tolerance_percent, phrase("pv", "give 0 to 20 %"));
        !good)
        return good;
    if (auto good = within("noct_c", sheet.noct_c, 20, 100, phrase("pv", "give 20 to 100 °C")); !good) return good;
    if (auto good = within("irradiance_w_m2", sheet.irradiance_w_m2, 0, 2000, phrase("pv", "give 0 to 2000 W/m²")); !good) return good;
    if (auto good = within("coldest_c", sheet.coldest_c, -90, 120, phrase("pv", "give -90 to 120 °C")); !good) return good;
    if (auto good = within("hottest_c", sheet.hottest_c, -90, 120, phrase("pv", "give -90 to 120 °C")); !good) return good;
    if (auto good = within("hottest_cell_c", sheet.hottest_cell_c, -90, 120, phrase("pv", "give -90 to 120 °C")); !good) return good;
    for (const auto& hottest : {sheet.hottest_c, sheet.hottest_cell_c})
        if (sheet.coldest_c && hottest && *sheet.coldest_c > *hottest)
            return wrong("coldest_c", phrase("pv", "the coldest temperature lies above the hottest"),
                         phrase("pv", "check whether the two are exchanged"));
    return {};
}

} // namespace ullage
