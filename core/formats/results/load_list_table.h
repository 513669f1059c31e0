// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table.h"
#include "model/load_list.h"

#include <vector>

namespace ullage {

/// The appliances of a list with what each takes: name, how_many, power_w (while on), mean_in_use_w, hours_per_day, night_hours, start_peak_w,
/// daily_wh, night_wh, always_connected; power and mean of one, energies of all alike. The last row is their sum. Remarks: peak, mean while on.
[[nodiscard]] Table load_list_table(const LoadList& list);

/// Several lists with their totals: list, appliances, daily_wh, mean_w, hours_on_h, mean_on_w, duty, running_w, peak_w, day_share, night_share.
[[nodiscard]] Table load_lists_table(const std::vector<LoadList>& lists);

} // namespace ullage
