// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forecast/reading_due.h"
#include "model/run.h"

#include <QString>

namespace ullage {

/// The rule that the start of a run of this kind proposes (common practice, no source): often enough to see the gauge's curve.
[[nodiscard]] ReadingRule usual_rule(RunKind kind);

/// One line that rule_from_kept() reads back.
[[nodiscard]] QString kept_rule(const ReadingRule& rule);
/// The rule of a kept line; parts that cannot be read are absent.
[[nodiscard]] ReadingRule rule_from_kept(const QString& line);

/// "30 min", "4 h", "1 h 30 min" for a field; empty when absent. parse_minutes() reads it back.
[[nodiscard]] QString minutes_text(const std::optional<double>& minutes);
/// Minutes from "30", "30 min", "1.5 h", "1 h 30 min", "1:30". Errors: other text.
[[nodiscard]] Result<double> parse_minutes(std::string_view text);
/// Percentage points of the gauge from "10", "10 %", "10 points". Errors: other text.
[[nodiscard]] Result<double> parse_points(std::string_view text);

} // namespace ullage
