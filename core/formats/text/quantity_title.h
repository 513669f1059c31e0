// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"

#include <string_view>

namespace ullage {

/// What people call a quantity: "usable_fraction" → "usable fraction", "delivered_wh" → "delivered energy". A key that is not
/// known is shown with blanks for its underscores.
[[nodiscard]] Message quantity_title(std::string_view key);

/// Decimals for people where no uncertainty says how many: 0 for energies and loads, 3 for fractions and slopes, 2 else.
[[nodiscard]] int quantity_decimals(std::string_view key);

/// "Wh" of "delivered_wh", "1" of a fraction; empty where the quantities of a key differ in it, as prices do in their currency, and for a key that is
/// not known.
[[nodiscard]] std::string_view quantity_unit(std::string_view key);

} // namespace ullage
