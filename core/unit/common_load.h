// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"

#include <string>

namespace ullage {

/// A load that units are compared at: steady, or switched on and off with a duty. The output stays on throughout.
struct CommonLoad {
    double power_w = 0; ///< while it is on
    double duty = 1;    ///< share of the time that it is on, above 0 to 1
    std::string name;   ///< the tester's words; may be empty

    [[nodiscard]] double mean_w() const { return power_w * duty; }
    /// Mean of the squared power, W²: what the quadratic loss follows.
    [[nodiscard]] double mean_square_w2() const { return power_w * power_w * duty; }

    bool operator==(const CommonLoad&) const = default;
};

/// "120 W", "refrigerator, 40 W on average (100 W for 40 % of the time)".
[[nodiscard]] Message say_common_load(const CommonLoad& load);
/// The same in the language in use.
[[nodiscard]] std::string common_load_text(const CommonLoad& load);

} // namespace ullage
