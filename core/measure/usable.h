// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/quantity.h"
#include "measure/budget.h"
#include "measure/pairing.h"

#include <vector>

namespace ullage {

/// Usable fraction = delivered energy from full to cut-off / rated energy (rated energy is a claim: no uncertainty).
///
/// measured: a drain that started full and ended by cut-off; `at least` where energy may be
/// missing, `bracket` where that is bounded (RegisterTrack::missing_most_wh).
/// projected: any other drain, end to end D x 100 / (s_a - s_b) with both gauge steps in the uncertainty; the reason
/// names the assumed honest stretch of the gauge. A doubt lowers it: where the gauge rose on the way by two of its steps or more, the value is that
/// by all its falls, D x 100 / (s_a - s_b + rises), and the interval goes from what was delivered to that by its ends; where energy may be missing
/// within, it is widened by that, or where that has no bound only what was delivered stands, as `at least`. not known: no rated energy, no register,
/// or a gauge drop whose two steps alone leave more than ±10 % (the reason says how many points more would resolve ±5 %).
[[nodiscard]] Quantity usable_fraction(const RunRecord& record, const RegisterTrack& track, const std::vector<PairedPoint>& points,
                                       const Budget& budget, const MeasureOptions& options = {});

/// What the reason of a projected usable fraction says behind the gauge that it assumes, clause by clause: how the run started and ended, why there
/// is no interval, that the gauge rose, what energy may be missing. For whoever projects the same run by another gauge.
[[nodiscard]] std::vector<Message> projection_remarks(const RunRecord& record, const RegisterTrack& track, const std::vector<PairedPoint>& points,
                                                      const Budget& budget);

/// Delivered Wh for each percentage point that the gauge fell, from the first to the last paired point; `at least` where energy may be missing
/// between.
[[nodiscard]] Quantity wh_per_gauge_point(const RunRecord& record, const RegisterTrack& track, const std::vector<PairedPoint>& points,
                                          const Budget& budget, const MeasureOptions& options = {});

/// True for a drain (not a no-load drain) that started full and was ended by the unit's own cut-off.
[[nodiscard]] bool is_full_drain(const RunRecord& record);

} // namespace ullage
