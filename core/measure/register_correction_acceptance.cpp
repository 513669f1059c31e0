// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/register_correction_acceptance.h"

namespace ullage {

bool can_be_accepted(RegisterCorrectionKind kind) {
    return kind == RegisterCorrectionKind::unmarked_reset || kind == RegisterCorrectionKind::typing_error ||
           kind == RegisterCorrectionKind::duplicate;
}

std::optional<RegisterCorrectionAcceptance> accept_register_correction(const RegisterCorrection& register_correction, const Reading& reading) {
    RegisterCorrectionAcceptance acceptance{false, reading.values, say(phrase("measure", "accepted: %1"), register_correction.reason)};
    switch (register_correction.kind) {
    case RegisterCorrectionKind::unmarked_reset:
        if (reading.values.mark) return std::nullopt;
        acceptance.values.mark = MarkKind::meter_zeroed;
        return acceptance;
    case RegisterCorrectionKind::typing_error: {
        acceptance.values.register_wh.reset();
        const ReadingValues& rest = acceptance.values;
        acceptance.withdraw =
            !rest.gauge_percent && !rest.second_register_wh && !rest.meter_w && !rest.display_w && !rest.mark && rest.remark.empty();
        return acceptance;
    }
    case RegisterCorrectionKind::duplicate: acceptance.withdraw = true; return acceptance;
    case RegisterCorrectionKind::marked_zero:
    case RegisterCorrectionKind::marked_swap:
    case RegisterCorrectionKind::rollover:
    case RegisterCorrectionKind::against_log:
    case RegisterCorrectionKind::after_the_end:
    case RegisterCorrectionKind::late_entry: return std::nullopt;
    }
    return std::nullopt;
}

} // namespace ullage
