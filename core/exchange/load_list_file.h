// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "exchange/table.h"
#include "model/load_list.h"

#include <string>
#include <string_view>

namespace ullage {

/// A load list as a file: UTF-8, RFC 4180, after lines `# load_list: NAME` and, where there is one, `# remark: TEXT` (escapes as in
/// exchange/preface_text.h). Columns, in any order: name and hours_per_day (both required), power_w, duty (0 to 1), measured_wh, measured_hours,
/// night_hours, start_peak_w, how_many, always_connected (yes or no). An empty field says nothing: duty 1, no hours at night, one of them, not
/// always connected.
///
/// Reads one list (uuid empty). `source` names the file in errors. Errors, with the line in `where`: no name, an unknown key or column, a wrong
/// number, a row of another length, and what check() refuses. A list without rows is sound.
[[nodiscard]] Result<LoadList> read_load_list(std::string_view text, const std::string& source);

/// Writes the list in its normal form; read_load_list gives an equal list. Precondition: check(list) is good, texts are UTF-8 without NUL,
/// names of appliances without blanks around them.
[[nodiscard]] std::string write_load_list(const LoadList& list);

/// The appliances of a list with what each takes: name, how_many, power_w (while on), mean_in_use_w, hours_per_day, night_hours, start_peak_w,
/// daily_wh, night_wh, always_connected; power and mean of one, energies of all alike. The last row is their sum. Remarks: peak, mean while on.
[[nodiscard]] Table load_list_table(const LoadList& list);

/// Several lists with their totals: list, appliances, daily_wh, mean_w, hours_on_h, mean_on_w, duty, running_w, peak_w, day_share, night_share.
[[nodiscard]] Table load_lists_table(const std::vector<LoadList>& lists);

} // namespace ullage
