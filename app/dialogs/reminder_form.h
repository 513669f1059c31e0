// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "forecast/reading_due.h"

namespace ullage {

/// When a run's next reading is to be called for: three parts, of which the earliest counts; an empty one does not.
class ReminderForm final : public FormDialog {
    Q_OBJECT
public:
    /// `title` names the run.
    ReminderForm(const QString& title, const ReadingRule& rule, QWidget* parent = nullptr);

    /// As submitted; 0 is read as empty.
    [[nodiscard]] const ReadingRule& rule() const { return rule_; }

protected:
    void read() override;

private:
    ReadingRule rule_;
    QLineEdit *every_, *drop_, *before_;
};

} // namespace ullage
