// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace ullage {

/// Letters of a line that a text for a terminal keeps within.
inline constexpr std::size_t terminal_width = 100;

/// The text with each longer line broken at blanks into lines of at most `width` letters, those after the first set in by two more than the line
/// itself. A longer word stands alone.
[[nodiscard]] std::string fitted_lines(std::string_view text, std::size_t width = terminal_width);

} // namespace ullage
