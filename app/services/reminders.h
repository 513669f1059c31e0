// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "forecast/forecast.h"
#include "forecast/reading_due.h"

#include <QObject>
#include <QString>

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

class ForecastAhead;
class Notifier;
class Settings;

/// When the next reading of one run is due, seen from now.
struct DueState {
    ReadingDue due;                    ///< by the rule
    std::optional<UtcMs> at_ms;        ///< when to call: due, or the end of a snooze that is later
    bool asked = false;                ///< the run has a rule
    bool snoozed = false;              ///< at_ms is the end of a snooze
    std::optional<double> overdue_min; ///< above 0 once at_ms has passed; absent where nothing is due

    [[nodiscard]] bool overdue() const { return overdue_min.value_or(0) > 0; }
};

/// Watches the open runs of the document and calls for readings: each run has a rule; when its next reading falls due, it is
/// announced once. Rules and snoozes are kept in the settings by run. A snooze lasts for the moment it was given for: with the next reading, or
/// another rule, it lapses. Nothing is due before the first reading and after the end of a run.
///
/// Time is the document's clock; tick() is called by whoever owns a timer. Document, settings and notifier must outlive this.
class Reminders final : public QObject {
    Q_OBJECT
public:
    /// Null: nothing is announced outside the window.
    Reminders(const Document& document, Settings& settings, Notifier* notifier, QObject* parent = nullptr);

    /// Open runs in the order of their start (first reading, else creation): the order of Ctrl+1, Ctrl+2, …
    [[nodiscard]] std::vector<const RunRecord*> openRuns() const;
    /// The rule of a run; one without parts where none was given.
    [[nodiscard]] ReadingRule rule(const RunId& run_uuid) const;
    void setRule(const RunId& run_uuid, const ReadingRule& rule);
    /// Precondition: the run is in the document.
    [[nodiscard]] DueState state(const RunId& run_uuid) const;
    /// As of the run's last reading, so that a due moment stays where it is until the next one. Precondition: the run is in the document.
    [[nodiscard]] const RunForecast& forecast(const RunId& run_uuid) const;
    /// The run that is longest overdue; null where none is.
    [[nodiscard]] const RunRecord* mostOverdue() const;
    [[nodiscard]] int overdueCount() const;
    /// Calls again in so many minutes instead of now. False, and nothing is put off, where no reading is due until then.
    bool snooze(const RunId& run_uuid, int minutes);

public slots:
    /// Looks at the clock: announces what has fallen due since the last look, then emits looked().
    void tick();

signals:
    void fellDue(const RunId& runUuid); ///< once for each moment of each run
    void looked();                      ///< the present, a rule, a snooze or the runs have changed: show it anew

private:
    void forget();

    const Document& document_;
    Settings& settings_;
    Notifier* notifier_;
    ForecastAhead* ahead_;
    mutable std::map<RunId, RunForecast> forecasts_; ///< since the last change of the document
    std::map<RunId, UtcMs> announced_;               ///< the moment that was announced last
};

} // namespace ullage
