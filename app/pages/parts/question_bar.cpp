// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/question_bar.h"

#include "style/roles.h"
#include "style/spacing.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage {

QuestionBar::QuestionBar(QWidget* parent) : QFrame(parent), question_label_(new QLabel(this)) {
    setObjectName(QStringLiteral("questionBar"));
    setFocusPolicy(Qt::StrongFocus);
    question_label_->setObjectName(QStringLiteral("questionLabel"));
    question_label_->setWordWrap(true);
    question_label_->setTextFormat(Qt::PlainText);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, spacing::half_px);
    column->setSpacing(spacing::half_px);
    column->addWidget(question_label_);
    auto* answers = new QHBoxLayout;
    answers->setSpacing(spacing::grid_px);
    column->addLayout(answers);
    for (QPushButton* button : {addAnswer(tr("Keep  K"), "keepButton", Answer::keep), addAnswer(tr("Correct  C"), "correctButton", Answer::correct),
                                zeroed_button_ = addAnswer(tr("It was a reset  Z"), "zeroedButton", Answer::zeroed),
                                swapped_button_ = addAnswer(tr("Meter swapped  W"), "swappedButton", Answer::swapped)})
        answers->addWidget(button);
    answers->addStretch();
    hide();
}

QPushButton* QuestionBar::addAnswer(const QString& words, const char* name, Answer answer) {
    auto* button = new QPushButton(words, this);
    button->setObjectName(QLatin1String(name));
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, [this, answer] { give(answer); });
    return button;
}

void QuestionBar::ask(const QString& question, bool register_fell) {
    question_label_->setText(question);
    setAccessibleName(question);
    zeroed_button_->setVisible(register_fell);
    swapped_button_->setVisible(register_fell);
    show();
    setFocus(Qt::OtherFocusReason);
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void QuestionBar::drop() { hide(); }

QString QuestionBar::question() const { return question_label_->text(); }

void QuestionBar::give(Answer answer) {
    hide();
    emit answered(answer);
}

void QuestionBar::keyPressEvent(QKeyEvent* event) {
    const bool plain = (event->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier)) == Qt::NoModifier;
    switch (plain ? event->key() : 0) {
    case Qt::Key_K: return give(Answer::keep);
    case Qt::Key_C:
    case Qt::Key_Escape: return give(Answer::correct);
    case Qt::Key_Z:
        if (!zeroed_button_->isHidden()) return give(Answer::zeroed);
        break;
    case Qt::Key_W:
        if (!swapped_button_->isHidden()) return give(Answer::swapped);
        break;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (auto* button = qobject_cast<QPushButton*>(focusWidget()); button != nullptr && button->hasFocus()) button->click();
        return;
    default: break;
    }
    QFrame::keyPressEvent(event);
}

} // namespace ullage
