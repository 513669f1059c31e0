// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "gauge/evidence.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace ullage {

/// No-load draw of a unit seen from the socket with its 95 % interval, W. Within a run from loss_fit.h, else from other runs.
struct NoLoadDraw {
    double value_w = 0, lower_w = 0, upper_w = 0;
};

/// A value with its 95 % band.
struct Banded {
    double value = 0, lower = 0, upper = 0;
};

/// Both references at one paired point of a full drain. Never mix the two.
struct ReferenceDepth {
    std::size_t point = 0; ///< index into EnergyAnalysis::points
    double hours = 0;
    Banded delivered_percent;              ///< 100 D/D_end: how much of what this drain delivers is gone
    Banded delivered_error_pt;             ///< gauge - (100 - share delivered)
    std::optional<Banded> stored_percent;  ///< 100 (D + P* t)/(D_end + P* T): how much of the stored energy is gone
    std::optional<Banded> stored_error_pt; ///< gauge - (100 - stored depth)
};

/// Reference depths and gauge errors at every paired point (of more than 10 000 only at that many, spread evenly). Bands: pairing and register step
/// (normal), for the errors the gauge's own step (rectangular, half-width g/2) convolved with them; for the stored depth what the limits of P* (not
/// below 0) and of the run time (where that is a bracket) change is added in quadrature, each side by itself. The meter's gain cancels, in P* too
/// where the same meter gave it. t is time with the output on. Under a steady load both depths are the same whatever P* is. Stored depth is absent
/// without `draw` or without a known run time. Errors (refused): no full drain from full to cut-off, energy missing, or none delivered; limits of P*
/// that are not finite or not in order.
[[nodiscard]] Result<std::vector<ReferenceDepth>> reference_depths(const RunRecord& record, const EnergyAnalysis& energy,
                                                                   const std::optional<NoLoadDraw>& draw, const MeasureOptions& options = {});

} // namespace ullage
