// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "sources/live_session.h"

#include <QElapsedTimer>
#include <QObject>
#include <QString>
#include <QTimer>

#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

namespace ullage {

class Settings;

/// Reads the meters of running runs live: what comes goes into the run like the rows of a followed log. Which runs are read is kept in the settings,
/// so that reading goes on when the logbook is opened again; a source with a user is asked its password first. Reading a run ends with the run.
///
/// Document and settings must outlive this.
class LiveReader final : public QObject {
    Q_OBJECT
public:
    LiveReader(Document& document, Settings& settings, QObject* parent = nullptr, LiveClocks clocks = LiveClocks::of_machine());
    ~LiveReader() override;

    /// How the meter of a run is read; absent where no source is kept with it, or it cannot be understood.
    [[nodiscard]] std::optional<LiveSource> sourceOf(const RunId& run_uuid) const;
    /// Errors: no source; those of LiveTrace::begin().
    Result<void> start(const RunId& run_uuid, const QString& password = {});
    void stop(RunId run_uuid);
    [[nodiscard]] bool isReading(const RunId& run_uuid) const;
    /// Absent where the run is not read.
    [[nodiscard]] std::optional<LiveState> state(const RunId& run_uuid) const;
    /// The run was read when the program ended, and waits for the password of its source.
    [[nodiscard]] bool waitsForPassword(const RunId& run_uuid) const;
    /// All such runs.
    [[nodiscard]] const std::set<RunId>& waitingRuns() const { return waiting_; }

    /// What the samples of a run propose, without what was put aside.
    [[nodiscard]] std::vector<LiveEvent> proposals(const RunId& run_uuid) const;
    /// Records the mark; see reading_of().
    Result<void> accept(const RunId& run_uuid, const LiveEvent& event);
    /// Puts a proposal aside for good.
    void dismiss(const RunId& run_uuid, const LiveEvent& event);

signals:
    void changed(const RunId& runUuid); ///< value, state or proposals of the run
    /// Something has happened that calls somebody: `off` for a cut-off.
    void happened(const RunId& runUuid, const QString& sentence, bool off);
    void waits(const RunId& runUuid); ///< for the password of its source
    void error(const QString& sentence);

private:
    struct Reading;
    void resume();
    void forgetAll();
    void endRunsThatEnded();
    void beginLooking();
    void lookForEvents(const RunId& run_uuid); ///< in a logbook that another program records into
    void found(Reading& reading, const LiveEvent& event);
    void announce();
    void readProposals(const RunId& run_uuid) const;
    void keepRead(const RunId& run_uuid, bool read);
    [[nodiscard]] std::vector<RunId> keptRuns() const;

    Document& document_;
    Settings& settings_;
    LiveClocks clocks_;
    std::map<RunId, std::unique_ptr<Reading>> readings_;
    std::set<RunId> waiting_; ///< runs that wait for a password
    struct Looked {
        EventDetector detector;
        UtcMs up_to_ms; ///< the last sample that it has taken
    };
    std::map<RunId, Looked> looked_;                           ///< of a logbook that is open for looking
    mutable std::map<RunId, std::vector<LiveEvent>> proposed_; ///< as read from its samples and added to since
    QTimer timer_;
    QElapsedTimer since_announced_;
    qint64 pause_ms_ = 0;
};

} // namespace ullage
