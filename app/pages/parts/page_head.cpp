// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/page_head.h"

#include "style/spacing.h"

#include <QEvent>
#include <QGridLayout>

#include <algorithm>

namespace ullage {

PageHead::PageHead(QWidget* words, QWidget* buttons, QWidget* parent)
    : QWidget(parent), words_(words), buttons_(buttons), grid_(new QGridLayout(this)) {
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(spacing::page_margin_px);
    grid_->setVerticalSpacing(spacing::half_px);
    grid_->setColumnStretch(0, 1);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    fit();
}

QSize PageHead::minimumSizeHint() const {
    return {std::max(words_->sizeHint().width(), buttons_->sizeHint().width()), grid_->minimumSize().height()};
}

void PageHead::fit() {
    const bool one_line = words_->sizeHint().width() + buttons_->sizeHint().width() + spacing::page_margin_px <= width();
    grid_->addWidget(words_, 0, 0);
    grid_->addWidget(buttons_, one_line ? 0 : 1, one_line ? 1 : 0);
}

void PageHead::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit();
}

void PageHead::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) fit();
}

} // namespace ullage
