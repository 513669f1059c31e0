// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casebook/casebook.h"
#include "document/document.h"
#include "document/logbook_content.h"
#include "document/store_command.h"
#include "formats/files/replacing.h"

#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <utility>
#include <vector>

namespace ullage {

/// What a step is called behind Undo ("add unit Osk 1200") and what is said once it is done ("Added unit Osk 1200").
struct StepWords {
    QString step, done;
};

/// The open file and its content as last read.
struct Document::State final : CommandHost {
    State(Document& document_, const Clock& clock_) : document(document_), clock(clock_) {}

    [[nodiscard]] Logbook& logbook() override { return *book; }
    void applied(const Change& change) override;
    void refused(const Error& error, bool forward, bool try_again) override;

    /// Takes over an opened file with all its content.
    void takeOver(OpenedLogbook opened);
    /// Puts a command that the store has just taken on the stack and announces it.
    void push(const StepWords& words, const Change& change, StoreCommand::Step apply, StoreCommand::Step revert);
    /// The error of a command without a logbook.
    [[nodiscard]] static Error nothingOpen();
    [[nodiscard]] static Error noSuch(const Phrase& what);
    /// What an altered run, or the runs that use an altered unit or meter, bring with them.
    [[nodiscard]] Change changeOfRuns(const std::function<bool(const RunRecord&)>& uses) const;
    struct ReadingPlace {
        const RunRecord* record = nullptr; ///< null where no run has it
        const Reading* reading = nullptr;
    };
    [[nodiscard]] ReadingPlace placeOfReading(const ReadingId& uuid) const;

    Result<void> readUnits();
    Result<void> readMeters();
    Result<void> readPvSheets();
    Result<void> readLoadLists();
    Result<void> readMethod();
    Result<void> readPublisher();
    /// Reads the runs of these units anew, of all where there are none. The logs of those in `changed` may be others too.
    Result<void> readRuns(const std::vector<UnitId>& unit_uuids, const std::set<RunId>& changed = {});
    /// Puts what `meters` says of this one into the runs that use it. They may be many, and nothing else of them has to be read.
    void putMeter(const MeterId& uuid);
    /// Reads a run anew, or of it this reading alone.
    Result<void> readRun(const RunId& run_uuid, const ReadingId& reading_uuid);
    /// Puts these units' runs in the place of those known. `units` is up to date already.
    void putRuns(const std::map<UnitId, SharedRuns>& fresh, const std::set<RunId>& changed_logs = {});
    /// Takes over what an import in another thread has read of units and meters and of the runs of some units, says why where it could not, and
    /// announces the change.
    void takeImported(const Result<void>& outcome, LogbookContent fresh, const std::map<UnitId, SharedRuns>& runs, const Change& change);
    /// The units that have runs among these which are not known yet, or are named.
    [[nodiscard]] std::vector<UnitId> unitsOfNewRuns(const SharedRuns& fresh, const std::set<RunId>& named) const;
    /// Takes over all runs; those that are as they were stay the same objects, but for these, whose logs have changed.
    void keepRuns(SharedRuns read, const std::set<RunId>& changed_logs = {});
    void announceChanges(const Change& change, bool runs);
    void announce(const Change& change, bool runs);

    Document& document;
    const Clock& clock;
    std::optional<Logbook> book;
    HeldFile held;              ///< keeps exports off the open file
    std::filesystem::path path; ///< of the book, also while it is lent
    std::vector<Unit> units;
    std::vector<Meter> meters;
    std::vector<PvSheet> pv_sheets;
    std::vector<LoadList> load_lists;
    Publisher publisher;
    std::map<std::string, double> method;                             ///< what the logbook states of it, by key
    SharedRuns records;                                               ///< in the order of Document::runs()
    std::map<RunId, std::size_t> record_at;                           ///< its place in `records`
    std::map<UnitId, std::pair<std::size_t, std::size_t>> records_of; ///< its first place in `records` and how many
    Casebook casebook{[this](const ReadingId& reading_uuid) { return document.history(reading_uuid); }}; ///< what `records` say
    bool importing = false;
    bool displaced_told = false;
    std::string unsettled_told;           ///< what kept the last entries from the file, so that it is said once
    bool lent = false;                    ///< the logbook is with another thread, and `book` is empty
    std::map<RunId, QString> late_drafts; ///< drafts to be kept when it is back
    /// While it lives the logbook is out of everybody's reach but its holder's, who may be another thread.
    struct Lending {
        explicit Lending(State& state_) : state(state_), book(std::exchange(state_.book, std::nullopt)) { state.lent = state.importing = true; }
        ~Lending() {
            state.book = std::move(book);
            state.lent = state.importing = false;
        }
        Lending(const Lending&) = delete;
        Lending& operator=(const Lending&) = delete;

        State& state;
        std::optional<Logbook> book;
    };
    void keepLateDrafts();
    enum class PutBack { nothing, undo, redo } put_back = PutBack::nothing;
};

} // namespace ullage
