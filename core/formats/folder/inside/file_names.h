// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room formats/folder: names of files that every system takes.
#pragma once

#include <set>
#include <string>
#include <string_view>

namespace ullage::folder {

/// Names of files in one folder, each once: letters of any script in their case and digits as they are, all else as hyphens, at most 80 bytes.
class FileNames {
public:
    /// "osk-1200-drain.csv" of "Osk 1200, drain" and ".csv"; with "-2", "-3" and so on where that is taken. `ending` is ASCII.
    [[nodiscard]] std::string next(std::string_view text, std::string_view ending);

private:
    std::set<std::string> taken_; ///< in lower case: some systems hold `A` and `a` for one
};

} // namespace ullage::folder
