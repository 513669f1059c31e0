// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/register.h"

#include <optional>
#include <string>

namespace ullage {

/// What accepting an assumption about the register writes down, so that the logbook says what the analysis had to assume.
struct RegisterCorrectionAcceptance {
    bool withdraw = false; ///< withdraw the reading; else amend it to `values`
    ReadingValues values;
    std::string reason; ///< for the history of the reading
};

/// Whether an assumption of this kind can be turned into a statement of the tester.
[[nodiscard]] bool can_be_accepted(RegisterCorrectionKind kind);

/// The change that turns an assumption into a statement of the tester: an unmarked reset gets the mark "meter zeroed", a mistyped
/// register value is taken out of its reading (the reading is withdrawn when nothing else stands in it), a second entry of
/// the same moment is withdrawn. Nothing for marks, rollovers and late entries, which the readings state already, and for a
/// reading that has another mark.
[[nodiscard]] std::optional<RegisterCorrectionAcceptance> accept_register_correction(const RegisterCorrection& register_correction,
                                                                                     const Reading& reading);

} // namespace ullage
