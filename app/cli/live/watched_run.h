// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "live/live_trace.h"
#include "model/run_record.h"
#include "sources/live_session.h"

#include <memory>
#include <optional>
#include <string>

namespace ullage {

/// One run that is watched, with what it reads. The logbook must outlive it.
struct WatchedRun {
    RunRecord record;
    LiveSource source;
    std::optional<LiveTrace> live; ///< absent in a trial
    std::unique_ptr<LiveSession> session;
    bool off = false;
    std::string ended; ///< why it ended by itself

    [[nodiscard]] std::string name() const;
};

/// Makes a session that records into the run and goes on with the events of what the run has. Errors: those of LiveTrace::begin(), and of reading.
[[nodiscard]] Result<std::unique_ptr<WatchedRun>> watch_run(Logbook& logbook, const RunRecord& record, const LiveSource& source,
                                                            const QString& password, const LiveClocks& clocks);
/// A session that records nothing.
[[nodiscard]] std::unique_ptr<WatchedRun> try_run(const RunRecord& record, const LiveSource& source, const QString& password,
                                                  const LiveClocks& clocks);

/// "430.2 W, 812.4 Wh": what a sample says.
[[nodiscard]] Message say_sample(const TraceSample& sample);
/// How a watched run stands, in one line.
[[nodiscard]] Message state_line(const WatchedRun& run);

} // namespace ullage
