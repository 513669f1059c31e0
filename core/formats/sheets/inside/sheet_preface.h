// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/result.h"
#include "model/run_record.h"

#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// What the lines before a run sheet's header row gave.
struct SheetPreface {
    RunRecord record; ///< unit, meter and run; no readings
    std::vector<Message> notices;
    bool zone_given = false;  ///< the sheet names its time zone
    std::size_t table_at = 0; ///< where the header row begins in the text
    long table_line = 1;
};

/// Reads the `# key: value` lines at the start of `text` (UTF-8 without byte order mark). Blank lines are
/// passed over. A line that a spreadsheet has put in quotes or filled up with commas is read all the same.
/// Errors, with the line in `where`: a wrong value, a key given twice, no unit, a meter without name.
[[nodiscard]] Result<SheetPreface> read_sheet_preface(std::string_view text);

} // namespace ullage
