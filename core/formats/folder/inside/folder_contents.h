// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room formats/folder: the file that says what belongs to what.
#pragma once

#include "base/instant.h"
#include "base/result.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage::folder {

enum class What { run_sheet, photo, log, load_list, pv_sheet, unit, meter, setting };

/// A row of the contents; see logbook_folder.h for what its cells hold.
struct Entry {
    What what = What::run_sheet;
    std::string file{}, run_sheet{};
    std::optional<long> reading{};
    std::optional<UtcMs> time_ms{};
    std::string name{};
    std::optional<UtcMs> taken_ms{};
    bool taken_zone_assumed = false;
    std::string meter{};
    double clock_offset_s = 0;
    std::optional<double> clock_offset_u_s{};
    std::optional<double> value{};
    long line = 0; ///< that it was read from
};

[[nodiscard]] std::string contents_text(const std::vector<Entry>& entries);

/// Whether a text begins as such a file.
[[nodiscard]] bool is_contents(std::string_view text);

/// Columns may stand in any order. Errors, with the line: another or a newer sort of file, an unknown or missing column, a cell that cannot be read,
/// a path that leads out of the folder.
[[nodiscard]] Result<std::vector<Entry>> read_contents(std::string_view text);

} // namespace ullage::folder
