// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "pages/parts/strip_figure.h"
#include "pages/parts/tested_outcome.h"
#include "pages/run/charted_run.h"
#include "pages/run/findings_items.h"

#include <QString>
#include <QStringList>

#include <optional>
#include <string>
#include <vector>

namespace ullage {

class Reminders;

/// A reading that is to be amended.
struct ReadingToAmend {
    ReadingId uuid;
    ReadingValues values; ///< as they stand
    QStringList history;  ///< a line a version; where it cannot be read, one that says why
    std::string time_zone;
    bool two_meters = false; ///< the run names a second one
};

/// Turns what the logbook says of one run into what the run page shows, and what is chosen there into commands to the logbook. Knows no
/// widget. What it returns is as of now: it keeps nothing but which run it is.
class RunPresenter {
public:
    /// Both must outlive it. Without reminders the strip counts down to nothing.
    explicit RunPresenter(Document& document, const Reminders* reminders = nullptr) : document_(document), reminders_(reminders) {}

    void setRun(RunId run_uuid) { run_uuid_ = std::move(run_uuid); }
    [[nodiscard]] const RunId& runUuid() const { return run_uuid_; }
    [[nodiscard]] const RunRecord* record() const; ///< null where the logbook has no such run

    // What is shown. Precondition of each: record() is not null.
    /// The strip of figures as of now.
    [[nodiscard]] std::vector<StripFigure> figures() const;
    [[nodiscard]] TestedOutcome tested() const;
    /// The drain told twice, see two_accounts(); not told for another run.
    [[nodiscard]] const TwoAccounts& accounts() const;
    /// See finding_items(); where the energy went is told once the run has ended.
    [[nodiscard]] std::vector<FindingItem> findings() const;

    /// What the charts are drawn from; without a run where record() is null.
    [[nodiscard]] ChartedRun charted() const;
    /// Of a reading of the run; absent where it has no such reading.
    [[nodiscard]] std::optional<ReadingToAmend> toAmend(const ReadingId& reading_uuid) const;
    /// The reading that was entered last and stands; empty where there is none.
    [[nodiscard]] ReadingId lastEntered() const;

    // Commands to the logbook, which can be undone; what it refuses comes back as its error.
    Result<void> amend(const ReadingId& reading_uuid, const ReadingValues& values, const QString& reason);
    /// Withdraws these, up to the first that is refused.
    Result<void> withdraw(const std::vector<ReadingId>& reading_uuids);
    /// Writes into the reading what the analysis has assumed of its register, see accept_register_correction();
    /// nothing where it has assumed nothing.
    Result<void> acceptAssumption(const ReadingId& reading_uuid);

private:
    Document& document_;
    const Reminders* reminders_;
    RunId run_uuid_;
};

} // namespace ullage
