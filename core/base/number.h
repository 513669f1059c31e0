// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <optional>
#include <string>
#include <string_view>

namespace ullage {

/// Strips spaces and tabs at both ends.
[[nodiscard]] std::string_view trimmed(std::string_view text);

/// A finite decimal number with point or comma as decimal sign and no digit grouping; the whole text must be
/// used. `1.234,5` and `1,234.5` are refused as ambiguous rather than guessed.
[[nodiscard]] Result<double> parse_number(std::string_view text);

/// Shortest decimal text that reads back as the same double, with a point, never in exponent form for
/// 1e-6 <= |x| < 1e15. Precondition: finite.
[[nodiscard]] std::string exact_text(double value);

/// `value` with `decimals` digits after the point (round half to even of the binary value), never "-0". Fewer than none round to tens, hundreds, …:
/// "4310" for 4314 and -1.
[[nodiscard]] std::string fixed_text(double value, int decimals);

/// `value` with `decimals` digits and its sign, the minus sign a true one (U+2212): "−3.1", "+0.4"; what rounds to 0 has no sign.
[[nodiscard]] std::string signed_text(double value, int decimals);

/// Digits after the point that show an expanded uncertainty with two significant digits (JCGM
/// 100:2008, 7.2.6); below 0 for half-widths of 100 and more, whose value is then rounded to tens or more. Precondition: half_width > 0 and finite.
[[nodiscard]] int decimals_for(double half_width);

/// A value and its half-width rounded alike: "893 ± 17", "0.781 ± 0.016", "4310 ± 120"; without half-width the value to
/// `fallback_decimals`.
[[nodiscard]] std::string with_interval_text(double value, std::optional<double> half_width, int fallback_decimals);

/// "1 reading", "3 readings".
[[nodiscard]] std::string count_text(long count, std::string_view one, std::string_view many);

} // namespace ullage
