// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/clock.h"
#include "base/result.h"
#include "model/run_record.h"

#include <QString>

#include <atomic>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace ullage {

/// The runs of a logbook that is read beside the open one. What is shown is what the file said when it was read.
struct OtherLogbook {
    QString path;
    QString error; ///< why it could not be read; empty where it could
    std::vector<std::shared_ptr<const RunRecord>> runs;
    std::map<ReadingId, std::vector<ReadingVersion>> histories; ///< of readings with more than one version
};

/// Reads all runs of the logbook at `path`; the file is not changed. Errors: those of Logbook::open for looking, Logbook::run_records and history.
/// Gives up, with one of them, soon after `*cancelled` is set.
[[nodiscard]] Result<OtherLogbook> read_other_logbook(const QString& path, const Clock& clock, const std::atomic<bool>* cancelled = nullptr);

} // namespace ullage
