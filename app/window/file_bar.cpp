// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/file_bar.h"

#include "style/roles.h"
#include "style/spacing.h"
#include "style/wrapped_label.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage {

FileBar::FileBar(QWidget* parent)
    : QWidget(parent), chip_(new QLabel), words_(new WrappedLabel), save_(new QPushButton(tr("Save elsewhere and go on there…"))),
      record_(new QPushButton(tr("Record here"))) {
    setObjectName(QStringLiteral("fileBar"));
    auto* panel = new QFrame;
    make_panel(*panel);
    words_->setObjectName(QStringLiteral("fileBarLabel"));
    words_->setTextFormat(Qt::PlainText);
    words_->letBeMarked();
    save_->setObjectName(QStringLiteral("saveElsewhereButton"));
    record_->setObjectName(QStringLiteral("recordHereButton"));
    connect(save_, &QPushButton::clicked, this, &FileBar::saveAsked);
    connect(record_, &QPushButton::clicked, this, &FileBar::recordAsked);
    auto* line = new QHBoxLayout(panel);
    line->setContentsMargins(spacing::panel_gap_px, spacing::half_px, spacing::half_px, spacing::half_px);
    line->setSpacing(spacing::grid_px);
    line->addWidget(chip_);
    line->addWidget(words_, 1);
    for (auto* button : {save_, record_}) {
        button->setAutoDefault(false);
        button->hide();
        line->addWidget(button);
    }
    // The margin belongs to the bar, so that it leaves with it.
    auto* around = new QVBoxLayout(this);
    around->setContentsMargins(spacing::page_margin_px, spacing::panel_gap_px, spacing::page_margin_px, 0);
    around->addWidget(panel);
    hide();
}

void FileBar::tellDisplaced(const QString& sentence) {
    make_chip(*chip_, Chip::fault);
    tell(tr("▲ not recording"), sentence, save_);
}

void FileBar::tellLooking(const QString& sentence, bool record_offered) {
    make_chip(*chip_, Chip::note);
    tell(tr("looking only"), sentence, record_offered ? record_ : nullptr);
}

void FileBar::tell(const QString& chip, const QString& sentence, QPushButton* offered) {
    chip_->setText(chip);
    words_->setText(sentence);
    words_->setAccessibleName(sentence);
    for (auto* button : {save_, record_}) button->setVisible(button == offered);
    show();
}

void FileBar::dismiss() {
    words_->clear();
    hide();
}

} // namespace ullage
