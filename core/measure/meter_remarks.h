// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "measure/register.h"

#include <vector>

namespace ullage {

/// Where a run goes beyond what its meters are made or calibrated for, a sentence each: loads outside the meter's range, powers that it showed
/// outside it, loads beyond those of its certificate, a certificate that had run out when the run began. Empty where there is nothing to say.
[[nodiscard]] std::vector<Message> meter_remarks(const RunRecord& record, const RegisterTrack& track, UtcMs start_ms);

} // namespace ullage
