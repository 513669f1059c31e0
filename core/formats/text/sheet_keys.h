// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "model/run_record.h"

#include <functional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// A key of a run sheet's preface: how it is written and read.
struct SheetKey {
    std::string name;
    /// The value as text, before escaping; empty when there is nothing to write.
    std::function<std::string(const RunRecord&)> text;
    /// Puts a value (not empty, escapes replaced) into the record. Errors have no place in them.
    std::function<Result<void>(RunRecord&, std::string_view)> read;
};

/// All keys that the program knows, in the order in which they are written.
[[nodiscard]] const std::vector<SheetKey>& sheet_keys();

/// The key of this name in any case of letters, or nullptr.
[[nodiscard]] const SheetKey* find_sheet_key(std::string_view name);

/// The columns of a run sheet's table, in the order in which they are written; `second_register_wh` only where a second meter was read.
enum class SheetColumn { time, gauge_percent, register_wh, second_register_wh, meter_w, display_w, mark, remark };
inline constexpr std::string_view sheet_column_names[] = {"time",    "gauge_percent", "register_wh", "second_register_wh",
                                                          "meter_w", "display_w",     "mark",        "remark"};

/// ASCII letters in lower case.
[[nodiscard]] std::string lower_case(std::string_view text);

} // namespace ullage
