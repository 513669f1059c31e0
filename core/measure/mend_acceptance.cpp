// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/mend_acceptance.h"

namespace ullage {

bool can_be_accepted(MendKind kind) {
    return kind == MendKind::unmarked_reset || kind == MendKind::typing_error || kind == MendKind::duplicate;
}

std::optional<MendAcceptance> accept_mend(const Mend& mend, const Reading& reading) {
    MendAcceptance acceptance{false, reading.values, "accepted: " + mend.reason};
    switch (mend.kind) {
    case MendKind::unmarked_reset:
        if (reading.values.mark) return std::nullopt;
        acceptance.values.mark = MarkKind::meter_zeroed;
        return acceptance;
    case MendKind::typing_error: {
        acceptance.values.register_wh.reset();
        const ReadingValues& rest = acceptance.values;
        acceptance.withdraw = !rest.gauge_percent && !rest.meter_w && !rest.display_w && !rest.mark && rest.remark.empty();
        return acceptance;
    }
    case MendKind::duplicate: acceptance.withdraw = true; return acceptance;
    case MendKind::marked_zero:
    case MendKind::marked_swap:
    case MendKind::rollover:
    case MendKind::against_log:
    case MendKind::late_entry: return std::nullopt;
    }
    return std::nullopt;
}

} // namespace ullage
