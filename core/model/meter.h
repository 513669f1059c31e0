// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"
#include "model/ids.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// What a calibration or the maker states of a meter at one load: true energy = correction x register difference there.
struct MeterPoint {
    double load_w = 0;
    double correction = 1.0;
    /// Expanded uncertainty U of the correction, % of reading; absent: not stated.
    std::optional<double> expanded_u_percent{};
    /// The coverage factor k that U was stated with; absent: U is no more than a limit.
    std::optional<double> coverage_k{};

    bool operator==(const MeterPoint&) const = default;
};

/// The paper that a calibration came with. Dates are of the calendar, as 2027-05-14; empty: not stated.
struct MeterCertificate {
    std::string number, date, laboratory, valid_until;

    bool operator==(const MeterCertificate&) const = default;
};

/// The external energy meter.
struct Meter {
    MeterId uuid;
    std::string name;
    std::optional<double> step_wh;       ///< smallest step of the register
    std::optional<double> limit_percent; ///< error limit of energy, +/- percent of reading
    std::optional<double> span_wh;       ///< the register returns to 0 on reaching this
    double correction = 1.0;             ///< true energy = correction x register difference
    std::string remark{};
    /// The part of the error limit that is each load's own, % of reading; absent: a quarter of the limit. See load_part_percent().
    std::optional<double> load_part_percent{};
    MeterCertificate certificate{};
    std::string accuracy_class{}; ///< in the words of its plate, such as "B" or "1"
    std::string standard{};       ///< that the class is of, such as "EN 50470-3"
    std::optional<double> starting_current_a{};
    std::optional<double> range_low_w{}, range_high_w{}; ///< the loads that it is made for
    std::vector<MeterPoint> points{};                    ///< in order of rising load, no two at one; where there are some, they replace `correction`

    bool operator==(const Meter&) const = default;
};

/// One entry of a meter's history: what was stated of it from `written_ms` on, and why it was changed.
struct MeterVersion {
    int version = 1;
    Meter meter;
    UtcMs written_ms = 0;
    std::string reason{}; ///< empty for version 1
};

/// The limit bounds a meter's error at each load; only a common part of it is the same at loads that differ by more than a factor of two. The rest,
/// % of reading, half-width of a rectangular error of its own at each such load: as stated, else a quarter of the limit (common practice, no source);
/// 0 where a calibration at those loads says so. Absent without a limit.
[[nodiscard]] std::optional<double> load_part_percent(const Meter& meter);
/// Loads so unlike that a meter's error at one is not that at the other: by more than a factor of two.
[[nodiscard]] bool are_unlike_loads(double one_w, double other_w);

} // namespace ullage
