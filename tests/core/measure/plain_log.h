// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/trace.h"
#include "support/record_builder.h"

#include <cmath>
#include <functional>
#include <optional>
#include <vector>

namespace ullage::test {

/// Samples of a load each `step_s` from `from_h` to `to_h`, with a register of 1 Wh from `start_wh` on.
struct PlainLog {
    std::function<double(double)> watts = [](double) { return 80.0; };
    double from_h = -0.05, to_h = 10.05, step_s = 5, start_wh = 300;
    bool with_register = true, with_power = true;

    [[nodiscard]] std::vector<TraceSample> samples() const {
        std::vector<TraceSample> all;
        double wh = start_wh;
        for (double s = std::round(from_h * 3600); s <= to_h * 3600; s += step_s) {
            const double now_w = s < 0 || s >= 36'000 ? 0.0 : watts(s / 3600);
            TraceSample sample;
            sample.time_ms = RecordBuilder::moment_ms(0) + std::llround(1000 * s);
            if (with_register) sample.register_wh = std::floor(wh + 1e-6);
            if (with_power) sample.power_w = now_w;
            all.push_back(sample);
            wh += now_w * step_s / 3600;
        }
        return all;
    }
};

/// A drain of 10 h at 80 W whose gauge is noted each hour.
inline RecordBuilder gauge_only() {
    RecordBuilder run;
    for (int h = 0; h <= 10; ++h) run.at(h, 100 - 10 * h, {}, h == 10 ? std::optional(MarkKind::cut_off) : std::nullopt);
    return run;
}

} // namespace ullage::test
