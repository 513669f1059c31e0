// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/displaced_bar.h"

#include "style/roles.h"
#include "style/spacing.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage {

DisplacedBar::DisplacedBar(QWidget* parent) : QWidget(parent), words_(new QLabel) {
    setObjectName(QStringLiteral("displacedBar"));
    auto* panel = new QFrame;
    make_panel(*panel);
    auto* chip = new QLabel(tr("▲ not recording"));
    make_chip(*chip, Chip::fault);
    words_->setObjectName(QStringLiteral("displacedLabel"));
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* save = new QPushButton(tr("Save elsewhere and go on there…"));
    save->setObjectName(QStringLiteral("saveElsewhereButton"));
    save->setAutoDefault(false);
    connect(save, &QPushButton::clicked, this, &DisplacedBar::saveAsked);
    auto* line = new QHBoxLayout(panel);
    line->setContentsMargins(spacing::panel_gap_px, spacing::half_px, spacing::half_px, spacing::half_px);
    line->setSpacing(spacing::grid_px);
    line->addWidget(chip);
    line->addWidget(words_, 1);
    line->addWidget(save);
    // The margin belongs to the bar, so that it leaves with it.
    auto* around = new QVBoxLayout(this);
    around->setContentsMargins(spacing::page_margin_px, spacing::panel_gap_px, spacing::page_margin_px, 0);
    around->addWidget(panel);
    hide();
}

void DisplacedBar::tell(const QString& sentence) {
    words_->setText(sentence);
    words_->setAccessibleName(sentence);
    show();
}

void DisplacedBar::dismiss() {
    words_->clear();
    hide();
}

} // namespace ullage
