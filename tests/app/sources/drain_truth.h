// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sources/live_session.h"

#include <QElapsedTimer>

#include <cmath>

namespace ullage::test {

/// A drain whose truth is known at every moment, sixty times as fast as the clock: a second of the test is a minute of the drain.
class DrainTruth {
public:
    static constexpr double speed = 60;
    static constexpr UtcMs begin_ms = 1'810'000'800'000;
    static constexpr double first_wh = 812;

    DrainTruth() { since_.start(); }
    /// Of another unit, at the same moments.
    [[nodiscard]] DrainTruth beside() const {
        DrainTruth other = *this;
        other.off_ms_ = -1;
        return other;
    }
    /// Of the machine's monotonic clock, when the drain began.
    [[nodiscard]] qint64 started_ms() const { return since_.msecsSinceReference(); }

    [[nodiscard]] std::int64_t now_ms() const { return static_cast<std::int64_t>(speed * static_cast<double>(since_.nsecsElapsed()) / 1e6); }
    /// From now on the output is off.
    void cut_off() { off_ms_ = now_ms(); }
    [[nodiscard]] std::int64_t off_ms() const { return off_ms_; }

    /// Power rises by 1 W in 10 s, or as stated, so that a sample that were noted to a wrong moment would be seen.
    [[nodiscard]] double power_w(std::int64_t at_ms) const { return is_off(at_ms) ? 0 : 400 + rise_w_per_s * static_cast<double>(at_ms) / 1000; }
    [[nodiscard]] double power_w() const { return power_w(now_ms()); }
    [[nodiscard]] double register_wh(std::int64_t at_ms) const {
        const double s = static_cast<double>(is_off(at_ms) ? off_ms_ : at_ms) / 1000;
        return first_wh + (400 * s + rise_w_per_s * s * s / 2) / 3600;
    }
    /// As a meter of 0.1 Wh shows it.
    [[nodiscard]] double register_wh() const { return std::floor(10 * register_wh(now_ms())) / 10; }

    [[nodiscard]] LiveClocks clocks() const {
        return {[this] { return begin_ms + now_ms() + clock_step_ms; }, [this] { return now_ms(); }};
    }
    double rise_w_per_s = 0.1;
    UtcMs clock_step_ms = 0; ///< how far the machine's clock has been set

private:
    [[nodiscard]] bool is_off(std::int64_t at_ms) const { return off_ms_ >= 0 && at_ms >= off_ms_; }

    QElapsedTimer since_;
    std::int64_t off_ms_ = -1;
};

} // namespace ullage::test
