// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"
#include "charts/vessel_row.h"

namespace ullage::sample {

/// A drain whose gauge sticks for three hours; invented.
[[nodiscard]] ChartContent drain();
/// Usable fraction over load of three units, on a logarithmic axis; invented.
[[nodiscard]] ChartContent fraction_over_load();
/// `count` readings of a meter over ten hours with one spike up and one down; invented.
[[nodiscard]] ChartContent long_trace(int count);
[[nodiscard]] BarContent bars();
[[nodiscard]] VesselRowContent vessels();

} // namespace ullage::sample
