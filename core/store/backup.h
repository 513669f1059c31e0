// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/clock.h"
#include "base/result.h"

#include <atomic>
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// Where the automatic copies of a logbook lie, and for how long.
struct BackupPlace {
    std::filesystem::path folder{}; ///< empty: beside the logbook
    int days_kept = 30;             ///< at least 1; the newest copy stays however old it is
};

/// A copy that back_up() made of one logbook: NAME.2026-11-28.ullage-copy beside it; in another folder NAME.TAG.2026-11-28.ullage-copy, where the
/// tag of six letters tells logbooks of one name in different folders apart.
struct BackupCopy {
    std::filesystem::path path;
    std::string day; ///< of the machine's zone, as 2026-11-28
    std::int64_t size_bytes = 0;
    std::int64_t state_ns = 0; ///< when the logbook was written to last before it was copied, UTC since 1970
};

/// The copies of a logbook at this place, the newest first, known by their names. Empty where the folder cannot be read.
[[nodiscard]] std::vector<BackupCopy> backup_copies(const std::filesystem::path& logbook, const BackupPlace& place);

/// What asks whether a copy is due.
enum class BackupMoment {
    opened_or_closed, ///< the file differs from its newest copy
    while_open        ///< the same, and the newest copy is of an earlier day
};

/// Whether a copy should be made now. Looks at names and times alone; false where the logbook is not there.
[[nodiscard]] bool backup_due(const std::filesystem::path& logbook, const BackupPlace& place, UtcMs now_ms, BackupMoment moment);

/// What back_up() has done.
struct BackupOutcome {
    std::optional<std::filesystem::path> copy{}; ///< absent where the logbook holds nothing yet
    std::size_t removed = 0;                     ///< older copies that were past their days
};

/// Copies a logbook as it stands on the disk, recorded into or not, into the copy of today, in place of an earlier one of the same day. The copy is
/// whole or absent: it is made beside its name, opened and checked from end to end, and only then given it. Then copies of this logbook that are
/// older than `days_kept` go, but for the newest; one that holds another logbook stays, whatever it is called. Any thread; the logbook is only read,
/// and who records into it is not kept waiting.
///
/// Errors: those of Logbook::open for looking; no such folder, or none that may be written to (io, read_only); disk_full; refused (a file of that
/// name is no copy of this logbook; `*cancelled` was set).
[[nodiscard]] Result<BackupOutcome> back_up(const std::filesystem::path& logbook, const BackupPlace& place, const Clock& clock,
                                            const std::atomic<bool>* cancelled = nullptr);

} // namespace ullage
