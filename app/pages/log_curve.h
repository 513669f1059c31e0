// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"
#include "document/document.h"

#include <vector>

namespace ullage {

/// The power of a run's logs as a curve whose size does not grow with them: of each of some ten thousand spans of time the lowest and the highest sample.
/// A view that is narrow enough gets the samples themselves, read from the logbook.
class LogCurve {
public:
    static constexpr std::size_t spans = 10'000;
    static constexpr std::int64_t most_detail = 100'000; ///< samples that a view may read

    /// Reads all samples of `traces` once. x is in hours since `origin_ms`; where the power is not known for longer than the gap limit of the
    /// traces, the curve is interrupted. Errors: those of Document::readSamples.
    [[nodiscard]] static Result<LogCurve> of(const Document& document, std::vector<Trace> traces, UtcMs origin_ms);

    /// The whole curve.
    [[nodiscard]] const std::vector<ChartPoint>& overview() const { return overview_; }
    /// The curve with each sample from one width of the view before it to one after, the overview elsewhere. Absent where that would read more
    /// than most_detail samples, or where the overview has them all.
    [[nodiscard]] Result<std::optional<std::vector<ChartPoint>>> detailed(const Document& document, double from_h, double to_h) const;

private:
    class Collector;

    std::vector<Trace> traces_;
    UtcMs origin_ms_ = 0;
    double gap_limit_s_ = 60;
    std::int64_t samples_ = 0;
    double samples_per_h_ = 0;
    std::vector<ChartPoint> overview_;
};

} // namespace ullage
