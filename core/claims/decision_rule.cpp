// SPDX-License-Identifier: GPL-3.0-or-later
#include "claims/decision_rule.h"

namespace ullage {

Decision decide_at_least(const Quantity& measured, double claimed) {
    if (measured.lower && *measured.lower >= claimed) return Decision::holds;
    if (measured.upper && *measured.upper < claimed) return Decision::does_not_hold;
    return Decision::not_decided;
}

Decision decide_at_most(const Quantity& measured, double claimed) {
    if (measured.upper && *measured.upper <= claimed) return Decision::holds;
    if (measured.lower && *measured.lower > claimed) return Decision::does_not_hold;
    return Decision::not_decided;
}

std::string_view decision_rule_text() {
    return "Decision rule: a claim holds where the whole 95 % interval lies on its good side, and does not where it lies on the other; in between this "
           "meter does not decide it. Guarded acceptance and rejection, JCGM 106:2012, 8.3.";
}

} // namespace ullage
