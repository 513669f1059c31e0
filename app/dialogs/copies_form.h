// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "document/logbook_copies.h"

#include <functional>
#include <map>
#include <vector>

class QListWidget;

namespace ullage {

/// The automatic copies of a logbook, the newest first; the one that is chosen says what it holds.
class CopiesForm final : public FormDialog {
    Q_OBJECT
public:
    /// What a copy holds, in words; asked once for each that is looked at.
    using Facts = std::function<QString(const BackupCopy&)>;

    /// `logbook`: its name. Precondition: there are copies.
    CopiesForm(std::vector<BackupCopy> copies, const QString& logbook, Facts facts, QWidget* parent = nullptr);

    /// As submitted.
    [[nodiscard]] const BackupCopy& chosen() const { return copies_[chosen_]; }

protected:
    void read() override;

private:
    void lookAt();

    std::vector<BackupCopy> copies_;
    Facts facts_;
    std::map<int, QString> known_; ///< what copies said, by row
    QListWidget* list_;
    QPushButton* look_;
    QLabel* words_ = nullptr;
    std::size_t chosen_ = 0;
};

} // namespace ullage
