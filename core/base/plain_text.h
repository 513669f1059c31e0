// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace ullage {

/// What people, spreadsheets and phones write for a blank or a minus as the plain character: no-break space (U+00A0), thin space (U+2009) and narrow
/// no-break space (U+202F) become ' ', the minus sign (U+2212) becomes '-'. All else stays byte for byte; no blanks at the ends.
[[nodiscard]] std::string with_plain_blanks(std::string_view text);

} // namespace ullage
