// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/question_bar.h"

#include "style/roles.h"
#include "style/spacing.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage {

QuestionBar::QuestionBar(QWidget* parent)
    : QFrame(parent), question_label_(new QLabel(this)), answers_(new QWidget(this)), value_line_(new QWidget(this)) {
    setObjectName(QStringLiteral("questionBar"));
    setFocusPolicy(Qt::StrongFocus);
    question_label_->setObjectName(QStringLiteral("questionLabel"));
    question_label_->setWordWrap(true);
    question_label_->setTextFormat(Qt::PlainText);

    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, spacing::half_px);
    column->setSpacing(spacing::half_px);
    column->addWidget(question_label_);
    auto* answers = new QHBoxLayout(answers_);
    answers->setContentsMargins(0, 0, 0, 0);
    answers->setSpacing(spacing::grid_px);
    column->addWidget(answers_);
    column->addWidget(value_line_);
    for (QPushButton* button : {mended_button_ = addAnswer({}, "mendedButton", Answer::mended), addAnswer(tr("Keep  K"), "keepButton", Answer::keep),
                               addAnswer(tr("Correct  C"), "correctButton", Answer::correct),
                               zeroed_button_ = addAnswer(tr("It was a reset  Z"), "zeroedButton", Answer::zeroed),
                               swapped_button_ = addAnswer(tr("Meter swapped  W"), "swappedButton", Answer::swapped)})
        answers->addWidget(button);
    answers->addStretch();
    buildValueLine();
    hide();
}

void QuestionBar::buildValueLine() {
    auto* line = new QHBoxLayout(value_line_);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(spacing::grid_px);
    value_edit_ = new QLineEdit(value_line_);
    value_edit_->setObjectName(QStringLiteral("valueBeforeEdit"));
    value_edit_->setMaximumWidth(fontMetrics().averageCharWidth() * 18);
    value_edit_->installEventFilter(this);
    auto* take = new QPushButton(tr("Record"), value_line_);
    take->setObjectName(QStringLiteral("takeValueButton"));
    auto* unknown = new QPushButton(tr("Not known  N"), value_line_);
    unknown->setObjectName(QStringLiteral("valueUnknownButton"));
    connect(take, &QPushButton::clicked, this, [this] { emit valueGiven(value_edit_->text()); });
    connect(unknown, &QPushButton::clicked, this, [this] { emit valueGiven({}); });
    line->addWidget(value_edit_);
    line->addWidget(take);
    line->addWidget(unknown);
    line->addStretch();
}

QPushButton* QuestionBar::addAnswer(const QString& words, const char* name, Answer answer) {
    auto* button = new QPushButton(words, this);
    button->setObjectName(QLatin1String(name));
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, this, [this, answer] { give(answer); });
    return button;
}

void QuestionBar::ask(const QString& question, bool register_fell, const QString& mended) {
    question_label_->setText(question);
    mended_button_->setText(tr("%1?  M").arg(mended));
    mended_button_->setToolTip(tr("Records %1 instead").arg(mended));
    mended_button_->setVisible(!mended.isEmpty());
    zeroed_button_->setVisible(register_fell);
    swapped_button_->setVisible(register_fell);
    show(false);
    setFocus(Qt::OtherFocusReason);
}

void QuestionBar::askValue(const QString& question) {
    question_label_->setText(question);
    value_edit_->clear();
    value_edit_->setAccessibleName(question);
    show(true);
    value_edit_->setFocus(Qt::OtherFocusReason);
}

void QuestionBar::refuseValue(const QString& sentence) {
    question_label_->setText(sentence);
    value_edit_->setFocus(Qt::OtherFocusReason);
    value_edit_->selectAll();
}

void QuestionBar::show(bool value_asked) {
    setAccessibleName(question_label_->text());
    answers_->setVisible(!value_asked);
    value_line_->setVisible(value_asked);
    QFrame::show();
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void QuestionBar::drop() { hide(); }

QString QuestionBar::question() const { return question_label_->text(); }

void QuestionBar::give(Answer answer) {
    hide();
    emit answered(answer);
}

bool QuestionBar::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QFrame::eventFilter(watched, event);
    switch (static_cast<QKeyEvent*>(event)->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter: emit valueGiven(value_edit_->text()); return true;
    case Qt::Key_N: emit valueGiven({}); return true;
    case Qt::Key_Escape: give(Answer::correct); return true;
    default: return QFrame::eventFilter(watched, event);
    }
}

void QuestionBar::keyPressEvent(QKeyEvent* event) {
    const bool plain = (event->modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier)) == Qt::NoModifier;
    const bool asks_value = value_line_->isVisible();
    switch (plain && !asks_value ? event->key() : 0) {
    case Qt::Key_K: return give(Answer::keep);
    case Qt::Key_C:
    case Qt::Key_Escape: return give(Answer::correct);
    case Qt::Key_M:
        if (!mended_button_->isHidden()) return give(Answer::mended);
        break;
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
