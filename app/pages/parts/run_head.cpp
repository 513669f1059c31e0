// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/run_head.h"

#include "base/number.h"
#include "pages/parts/elided_label.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QAction>
#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

#include <algorithm>

namespace ullage {

QString run_about(const RunRecord& record) {
    QStringList parts{text_of(say_run_kind(record.run.kind))};
    const auto first = std::ranges::find_if(record.readings, [](const Reading& reading) { return !reading.withdrawn; });
    if (first != record.readings.end()) parts << text_of(day_text(first->values.time_ms, record.run.time_zone));
    if (record.meter) {
        QString meter = text_of(record.meter->name);
        if (!record.meter->points.empty()) meter += QLatin1Char(' ') + tr("as calibrated");
        else if (record.meter->limit_percent)
            meter += QStringLiteral(" %1%2 %").arg(QChar(0x00B1)).arg(text_of(say_digits(exact_text(*record.meter->limit_percent))));
        parts << meter;
    }
    if (!record.run.load.empty()) parts << text_of(record.run.load);
    return parts.join(QStringLiteral(", "));
}

RunHead::RunHead(QWidget* parent)
    : QWidget(parent), title_label_(new ElidedLabel(this, Qt::ElideMiddle)), about_label_(new ElidedLabel(this)), state_label_(new QLabel(this)),
      titles_(new QWidget(this)), buttons_(new QWidget(this)), grid_(new QGridLayout(this)) {
    setObjectName(QStringLiteral("runHead"));
    title_label_->setObjectName(QStringLiteral("unitNameLabel"));
    about_label_->setObjectName(QStringLiteral("runAboutLabel"));
    state_label_->setObjectName(QStringLiteral("runStateLabel"));
    title_label_->setTextFormat(Qt::PlainText);

    mark_action_ = addAction("markAction", tr("Mark…"), tr("Note an event: load changed, meter zeroed, cut-off"));
    end_action_ = addAction("endRunAction", tr("End run…"), tr("Say how and when this run ended, and what was shown then"));
    photo_action_ = addAction("photoAction", tr("Photo…"), tr("Attach photos to the chosen reading, or to the next one"));
    amend_action_ = addAction("amendAction", tr("Amend"), tr("Change the chosen reading, or else the last; the old values are kept"));
    withdraw_action_ = addAction("withdrawAction", tr("Withdraw"), tr("Take the chosen readings out; undo brings them back"));
    edit_action_ = addAction("editRunAction", tr("Edit run"), tr("Change what is stated about this run"));
    rule_action_ = addAction("nextReadingAction", tr("Next reading…"), tr("Say when to be reminded of the next reading"));
    connect(rule_action_, &QAction::triggered, this, &RunHead::ruleAsked);
    connect(mark_action_, &QAction::triggered, this, &RunHead::markAsked);
    connect(amend_action_, &QAction::triggered, this, &RunHead::amendAsked);
    connect(withdraw_action_, &QAction::triggered, this, &RunHead::withdrawAsked);
    connect(photo_action_, &QAction::triggered, this, &RunHead::photoAsked);
    connect(edit_action_, &QAction::triggered, this, &RunHead::editAsked);
    connect(end_action_, &QAction::triggered, this, &RunHead::endAsked);

    auto* titles = new QHBoxLayout(titles_);
    titles->setContentsMargins(0, 0, 0, 0);
    titles->setSpacing(12);
    titles->addWidget(title_label_, 0, Qt::AlignBaseline);
    titles->addWidget(about_label_, 0, Qt::AlignBaseline);
    titles->addWidget(state_label_, 0, Qt::AlignBaseline);
    titles->addStretch(1);
    auto* buttons = new QHBoxLayout(buttons_);
    buttons->setContentsMargins(0, 0, 0, 0);
    buttons->setSpacing(spacing::grid_px);
    buttons->addWidget(addButton("markButton", *mark_action_));
    buttons->addWidget(addButton("endRunButton", *end_action_));
    buttons->addWidget(addButton("nextReadingButton", *rule_action_));
    buttons->addWidget(addButton("photoButton", *photo_action_));
    buttons->addWidget(addButton("amendButton", *amend_action_));
    buttons->addWidget(addButton("withdrawButton", *withdraw_action_));
    buttons->addWidget(addButton("editRunButton", *edit_action_));
    buttons->addStretch();
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setHorizontalSpacing(spacing::page_margin_px);
    grid_->setVerticalSpacing(spacing::half_px);
    grid_->setColumnStretch(0, 1);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    applyFonts();
    fit();
}

QAction* RunHead::addAction(const char* name, const QString& text, const QString& hint) {
    auto* action = new QAction(text, this);
    action->setObjectName(QLatin1String(name));
    action->setToolTip(hint);
    action->setShortcutContext(Qt::WindowShortcut);
    QWidget::addAction(action);
    return action;
}

QPushButton* RunHead::addButton(const char* name, QAction& action) {
    auto* button = new QPushButton(action.text(), buttons_);
    button->setObjectName(QLatin1String(name));
    button->setToolTip(action.toolTip());
    button->setAutoDefault(false);
    connect(button, &QPushButton::clicked, &action, &QAction::trigger);
    connect(&action, &QAction::changed, button, [button, &action] {
        button->setEnabled(action.isEnabled());
        button->setVisible(action.isVisible());
    });
    return button;
}

void RunHead::applyFonts() {
    set_text_style(*title_label_, Tone::ink, TextSize::title);
    set_text_style(*about_label_, Tone::soft, TextSize::body);
    set_text_style(*state_label_, running_ ? Tone::good : Tone::ink, TextSize::body);
}

void RunHead::setRun(const RunRecord& record) {
    running_ = record.run.end == RunEnd::still_running;
    title_label_->setText(text_of(record.unit.name));
    about_label_->setText(run_about(record));
    state_label_->setText(running_ ? tr("running") : text_of(say_run_end(record.run.end)));
    end_action_->setVisible(running_);
    rule_action_->setVisible(running_ && reminders_offered_);
    applyFonts();
    fit();
}

void RunHead::setEnterable(bool enterable) {
    for (auto* action : {mark_action_, end_action_, edit_action_, rule_action_, photo_action_}) action->setEnabled(enterable);
}

void RunHead::setRemindersOffered(bool offered) {
    reminders_offered_ = offered;
    rule_action_->setVisible(running_ && offered);
}

void RunHead::setReadingChosen(bool amendable, bool withdrawable) {
    amend_action_->setEnabled(amendable);
    withdraw_action_->setEnabled(withdrawable);
}

QList<QAction*> RunHead::runActions() const {
    return {mark_action_, end_action_, photo_action_, amend_action_, withdraw_action_, edit_action_, rule_action_};
}

QSize RunHead::minimumSizeHint() const {
    // A long name gives way in its middle.
    return {buttons_->sizeHint().width(), grid_->minimumSize().height()};
}

void RunHead::fit() {
    const int about_px = about_label_->wholeWidth();
    const int titles_px = title_label_->wholeWidth() + state_label_->sizeHint().width() + 3 * 12;
    // The words about the run may be cut to two thirds before the buttons leave the line.
    const bool one_line = titles_px + about_px * 2 / 3 + buttons_->sizeHint().width() + spacing::page_margin_px <= width();
    // The unit's name stays whole, unless it would take the line for itself.
    title_label_->setMinimumWidth(std::min(title_label_->wholeWidth() + 1, width() / 2));
    grid_->addWidget(titles_, 0, 0);
    grid_->addWidget(buttons_, one_line ? 0 : 1, one_line ? 1 : 0);
}

void RunHead::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fit();
}

void RunHead::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange) {
        applyFonts();
        fit();
    }
}

} // namespace ullage
