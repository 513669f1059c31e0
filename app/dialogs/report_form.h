// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "report/report_look.h"

#include <QStringList>

class QCheckBox;

namespace ullage {

/// In which form, and on which paper, a report is made.
class ReportForm : public FormDialog {
    Q_OBJECT
public:
    /// `what` is to be reported on, e.g. the name of a run; `paper` is chosen at first. `ways` are those in which units can be compared, the first
    /// chosen at first; empty for the report of a run.
    ReportForm(const QString& what, Paper paper, const QStringList& ways, QWidget* parent = nullptr);
    /// The same with words of its own on what the report holds.
    ReportForm(const QString& what, Paper paper, const QStringList& ways, const QString& help, QWidget* parent);

    /// Chooses a language, where the program speaks it and it is asked for.
    void setLanguage(const QString& code);
    /// Asks for no language: what is made is the window's own.
    void keepLanguage();
    /// Asks whether what is the tester's own affair goes in too; it does not unless ticked.
    void offerOwnAffairs();

    [[nodiscard]] QString ending() const { return ending_; } ///< "pdf" or "html"
    [[nodiscard]] Paper paper() const { return paper_; }
    [[nodiscard]] QString language() const { return language_; }     ///< code, see spoken_languages(); at first the window's
    [[nodiscard]] bool ownAffairs() const { return own_affairs_; }   ///< with tags, prices paid, remarks and advice
    [[nodiscard]] bool filesBeside() const { return files_beside_; } ///< as ReportLook
    [[nodiscard]] int way() const { return way_; }                   ///< place in `ways`; 0 where there are none

protected:
    void read() override;

private:
    QComboBox* way_choice_; ///< null for a run
    QComboBox *form_choice_, *language_choice_, *paper_choice_;
    QCheckBox *files_check_, *own_check_;
    QString ending_ = QStringLiteral("pdf"), language_;
    Paper paper_;
    int way_ = 0;
    bool files_beside_ = false, own_affairs_ = false;
};

} // namespace ullage
