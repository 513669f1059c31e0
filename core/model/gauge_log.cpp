// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/gauge_log.h"

#include <algorithm>

namespace ullage {

std::optional<double> GaugeLog::shown_at(UtcMs time_ms) const {
    if (samples == 0 || time_ms < first_ms || time_ms > last_ms) return std::nullopt;
    const auto next = std::ranges::lower_bound(steps, time_ms + 1, {}, &GaugeStep::to_ms);
    return next == steps.begin() ? first_percent : (next - 1)->to_percent;
}

} // namespace ullage
