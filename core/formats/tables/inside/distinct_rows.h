// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/fingerprint.h"
#include "formats/tables/table.h"

#include <cstddef>
#include <string_view>
#include <vector>

namespace ullage {

/// Whether rows are alike, found by fingerprints of their texts: 16 bytes a row, in time that grows little faster than the rows. That two rows
/// which differ have one fingerprint is less likely than a fault of the machine.
class DistinctRows {
public:
    /// The texts of the next row.
    void add(const std::vector<std::string_view>& texts);
    /// True when no two rows are alike. Ends the adding.
    [[nodiscard]] bool all_differ();

private:
    std::vector<Fingerprint::Sums> rows_;
};

/// Whether these columns, texts and values in full, tell each row from every other.
[[nodiscard]] bool tell_rows_apart(const StreamedTable& table, const std::vector<std::size_t>& columns);

} // namespace ullage
