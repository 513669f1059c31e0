// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room joining.
#pragma once

#include "base/message.h"

#include <string>
#include <string_view>

namespace ullage::joining {

/// What a key of a run sheet or a PV sheet states, for people: "rated energy (Wh)" for rated_energy_wh. A key that has no words: itself.
[[nodiscard]] Message say_field(std::string_view key);
/// Its value, as sheets have it, for people: a number with the decimal sign of the language, a word of the program in the language, what a person
/// wrote as it is.
[[nodiscard]] Message say_field_value(std::string_view key, const std::string& value);

} // namespace ullage::joining
