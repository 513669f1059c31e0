// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/usable_view.h"

#include "style/roles.h"
#include "style/wrapped_label.h"

#include <QEvent>
#include <QLabel>
#include <QVBoxLayout>

namespace ullage {

UsableView::UsableView(QWidget* parent)
    : QWidget(parent), kind_label_(new QLabel(this)), value_label_(new QLabel(this)), reason_label_(new WrappedLabel(QString(), this)) {
    setObjectName(QStringLiteral("usableWidget"));
    kind_label_->setObjectName(QStringLiteral("usableKindLabel"));
    value_label_->setObjectName(QStringLiteral("usableFractionLabel"));
    reason_label_->setObjectName(QStringLiteral("usableReasonLabel"));
    reason_label_->setTextFormat(Qt::PlainText);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addWidget(kind_label_);
    column->addWidget(value_label_);
    column->addWidget(reason_label_);
    column->addStretch();
    applyFonts();
}

void UsableView::applyFonts() {
    set_text_style(*kind_label_, Tone::soft, TextSize::body);
    set_text_style(*value_label_, Tone::ink, TextSize::figure);
    QFont large = text_font(TextSize::figure);
    if (large.pointSizeF() > 0) large.setPointSizeF(large.pointSizeF() * 1.2);
    value_label_->setFont(large);
    set_text_style(*reason_label_, Tone::soft, TextSize::caption);
}

void UsableView::setTested(const TestedOutcome& tested) {
    kind_label_->setText(tested.what);
    value_label_->setText(tested.outcome);
    reason_label_->setText(tested.sentence);
    reason_label_->setVisible(!tested.sentence.isEmpty());
    setToolTip(tested.details);
    setAccessibleName(tested.what + QStringLiteral(": ") + tested.outcome);
}

void UsableView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange) applyFonts();
}

} // namespace ullage
