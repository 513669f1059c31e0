// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/clock.h"

#include <atomic>
#include <optional>

namespace ullage::test {

/// A clock that stands still until a test moves it. Starts at 2027-05-14T16:00:00Z.
class FakeClock final : public Clock {
public:
    explicit FakeClock(UtcMs now_ms = 1'810'310'400'000) : now_ms_(now_ms) {}

    [[nodiscard]] UtcMs now_ms() const override { return now_ms_; }
    void set_ms(UtcMs now_ms) { now_ms_ = now_ms; }
    void advance_ms(UtcMs step_ms) { now_ms_ += step_ms; }
    void advance_hours(double hours) { now_ms_ += static_cast<UtcMs>(hours * ms_per_hour); }

    /// From now on whatever is measured takes so long, for whoever looks at its beginning and at its end.
    void make_each_measurement_take_s(double seconds) { measured_s_ = seconds; }
    [[nodiscard]] double running_s() const override { return measured_s_ ? *measured_s_ * static_cast<double>(looks_++) : Clock::running_s(); }

private:
    UtcMs now_ms_;
    std::optional<double> measured_s_;
    mutable std::atomic<int> looks_ = 0;
};

} // namespace ullage::test
