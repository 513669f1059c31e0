// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gauge/finding.h"

#include <string>
#include <vector>

namespace ullage {

/// True for a finding about one stretch of time: stuck, jump, rebound. Only these shade rows and charts; a finding about the whole
/// run would shade everything.
[[nodiscard]] bool names_a_stretch(const Finding& finding);

/// Readings of a finding's stretch whose gauge value is in doubt: all but the first, which still showed rightly.
[[nodiscard]] std::vector<ReadingId> doubtful_readings(const Finding& finding);

} // namespace ullage
