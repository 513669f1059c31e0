// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/register.h"

#include <cstddef>
#include <vector>

namespace ullage {

/// Turns the register's own energy of a track, `delivered_wh` of its points, into true energy by what is stated of each of the run's meters at the
/// load of each step, and fills RegisterTrack::meters. The load is that over at least twenty register steps, or over a stretch of one meter where it
/// has no more, so that a coarse register does not pass for a varying load. `swaps`: the points that a mark "meter swapped" lies before.
void apply_meters(const RunRecord& record, const std::vector<std::size_t>& swaps, double step_wh, RegisterTrack& track);

/// Which meter took over after so many swaps, and what is stated of it: nullptr where nothing is.
[[nodiscard]] MeterOfRun meter_after(const RunRecord& record, std::size_t swaps);
[[nodiscard]] const Meter* meter_of(const RunRecord& record, MeterOfRun which);
/// The meter of a part, also of one whose log stood in.
[[nodiscard]] const Meter* meter_of(const RunRecord& record, const MeterPart& part);

} // namespace ullage
