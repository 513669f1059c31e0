// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "unit/drain_summary.h"

#include <optional>
#include <vector>

namespace ullage::test {

/// A full drain as a fit takes it, by one meter of ±1 %.
inline DrainSummary drain(double wh, double load_w = 100, std::optional<double> ambient_c = {}) {
    DrainSummary summary;
    summary.used = true;
    summary.delivered_wh = wh;
    summary.mean_load_w = load_w;
    summary.hours = wh / load_w;
    summary.independent_wh = 0.4;
    summary.meter_key = "meter";
    summary.gain_limit_percent = 1;
    summary.ambient_c = ambient_c;
    summary.title = "a drain";
    return summary;
}

/// Drains of a unit at 100 W, a day apart.
inline std::vector<DrainSummary> drains(const std::vector<double>& wh) {
    std::vector<DrainSummary> all;
    for (const double each : wh) {
        all.push_back(drain(each));
        all.back().start_ms = static_cast<UtcMs>(all.size()) * 86'400'000;
    }
    return all;
}

} // namespace ullage::test
