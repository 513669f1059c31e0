// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "model/load_list.h"

#include <string>
#include <string_view>

namespace ullage {

/// A load list as a file: UTF-8, RFC 4180, after lines `# load_list: NAME` and, where there is one, `# remark: TEXT` (escapes as in
/// formats/text/preface_text.h). Columns, in any order: name and hours_per_day (both required), power_w, duty (0 to 1), measured_wh, measured_hours,
/// night_hours, start_peak_w, how_many, always_connected (yes or no). An empty field says nothing: duty 1, no hours at night, one of them, not
/// always connected.
///
/// Reads one list (uuid empty). `source` names the file in errors. Errors, with the line in `where`: no name, an unknown key or column, a wrong
/// number, a row of another length, and what check() refuses. A list without rows is sound.
[[nodiscard]] Result<LoadList> read_load_list(std::string_view text, const std::string& source);

/// Writes the list in its normal form; read_load_list gives an equal list. Precondition: check(list) is good, texts are UTF-8 without NUL,
/// names of appliances without blanks around them.
[[nodiscard]] std::string write_load_list(const LoadList& list);

} // namespace ullage
