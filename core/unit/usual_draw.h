// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "unit/drain_system.h"

namespace ullage {

/// What a no-load draw usually is, W: 0 to 3 % of the rated output, 0 to 30 W where that is not stated (common practice, no source).
/// Only for planning and for corrections that hardly depend on it, never for a result.
[[nodiscard]] inline Bounds usual_no_load_draw(const Unit& unit) {
    const double rated_w = unit.rated_output_w.value_or(0);
    return {0, rated_w > 0 ? 0.03 * rated_w : 30.0};
}

} // namespace ullage
