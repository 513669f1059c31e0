// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "pv/pv_check.h"

#include <string>
#include <vector>

namespace ullage {

/// "54.4 V", "12.8 A", "400 W", "−15 °C", "2 modules".
[[nodiscard]] std::string volts_text(double value);
[[nodiscard]] std::string amps_text(double value);
[[nodiscard]] std::string watts_text(double value);
[[nodiscard]] std::string degrees_text(double value);
[[nodiscard]] std::string modules_text(int count);

/// "Vmp and Isc of the module and voltage limit of the PV input are missing".
[[nodiscard]] std::string missing_text(const std::vector<PvMissing>& missing);

/// The words of a check whose comparisons and verdict stand: PvCheck::verdict_text, headline and suggestion.
[[nodiscard]] std::string verdict_words(const PvCheck& check);
[[nodiscard]] std::string headline_words(const PvSheet& sheet, const PvCheck& check);
[[nodiscard]] std::string suggestion_words(const PvCheck& check);

} // namespace ullage
