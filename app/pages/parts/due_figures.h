// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "pages/parts/strip_figure.h"
#include "services/reminders.h"

namespace ullage {

/// "in 12 min", "in 1 h 05", "due now", "overdue 3 min"; why there is none where nothing is due.
[[nodiscard]] QString due_words(const DueState& state, UtcMs now_ms);

/// The countdown to the next reading; an alarm once it is overdue.
[[nodiscard]] StripFigure due_figure(const DueState& state, UtcMs now_ms);

} // namespace ullage
