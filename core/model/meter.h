// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

namespace ullage {

/// The external energy meter.
struct Meter {
    std::string uuid;
    std::string name;
    std::optional<double> step_wh;       ///< smallest step of the register
    std::optional<double> limit_percent; ///< error limit of energy, +/- percent of reading
    std::optional<double> span_wh;       ///< the register returns to 0 on reaching this
    double correction = 1.0;             ///< true energy = correction x register difference
    std::string remark;

    bool operator==(const Meter&) const = default;
};

} // namespace ullage
