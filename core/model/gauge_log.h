// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/trace.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace ullage {

/// A change of the gauge in a log, from one whole percent to another: the last sample before it and the first after it. Where the gauge flickers
/// between the two, the last sample before the flicker and the first after it.
struct GaugeStep {
    UtcMs from_ms = 0, to_ms = 0;
    double from_percent = 0, to_percent = 0; ///< as shown at the two
};

/// The gauge of a run as logs of the unit tell it: thousands of samples as their steps.
struct GaugeLog {
    std::vector<GaugeStep> steps; ///< in order of time, the first `GaugeThinner::most_steps`
    UtcMs first_ms = 0, last_ms = 0;
    double first_percent = 0, last_percent = 0;
    double resolution_pt = 1; ///< finest decimal place that it shows: 1, 0.1, 0.01 or 0.001 points
    long samples = 0;         ///< with a gauge that was believed
    long doubted = 0;         ///< above 100 %, or a drop-out: see GaugeThinner
    bool own_clock = true;    ///< written by another clock than the run's metered energy; else in the rows of the meter's own log
    bool calmed = false;      ///< it flickered by more than a step: medians were taken
    double offset_u_s = 0;    ///< standard uncertainty of the clock offset, where it was estimated

    /// What it showed at a moment within first_ms and last_ms; of one within a step what it showed before. Absent outside.
    [[nodiscard]] std::optional<double> shown_at(UtcMs time_ms) const;
};

/// The steps of a gauge, value by value. Part of GaugeThinner, which says what is doubted.
class GaugeStepper {
public:
    static constexpr std::size_t most_steps = 20'000;

    void take(UtcMs time_ms, double percent);
    /// Nothing may be taken after it. Absent without a believed sample.
    [[nodiscard]] std::optional<GaugeLog> finish();

private:
    struct Seen {
        UtcMs time_ms = 0;
        double percent = 0;
    };
    struct Leap {
        Seen first;
        UtcMs last_ms = 0;
        long count = 0;
    };
    void take(const Seen& seen);
    void begin(const Seen& seen);
    bool leaps(const Seen& seen);
    void accept_leap();
    void go_on(const Seen& seen);
    void add(const Seen& from, const Seen& to);
    void note_places(double percent);

    GaugeLog log_;
    bool any_ = false;
    long at_start_ = 0; ///< samples of the first value
    int cell_ = 0, decimals_ = 0;
    Seen last_;  ///< at cell_
    Seen other_; ///< last one beside it, while it flickers
    std::optional<int> beside_;
    Seen before_beside_;                ///< last one at cell_ before the flicker began
    std::optional<Seen> settled_since_; ///< first one beside it since it was last at cell_
    std::optional<Leap> leap_;
};

/// Keeps a GaugeLog of samples that come in a stream, in order of time; memory does not grow with them.
///
/// Values are told apart by whole percents (a fractional gauge at its halves). A step is settled when the gauge goes on to a third value, or has not
/// been back for five minutes and four times the length of the flicker. Doubted, not believed: a value above 100 or below 0 %; a leap of three
/// points or more that comes back, or neither lasts three samples and 30 s nor leaps on; a leap to 0 % from 2 % on unless the log stays
/// there for ten minutes, to its end. A cell without number is no sample. The figures are common practice, no source.
///
/// Of a gauge that flickers by more than a step, so that more than a twelfth of its steps turn back, the same is made of medians: of five minutes and
/// 61 samples at least.
class GaugeThinner {
public:
    static constexpr std::size_t most_steps = GaugeStepper::most_steps;

    void take(std::span<const TraceSample> samples);
    /// Nothing may be taken after it. Absent without a believed sample.
    [[nodiscard]] std::optional<GaugeLog> finish();

private:
    void take_for_median(UtcMs time_ms, double percent);
    void close_window();

    GaugeStepper as_shown_, of_medians_;
    std::vector<double> window_;
    UtcMs window_from_ms_ = 0, window_to_ms_ = 0;
    long in_range_ = 0, beyond_ = 0;
};
} // namespace ullage
