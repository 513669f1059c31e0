// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/ids.h"

#include <optional>
#include <string>

namespace ullage {

/// How a temperature coefficient is printed. The numbers stand in files: never change one.
enum class PvPerDegree {
    percent = 1, ///< percent of the value at 25 °C, per °C
    milli = 2,   ///< thousandths of the unit (mV), per °C
};

/// A temperature coefficient as the module's sheet prints it; negative for voltages and power of silicon.
struct PvCoefficient {
    double value = 0;
    PvPerDegree per = PvPerDegree::percent;

    bool operator==(const PvCoefficient&) const = default;
};

/// A PV module, how many are wired together, the place, and the unit whose PV input they are meant for. Values of the module are those at
/// standard test conditions (25 °C cell, 1000 W/m²); absent means "not stated".
struct PvSheet {
    PvSheetId uuid;
    std::string name;
    UnitId unit_uuid;                                 ///< empty: no unit chosen
    std::string module;                               ///< as printed on its label
    std::optional<double> voc_v, vmp_v, isc_a, imp_a; ///< open circuit, maximum power, short circuit, maximum power
    std::optional<PvCoefficient> voc_coefficient, vmp_coefficient;
    std::optional<PvCoefficient> power_coefficient; ///< always in percent
    std::optional<double> noct_c;                   ///< nominal operating cell temperature
    bool crystalline_silicon = true;                ///< else no table of factors applies
    int series = 1;                                 ///< modules in a string
    int parallel = 1;                               ///< strings side by side
    std::optional<double> coldest_c;                ///< lowest ambient temperature in daylight, °C
    std::optional<double> hottest_c;                ///< highest ambient temperature, °C
    std::optional<double> hottest_cell_c;           ///< stated outright; else from the ambient temperature and NOCT
    std::optional<double> irradiance_w_m2;          ///< at the hottest; absent: 1000
    std::string remark;
    std::optional<double> voc_tolerance_percent{}; ///< of the module's voltages, as its label says

    bool operator==(const PvSheet&) const = default;
};

} // namespace ullage
