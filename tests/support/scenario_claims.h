// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/run_record.h"

#include <string>
#include <vector>

namespace ullage::test {

/// A run of the sample scenario that tests another claim than the rated energy, with the name of its run sheet.
struct ClaimRun {
    std::string file_name;
    RunRecord record;
};

/// After the drains of sample_scenario(): the Osk 1200, found off on the morning of 19 May, is charged from the wall with socket meter B, which
/// closes a round trip with the drain before; then it carries its rated output with socket meter A, and its peak output until it trips. Always the
/// same.
[[nodiscard]] std::vector<ClaimRun> sample_claim_runs();

} // namespace ullage::test
