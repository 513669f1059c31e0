// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "model/ids.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// Energy that an appliance was seen to take while it was in use.
struct MeasuredUse {
    double energy_wh = 0;
    double hours = 0; ///< over which that was measured

    bool operator==(const MeasuredUse&) const = default;
};

/// One line of a load list: one appliance, or several alike. All figures are those of one of them.
struct Appliance {
    std::string name;
    std::optional<double> power_w;       ///< while it is on; absent where only `measured` is known
    double duty = 1;                     ///< share of the time on while it is in use, above 0 to 1; `measured` goes before it
    std::optional<MeasuredUse> measured; ///< what it took over some hours in use
    double hours_per_day = 0;            ///< in use, above 0 to 24
    double night_hours = 0;              ///< of these, at night: at most hours_per_day
    std::optional<double> start_peak_w;  ///< while it starts; absent: no more than power_w
    int count = 1;                       ///< how many alike, 1 to most_alike
    bool always_connected = false;       ///< the unit's output stays on for it day and night

    bool operator==(const Appliance&) const = default;
};

inline constexpr int most_alike = 100'000;

/// Appliances that a unit is to feed, under a name of the tester's choice.
struct LoadList {
    LoadListId uuid;
    std::string name;
    std::string remark;
    std::vector<Appliance> appliances; ///< in the tester's order

    bool operator==(const LoadList&) const = default;
};

/// Mean power of one appliance while it is in use, W: the measured energy by its hours, else power × duty. Precondition: check() is good.
[[nodiscard]] double mean_in_use_w(const Appliance& appliance);
/// Power of one appliance while it is on, W: as stated, else the mean while in use. Precondition: check() is good.
[[nodiscard]] double running_w(const Appliance& appliance);

/// What no list may hold, as bad_input with the appliance and the field in `where`: no name; neither power nor measurement; a number out of the
/// range stated above or not finite; a mean measured above the power while on; a start below the power while on.
[[nodiscard]] Result<void> check(const Appliance& appliance);
/// The same for each appliance; a list without a name; texts and lists beyond model/limits.h.
[[nodiscard]] Result<void> check(const LoadList& list);

} // namespace ullage
