// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace ullage {

/// What was typed or pasted, made plain: ASCII letters in lower case, no-break, thin and narrow spaces as
/// blanks, the minus sign U+2212 as a hyphen, no blanks at the ends.
[[nodiscard]] std::string plain_entry(std::string_view text);

} // namespace ullage
