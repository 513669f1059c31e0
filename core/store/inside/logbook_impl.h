// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store: what the files that implement Logbook share.
#pragma once

#include "store/inside/database.h"
#include "store/inside/import_index.h"
#include "store/inside/run_traces.h"
#include "store/logbook.h"
#include "store/queries/run_queries.h"

#include <SQLiteCpp/Transaction.h>

#include <chrono>
#include <filesystem>
#include <optional>
#include <span>
#include <string>
#include <utility>

namespace ullage {

/// When a change goes from the write-ahead log into the file itself.
enum class Settling {
    at_once,       ///< before the call returns, unless another program is just reading the file
    within_seconds ///< many small changes together: at the latest when the first is three seconds old and another comes, or by Logbook::settle()
};

struct Logbook::Impl {
    static constexpr auto batch_time = std::chrono::seconds(3);
    static constexpr int patience_ms = 60; ///< as long as a person hardly notices

    std::filesystem::path path;
    OpenMode mode;
    const Clock* clock;
    store::Connection connection;
    mutable store::RunTraces run_traces{};
    mutable std::optional<store::ImportIndex> import_index{}; ///< dropped by each change but an import
    bool together = false;                                    ///< changes are part of Logbook::all_or_none()
    bool together_failed = false;                             ///< one of them

    [[nodiscard]] SQLite::Database& database() const { return connection.database(); }

    /// Runs a query, its exceptions becoming errors.
    template <class Action>
    auto read(Action action) const -> decltype(action()) {
        return store::guarded(path, std::move(action));
    }

    /// Runs a change as one durable transaction: a failure, returned or thrown, undoes all of it. Refused where the file is no longer the one that
    /// was opened. Then the change goes into the file itself, `at_once` or with those of the next seconds.
    template <class Action>
    auto change(Action action, Settling settling = Settling::at_once) -> decltype(action()) {
        using Outcome = decltype(action());
        if (mode == OpenMode::read_only)
            return Outcome(Error{Failure::read_only, say(phrase("store", "the logbook is open for looking only")), path.string(),
                                 say(phrase("store", "open it for recording first"))});
        if (together) {
            import_index.reset();
            Outcome part = store::guarded(path, [&]() -> Outcome { return action(); });
            together_failed = together_failed || !part.ok();
            return part;
        }
        if (auto displaced = connection.displaced()) return Outcome(*displaced);
        Outcome outcome = store::guarded(path, [&]() -> Outcome {
            SQLite::Transaction transaction(database(), SQLite::TransactionBehavior::IMMEDIATE);
            import_index.reset();
            Outcome changed = action();
            if (changed.ok()) transaction.commit();
            return changed;
        });
        if (!outcome.ok()) return outcome;
        connection.note_commit();
        if (settling == Settling::at_once || connection.unsettled_for() > batch_time) {
            // The change is durable beside the file already; Logbook::settle() tells what keeps it from the file.
            [[maybe_unused]] const auto settled = settle();
        }
        return outcome;
    }

    /// See Logbook::settle().
    Result<bool> settle() {
        auto settled = store::guarded(path, [&]() -> Result<bool> { return connection.settle(patience_ms); });
        if (settled) return settled;
        const Error& fault = settled.error();
        const bool full = fault.failure == Failure::disk_full;
        return Error{fault.failure, full ? say(phrase("store", "the disk is full")) : say(phrase("store", "the disk reported a fault")),
                     path.string(),
                     say(full ? phrase("store", "what was recorded last is safe, but in `%1` beside the logbook; free some space")
                              : phrase("store", "what was recorded last is safe, but in `%1` beside the logbook; check the disk"),
                         path.filename().string() + "-wal")};
    }

    /// Brings records in as Logbook::import_together does. Each of `added`, place for place, has the same unit, meter and run, and the same readings
    /// or none; it gets what they are given.
    Result<void> bring_in(std::span<const RunRecord> records, std::span<RunRecord> added);
    /// One of them, within a transaction.
    Result<void> put_in(const RunRecord& record, RunRecord& added, store::ImportIndex& index);

    /// Gives `added` the known meter that agrees with `incoming`, else adds it as new: true then. Within a transaction.
    Result<bool> take_meter(const Meter& incoming, Meter& added, const store::ImportIndex& index, UtcMs now_ms);

    /// The error for a uuid that the logbook does not hold; `what` is "the logbook has no such unit" or the like.
    [[nodiscard]] Error not_found(const Phrase& what) const {
        return {Failure::not_found, say(what), path.string(), say(phrase("store", "it may have been chosen from another logbook"))};
    }
    [[nodiscard]] Error damaged_block() const {
        return {Failure::damaged, say(phrase("store", "a block of samples cannot be read")), path.string(),
                say(phrase("store", "restore the logbook from a copy"))};
    }
    /// `what` is "the logbook has this unit already" or the like.
    [[nodiscard]] Error known_already(const Phrase& what) const {
        return {Failure::refused, say(what), path.string(), say(phrase("store", "nothing was added"))};
    }
};

} // namespace ullage
