// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/meter.h"

#include "model/meter_gain.h"

#include <algorithm>

namespace ullage {

std::optional<double> load_part_percent(const Meter& meter) {
    const auto limit_percent = error_limit_percent(meter);
    if (!limit_percent) return std::nullopt;
    return std::min(meter.load_part_percent.value_or(*limit_percent / 4), *limit_percent);
}

bool are_unlike_loads(double one_w, double other_w) { return std::max(one_w, other_w) > 2 * std::min(one_w, other_w); }

} // namespace ullage
