// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/report_form.h"

#include <QComboBox>

namespace ullage {

ReportForm::ReportForm(const QString& what, Paper paper, QWidget* parent)
    : FormDialog(tr("Report on %1").arg(what), tr("Make report"), parent), form_choice_(addChoice(QStringLiteral("form"), tr("&Form"))),
      paper_choice_(addChoice(QStringLiteral("paper"), tr("&Paper"))), paper_(paper) {
    setObjectName(QStringLiteral("reportForm"));
    form_choice_->addItem(tr("PDF, pages to print or to send"), QStringLiteral("pdf"));
    form_choice_->addItem(tr("HTML, one page for the web"), QStringLiteral("html"));
    paper_choice_->addItem(tr("A4"), static_cast<int>(Paper::a4));
    paper_choice_->addItem(tr("Letter"), static_cast<int>(Paper::letter));
    paper_choice_->setCurrentIndex(paper_choice_->findData(static_cast<int>(paper)));
    addParagraph(QStringLiteral("reportHelp"),
                 tr("The report holds summary, meters, method with sources, readings, uncertainty budget, charts, findings, what cannot be "
                    "known, amendments and cautions. Numbers have the decimal sign of your system."));
    form_choice_->setFocus();
}

void ReportForm::read() {
    ending_ = form_choice_->currentData().toString();
    paper_ = static_cast<Paper>(paper_choice_->currentData().toInt());
}

} // namespace ullage
