// SPDX-License-Identifier: GPL-3.0-or-later
#include "claims/decision_rule.h"

namespace ullage {
namespace {

bool value_decides(const Quantity& measured, const MeasureOptions& options) {
    return options.simple_acceptance && measured.value && measured.kind != Kind::at_least && measured.kind != Kind::bracket;
}

} // namespace

Decision decide_at_least(const Quantity& measured, double claimed, const MeasureOptions& options) {
    if (value_decides(measured, options)) return *measured.value >= claimed ? Decision::holds : Decision::does_not_hold;
    if (measured.lower && *measured.lower >= claimed) return Decision::holds;
    if (measured.upper && *measured.upper < claimed) return Decision::does_not_hold;
    return Decision::not_decided;
}

Decision decide_at_most(const Quantity& measured, double claimed, const MeasureOptions& options) {
    if (value_decides(measured, options)) return *measured.value <= claimed ? Decision::holds : Decision::does_not_hold;
    if (measured.upper && *measured.upper <= claimed) return Decision::holds;
    if (measured.lower && *measured.lower > claimed) return Decision::does_not_hold;
    return Decision::not_decided;
}

Message decision_rule_text(const MeasureOptions& options) {
    if (options.simple_acceptance)
        return say(phrase("claims",
                          "Decision rule: a claim holds where the measured value reaches it, whatever its interval: simple acceptance, JCGM "
                          "106:2012, 8.2. Near the claim such a verdict is wrong about every second time."));
    return say(phrase("claims", "Decision rule: a claim holds where the whole 95 % interval lies on its good side, and does not where it lies on the "
                                "other; in between this meter does not decide it. Guarded acceptance and rejection, JCGM 106:2012, 8.3."));
}

} // namespace ullage
