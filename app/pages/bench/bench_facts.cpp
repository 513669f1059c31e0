// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/bench/bench_facts.h"

#include "forecast/near_moment.h"
#include "pages/parts/due_figures.h"
#include "pages/parts/run_figures.h"
#include "pages/parts/run_head.h"
#include "services/reminders.h"
#include "style/numbers.h"
#include "style/words.h"

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr UtcMs minute_ms = 60'000;

/// First and last reading that stand; null before there is one.
std::pair<const Reading*, const Reading*> ends_of(const RunRecord& record) {
    const Reading *first = nullptr, *last = nullptr;
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn) continue;
        if (first == nullptr) first = &reading;
        last = &reading;
    }
    return {first, last};
}

void tell_times(BenchEntry& entry, const RunRecord& record, UtcMs now_ms) {
    const auto [first, last] = ends_of(record);
    if (first == nullptr) return;
    const auto lasted = [now_ms](const Reading& from) { return shown_duration(std::max(0.0, hours_between(from.values.time_ms, now_ms))); };
    entry.since = tr("since %1, %2").arg(text_of(near_moment_text(first->values.time_ms, now_ms, record.run.time_zone)), lasted(*first));
    entry.age = now_ms - last->values.time_ms < minute_ms ? tr("read just now") : tr("read %1 ago").arg(lasted(*last));
}

void tell_cut_off(BenchEntry& entry, const RunRecord& record, const RunForecast& forecast, UtcMs now_ms) {
    if (record.run.kind == RunKind::charge) return;
    entry.cut_off_label = tr("cut-off");
    if (!forecast.cut_off) {
        entry.cut_off_in = tr("not known");
        entry.cut_off_at = text_of(forecast.cut_off_reason);
        return;
    }
    const UtcMs as_of_ms = std::max(now_ms, forecast.as_of_ms);
    const ExpectedTime& range = *forecast.cut_off;
    entry.cut_off_in = text_of(expected_hours_text(range, as_of_ms));
    if (range.upper_ms < as_of_ms) {
        entry.cut_off_at = tr("since %1").arg(text_of(near_moment_text(range.upper_ms, as_of_ms, record.run.time_zone)));
        return;
    }
    entry.cut_off_label = tr("cut-off, %1").arg(text_of(say_forecast_account(forecast.account)));
    entry.cut_off_at = range.lower_ms < as_of_ms
                           ? tr("%1 at the latest").arg(text_of(near_moment_text(range.upper_ms, as_of_ms, record.run.time_zone)))
                           : text_of(expected_clock_text(range, as_of_ms, record.run.time_zone));
}

void tell_due(BenchEntry& entry, const RunRecord& record, const DueState& state, UtcMs now_ms) {
    entry.due = due_words(state, now_ms);
    entry.asked = state.asked;
    entry.counting = state.at_ms.has_value();
    entry.overdue = state.at_ms && *state.at_ms <= now_ms;
    if (!state.at_ms) return;
    entry.due_at = text_of(near_moment_text(*state.at_ms, now_ms, record.run.time_zone));
    const Reading* last = ends_of(record).second;
    if (last == nullptr || *state.at_ms <= last->values.time_ms) return;
    const auto whole_ms = static_cast<double>(*state.at_ms - last->values.time_ms);
    entry.due_share = std::clamp(static_cast<double>(*state.at_ms - now_ms) / whole_ms, 0.0, 1.0);
}

BenchEntry entry_of(const RunRecord& record, const Document& document, const Reminders& reminders, int number) {
    const auto& uuid = record.run.uuid;
    const UtcMs now_ms = document.clock().now_ms();
    const auto state = reminders.state(uuid);
    BenchEntry entry;
    entry.run_uuid = uuid;
    entry.number = number;
    entry.unit = text_of(record.unit.name);
    entry.about = run_about(record);
    entry.kind = text_of(say_run_kind(record.run.kind));
    if (number <= most_bench_keys) entry.keys = QStringLiteral("Ctrl+%1").arg(number);
    const auto& analysis = document.analysis(uuid);
    const RunForecast& forecast = reminders.forecast(uuid);
    const auto now = run_figures(record, analysis, now_ms);
    const auto ahead = run_figures(record, analysis, now_ms, {&forecast, due_figure(state, now_ms)});
    const auto copy = [&entry](const std::vector<StripFigure>& of, const char* key) {
        const auto found = std::ranges::find(of, QLatin1String(key), &StripFigure::key);
        if (found != of.end()) entry.figures.push_back(*found);
    };
    for (const char* key : {"elapsed", "age", "gauge", "delivered"}) copy(now, key);
    // A charge has no cut-off ahead: what it brings in its place.
    for (const char* key : {"cutOff", "peak", "due"}) copy(ahead, key);
    tell_times(entry, record, now_ms);
    tell_cut_off(entry, record, forecast, now_ms);
    tell_due(entry, record, state, now_ms);
    return entry;
}

} // namespace

const StripFigure& BenchEntry::figure(const char* key) const { return *std::ranges::find(figures, QLatin1String(key), &StripFigure::key); }

std::vector<BenchEntry> bench_entries(const Document& document, const Reminders& reminders) {
    std::vector<BenchEntry> entries;
    int number = 0;
    for (const RunRecord* record : reminders.openRuns()) entries.push_back(entry_of(*record, document, reminders, ++number));
    return entries;
}

} // namespace ullage
