// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "live/live_field.h"

#include <optional>
#include <string_view>

namespace ullage {

/// The number of a field in the answer to its query: the Nth of those with commas between, in the forms NR1, NR2 or NR3 (IEEE 488.2, 8.7.2 to 8.7.4).
/// Absent where it is none, or one of the numbers by which SCPI says that there is none: 9.91E37 (not a number) and 9.9E37 (infinity), either sign
/// (SCPI-99, volume 1, 7.2.1.4 and 7.2.1.5).
[[nodiscard]] std::optional<double> number_in_answer(std::string_view answer, const LiveField& field);

} // namespace ullage
