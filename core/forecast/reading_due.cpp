// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/reading_due.h"

#include "base/number.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace ullage {
namespace {

constexpr double most_min = 60.0 * 24 * 366; ///< longer intervals are none

bool sensible(const std::optional<double>& value, bool zero_too) {
    return value && std::isfinite(*value) && (zero_too ? *value >= 0 : *value > 0) && *value <= most_min;
}

UtcMs minutes(double count) { return static_cast<UtcMs>(std::llround(count * 60'000)); }

Message say_minutes(double count) { return say_digits(exact_text(std::round(count * 10) / 10)); }

ReadingDue by_gauge(const RunForecast& forecast, double drop_pt) {
    const Message drop = say_digits(exact_text(drop_pt));
    if (const auto time = gauge_drop_time(forecast, drop_pt))
        return {time->estimate_ms, DueBecause::gauge_drop, say(phrase("forecast", "the gauge should have fallen by %1 points"), drop)};
    if (!forecast.gauge_speed) return {{}, DueBecause::nothing, forecast.gauge_reason};
    if (drop_pt <= forecast.gauge_speed->shown_percent)
        return {{}, DueBecause::nothing, say(phrase("forecast", "the gauge falls so slowly that %1 points less may be more than a year away"), drop)};
    return {{}, DueBecause::nothing, say(phrase("forecast", "the gauge cannot fall by another %1 points"), drop)};
}

ReadingDue by_cut_off(const RunForecast& forecast, double before_min) {
    if (!forecast.cut_off) return {{}, DueBecause::nothing, forecast.cut_off_reason};
    const UtcMs due_ms = forecast.cut_off->lower_ms - minutes(before_min);
    if (due_ms <= *forecast.last_reading_ms)
        return {{}, DueBecause::nothing, say(phrase("forecast", "the reading before the forecast cut-off has been taken"))};
    return {due_ms, DueBecause::cut_off, say(phrase("forecast", "%1 min before the earliest cut-off forecast"), say_minutes(before_min))};
}

} // namespace

ReadingDue next_reading_due(const RunRecord& record, const RunForecast& forecast, const ReadingRule& rule) {
    if (record.run.end != RunEnd::still_running) return {{}, DueBecause::nothing, say(phrase("forecast", "the run has ended"))};
    if (!forecast.last_reading_ms) return {{}, DueBecause::nothing, say(phrase("forecast", "there are no readings yet"))};
    std::vector<ReadingDue> parts;
    if (sensible(rule.every_min, false))
        parts.push_back({*forecast.last_reading_ms + minutes(*rule.every_min), DueBecause::interval,
                         say(phrase("forecast", "%1 min after the last reading"), say_minutes(*rule.every_min))});
    if (sensible(rule.gauge_drop_pt, false)) parts.push_back(by_gauge(forecast, *rule.gauge_drop_pt));
    if (sensible(rule.before_cut_off_min, true)) parts.push_back(by_cut_off(forecast, *rule.before_cut_off_min));
    if (parts.empty()) return {{}, DueBecause::nothing, say(phrase("forecast", "no reminder is set"))};
    ReadingDue first = parts.front();
    for (const ReadingDue& part : parts)
        if (part.due_ms && (!first.due_ms || *part.due_ms < *first.due_ms)) first = part;
    return first;
}

std::optional<double> overdue_min(const ReadingDue& due, UtcMs now_ms) {
    if (!due.due_ms) return std::nullopt;
    return std::max(0.0, hours_between(*due.due_ms, now_ms) * 60);
}

} // namespace ullage
