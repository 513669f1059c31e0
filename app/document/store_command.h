// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/logbook.h"

#include <QString>
#include <QUndoCommand>

#include <functional>
#include <string>
#include <vector>

namespace ullage {

/// What a command changed, and so what has to be read anew and announced.
struct Change {
    bool units = false;
    bool meters = false;
    bool pv_sheets = false;
    bool load_lists = false;
    bool method = false;
    bool publisher = false;
    bool runs = false;
    std::vector<UnitId> units_of_runs; ///< the units whose runs changed with `runs`; none stands for all
    std::vector<RunId> readings;       ///< the runs whose readings changed
    ReadingId reading;                 ///< the one that changed, where `readings` names one run and no other of it changed
    MeterId meter;                     ///< the one whose data changed, with `meters`: many runs may rest on it
    std::vector<RunId> photos;         ///< the runs whose photos changed
};

/// What a command needs of the document that owns it.
class CommandHost {
public:
    virtual ~CommandHost() = default;
    /// The open logbook. Precondition: one is open, which holds while commands stand on the stack.
    [[nodiscard]] virtual Logbook& logbook() = 0;
    /// The store has taken the change: read it anew and announce it.
    virtual void applied(const Change& change) = 0;
    /// The store has refused an undo (`forward` false) or redo: say so. With `try_again` (a full disk, say) put the stack
    /// back; else the command leaves the stack by itself, its change standing as it stood.
    virtual void refused(const Error& error, bool forward, bool try_again) = 0;
};

/// One step of the store that can be taken back. Made after its first application, so that a refused command never reaches
/// the stack; the redo that QUndoStack::push calls finds it done and does nothing.
class StoreCommand final : public QUndoCommand {
public:
    using Step = std::function<Result<void>(Logbook&)>;

    StoreCommand(CommandHost& host, const QString& text, Change change, Step apply, Step revert);

    void redo() override;
    void undo() override;

private:
    void take(const Step& step, bool forward);

    CommandHost& host_;
    Change change_;
    Step apply_, revert_;
    bool done_ = true; ///< what the store holds, which differs from the stack's belief after a refusal
};

} // namespace ullage
