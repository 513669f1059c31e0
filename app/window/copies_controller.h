// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/logbook_copies.h"
#include "window/controller.h"

namespace ullage {

class BackupKeeper;

/// The automatic copies of logbooks: that they are made, and what becomes of one that is wanted.
class CopiesController final : public Controller {
    Q_OBJECT
public:
    /// With `keep` the open logbook is copied as the settings say.
    CopiesController(const Workplace& at, bool keep);

    /// Shows the copies of the open logbook, or of one that is asked for; the one that is chosen is saved as a logbook and opened.
    void chooseCopy();
    /// Null where no copies are made.
    [[nodiscard]] BackupKeeper* keeper() const { return keeper_; }

signals:
    void openAsked(const QString& path); ///< a copy was saved as this logbook

private:
    void showCopies(const QString& logbook);
    void saveAsLogbook(const QString& copy, const QString& suggested);
    [[nodiscard]] QString factsOf(const BackupCopy& copy);

    BackupKeeper* keeper_ = nullptr;
};

} // namespace ullage
