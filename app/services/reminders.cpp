// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/reminders.h"

#include "services/forecast_ahead.h"
#include "services/notifier.h"
#include "services/reading_rules.h"
#include "services/settings.h"
#include "style/words.h"

#include <QStringList>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr UtcMs minute_ms = 60'000;

QString rule_key(const RunId& run_uuid) { return QStringLiteral("rule/%1").arg(raw_text(run_uuid)); }
QString snooze_key(const RunId& run_uuid) { return QStringLiteral("snooze/%1").arg(raw_text(run_uuid)); }

UtcMs start_of(const RunRecord& record) {
    for (const auto& reading : record.readings)
        if (!reading.withdrawn) return reading.values.time_ms;
    return record.run.created_ms;
}

QString sentence(const std::string& clause) {
    auto text = text_of(clause);
    if (!text.isEmpty()) text[0] = text[0].toUpper();
    return text;
}

} // namespace

Reminders::Reminders(const Document& document, Settings& settings, Notifier* notifier, QObject* parent)
    : QObject(parent), document_(document), settings_(settings), notifier_(notifier), ahead_(new ForecastAhead(this)) {
    connect(ahead_, &ForecastAhead::done, this, &Reminders::forget);
    for (auto signal : {&Document::opened, &Document::closed, &Document::unitsChanged, &Document::metersChanged, &Document::runsChanged})
        connect(&document_, signal, this, &Reminders::forget);
    connect(&document_, &Document::readingsChanged, this, &Reminders::forget);
    connect(&document_, &Document::closed, this, [this] { announced_.clear(); });
}

void Reminders::forget() {
    forecasts_.clear();
    emit looked();
}

std::vector<const RunRecord*> Reminders::openRuns() const {
    auto open = document_.runs();
    std::erase_if(open, [](const RunRecord* record) { return record->run.end != RunEnd::still_running; });
    std::ranges::stable_sort(open, {}, [](const RunRecord* record) { return std::pair(start_of(*record), record->run.created_ms); });
    return open;
}

ReadingRule Reminders::rule(const RunId& run_uuid) const { return rule_from_kept(settings_.remembered(rule_key(run_uuid))); }

void Reminders::setRule(const RunId& run_uuid, const ReadingRule& rule) {
    settings_.remember(rule_key(run_uuid), kept_rule(rule));
    tick();
}

const RunForecast& Reminders::forecast(const RunId& run_uuid) const {
    if (const auto kept = forecasts_.find(run_uuid); kept != forecasts_.end()) return kept->second;
    // How drains repeat is asked of all units. Of a large logbook that has just been opened this takes longer than the window may wait.
    if (document_.readingsToAnalyse({}, false) > Document::most_analysed_at_once) {
        static const RunForecast not_yet;
        ahead_->start(document_.casebook(), run_uuid);
        return not_yet;
    }
    return forecasts_.emplace(run_uuid, *document_.casebook().forecast_at_last_reading(run_uuid)).first->second;
}

DueState Reminders::state(const RunId& run_uuid) const {
    const auto& record = *document_.run(run_uuid);
    DueState state;
    const auto wanted = rule(run_uuid);
    state.asked = !(wanted == ReadingRule());
    // Without a rule the forecast, which may be costly, is not asked.
    state.due = state.asked ? next_reading_due(record, forecast(run_uuid), wanted) : next_reading_due(record, RunForecast(), wanted);
    state.at_ms = state.due.due_ms;
    if (!state.at_ms) return state;
    const auto snooze = settings_.remembered(snooze_key(run_uuid)).split(QLatin1Char(';'));
    if (snooze.size() == 2 && snooze[1].toLongLong() == *state.due.due_ms && snooze[0].toLongLong() > *state.at_ms) {
        state.at_ms = snooze[0].toLongLong();
        state.snoozed = true;
    }
    auto moment = state.due;
    moment.due_ms = state.at_ms;
    state.overdue_min = overdue_min(moment, document_.clock().now_ms());
    return state;
}

const RunRecord* Reminders::mostOverdue() const {
    const RunRecord* most = nullptr;
    double most_min = 0;
    for (const auto* record : openRuns()) {
        const double overdue = state(record->run.uuid).overdue_min.value_or(0);
        if (overdue <= most_min) continue;
        most = record;
        most_min = overdue;
    }
    return most;
}

int Reminders::overdueCount() const {
    return static_cast<int>(std::ranges::count_if(openRuns(), [this](const RunRecord* record) { return state(record->run.uuid).overdue(); }));
}

bool Reminders::snooze(const RunId& run_uuid, int minutes) {
    if (document_.run(run_uuid) == nullptr) return false;
    const auto due = state(run_uuid).due.due_ms;
    const UtcMs until_ms = document_.clock().now_ms() + minutes * minute_ms;
    if (!due || *due >= until_ms) return false;
    settings_.remember(snooze_key(run_uuid), QStringLiteral("%1;%2").arg(until_ms).arg(*due));
    tick();
    return true;
}

void Reminders::tick() {
    for (const auto* record : openRuns()) {
        const auto& uuid = record->run.uuid;
        const auto now = state(uuid);
        if (!now.overdue()) continue;
        if (const auto last = announced_.find(uuid); last != announced_.end() && last->second == *now.at_ms) continue;
        announced_[uuid] = *now.at_ms;
        if (notifier_ && settings_.reminderOnDesktop()) {
            notifier_->notify(tr("%1: a reading is due").arg(text_of(record->unit.name)),
                              (now.snoozed ? tr("You asked to be called again") : sentence(now.due.why)) + QLatin1Char('.'),
                              settings_.reminderSound() ? Notifier::Sound::call : Notifier::Sound::none);
        }
        emit fellDue(uuid);
    }
    emit looked();
}

} // namespace ullage
