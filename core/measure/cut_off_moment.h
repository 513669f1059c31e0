// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "measure/register.h"
#include "measure/run_scan.h"

#include <optional>
#include <string>

namespace ullage {

/// What tells when the output went off.
enum class CutOffBasis {
    log,         ///< the log of the meter saw power or register cease
    steady_load, ///< the last rise of the register over the steady load before it
    noted,       ///< the noted moment, and how late it may have been noticed
    bracket,     ///< somewhere between the last reading with the output on and the noted one
};

/// When the unit switched its output off, in hours since the first reading of the run. lower_h <= estimate_h <= upper_h, 95 % of what may be.
struct CutOffMoment {
    double lower_h = 0, estimate_h = 0, upper_h = 0;
    double u_h = 0; ///< standard uncertainty; that of the start is not in it
    CutOffBasis basis = CutOffBasis::noted;
    Message words; ///< a clause for people: what tells it
};

/// "cut-off seen" without a word on how late: within so many minutes before it was noted, never after.
inline constexpr double noticed_within_min = 5;

/// The moment of cut-off of a run that ended by it (seen, or found off); absent for other runs and for fewer than two noted moments.
///
/// N is the noted moment (the mark "cut-off", else the last reading), A the last reading before it, at which the output was on. Where the log of a
/// run found off shows it on at the last reading, that is A, and N the last sample of the log.
///  1. A log that saw power or register cease between A and N: from its last sample with power to the next one, or for as long as the load has paused
///     before, give or take the doubt between the log's clock and the notes.
///  2. A steady load, of which A and N have the register: A + (M_N - M_A)/P. P is the mean over up to five intervals up to A, of which there must be
///     two (or one, and powers noted from the meter that agree): steady within 10 % and what register step and noted minutes make of a steady load.
///     u holds a step at either end, the minute of A, and the scatter of the intervals with Student's factor; the meter's gain cancels. That normal
///     is cut to the range of 3. Where it lies more than two u before that range, the bracket holds both.
///     A run that states "within 0 min" is known to the noted minute, whatever the load.
///  3. Else even from N − w to N, w as stated, or noticed_within_min for a run seen to go off; for one found off from A to N. Not before the last
///     moment at which a log shows the output on, less the doubt of its clock.
/// Source: the program's own derivation; the normal cut to a range by its probabilities (JCGM 101:2008, 6.4, gives the parts).
[[nodiscard]] std::optional<CutOffMoment> cut_off_moment(const RunRecord& record, const RunScan& scan, const RegisterTrack& track,
                                                         const MeasureOptions& options = {});

/// Where a steady load puts the end of a run that ended by cut-off, whatever was noted.
struct SteadyLoadEnd {
    double hours = 0, u_h = 0; ///< since the first reading, and its standard uncertainty
    Message words;             ///< a clause for people: what tells it
};
/// A + (M_N - M_A)/P of 2 above, not cut to what was noted; absent where that has no steady load, no register at A or N, or a log tells more.
[[nodiscard]] std::optional<SteadyLoadEnd> steady_load_end(const RunRecord& record, const RunScan& scan, const RegisterTrack& track,
                                                           const MeasureOptions& options = {});

} // namespace ullage
