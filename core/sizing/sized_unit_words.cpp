// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/sized_unit.h"

#include <string>

namespace ullage {

std::string_view sizing_basis_text(SizingBasis basis) {
    switch (basis) {
    case SizingBasis::own_fit: return "own drains";
    case SizingBasis::one_load: return "expectation from one load";
    case SizingBasis::expectation: return "expectation, not measured";
    case SizingBasis::none: return "not known";
    }
    return "not known";
}

Message say_sizing_basis(SizingBasis basis) {
    switch (basis) {
    case SizingBasis::own_fit: return say(phrase("sizing", "own drains"));
    case SizingBasis::one_load: return say(phrase("sizing", "expectation from one load"));
    case SizingBasis::expectation: return say(phrase("sizing", "expectation, not measured"));
    case SizingBasis::none: break;
    }
    return say(phrase("sizing", "not known"));
}

std::string_view power_fit_text(PowerFit fit) {
    switch (fit) {
    case PowerFit::fits: return "fits";
    case PowerFit::only_apart: return "fits if not all run at once";
    case PowerFit::too_small: return "too small";
    case PowerFit::not_stated: return "not stated";
    }
    return "not stated";
}

Message say_power_fit(PowerFit fit) {
    switch (fit) {
    case PowerFit::fits: return say(phrase("sizing", "fits"));
    case PowerFit::only_apart: return say(phrase("sizing", "fits if not all run at once"));
    case PowerFit::too_small: return say(phrase("sizing", "too small"));
    case PowerFit::not_stated: break;
    }
    return say(phrase("sizing", "not stated"));
}

Message say_units_needed(const UnitsNeeded& needed) {
    if (!needed.least) return say(phrase("sizing", "not known"));
    if (!needed.sure) return say(phrase("sizing", "at least %1"), say_number(*needed.least));
    if (*needed.least == *needed.sure) return say_number(*needed.sure);
    return say(phrase("sizing", "%1 to %2"), say_number(*needed.least), say_number(*needed.sure));
}

std::string units_needed_text(const UnitsNeeded& needed) { return say_units_needed(needed); }

} // namespace ullage
