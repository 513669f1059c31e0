// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "model/pv_sheet.h"

#include <optional>
#include <string>

namespace ullage {

/// Cell temperature of standard test conditions, °C (IEC 61215, from memory).
inline constexpr double pv_standard_c = 25;
/// Irradiance of standard test conditions, W/m².
inline constexpr double pv_standard_w_m2 = 1000;

/// A module value at a cell temperature: V [1 + c (T − 25)/100] for a coefficient in percent, V + c (T − 25)/1000 for one in thousandths of the
/// unit. `at_standard` in V (or A, W), result alike. Source: the linear formula of every module's sheet; worked examples in the tests.
[[nodiscard]] double at_cell_temperature(double at_standard, const PvCoefficient& coefficient, double cell_c);

/// Factor by which the open-circuit voltage of crystalline silicon rises at the lowest ambient temperature (°C): NEC Table 690.7(A), the same
/// figures in IEC 62548. Between two rows the colder one holds; 1 from 25 °C on. Absent below −40 °C, where the table ends.
[[nodiscard]] std::optional<double> cold_voltage_factor(double ambient_c);

/// Cell temperature in °C: ambient + (NOCT − 20) G/800, with G in W/m² and NOCT in °C (IEC 61215, from memory).
[[nodiscard]] double cell_temperature_c(double ambient_c, double noct_c, double irradiance_w_m2);

/// DC power in W of modules of `standard_w` together: (G/1000) P [1 + γ (T − 25)/100] with γ in % per °C (the PVWatts model).
[[nodiscard]] double dc_power_w(double standard_w, double power_percent_per_c, double irradiance_w_m2, double cell_c);

/// Open-circuit voltage of one module at its coldest, V, and what that rests on.
struct ColdVoltage {
    std::optional<double> volts; ///< absent: not known
    Message basis;               ///< "the maker's coefficient of −0.27 %/°C", or why it is not known
    bool from_table = false;
};

/// The maker's coefficient takes precedence over the table (NEC 690.7(A)); the table is for crystalline silicon only. With neither, or
/// without Voc or a coldest temperature, not known.
[[nodiscard]] ColdVoltage cold_voltage(const PvSheet& sheet);

/// The hottest cell temperature, °C: stated outright, else from the hottest ambient temperature with NOCT (45 °C where it is not stated) and
/// irradiance (1000 W/m² likewise). `basis` in words, or what is missing.
struct HotCell {
    std::optional<double> cell_c;
    Message basis;
};
[[nodiscard]] HotCell hottest_cell(const PvSheet& sheet);

/// The coefficient of Vmp that holds: the maker's, else for crystalline silicon −0.40 %/°C, the steep end of what sheets print (−0.30 to
/// −0.40). `assumed` where it is not the maker's.
struct HotCoefficient {
    std::optional<PvCoefficient> coefficient;
    bool assumed = false;
};
[[nodiscard]] HotCoefficient vmp_coefficient(const PvSheet& sheet);

/// "−0.27 %/°C", "−134 mV/°C".
[[nodiscard]] std::string coefficient_text(const PvCoefficient& coefficient);

/// What no sheet may say, as bad_input naming the field by its key: values of the module not above 0, Vmp above Voc or Imp above Isc, a
/// coefficient of a voltage or of power that is not below 0 (it would hide the danger of cold) or steeper than 1 % per °C (another unit, most
/// likely), fewer than one or more than 1000 modules, temperatures outside −90 … 120 °C or the coldest above the hottest, NOCT outside
/// 20 … 100 °C, irradiance outside 0 … 2000 W/m², a tolerance outside 0 … most_voc_tolerance_percent. Absent values are no error.
[[nodiscard]] Result<void> check_pv_sheet(const PvSheet& sheet);

} // namespace ullage
