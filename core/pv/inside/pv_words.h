// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "pv/pv_check.h"

#include <vector>

namespace ullage {

/// "54.4 V", "12.8 A", "400 W", "−15 °C", "2 modules".
[[nodiscard]] Message say_volts(double value);
[[nodiscard]] Message say_amps(double value);
[[nodiscard]] Message say_watts(double value);
[[nodiscard]] Message say_degrees(double value);
[[nodiscard]] Message say_modules(int count);

/// "Vmp and Isc of the module, voltage limit of the PV input are missing".
[[nodiscard]] Message say_missing(const std::vector<PvMissing>& missing);

/// The words of a check whose comparisons and verdict stand: PvCheck::verdict_text, headline and suggestion.
[[nodiscard]] Message verdict_words(const PvCheck& check);
[[nodiscard]] Message headline_words(const PvSheet& sheet, const PvCheck& check);
[[nodiscard]] Message suggestion_words(const PvCheck& check);

} // namespace ullage
