// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/entry_mend.h"

#include "model/meter_gain.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr double goes_on_within = 2; ///< factor within which a load goes on as before

const ReadingValues* last_register(const RunRecord& record, UtcMs time_ms) {
    const ReadingValues* last = nullptr;
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn && reading.values.register_wh && reading.values.time_ms <= time_ms) last = &reading.values;
    return last;
}

bool doubts_register(const std::vector<Doubt>& doubts) {
    return std::ranges::any_of(doubts, [](const Doubt& doubt) { return doubt.part == DoubtedPart::register_value; });
}

} // namespace

std::optional<double> load_before_w(const RunRecord& record, UtcMs time_ms) {
    const ReadingValues *before = nullptr, *last = nullptr;
    for (const Reading& reading : record.readings) {
        const ReadingValues& values = reading.values;
        if (reading.withdrawn || values.time_ms > time_ms) continue;
        if (values.mark == MarkKind::meter_zeroed || values.mark == MarkKind::meter_swapped) before = last = nullptr;
        if (!values.register_wh) continue;
        before = last;
        last = &values;
    }
    if (before == nullptr || last == nullptr || last->time_ms <= before->time_ms) return std::nullopt;
    const double watts =
        typical_correction(record.meter) * (*last->register_wh - *before->register_wh) / hours_between(before->time_ms, last->time_ms);
    return watts > 0 ? std::optional(watts) : std::nullopt;
}

std::optional<ReadingValues> mended_entry(const RunRecord& record, const ReadingValues& values, const std::vector<Doubt>& doubts, UtcMs now_ms,
                                          const MeasureOptions& options) {
    const ReadingValues* last = last_register(record, values.time_ms);
    const std::optional<double> load_w = load_before_w(record, values.time_ms);
    if (!values.register_wh || !doubts_register(doubts) || last == nullptr || !load_w) return std::nullopt;
    const double hours = hours_between(last->time_ms, values.time_ms);
    if (hours <= 0) return std::nullopt;
    std::optional<ReadingValues> best;
    double nearest = std::log(goes_on_within);
    for (const double factor : {10.0, 0.1, 100.0, 0.01, 1000.0, 0.001}) {
        ReadingValues mended = values;
        // To the milliwatt hour: a decimal place moves, no new one comes of it.
        mended.register_wh = std::round(*values.register_wh * factor * 1000) / 1000;
        const double watts = typical_correction(record.meter) * (*mended.register_wh - *last->register_wh) / hours;
        const double off = watts > 0 ? std::abs(std::log(watts / *load_w)) : nearest + 1;
        if (off > nearest || doubts_register(entry_doubts(record, mended, now_ms, options))) continue;
        nearest = off;
        best = mended;
    }
    return best;
}

} // namespace ullage
