// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace ullage {

/// How far a value is known. Numbers reach files and JSON as their text, see kind_text().
enum class Kind { measured, projected, at_least, bracket, not_known };

/// "measured", "projected", "at least", "bracket", "not known".
[[nodiscard]] std::string_view kind_text(Kind kind);

/// A result: value with a 95 % interval, how far it is known, and why it is not simply measured.
/// Absent parts are absent, never 0 or NaN: `not_known` has neither value nor interval but always a reason;
/// a value without lower and upper has no stated uncertainty and says why in the reason.
struct Quantity {
    std::string key;  ///< stable name with its unit, e.g. "delivered_wh"
    std::string unit; ///< "Wh", "W", "h", "%", "pt", "1" for a fraction
    std::optional<double> value, lower, upper;
    Kind kind = Kind::not_known;
    std::string reason;

    /// Half of the interval's width, when there is an interval.
    [[nodiscard]] std::optional<double> half_width() const;
};

/// A `not_known` quantity with its reason.
[[nodiscard]] Quantity not_known(std::string key, std::string unit, std::string reason);

/// A quantity with a symmetric interval; `half_width` absent for none.
[[nodiscard]] Quantity known(std::string key, std::string unit, double value, std::optional<double> half_width, Kind kind, std::string reason = {});

/// "893 ± 17 Wh", "at least 400 Wh" (the lower limit where there is one, else the value), "0.86 to 0.95"
/// (brackets, no value, or sides that differ by more than 5 % of the width), "not known". Unit "1" is left
/// out.
[[nodiscard]] std::string quantity_text(const Quantity& quantity, int fallback_decimals = 1);

} // namespace ullage
