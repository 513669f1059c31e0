// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/quantity.h"
#include "measure/options.h"

namespace ullage {

/// The three outcomes of the one rule by which a claim is judged.
enum class Decision { holds, does_not_hold, not_decided };

/// Whether a claim "at least so much" (or "at most") holds: where the whole 95 % interval lies on its good side; does not hold where it lies on the
/// bad side; not decided between, so that a worse meter never makes "holds" easier. `at least` results have no upper end and can only hold; a value
/// without an interval decides nothing. Guarded acceptance and guarded rejection with a guard band of the expanded uncertainty, JCGM 106:2012, 8.3.
/// With MeasureOptions::simple_acceptance the value alone decides (8.2), except of an `at least` or a bracket, which still need their ends.
[[nodiscard]] Decision decide_at_least(const Quantity& measured, double claimed, const MeasureOptions& options = {});
[[nodiscard]] Decision decide_at_most(const Quantity& measured, double claimed, const MeasureOptions& options = {});

/// The rule in two sentences for people, with its source.
[[nodiscard]] Message decision_rule_text(const MeasureOptions& options = {});

} // namespace ullage
