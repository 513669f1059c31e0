// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/gauge_log.h"
#include "model/trace.h"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace ullage {

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
