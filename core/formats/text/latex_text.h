// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace ullage {

/// A text on one line for LaTeX's text mode with T1 encoding, in which no character of it is a command: specials are escaped, typewriter
/// ligatures such as `--` are broken, signs such as ± and ≤ become commands. Letters of Latin-1 and Latin Extended-A stay as
/// UTF-8. Any other character becomes \ullageletter{HEX}{CHARACTER}, to be defined by latex_letter_definition.
[[nodiscard]] std::string latex_text(std::string_view text);

/// latex_text() for a cell of numbers: a hyphen before a digit is a minus sign, and the text does not break at its spaces.
[[nodiscard]] std::string latex_number_text(std::string_view text);

/// Defines \ullageletter: engines that take fonts with all of Unicode set the character, pdflatex writes its number such as U+96FB.
inline constexpr std::string_view latex_letter_definition = "\\providecommand{\\ullageletter}[2]{\\ifx\\Umathchar\\undefined U+#1\\else#2\\fi}\n";

} // namespace ullage
