// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/guide_bar.h"

#include "style/roles.h"
#include "style/spacing.h"
#include "style/wrapped_label.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QStringList>
#include <QVBoxLayout>

namespace ullage {

GuideBar::GuideBar(QWidget* parent)
    : QWidget(parent), chip_(new QLabel), course_(new WrappedLabel), task_(new WrappedLabel), trial_(new WrappedLabel), go_(new QPushButton),
      leave_(new QPushButton) {
    setObjectName(QStringLiteral("guideBar"));
    auto* panel = new QFrame;
    make_panel(*panel);
    make_chip(*chip_, Chip::good);
    chip_->setObjectName(QStringLiteral("guideStepLabel"));
    course_->setObjectName(QStringLiteral("guideCourseLabel"));
    task_->setObjectName(QStringLiteral("guideTaskLabel"));
    trial_->setObjectName(QStringLiteral("guideTrialLabel"));
    for (QLabel* words : {course_, static_cast<QLabel*>(task_), static_cast<QLabel*>(trial_)}) words->setTextFormat(Qt::PlainText);
    for (WrappedLabel* words : {task_, trial_}) words->letBeMarked();
    set_text_style(*course_, Tone::soft, TextSize::caption);
    set_text_style(*task_, Tone::ink);
    set_text_style(*trial_, Tone::soft, TextSize::caption);
    go_->setObjectName(QStringLiteral("guideGoButton"));
    leave_->setObjectName(QStringLiteral("guideLeaveButton"));
    make_quiet(*leave_);
    for (QPushButton* button : {go_, leave_}) {
        button->setAutoDefault(false);
        button->setFocusPolicy(Qt::TabFocus); // a click must not take the keyboard from the entry row
    }
    connect(go_, &QPushButton::clicked, this, &GuideBar::goAsked);
    connect(leave_, &QPushButton::clicked, this, &GuideBar::leaveAsked);

    auto* head = new QHBoxLayout;
    head->setSpacing(spacing::panel_gap_px);
    head->addWidget(chip_);
    head->addWidget(course_, 1);
    auto* words = new QVBoxLayout;
    words->setSpacing(spacing::half_px);
    words->addLayout(head);
    words->addWidget(task_);
    words->addWidget(trial_);
    auto* line = new QHBoxLayout(panel);
    line->setContentsMargins(spacing::panel_gap_px, spacing::grid_px, spacing::grid_px, spacing::grid_px);
    line->setSpacing(spacing::page_margin_px);
    line->addLayout(words, 1);
    auto* buttons = new QVBoxLayout;
    buttons->setSpacing(spacing::half_px);
    buttons->addWidget(go_);
    buttons->addWidget(leave_);
    line->addLayout(buttons);
    // The margin belongs to the bar, so that it leaves with it.
    auto* around = new QVBoxLayout(this);
    around->setContentsMargins(spacing::page_margin_px, spacing::panel_gap_px, spacing::page_margin_px, 0);
    around->addWidget(panel);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);
    hide();
}

void GuideBar::tell(GuideStep step, const GuideWords& words) {
    const int place = static_cast<int>(step);
    const QStringList names{tr("unit"), tr("meter"), tr("start"), tr("readings"), tr("end"), tr("result")};
    QStringList course;
    for (int i = 0; i < guide_steps; ++i)
        course << (i < place ? QStringLiteral("✓ %1").arg(names[i]) : i == place ? QStringLiteral("▸ %1").arg(names[i]) : names[i]);
    chip_->setText(tr("step %1 of %2").arg(place + 1).arg(guide_steps));
    course_->setText(course.join(QStringLiteral("   ")));
    task_->setText(words.task);
    trial_->setText(words.trial);
    trial_->setVisible(!words.trial.isEmpty());
    go_->setText(words.button);
    go_->setVisible(!words.button.isEmpty());
    leave_->setText(step == GuideStep::result ? tr("Finish") : tr("Leave the guide"));
    setAccessibleName(tr("guided first run, step %1 of %2: %3").arg(QString::number(place + 1), QString::number(guide_steps), words.task));
    show();
}

void GuideBar::dismiss() {
    task_->clear();
    hide();
}

} // namespace ullage
