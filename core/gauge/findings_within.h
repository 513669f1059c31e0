// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gauge/evidence.h"
#include "gauge/feasibility.h"
#include "gauge/loss_fit.h"
#include "gauge/share_bounds.h"

#include <vector>

namespace ullage {

// Findings that need a fit over the whole run; as in findings.h each appends what it found with its evidence.

/// Two straight lines that meet fit the gauge better than one (segmented fit, p < 0.001) and their slopes differ by more than a
/// charge-counting gauge may twice over (1.15 squared). The depth they run over is a mean of the shares of energy and of time, which is what
/// a no-load draw P* >= 0 makes of it; the mean is tried in 20 steps, and the best two lines must leave at most two fifths of what the
/// best one line leaves over any of them, so that no draw straightens the gauge and a jagged one is not called bent. Convicted where
/// even the best one line scatters as over a hump of 3 points, and from 3 points and two gauge steps on; the size is how far the break lies off the
/// straight line between the ends, for the draw under which the two lines fit best (under a varying load it may differ by some points from that of
/// the true draw). Needs 8 paired points.
void find_bent(const GaugeEvidence& evidence, std::vector<Finding>& findings);

/// All values seen are whole multiples, from the first value on, of a step G of at least twice the stated one, though chance would do
/// that in less than one run of 10,000 ((g/G)^drops, at least 4 drops), and the values scatter about a linear gauge as steps of G do
/// (0.7 G/sqrt(12) or more, for the best no-load draw): drops that are alike because the readings were regular convict nobody.
void find_coarse(const GaugeEvidence& evidence, std::vector<Finding>& findings);

/// The output was found off and no cut-off mark tells when it went: a note, its size the width of the bracket in hours.
void find_found_off(const GaugeEvidence& evidence, std::vector<Finding>& findings);

/// The least worst-case error over every possible unit (feasibility.h) exceeds 1 point, half a gauge step, and what a perfect
/// charge-counting gauge needs (1.6 points less half a gauge step).
void find_infeasible(const GaugeEvidence& evidence, std::vector<Finding>& findings);
/// As above, with the bound of this run where it is known already.
void find_infeasible(const GaugeEvidence& evidence, const GaugeFeasibility& bound, std::vector<Finding>& findings);

/// A reading of a full drain lies outside what an accurate gauge could have shown (share_bounds.h) by 3 points and two steps or more: the worst is
/// told. From 5 points on a fault. One reading between start and cut-off is enough.
void find_outside_shares(const GaugeEvidence& evidence, const std::vector<ShareBound>& bounds, std::vector<Finding>& findings);

/// The no-load draw fitted within the run (loss_fit.h) has an interval that reaches down to 0 (or to a tenth of the limits that follow), and its
/// upper end lies below a tenth of the mean load and below the least plausible draw of such a unit: 0.4 % of its rated output, at least 1.5 W (0.7 %
/// to 1 % are common: Schmidt and Sauer 1996, from memory; 1 % in a published 1000 W table, pvlib test data). A doubt.
void find_omits_own_consumption(const GaugeEvidence& evidence, std::vector<Finding>& findings);
/// As above, with the loss fit of this run where it is known already.
void find_omits_own_consumption(const GaugeEvidence& evidence, const LossFit& fit, std::vector<Finding>& findings);

} // namespace ullage
