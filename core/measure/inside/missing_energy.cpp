// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/inside/missing_energy.h"

#include "base/number.h"

#include <algorithm>

namespace ullage {

void inherit_missing(const RegisterTrack& track, double wh_to_result, double estimate_wh, Quantity& result) {
    result.reason += (result.reason.empty() ? "" : "; ") + track.missing_reason;
    if (track.missing_most_wh && result.lower && result.upper && result.kind != Kind::at_least) {
        result.kind = Kind::bracket;
        *result.lower -= estimate_wh * wh_to_result;
        // What no estimate stands for may be anything from nothing to all of it.
        if (result.value) *result.value += std::max(0.0, *track.missing_most_wh - 2 * estimate_wh) / 2 * wh_to_result;
        *result.upper += std::max(0.0, *track.missing_most_wh - estimate_wh) * wh_to_result;
        const std::string most = energy_text(*track.missing_most_wh);
        result.reason += estimate_wh > 0 ? "; " + fixed_text(estimate_wh, 0) + " Wh are counted for it, which may be 0 to " + most
                                         : "; at most " + most + " are missing";
        return;
    }
    if (result.value) *result.value -= estimate_wh * wh_to_result;
    if (result.lower) *result.lower -= estimate_wh * wh_to_result;
    result.kind = Kind::at_least;
    result.upper.reset();
}

} // namespace ullage
