// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store: what the files that implement Logbook share.
#pragma once

#include "store/database.h"
#include "store/logbook.h"
#include "store/run_queries.h"
#include "store/run_traces.h"

#include <SQLiteCpp/Transaction.h>

#include <filesystem>
#include <string>
#include <utility>

namespace ullage {

struct Logbook::Impl {
    std::filesystem::path path;
    OpenMode mode;
    const Clock* clock;
    store::Connection connection;
    mutable store::RunTraces run_traces;

    [[nodiscard]] SQLite::Database& database() const { return connection.database(); }

    /// Runs a query, its exceptions becoming errors.
    template <class Action>
    auto read(Action action) const -> decltype(action()) {
        return store::guarded(path, std::move(action));
    }

    /// Runs a change as one durable transaction: a failure, returned or thrown, undoes all of it.
    template <class Action>
    auto change(Action action) const -> decltype(action()) {
        using Outcome = decltype(action());
        if (mode == OpenMode::look)
            return Outcome(Error{Failure::read_only, "the logbook is open for looking only", path.string(),
                                 "open it for recording first"});
        return store::guarded(path, [&]() -> Outcome {
            SQLite::Transaction transaction(database(), SQLite::TransactionBehavior::IMMEDIATE);
            Outcome outcome = action();
            if (outcome.ok()) transaction.commit();
            return outcome;
        });
    }

    /// The error for a uuid that the logbook does not hold; `kind` is "unit", "meter", "load list", "run", "reading" or "photo".
    [[nodiscard]] Error not_found(const std::string& kind) const {
        return {Failure::not_found, "the logbook has no such " + kind, path.string(),
                "it may have been chosen from another logbook"};
    }
    [[nodiscard]] Error damaged_block() const {
        return {Failure::damaged, "a block of samples cannot be read", path.string(), "restore the logbook from a copy"};
    }
    [[nodiscard]] Error known_already(const std::string& kind) const {
        return {Failure::refused, "the logbook has this " + kind + " already", path.string(),
                "nothing was added"};
    }
};

} // namespace ullage
