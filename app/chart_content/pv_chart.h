// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"
#include "pv/pv_check.h"

namespace ullage {

/// Voltage of the string against cell temperature, between the start voltage and the limit of the PV input; the coldest and the hottest cell are
/// lines, and a voltage above the limit when cold is a mark of its own.
[[nodiscard]] ChartContent pv_chart(const PvSheet& sheet, const PvLimits& limits, const PvCheck& check);

} // namespace ullage
