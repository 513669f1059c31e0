// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comparison/answer_view.h"

#include "pages/parts/page_parts.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QResizeEvent>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage {

namespace {

constexpr int most_lines = 10; ///< of text at once

} // namespace

AnswerView::AnswerView(QWidget* parent)
    : QScrollArea(parent), chip_(new QLabel(tr("caution"))), order_(new_paragraph("orderLabel", Tone::ink)),
      units_(new_paragraph("unitAnswersLabel", Tone::ink)) {
    setObjectName(QStringLiteral("answerArea"));
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    chip_->setObjectName(QStringLiteral("cautionChip"));
    make_chip(*chip_, Chip::doubt);
    auto* words = new QWidget;
    auto* column = new QVBoxLayout(words);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    auto* first = new QHBoxLayout;
    first->setSpacing(spacing::grid_px);
    first->addWidget(chip_, 0, Qt::AlignTop);
    first->addWidget(order_, 1);
    column->addLayout(first);
    column->addWidget(units_);
    column->addStretch();
    setWidget(words);
    viewport()->setAutoFillBackground(false);
    words->setAutoFillBackground(false);
    hide();
}

void AnswerView::setAnswer(const ComparisonAnswer& answer) {
    QStringList units;
    for (const Message& sentence : answer.units) units << text_of(sentence);
    order_->setText(text_of(answer.order));
    order_->setVisible(!answer.order.empty());
    chip_->setVisible(!answer.order.empty() && !answer.has_order);
    units_->setText(units.join(QLatin1Char('\n')));
    units_->setVisible(!units.isEmpty());
    setVisible(!answer.order.empty() || !units.isEmpty());
    fit();
}

void AnswerView::fit() {
    const int room = viewport()->width();
    const int whole = std::max(widget()->layout()->totalHeightForWidth(room), widget()->layout()->totalMinimumSize().height());
    const int lines = most_lines * fontMetrics().lineSpacing() + 2 * spacing::half_px;
    setFixedHeight(std::min(whole, lines));
}

void AnswerView::resizeEvent(QResizeEvent* event) {
    QScrollArea::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) fit();
}

bool AnswerView::event(QEvent* event) {
    // The labels have their new size only after this event.
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) QTimer::singleShot(0, this, &AnswerView::fit);
    return QScrollArea::event(event);
}

} // namespace ullage
