// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"
#include "sizing/sizing.h"

namespace ullage {

/// State of charge of one unit of a sizing over three days by the hour, with PV and without, with bands; nights are grey.
[[nodiscard]] ChartContent sizing_chart(const Sizing& sizing, std::size_t unit);

} // namespace ullage
