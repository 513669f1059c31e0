// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/inside/missing_energy.h"

#include "measure/inside/clauses.h"

#include <algorithm>

namespace ullage {

void inherit_missing(const RegisterTrack& track, double wh_to_result, double estimate_wh, Quantity& result) {
    result.reason = with_clause(result.reason, track.missing_reason);
    if (track.missing_most_wh && result.lower && result.upper && result.kind != Kind::at_least) {
        result.kind = Kind::bracket;
        *result.lower -= estimate_wh * wh_to_result;
        // What no estimate stands for may be anything from nothing to all of it.
        if (result.value) *result.value += std::max(0.0, *track.missing_most_wh - 2 * estimate_wh) / 2 * wh_to_result;
        *result.upper += std::max(0.0, *track.missing_most_wh - estimate_wh) * wh_to_result;
        const Message most = say_energy(*track.missing_most_wh);
        result.reason = with_clause(result.reason, estimate_wh > 0 ? say(phrase("measure", "%1 Wh are counted for it, which may be 0 to %2"),
                                                                         say_number(estimate_wh, 0), most)
                                                                   : say(phrase("measure", "at most %1 are missing"), most));
        return;
    }
    if (result.value) *result.value -= estimate_wh * wh_to_result;
    if (result.lower) *result.lower -= estimate_wh * wh_to_result;
    result.kind = Kind::at_least;
    result.upper.reset();
}

void note_missing(const Message& clause, RegisterTrack& track) {
    track.energy_may_be_missing = true;
    track.missing_reason = with_clause(track.missing_reason, clause);
}

} // namespace ullage
