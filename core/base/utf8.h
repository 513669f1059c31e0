// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string_view>

namespace ullage {

/// Position of the first byte that is no part of well-formed UTF-8 (Unicode 15.0, table 3-7: no overlong
/// forms, no surrogates, nothing beyond U+10FFFF); absent when all of the text is well-formed.
[[nodiscard]] std::optional<std::size_t> first_bad_utf8(std::string_view text);

} // namespace ullage
