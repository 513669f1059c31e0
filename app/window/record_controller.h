// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/controller.h"

#include <optional>
#include <string>

namespace ullage {

class EndForm;
class Reminders;

/// What the logbook holds: units, meters, runs and PV sheets are added, edited and withdrawn, runs started, ended and opened again.
class RecordController final : public Controller {
    Q_OBJECT
public:
    /// A new run gets its rule for the next reading there.
    RecordController(const Workplace& at, Reminders& reminders) : Controller(at), reminders_(reminders) {}

    void addUnit();
    void editUnit(); ///< that which is shown
    void editClaims(const UnitId& unit_uuid);
    void withdrawUnit();
    void addMeter();
    void editMeter(); ///< that which is shown
    void editMethod();
    void withdrawMeter();
    void startRun();
    void editRun(); ///< that which is shown
    /// Opens the form that ends the run shown, with `end` chosen where it is given.
    void endRun(std::optional<RunEnd> end = {});
    void reopenRun();
    void withdrawRun();
    void addPvSheet();
    void withdrawPvSheet();

private:
    /// What speaks against starting this run now, a clause each.
    [[nodiscard]] QStringList startDoubts(const Run& run) const;
    void finishRun(EndForm& form);
    [[nodiscard]] RunRecord asEnded(const RunId& run_uuid, const Run& run, const std::optional<ReadingValues>& last) const;

    Reminders& reminders_;
};

} // namespace ullage
