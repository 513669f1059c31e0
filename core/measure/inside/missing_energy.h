// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/quantity.h"
#include "measure/register.h"

namespace ullage {

/// Gives `result`, which rests on a track with missing energy, its kind and reason: a bracket from nothing missing to the most that may be, where
/// that is bounded; else `at least`. `wh_to_result` turns energy into the result, `estimate_wh` is what it holds of
/// RegisterTrack::missing_estimate_wh.
void inherit_missing(const RegisterTrack& track, double wh_to_result, double estimate_wh, Quantity& result);

/// Says of a track that energy may be missing; `clause` says where.
void note_missing(const Message& clause, RegisterTrack& track);

} // namespace ullage
