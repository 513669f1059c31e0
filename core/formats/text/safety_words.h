// SPDX-License-Identifier: GPL-3.0-or-later
// The one place that words what can hurt in this work; reports take it as it is, the screen through its translation.
#pragma once

#include "model/run.h"

#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// What can hurt in this work, a sentence each, as help and every report carry it.
[[nodiscard]] std::vector<std::string> safety_words();

/// The cautions of one kind of run: first what is special to it, then the general ones that apply; that of PV to a charge alone.
[[nodiscard]] std::vector<std::string> safety_words(RunKind kind);

/// The one line that stays in sight while a run is open.
inline constexpr std::string_view safety_line = "Stay in attendance or use a fire-safe place; stop on heat, smell, swelling or noise.";

/// What results are not: as a sentence, and as the line that stays in sight.
inline constexpr std::string_view specimen_words = "Results are measurements of one specimen, not a safety certification.";
inline constexpr std::string_view specimen_line_words = "One specimen each. Not a safety certification.";

} // namespace ullage
