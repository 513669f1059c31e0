// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/help_dialog.h"

#include "style/roles.h"
#include "style/spacing.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QTextBrowser>
#include <QVBoxLayout>

namespace ullage {

HelpDialog::HelpDialog(QWidget* parent) : QDialog(parent), title_(new QLabel), text_(new QTextBrowser) {
    setObjectName(QStringLiteral("helpDialog"));
    setModal(false);
    set_text_style(*title_, Tone::ink, TextSize::title);
    text_->setObjectName(QStringLiteral("helpBrowser"));
    text_->setFrameShape(QFrame::NoFrame);
    text_->setAccessibleName(tr("help text"));
    auto* close = new QPushButton(tr("Close"));
    close->setObjectName(QStringLiteral("closeButton"));
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch();
    buttons->addWidget(close);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::group_gap_px, spacing::page_margin_px, spacing::group_gap_px, spacing::page_margin_px);
    column->setSpacing(spacing::panel_gap_px);
    column->addWidget(title_);
    column->addWidget(text_, 1);
    column->addLayout(buttons);
    resize(640, 560);
}

void HelpDialog::showPage(const QString& title, const QString& html) {
    setWindowTitle(title);
    title_->setText(title);
    text_->setHtml(html);
    show();
    raise();
    activateWindow();
}

} // namespace ullage
