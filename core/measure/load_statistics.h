// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"
#include "model/trace.h"

#include <array>
#include <cstddef>
#include <optional>
#include <span>

namespace ullage {

/// Two levels of a load that switches on and off.
struct DutyCycle {
    double threshold_w = 0;     ///< between the two
    double on_w = 0, off_w = 0; ///< mean power while on and while off
    double duty = 0;            ///< share of the time that it is on, 0 to 1
    double starts_per_hour = 0;
};

/// What a trace says of the load. Times are those covered by samples; gaps are left out of all sums.
struct LoadStatistics {
    double covered_h = 0;
    double energy_wh = 0;                        ///< power integrated by trapezoid
    double square_w2h = 0;                       ///< the integral of P squared, exact for power that is straight between samples
    double mean_w = 0, peak_w = 0, daily_wh = 0; ///< daily: mean x 24 h
    std::optional<DutyCycle> cycle;              ///< absent for a load of one level
    long gaps = 0;                               ///< longer than the limit: nothing is known of the load in them
    double gap_h = 0;
    double gap_most_wh = 0;            ///< what may have flowed in the gaps, at most: peak x time
    std::optional<double> register_wh; ///< difference of the register over the same times; absent where it falls or is not there
};

/// Load statistics of power samples in two passes over them, so that memory does not grow with the trace: take() all samples, then, where
/// needs_second_pass(), take_again() all of them.
///
/// On and off are told apart by the threshold that parts the time-weighted powers best (largest variance between the two groups; N. Otsu 1979, from
/// memory), in bins of 1/16 octave. The load counts as cycling where that explains 80 % of the variance and on is at least 1.5 times off plus 1 W.
/// A start needs the power to rise past the threshold by a tenth of the step between the levels, an end to fall past it by as much.
class LoadMeter {
public:
    /// Times between samples beyond `gap_limit_s` are gaps.
    explicit LoadMeter(double gap_limit_s) : gap_limit_s_(gap_limit_s) {}

    void take(std::span<const TraceSample> samples);
    [[nodiscard]] bool needs_second_pass();
    void take_again(std::span<const TraceSample> samples);
    /// Absent without two samples of power that are no gap apart.
    [[nodiscard]] std::optional<LoadStatistics> statistics() const;

private:
    static constexpr std::size_t parts_of_octave = 16, bins = parts_of_octave * 40;
    static std::size_t bin_of(double watts);
    void step(const TraceSample& before, std::size_t before_bin, const TraceSample& sample, std::size_t bin, double hours);
    void find_levels();
    void count(double hours, double watts);

    double gap_limit_s_;
    LoadStatistics sums_;
    std::optional<TraceSample> before_, again_before_;
    std::size_t before_bin_ = 0; ///< of before_
    std::array<double, bins> hours_in_{}, energy_in_{};
    bool register_falls_ = false, any_register_ = false;
    double register_wh_ = 0;
    std::optional<DutyCycle> cycle_;
    double step_w_ = 0;
    bool on_ = false;
    double on_h_ = 0, on_wh_ = 0, off_h_ = 0, off_wh_ = 0;
    long starts_ = 0;
};

} // namespace ullage
