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
    std::string remark{};
    /// The part of the error limit that is each load's own, % of reading; absent: a quarter of the limit. See load_part_percent().
    std::optional<double> load_part_percent{};

    bool operator==(const Meter&) const = default;
};

/// The limit bounds a meter's error at each load; only a common part of it is the same at loads that differ by more than a factor of two. The rest,
/// % of reading, half-width of a rectangular error of its own at each such load: as stated, else a quarter of the limit (common practice, no source);
/// 0 where a calibration at those loads says so. Absent without a limit.
[[nodiscard]] std::optional<double> load_part_percent(const Meter& meter);
/// Loads so unlike that a meter's error at one is not that at the other: by more than a factor of two.
[[nodiscard]] bool are_unlike_loads(double one_w, double other_w);
/// What is left of the limit for the error common to all loads.
[[nodiscard]] std::optional<double> common_part_percent(const Meter& meter);

} // namespace ullage
