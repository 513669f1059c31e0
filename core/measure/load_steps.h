// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/register.h"
#include "model/run.h"

#include <vector>

namespace ullage {

/// Mean load between two neighbouring register readings.
struct LoadStep {
    std::size_t from_reading = 0, to_reading = 0; ///< indices into the run's readings, or no_reading
    UtcMs from_ms = 0, to_ms = 0;
    double mean_w = 0; ///< delivered energy / time between the two
};

/// The load of a run as steps, one for each pair of neighbouring points of the track whose times differ. In a run found off the
/// step to the last reading is left out: the output was off for a part of it that nobody saw.
[[nodiscard]] std::vector<LoadStep> load_steps(const RegisterTrack& track, RunEnd end);

} // namespace ullage
