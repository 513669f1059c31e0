// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/controller.h"
#include "window/desktop.h"

#include <QTimer>

#include <functional>
#include <memory>
#include <set>
#include <string>

namespace ullage {

class Awake;
class BenchDisplay;
class Reminders;

/// Running tests: their reminders, looked at every few seconds, and a machine that stays awake while one runs.
class BenchController final : public Controller {
    Q_OBJECT
public:
    BenchController(const Workplace& at, Reminders& reminders, const Desktop& desktop);
    ~BenchController() override;

    /// Looks which readings are overdue and whether a test runs; looked() tells.
    void look();
    void editRule(const RunId& run_uuid);
    /// Calls for the reading that calls, else for that of the run shown, in so many minutes; says so where there is none to put off.
    void snooze(int minutes);
    /// Shows the run whose reading is overdue, else that whose reading is due first.
    void enterDueReading();
    /// Where tests run, asks whether the program is to be left, with what stops and what remains, and calls `leave` when it is; false where none
    /// runs.
    bool askBeforeLeaving(int logs_followed, const std::function<void()>& leave);
    /// The running tests over the whole screen; leaving it returns to the page before.
    void showDisplay();

signals:
    /// These runs are overdue; the words say what is done to stay awake, and are empty where nothing is.
    void looked(const std::set<RunId>& overdueRuns, const QString& awakeWords);

private:
    Reminders& reminders_;
    Notifier* notifier_;
    BenchDisplay* display_ = nullptr; ///< made when it is first asked for
    std::unique_ptr<Awake> awake_;
    QTimer timer_;
};

} // namespace ullage
