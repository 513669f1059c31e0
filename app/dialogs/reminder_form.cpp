// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/reminder_form.h"

#include "dialogs/field_text.h"
#include "services/reading_rules.h"

#include <QLineEdit>

namespace ullage {

ReminderForm::ReminderForm(const QString& title, const ReadingRule& rule, QWidget* parent)
    : FormDialog(tr("Next reading"), tr("Remind me"), parent), rule_(rule) {
    setObjectName(QStringLiteral("reminderForm"));
    addParagraph(
        QStringLiteral("reminderRun"),
        tr("%1: call me for the next reading at the earliest of these moments. Leave empty what should not count.").arg(title.toHtmlEscaped()));
    every_ = addLine(QStringLiteral("every"), tr("&After the last reading"), tr("never; or 30 min, 1.5 h"));
    drop_ = addLine(QStringLiteral("drop"), tr("When the &gauge should be down by"), tr("never; or 10 points"));
    before_ = addLine(QStringLiteral("before"), tr("&Before the expected cut-off"), tr("never; or 15 min"));
    every_->setText(minutes_text(rule.every_min));
    drop_->setText(field_text(rule.gauge_drop_pt));
    before_->setText(minutes_text(rule.before_cut_off_min));
    every_->setFocus();
    every_->selectAll();
}

void ReminderForm::read() {
    rule_ = {number(every_, parse_minutes), number(drop_, parse_points), number(before_, parse_minutes)};
    if (rule_.every_min == 0) rule_.every_min.reset();
    if (rule_.gauge_drop_pt == 0) rule_.gauge_drop_pt.reset();
}

} // namespace ullage
