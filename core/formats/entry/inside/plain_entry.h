// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace ullage {

/// What was typed or pasted, made plain: with_plain_blanks(), and ASCII letters in lower case.
[[nodiscard]] std::string plain_entry(std::string_view text);

} // namespace ullage
