// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"
#include "document/document.h"

#include <limits>
#include <optional>
#include <vector>

namespace ullage {

/// The power of a run's logs (or another of their values) as curves of several finenesses, whose size does not grow with the logs: of each of 4096
/// spans of time, and of each of 4, 16 and 64 times as many, the lowest and the highest sample. A view that is narrower still gets the samples
/// themselves, read from the logbook.
class PowerCurve {
public:
    static constexpr std::size_t coarsest_spans = 4096;
    static constexpr std::size_t finenesses = 4, next_finer = 4;
    static constexpr double spans_in_view = 1800; ///< at least, before the next finer curve is taken: two to a pixel

    /// Reads all samples of `traces` once. x is in hours since `origin_ms`; where the power is not known for longer than the gap limit of the
    /// traces, the curve is interrupted. Values above `most` are left out. Errors: those of Document::readSamples.
    [[nodiscard]] static Result<PowerCurve> of(const Document& document, std::vector<Trace> traces, UtcMs origin_ms,
                                               std::optional<double> TraceSample::*value = &TraceSample::power_w,
                                               double most = std::numeric_limits<double>::infinity());

    /// The whole curve.
    [[nodiscard]] const std::vector<ChartPoint>& overview() const { return curves_.front(); }
    /// The part of the curve that a view of [from_h, to_h] needs, and a little on either side.
    [[nodiscard]] Result<std::vector<ChartPoint>> inView(const Document& document, double from_h, double to_h);

private:
    class Collector;

    [[nodiscard]] Result<std::vector<ChartPoint>> samplesBetween(const Document& document, double from_h, double to_h) const;

    std::optional<double> TraceSample::*value_ = &TraceSample::power_w;
    double most_ = std::numeric_limits<double>::infinity();
    std::vector<Trace> traces_;
    UtcMs origin_ms_ = 0;
    double gap_limit_s_ = 60;
    double whole_h_ = 0;
    bool whole_kept_ = true; ///< overview() has every sample
    std::vector<std::vector<ChartPoint>> curves_{1};
    struct {
        double from_h = 0, to_h = -1;
        std::vector<ChartPoint> points;
    } read_; ///< the samples that were read last: a view within them needs no other
};

} // namespace ullage
