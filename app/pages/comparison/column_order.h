// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// Columns of a table as a person has chosen and ordered them, by key.
struct ColumnChoice {
    std::vector<std::string> order;    ///< keys from left to right; empty: as the table has them
    std::map<std::string, bool> shown; ///< where the person has chosen; the others are shown as the page likes

    bool operator==(const ColumnChoice&) const = default;
};

/// `keys` in the wanted order. A key that `wanted` does not name follows the one before it in `keys`; one that only `wanted` names is left out.
[[nodiscard]] std::vector<std::string> arranged(const std::vector<std::string>& keys, const std::vector<std::string>& wanted);

/// "unit,rank+,maker-": keys in their order, + or - where shown or hidden by choice. Keys are words of lower-case letters, digits and `_`.
[[nodiscard]] std::string column_choice_text(const ColumnChoice& choice);
/// Reads that back; a part that cannot be read is left out.
[[nodiscard]] ColumnChoice column_choice_from(std::string_view text);

} // namespace ullage
