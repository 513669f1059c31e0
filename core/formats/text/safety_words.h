// SPDX-License-Identifier: GPL-3.0-or-later
// The one place that words what can hurt in this work.
#pragma once

#include "base/message.h"
#include "model/run.h"

#include <vector>

namespace ullage {

/// What can hurt in this work, a sentence each, as help and every report carry it.
[[nodiscard]] std::vector<Message> safety_words();

/// The cautions of one kind of run: first what is special to it, then the general ones that apply; that of PV to a charge alone.
[[nodiscard]] std::vector<Message> safety_words(RunKind kind);

/// The one line that stays in sight while a run is open.
inline constexpr Phrase safety_line = phrase("safety", "Stay in attendance or use a fire-safe place; stop on heat, smell, swelling or noise.");

/// What results are not: as a sentence, and as the line that stays in sight.
inline constexpr Phrase specimen_words = phrase("safety", "Results are measurements of one specimen, not a safety certification.");
inline constexpr Phrase specimen_line_words = phrase("safety", "One specimen each. Not a safety certification.");

} // namespace ullage
