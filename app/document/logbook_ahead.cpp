// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/logbook_ahead.h"

#include "measure/method_settings.h"

#include <algorithm>
#include <chrono>
#include <functional>
#include <memory>
#include <utility>

namespace ullage {

namespace {

constexpr std::size_t most_readings = 2000; ///< of a unit; more are worked out by the window, which shows how far that is
constexpr std::chrono::milliseconds between_looks(10);

/// The unit with this uuid or with a run that has it; empty where there is none.
UnitId unit_of(const LogbookContent& content, const std::string& uuid) {
    for (const Unit& unit : content.units)
        if (unit.uuid.text() == uuid) return unit.uuid;
    const auto run = std::ranges::find(content.runs, uuid, [](const auto& each) { return each->run.uuid.text(); });
    return run == content.runs.end() ? UnitId() : (*run)->unit.uuid;
}

std::unique_ptr<Casebook> judge(const LogbookContent& content, const std::string& shown, const std::function<bool()>& goes_on) {
    auto casebook = std::make_unique<Casebook>();
    casebook->set_options(options_from(content.method));
    casebook->set_runs(content.runs);
    const auto fit = [&](const UnitId& unit, bool with_runs) {
        const bool much = casebook->readings_to_analyse({unit}, with_runs) > most_readings;
        if (!much && goes_on()) (void)casebook->fit(unit);
        return !much;
    };
    if (const UnitId unit = unit_of(content, shown); !unit.empty()) {
        if (fit(unit, true))
            for (const auto& run : casebook->runs_of(unit))
                if (goes_on()) (void)casebook->analysis(run->run.uuid);
    } else {
        for (const Unit& each : content.units) (void)fit(each.uuid, false);
    }
    return casebook;
}

} // namespace

Result<OpenedLogbook> open_judged(const QString& path, const Clock& clock, const std::string& shown, const std::function<bool()>& goes_on,
                                  const std::atomic<bool>* cancelled) {
    auto opened = open_logbook(path, clock, cancelled);
    if (opened) opened.value().judged = judge(opened.value().content, shown, goes_on);
    return opened;
}

LogbookAhead::LogbookAhead(QString path, const Clock& clock, std::string shown) : path_(std::move(path)) {
    opened_ = std::async(std::launch::async, [this, &clock, shown = std::move(shown)] {
        return open_judged(
            path_, clock, shown, [this] { return !wanted_ && !cancelled_; }, &cancelled_);
    });
}

LogbookAhead::~LogbookAhead() { cancelled_ = true; }

Result<OpenedLogbook> LogbookAhead::take(const std::atomic<bool>& cancelled) {
    wanted_ = true;
    while (opened_.wait_for(between_looks) != std::future_status::ready)
        if (cancelled) cancelled_ = true;
    return opened_.get();
}

} // namespace ullage
