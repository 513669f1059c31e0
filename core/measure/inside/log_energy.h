// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/options.h"
#include "model/run_record.h"

#include <vector>

namespace ullage {

/// An amount that grows along the samples of a log, straight between those kept. Times rise.
struct LogCurve {
    std::vector<UtcMs> times_ms;
    std::vector<double> values;

    [[nodiscard]] bool usable() const { return times_ms.size() >= 2; }
    /// Before the first sample the value there, after the last one the value there. Precondition: not empty.
    [[nodiscard]] double at(UtcMs time_ms) const;
    /// Standard uncertainty of at(): at fraction f of a gap over which it grows by A, A sqrt(f (1 - f) / 3), as it grows all the time but no one
    /// knows how.
    [[nodiscard]] double u_between(UtcMs time_ms) const;
    /// Standard uncertainty from a moment known to plus or minus `doubt_ms` (rectangular): half of what it grows by from doubt_ms before to doubt_ms
    /// after, over the square root of 3.
    [[nodiscard]] double u_moment(UtcMs time_ms, double doubt_ms) const;
};

/// Half-width of the doubt of a moment noted by hand against the clock of the log, ms: a noted minute, and the clock offset's uncertainty.
[[nodiscard]] double log_moment_doubt_ms(const RunTrace& trace, const MeasureOptions& options);

/// Integrated power of a log, Wh, and its integral of P squared, W2h, at the samples of power kept; without the meter's correction.
[[nodiscard]] LogCurve integrated_energy(const RunTrace& trace);
[[nodiscard]] LogCurve integrated_square(const RunTrace& trace);
/// Standard uncertainty of integrated_energy() over the whole log that comes from what the power did between samples, Wh (see TraceThinner), and
/// half-width of what its steps may hide: one step over all the time, as a steady load errs the same way all along, and rounding or truncation is
/// unknown.
struct IntegrationDoubt {
    double u_sampling_wh = 0, step_half_width_wh = 0;
};
[[nodiscard]] IntegrationDoubt integration_doubt(const RunTrace& trace);

} // namespace ullage
