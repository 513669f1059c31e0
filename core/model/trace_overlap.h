// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/trace.h"

#include <optional>

namespace ullage {

/// What two traces of one run cannot both tell of the same time.
enum class TraceOverlap { none, meter, gauge, output };

/// No meter, no gauge and no output power is in two places at once. A trace that names no meter counts as one of `run_meter`. Withdrawn traces count
/// like others.
[[nodiscard]] TraceOverlap trace_overlap(const Trace& one, const Trace& other, const std::optional<MeterId>& run_meter);

} // namespace ullage
