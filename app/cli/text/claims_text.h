// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "claims/claims.h"

#include <string>

namespace ullage {

/// What a charge, sustained-output or peak-output run says of what it tests, for a terminal; empty for other kinds.
[[nodiscard]] std::string tested_text(const RunRecord& record, const EnergyAnalysis& energy);

/// Claims against results, round trip and the unit's own draw, for a terminal.
[[nodiscard]] std::string unit_claims_text(const UnitClaims& claims, const std::optional<EnergyPrice>& price);

} // namespace ullage
