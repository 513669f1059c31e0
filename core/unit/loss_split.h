// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "run_analysis/run_analysis.h"
#include "unit/between_runs.h"

#include <string>

namespace ullage {

/// Where the rated energy of one drain went, counted at the socket.
struct LossSplit {
    Quantity undelivered_wh;   ///< "undelivered_wh": rated − delivered
    Quantity no_load_taken_wh; ///< "no_load_taken_wh": no-load draw × hours of output on
    /// "rest_wh": undelivered − no-load taken: conversion losses under load and missing capacity, which no meter at the socket
    /// tells apart. Below 0 where the unit holds more than its label.
    Quantity rest_wh;
    bool draw_from_this_run = false; ///< the draw is the run's own (if the gauge is linear), not that of the unit's drains together
    Message sentence;                ///< for people; says what is not known
};

/// Splits rated = delivered + P*·T + rest for a drain or a no-load drain from full to cut-off with all its energy read.
/// P* is the no-load draw seen from the socket: of `unit_fit` (all drains of the unit) where it is known, else the run's own (fit_losses).
///
/// Intervals: of P*·T the products of the ends of P* ≥ 0 and T; of the rest the sum of both half-widths. Delivered energy and P* share
/// the meter's gain, so their errors are neither independent nor opposite, and the sum is the widest that they can make; wide
/// rather than wrong. The label is a claim without uncertainty. A quantity is `not known` with its reason where one of its parts is.
[[nodiscard]] LossSplit split_losses(const RunRecord& record, const RunAnalysis& analysis, const UnitFit& unit_fit);

} // namespace ullage
