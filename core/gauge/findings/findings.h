// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gauge/evidence.h"

#include <vector>

namespace ullage {

// One function a finding. Each appends what it found, with its evidence; none convicts on less than its threshold.

/// The gauge stood still while an honest one would have fallen by more than two steps (15 % slope spread and three standard
/// uncertainties allowed). At the first gauge value of a full start it is `held_at_full`; at 1 % or less it is left
/// to find_hidden_reserve.
void find_stuck(const GaugeEvidence& evidence, std::vector<Finding>& findings);

/// The gauge fell by at least 1.5 times what an honest one can fall, and by more than two steps beyond it. Neighbouring jumps are one.
void find_jump(const GaugeEvidence& evidence, std::vector<Finding>& findings);

/// The gauge rose by at least two steps between two readings of a drain; nothing charged it.
void find_rebound(const GaugeEvidence& evidence, std::vector<Finding>& findings);

/// The output was cut off while the gauge, carried on to that moment with the steepest honest fall, still showed
/// 3 points and two steps or more; not judged where the register was not read up to the end; in a no-load drain it is carried on by time. One run
/// cannot tell whether the gauge ended early or the unit kept energy back.
void find_stopped_early(const GaugeEvidence& evidence, std::vector<Finding>& findings);

/// More energy was delivered at a gauge of 1 % or less than the rounding of that value explains; the size is a bracket.
void find_hidden_reserve(const GaugeEvidence& evidence, std::vector<Finding>& findings);

/// Delivered energy, less its interval, is above gauge-implied energy plus a gauge step and the 2.2 % of rated by which a perfect
/// charge-counting gauge may lead: the gauge lags, or the battery
/// holds more than its label.
void find_delivered_exceeds(const GaugeEvidence& evidence, std::vector<Finding>& findings);

/// The register may have been zeroed unseen between two readings and have passed its old value again, so that nothing shows in it: the
/// gauge fell further than energy, time and any no-load draw explain, and a reset explains it. A doubt, as a jump of the gauge would look
/// the same; told in place of that jump. Asked of two neighbouring register readings without a correction:
/// - the mean load over the gap lies below 85 % of the lowest that the intervals beside it or the noted powers say: where they agree, the register is
///   cleared and the gauge alone is at fault;
/// - the whole later register could have flowed between them at a believable load (else there was no reset);
/// - the gauge, read no later than the one and no earlier than the other, fell beyond 1.5 times and by two steps beyond the most that an honest
///   gauge (15 % slope spread) falls for that energy and time, and so it did from the first reading to the later one (else it only caught
///   up). The most: scaled by the rest of the run under every no-load draw from 0 to what a battery of 110 % of its label leaves room for
///   in the rest; without rated energy or error limit under any draw;
/// - the fall implies the whole later register, with the same spread and two steps.
/// The size is the least that is missing, the earlier register, Wh. With it told, analyse_gauge holds nothing against the gauge that rests on
/// the energy of the whole run (bent, infeasible, omits own consumption).
void find_hidden_reset(const GaugeEvidence& evidence, std::vector<Finding>& findings);

} // namespace ullage
