// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <QString>

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// A unit that may follow a number, and what one of it is in the unit wanted.
struct UnitWord {
    std::string word;
    double factor = 1;
};

/// Limits of a field's value, and the words for it, e.g. "the mass".
struct FieldLimits {
    Message what;
    bool above_zero = true; ///< else any sign
};

/// A parser for a number with one of `units` or none behind it; case and blanks do not matter. Errors say what was
/// expected. A text such as `2 kg 300` is refused.
[[nodiscard]] std::function<Result<double>(std::string_view)> number_in(std::vector<UnitWord> units, FieldLimits limits);

/// `parse`, refusing 0 besides: for claims, of which 0 would be no claim.
[[nodiscard]] std::function<Result<double>(std::string_view)> above_zero(std::function<Result<double>(std::string_view)> parse, Message what);

/// The text that a field starts with; empty for an absent value.
[[nodiscard]] QString field_text(const std::optional<double>& value, const QString& unit = {});

} // namespace ullage
