// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/load_steps.h"

#include <algorithm>

namespace ullage {

std::vector<LoadStep> load_steps(const RegisterTrack& track, RunEnd end) {
    std::vector<LoadStep> steps;
    const std::size_t last = track.points.size();
    for (std::size_t i = 1; i < last; ++i) {
        if (end == RunEnd::found_off && i + 1 == last) break;
        const RegisterPoint& from = track.points[i - 1];
        const RegisterPoint& to = track.points[i];
        const bool unknown_lost =
            !track.missing_most_wh && std::ranges::any_of(track.missing_gaps, [i](const MissingGap& gap) { return gap.inside && gap.point == i; });
        if (to.time_ms <= from.time_ms || unknown_lost) continue;
        steps.push_back(
            {from.reading, to.reading, from.time_ms, to.time_ms, (to.delivered_wh - from.delivered_wh) / hours_between(from.time_ms, to.time_ms)});
    }
    return steps;
}

} // namespace ullage
