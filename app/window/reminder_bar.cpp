// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/reminder_bar.h"

#include "pages/parts/due_figures.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace ullage {

ReminderBar::ReminderBar(const Document& document, Reminders& reminders, QWidget* parent)
    : QWidget(parent), document_(document), reminders_(reminders), chip_(new QLabel(tr("▲ due"))), words_(new QLabel) {
    setObjectName(QStringLiteral("reminderBar"));
    auto* panel = new QFrame;
    make_panel(*panel);
    make_chip(*chip_, Chip::fault);
    words_->setObjectName(QStringLiteral("reminderLabel"));
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    auto* line = new QHBoxLayout(panel);
    line->setContentsMargins(spacing::panel_gap_px, spacing::half_px, spacing::half_px, spacing::half_px);
    line->setSpacing(spacing::grid_px);
    line->addWidget(chip_);
    line->addWidget(words_, 1);
    const auto add_button = [&](const QString& text, const QString& name) {
        auto* button = new QPushButton(text);
        button->setObjectName(name);
        button->setAutoDefault(false);
        button->setFocusPolicy(Qt::TabFocus); // a click must not take the keyboard from the entry row
        line->addWidget(button);
        return button;
    };
    connect(add_button(tr("Enter reading"), QStringLiteral("reminderReadButton")), &QPushButton::clicked, this,
            [this] { emit readingAsked(run_uuid_); });
    auto* again = new QLabel(tr("remind me again in"));
    set_text_style(*again, Tone::soft, TextSize::caption);
    line->addWidget(again);
    for (const int minutes : snoozes_min) {
        auto* button = add_button(tr("%1 min").arg(minutes), QStringLiteral("snooze%1Button").arg(minutes));
        button->setToolTip(tr("Remind me again in %1 minutes").arg(minutes));
        button->setAccessibleName(button->toolTip());
        make_quiet(*button);
        connect(button, &QPushButton::clicked, this, [this, minutes] { reminders_.snooze(run_uuid_, minutes); });
    }
    // The margin belongs to the bar, so that it leaves with it.
    auto* around = new QVBoxLayout(this);
    around->setContentsMargins(spacing::page_margin_px, spacing::panel_gap_px, spacing::page_margin_px, 0);
    around->addWidget(panel);
    connect(&reminders_, &Reminders::looked, this, &ReminderBar::refresh);
    refresh();
}

QString ReminderBar::words() const { return isHidden() ? QString() : words_->text(); }

void ReminderBar::refresh() {
    const auto* record = reminders_.mostOverdue();
    setVisible(record != nullptr);
    if (record == nullptr) return;
    run_uuid_ = record->run.uuid;
    const auto state = reminders_.state(record->run.uuid);
    const int others = reminders_.overdueCount() - 1;
    auto text = tr("%1: reading %2, %3").arg(text_of(record->unit.name), due_words(state, document_.clock().now_ms()), text_of(state.due.why));
    if (others > 0) text += others == 1 ? tr("; and one more test") : tr("; and %1 more tests").arg(others);
    words_->setText(text);
    setAccessibleName(text);
}

} // namespace ullage
