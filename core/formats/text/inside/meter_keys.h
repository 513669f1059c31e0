// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room formats/text.
#pragma once

#include "formats/text/sheet_keys.h"

#include <optional>
#include <string_view>
#include <vector>

namespace ullage::sheet {

/// The keys of one of a run's meters: `meter`, `meter_step_wh` and so on, each after `prefix`, which is empty or "second_".
[[nodiscard]] std::vector<SheetKey> meter_keys(std::string_view prefix, std::optional<Meter> RunRecord::*meter);

} // namespace ullage::sheet
