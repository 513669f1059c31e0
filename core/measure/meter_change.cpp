// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/meter_change.h"

#include "base/instant.h"
#include "base/number.h"
#include "measure/energy_analysis.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

constexpr double shown_percent = 0.005; ///< less is not seen in two decimals

/// The run with other data of its meter of that uuid; false where it names none such.
bool put_meter(const Meter& meter, RunRecord& record) {
    bool named = false;
    for (auto* place : {&record.meter, &record.second_meter})
        if (*place && (*place)->uuid == meter.uuid) {
            *place = meter;
            named = true;
        }
    return named;
}

bool same_interval(const std::optional<double>& a, const std::optional<double>& b) {
    if (!a || !b) return a.has_value() == b.has_value();
    return std::abs(*a - *b) <= 1e-3 * std::max(*a, *b);
}

Message say_moved(double percent) { return say_digits((percent < 0 ? "−" : "+") + fixed_text(std::abs(percent), 2) + " %"); }

Message sentence_of(const MeterChange& change) {
    if (change.runs == 0) return say(phrase("measure", "No run uses this meter yet."));
    const bool moved = std::max(std::abs(change.lowest_percent), std::abs(change.highest_percent)) >= shown_percent;
    if (!moved)
        return say_count(change.runs,
                         change.intervals_moved
                             ? phrases("measure", "%n runs use this meter; their delivered energy did not move, but their intervals changed.",
                                       "%n run uses this meter; its delivered energy did not move, but its interval changed.")
                             : phrases("measure", "%n runs use this meter; their delivered energy did not move.",
                                       "%n run uses this meter; its delivered energy did not move."));
    const Message low = say_moved(change.lowest_percent), high = say_moved(change.highest_percent);
    return say_count(change.runs,
                     change.intervals_moved
                         ? phrases("measure", "%n runs use this meter; their delivered energy moved by %1, and their intervals changed.",
                                   "%n run uses this meter; its delivered energy moved by %1, and its interval changed.")
                         : phrases("measure", "%n runs use this meter; their delivered energy moved by %1.",
                                   "%n run uses this meter; its delivered energy moved by %1."),
                     low == high ? low : say(phrase("measure", "%1 to %2"), low, high));
}

} // namespace

MeterChange meter_change(const UnitRuns& records, const Meter& before, const Meter& after, const MeasureOptions& options) {
    MeterChange change;
    for (const RunRecord* record : records) {
        if (record->run.meter_uuid != after.uuid && record->run.second_meter_uuid != after.uuid) continue;
        RunRecord was = *record, is = *record;
        if (!put_meter(before, was) || !put_meter(after, is)) continue;
        const EnergyAnalysis then = analyse_energy(was, options), now = analyse_energy(is, options);
        if (!then.track.usable() || !now.track.usable() || then.track.total_wh() <= 0) continue;
        const double percent = 100 * (now.track.total_wh() / then.track.total_wh() - 1);
        change.lowest_percent = change.runs == 0 ? percent : std::min(change.lowest_percent, percent);
        change.highest_percent = change.runs == 0 ? percent : std::max(change.highest_percent, percent);
        change.intervals_moved = change.intervals_moved || !same_interval(then.budget.half_width_wh, now.budget.half_width_wh);
        ++change.runs;
    }
    change.sentence = sentence_of(change);
    return change;
}

} // namespace ullage
