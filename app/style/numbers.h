// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/quantity.h"
#include "style/palette.h"

#include <QString>

#include <optional>

namespace ullage {

/// A quantity as the screen shows it: the value, then lighter its expanded interval and unit.
struct ValueText {
    QString value;    ///< "893"; "not known" where there is none
    QString interval; ///< "± 17" or empty
    QString unit;     ///< "Wh" or empty

    /// "893 ± 17 Wh", the parts that are there.
    [[nodiscard]] QString plain() const;
};

/// `value` with `decimals` digits, a true minus sign, and thin spaces between groups of three from five digits on
/// (SI brochure, 9th edition, 5.4.4). "not known" for an absent or non-finite value.
[[nodiscard]] QString shown_number(std::optional<double> value, int decimals);

/// As shown_number with "+" before positive values, for differences and errors.
[[nodiscard]] QString shown_difference(std::optional<double> value, int decimals);

/// shown_quantity() of a value with its half-width, which may be absent.
[[nodiscard]] ValueText shown_value(std::optional<double> value, std::optional<double> half_width, const QString& unit, int fallback_decimals);

/// A quantity as people read it (quantity_parts()), with true minus signs and the digits set as by shown_number.
[[nodiscard]] ValueText shown_quantity(const Quantity& quantity, std::optional<int> fallback_decimals = {});
/// The same in the unit that it has.
[[nodiscard]] ValueText shown_as_it_is(const Quantity& quantity, std::optional<int> fallback_decimals = {});

/// Rich text with interval and unit in the palette's soft colour, for labels and delegates.
[[nodiscard]] QString rich_text(const ValueText& text, const Palette& palette);

/// "14 h 36", "2 d 3 h" from 48 hours on, "12 min" below one hour.
[[nodiscard]] QString shown_duration(double hours);

} // namespace ullage
