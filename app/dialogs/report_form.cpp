// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/report_form.h"

#include "style/languages.h"
#include "style/words.h"

#include <QCheckBox>
#include <QComboBox>

namespace ullage {

ReportForm::ReportForm(const QString& what, Paper paper, const QStringList& ways, QWidget* parent)
    : ReportForm(what, paper, ways,
                 tr("The report holds summary, meters, method with sources, readings, uncertainty budget, charts, findings, what cannot be "
                    "known, amendments and cautions. Numbers have the decimal sign of its language.") +
                     (ways.isEmpty() ? QString()
                                     : QStringLiteral("<br/>") +
                                           tr("It shows the units of the comparison page, which units are clearly different, and says of each "
                                              "unit that cannot be converted to one load why it stays as tested. The load is chosen on that page.")),
                 parent) {}

ReportForm::ReportForm(const QString& what, Paper paper, const QStringList& ways, const QString& help, QWidget* parent)
    : FormDialog(tr("Report on %1").arg(what), tr("Make report"), parent),
      way_choice_(ways.isEmpty() ? nullptr : addChoice(QStringLiteral("way"), tr("&Units"))),
      form_choice_(addChoice(QStringLiteral("form"), tr("&Form"))), language_choice_(addChoice(QStringLiteral("language"), tr("&Language"))),
      paper_choice_(addChoice(QStringLiteral("paper"), tr("&Paper"))),
      files_check_(new QCheckBox(tr("Its &tables (HTML) and pictures (PNG) as files too, in a folder beside it"), this)),
      own_check_(new QCheckBox(tr("With what is &mine alone: tags, prices paid, remarks, advice"), this)), paper_(paper) {
    setObjectName(QStringLiteral("reportForm"));
    if (way_choice_) way_choice_->addItems(ways);
    form_choice_->addItem(tr("PDF, pages to print or to send"), QStringLiteral("pdf"));
    form_choice_->addItem(tr("HTML, one page for the web"), QStringLiteral("html"));
    for (const SpokenLanguage& each : spoken_languages()) language_choice_->addItem(each.own_name, each.code);
    setLanguage(raw_text(language_in_use().code()));
    paper_choice_->addItem(tr("A4"), static_cast<int>(Paper::a4));
    paper_choice_->addItem(tr("Letter"), static_cast<int>(Paper::letter));
    paper_choice_->setCurrentIndex(paper_choice_->findData(static_cast<int>(paper)));
    files_check_->setObjectName(QStringLiteral("filesCheck"));
    addWide(files_check_);
    own_check_->setObjectName(QStringLiteral("ownCheck"));
    addWide(own_check_);
    own_check_->hide();
    addParagraph(QStringLiteral("reportHelp"), help);
    (way_choice_ ? way_choice_ : form_choice_)->setFocus();
}

void ReportForm::setLanguage(const QString& code) {
    const int place = language_choice_->findData(code);
    if (place < 0) return;
    language_choice_->setCurrentIndex(place);
    language_ = code;
}

void ReportForm::keepLanguage() {
    language_choice_->clear();
    setLineShown(language_choice_, false);
}

void ReportForm::offerOwnAffairs() { own_check_->show(); }

void ReportForm::read() {
    if (way_choice_) way_ = way_choice_->currentIndex();
    files_beside_ = files_check_->isChecked();
    own_affairs_ = own_check_->isChecked();
    ending_ = form_choice_->currentData().toString();
    if (language_choice_->count() > 0) language_ = language_choice_->currentData().toString();
    paper_ = static_cast<Paper>(paper_choice_->currentData().toInt());
}

} // namespace ullage
