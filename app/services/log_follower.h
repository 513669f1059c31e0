// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"

#include <QElapsedTimer>
#include <QObject>
#include <QString>
#include <QTimer>

#include <map>
#include <optional>
#include <string>

namespace ullage {

class Settings;

/// Follows logs that other programs are still writing: looks at each once a second, so that their runs stand as they are without anybody's doing.
/// Which file belongs to which log is kept in the settings; following goes on when the logbook is opened again, with what was written meanwhile.
///
/// Following ends by itself, in words, where a log cannot be read on; in silence with the withdrawal of its log, or when the run has ended and its
/// log is quiet. A file that is not there, or cannot be read for the moment, is waited for.
///
/// The document announces growth at most once a second, and rarer where that takes long. Document and settings must outlive this.
class LogFollower final : public QObject {
    Q_OBJECT
public:
    LogFollower(Document& document, Settings& settings, QObject* parent = nullptr);
    ~LogFollower() override;

    /// Follows a file as the log of this trace from now on, and takes all that it has at once. Reading what is known of it first takes about a second
    /// for a hundred megabytes. Errors: those of LogFollow::begin() and look(), which leave it unfollowed.
    Result<void> follow(const Trace& trace, const QString& path);
    void stop(TraceId trace_uuid); ///< by value, as what is stopped may hold the caller's

    struct State {
        QString path;
        QString error;      ///< why nothing can be read at present; empty when all is well
        bool quiet = false; ///< nothing has come for ten usual intervals, at least a minute
        UtcMs grown_ms = 0; ///< when something came last, or following began
    };
    /// Absent where the log is not followed.
    [[nodiscard]] std::optional<State> state(const TraceId& trace_uuid) const;

    [[nodiscard]] int count() const; ///< how many logs are followed

public slots:
    void tick(); ///< looks at every log; called by a timer of its own

signals:
    void changed(const RunId& run_uuid);                            ///< a log of the run is followed from now on, no longer, in error, or quiet
    void error(const QString& sentence);                            ///< a log can no longer be followed
    void fellQuiet(const RunId& run_uuid, const QString& sentence); ///< of a run that goes on, once each time

private:
    struct Followed;

    void resume();
    void forgetAll();
    void dropWithdrawn(const RunId& run_uuid);
    void lookAt(Followed& log);
    void end(const Followed& log, const Error& error);
    void judgeQuiet(Followed& log);
    void announce();
    void keepPath(const TraceId& trace_uuid, const QString& path); ///< empty: no longer

    Document& document_;
    Settings& settings_;
    std::map<TraceId, Followed> logs_;
    QTimer timer_;
    QElapsedTimer since_announced_;
    qint64 pause_ms_ = 0; ///< between announcements
    bool looking_ = false;
};

} // namespace ullage
