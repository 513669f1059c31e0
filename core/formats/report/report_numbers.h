// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table_printed.h"

#include <functional>
#include <set>
#include <string>
#include <string_view>

namespace ullage {

/// The form in which a reader's language writes numbers.
struct NumberForm {
    char decimal_sign = '.';
    /// Texts of the tester that may stand in sentences and must stay as they are; thousands of them where there are many units.
    std::set<std::string, std::less<>> names{};

    /// `text`, a sentence or number of the program, with `decimal_sign` between the digits of each decimal number and a true minus
    /// sign (U+2212) before negative ones. Left alone: names, numbers of more than one point (clauses as 7.2.6, versions, dates), and digits that
    /// touch a letter.
    [[nodiscard]] std::string apply(std::string_view text) const;
};

/// printed_table() with numbers and notes in `form`. Cells that are texts stay as they are.
[[nodiscard]] PrintedTable printed_in_form(const Table& table, const NumberForm& form);

} // namespace ullage
