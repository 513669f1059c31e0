// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"
#include "report/report_look.h"

namespace ullage {

/// In which form, and on which paper, a report is made.
class ReportForm final : public FormDialog {
    Q_OBJECT
public:
    /// `what` is to be reported on, e.g. the name of a run; `paper` is chosen at first.
    ReportForm(const QString& what, Paper paper, QWidget* parent = nullptr);

    [[nodiscard]] QString ending() const { return ending_; } ///< "pdf" or "html"
    [[nodiscard]] Paper paper() const { return paper_; }

protected:
    void read() override;

private:
    QComboBox *form_choice_, *paper_choice_;
    QString ending_ = QStringLiteral("pdf");
    Paper paper_;
};

} // namespace ullage
