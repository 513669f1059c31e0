// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"

#include <optional>
#include <string>
#include <string_view>

namespace ullage {

/// How far a value is known. Numbers reach files and JSON as their text, see kind_text().
enum class Kind { measured, projected, at_least, bracket, not_known };

/// "measured", "projected", "at least", "bracket", "not known": as files for machines have it.
[[nodiscard]] std::string_view kind_text(Kind kind);
/// The same for people.
[[nodiscard]] Message say_kind(Kind kind);

/// A result: value with a 95 % interval, how far it is known, and why it is not simply measured.
/// Absent parts are absent, never 0 or NaN: `not_known` has neither value nor interval but always a reason;
/// a value without lower and upper has no stated uncertainty and says why in the reason.
struct Quantity {
    std::string key;  ///< stable name with its unit, e.g. "delivered_wh"
    std::string unit; ///< "Wh", "W", "h", "%", "pt", "1" for a fraction
    std::optional<double> value, lower, upper;
    Kind kind = Kind::not_known;
    Message reason;

    /// Half of the interval's width, when there is an interval.
    [[nodiscard]] std::optional<double> half_width() const;
};

/// A `not_known` quantity with its reason.
[[nodiscard]] Quantity not_known(std::string key, std::string unit, Message reason);

/// A quantity with a symmetric interval; `half_width` absent for none.
[[nodiscard]] Quantity known(std::string key, std::string unit, double value, std::optional<double> half_width, Kind kind, Message reason = {});

/// The unit in which people read a quantity, and by which power of ten its numbers grow on the way there.
struct ShownUnit {
    std::string unit;
    int power = 0; ///< 2 from a fraction to %, -3 from Wh to kWh
};

/// Fractions of a whole (unit "1" and a key that says so) are read in %, differences of two such fractions in points, and energies in kWh where
/// `size_wh`, the largest that stands beside it, is 10 kWh or more. Anything else keeps its unit.
[[nodiscard]] ShownUnit shown_unit(std::string_view key, std::string_view unit, double size_wh);

/// The quantity in that unit.
[[nodiscard]] Quantity in_unit(Quantity quantity, const ShownUnit& shown);

/// The quantity in the unit of shown_unit() for its own size.
[[nodiscard]] Quantity for_people(const Quantity& quantity);

/// The text of a quantity in parts, for whoever sets them apart: words in the language in use, numbers with a point.
struct QuantityParts {
    std::string value;    ///< "893", "at least 400", "86.0 to 95.2", "not known"
    std::string interval; ///< "± 17" or empty
    std::string unit;     ///< "Wh"; empty for a plain number and for what is not known
};

/// The quantity as people read it, in the unit of for_people(). A value shows two significant digits of its half-width (JCGM 100:2008, 7.2.6), a
/// range two of its width. `fallback_decimals`, counted in the unit of `quantity`, say how a number without interval is rounded; without them its
/// unit does: none for Wh, one for most.
[[nodiscard]] QuantityParts quantity_parts(const Quantity& quantity, std::optional<int> fallback_decimals = {});

/// The same in the unit that the quantity has.
[[nodiscard]] QuantityParts parts_as_they_are(const Quantity& quantity, std::optional<int> fallback_decimals = {});

/// "893 ± 17 Wh", "69.00 ± 0.66 %", "10.6 ± 1.2 kWh", "at least 400 Wh" (the lower limit where there is one, else the value), "86.0 to 95.2 %"
/// (brackets, no value, or sides that differ by more than 5 % of the width), "not known".
[[nodiscard]] Message say_quantity(const Quantity& quantity, std::optional<int> fallback_decimals = {});
/// The same in the language in use, numbers with a point.
[[nodiscard]] std::string quantity_text(const Quantity& quantity, std::optional<int> fallback_decimals = {});

/// An energy inside a sentence, without interval: "431 Wh", "12.34 kWh".
[[nodiscard]] Message say_energy(double wh);
/// The same with a point.
[[nodiscard]] std::string energy_text(double wh);

} // namespace ullage
