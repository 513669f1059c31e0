// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/load_statistics.h"
#include "trace/trace_import.h"

#include <string>

namespace ullage {

/// What was found in the beginning of a log, and how its first rows read: for a terminal.
[[nodiscard]] std::string preview_text(const TracePreview& preview, const std::string& zone);

/// Counts by reason, the first rows of each reason with line and beginning, and the gaps.
[[nodiscard]] std::string tally_text(const TraceTally& tally, const std::string& zone);

/// What the traces of a run say of its load, with the register held against integrated power where both are there.
[[nodiscard]] std::string load_text(const LoadStatistics& load);

} // namespace ullage
