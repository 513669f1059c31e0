// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/simulator_tester.h"

#include <algorithm>

namespace ullage::test {

std::vector<PlannedReading> readings_to_take(const TesterSetup& tester, const SimulatedGauge& gauge, double end_hours, Random& random) {
    std::vector<PlannedReading> readings;
    if (!tester.plan.empty()) {
        for (const PlannedReading& planned : tester.plan)
            if (planned.hours > 0 && planned.hours < end_hours) readings.push_back(planned);
        std::stable_sort(readings.begin(), readings.end(), [](const PlannedReading& a, const PlannedReading& b) { return a.hours < b.hours; });
        return readings;
    }
    double hours = 0;
    while (true) {
        const bool closing = tester.closing_below_percent && gauge.exact_percent(hours) <= *tester.closing_below_percent;
        const double interval_h = closing ? tester.closing_interval_h : tester.interval_h;
        hours += interval_h * (1 + random.uniform(-tester.jitter, tester.jitter));
        if (hours >= end_hours) break;
        // All chances are drawn for every reading, so that a gap or a missing part moves no other reading.
        PlannedReading reading;
        reading.hours = hours;
        reading.meter_register = !random.chance(tester.without_register);
        reading.gauge = !random.chance(tester.without_gauge) || !reading.meter_register;
        reading.meter_w = random.chance(tester.with_meter_w);
        reading.display_w = random.chance(tester.with_display_w);
        const bool in_gap =
            std::any_of(tester.gaps.begin(), tester.gaps.end(), [hours](const Gap& gap) { return hours >= gap.from_hours && hours < gap.to_hours; });
        if (!in_gap) readings.push_back(reading);
    }
    return readings;
}

double last_reading_hours(const TesterSetup& tester, const SimulatedGauge& gauge, const Discharge& discharge) {
    const double off_hours = discharge.end_hours();
    switch (tester.end) {
    case RunEnd::cut_off_seen: return off_hours + tester.end_late_min / 60;
    case RunEnd::found_off: return off_hours + tester.found_after_h;
    case RunEnd::stopped_by_tester:
    case RunEnd::still_running: break;
    }
    double hours = off_hours;
    if (tester.stop_after_h) hours = std::min(hours, *tester.stop_after_h);
    if (tester.stop_at_percent) hours = std::min(hours, gauge.hours_at_percent(*tester.stop_at_percent));
    return hours;
}

} // namespace ullage::test
