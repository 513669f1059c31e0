// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/controller.h"

#include <string>

namespace ullage {

class LogFollower;
class LogForm;
class Notifier;

/// Logs of meters: import into the run shown, following of those that grow, a run's load as an appliance.
class LogController final : public Controller {
    Q_OBJECT
public:
    /// Tells what goes wrong with a log that is followed, and the desktop too where one falls quiet. Without a notifier nobody is told there.
    LogController(const Workplace& at, LogFollower& follower, Notifier* notifier);

    void chooseLog(); ///< asks which
    /// Opens the form for a meter's log that goes into the run shown.
    void importLog(const QString& path);
    void followLog(const TraceId& trace_uuid);
    /// The load by the logs of a run as a new appliance of the list chosen.
    void addLogAppliance(const RunId& run_uuid);

private:
    void takeInLog(LogForm& form, const RunId& run_uuid);

    LogFollower& follower_;
};

} // namespace ullage
