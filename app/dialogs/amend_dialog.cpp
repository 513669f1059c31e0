// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/amend_dialog.h"

#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

QLineEdit* add_field(QFormLayout& form, const char* name, const QString& label, const QString& text) {
    auto* field = new QLineEdit(text);
    field->setObjectName(QLatin1String(name));
    form.addRow(label, field);
    return field;
}

} // namespace

AmendDialog::AmendDialog(const ReadingValues& values, const QStringList& history, UtcMs now_ms, std::string zone, bool two_meters, QWidget* parent)
    : QDialog(parent), values_(values), now_ms_(now_ms), zone_(std::move(zone)), mark_combo_(new QComboBox), message_label_(new QLabel(this)) {
    const EntryTexts texts = EntryTexts::of(values, zone_);
    setObjectName(QStringLiteral("amendDialog"));
    setWindowTitle(tr("Amend reading"));
    auto* column = new QVBoxLayout(this);
    column->setSpacing(spacing::grid_px);
    auto* form = new QFormLayout;
    form->setSpacing(spacing::grid_px);
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    column->addLayout(form);
    time_edit_ = add_field(*form, "amendTimeEdit", tr("Time"), texts.time);
    time_edit_->setMinimumWidth(QFontMetrics(font()).averageCharWidth() * 36);
    gauge_edit_ = add_field(*form, "amendGaugeEdit", tr("Gauge, %"), texts.gauge);
    register_edit_ = add_field(*form, "amendRegisterEdit", tr("Register, Wh"), texts.register_value);
    if (two_meters || values.second_register_wh)
        second_register_edit_ = add_field(*form, "amendSecondRegisterEdit", tr("Second register, Wh"), texts.second_register);
    watts_edit_ = add_field(*form, "amendWattsEdit", tr("Meter power, W"), texts.watts);
    display_edit_ = add_field(*form, "amendDisplayWattsEdit", tr("Unit's display, W"), texts.display_watts);
    mark_combo_->setObjectName(QStringLiteral("amendMarkCombo"));
    mark_combo_->addItem(tr("no mark"));
    for (const MarkKind mark : all_mark_kinds) mark_combo_->addItem(text_of(say_mark(mark)), static_cast<int>(mark));
    mark_combo_->setCurrentIndex(texts.mark ? std::max(0, mark_combo_->findData(static_cast<int>(*texts.mark))) : 0);
    form->addRow(tr("Mark"), mark_combo_);
    remark_edit_ = add_field(*form, "amendRemarkEdit", tr("Remark"), texts.remark);
    reason_edit_ = add_field(*form, "amendReasonEdit", tr("Why it changes"), {});
    reason_edit_->setPlaceholderText(tr("for example: misread in the dark"));

    message_label_->setObjectName(QStringLiteral("amendMessageLabel"));
    message_label_->setWordWrap(true);
    message_label_->setTextFormat(Qt::PlainText);
    set_text_style(*message_label_, Tone::fault, TextSize::caption);
    message_label_->hide();
    column->addWidget(message_label_);

    auto* history_title = new QLabel(tr("History"), this);
    set_text_style(*history_title, Tone::soft, TextSize::group);
    column->addSpacing(spacing::grid_px);
    column->addWidget(history_title);
    auto* history_label = new QLabel(history.join(QLatin1Char('\n')), this);
    history_label->setObjectName(QStringLiteral("amendHistoryLabel"));
    history_label->setTextFormat(Qt::PlainText);
    history_label->setWordWrap(true);
    history_label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    set_text_style(*history_label, Tone::soft, TextSize::caption);
    column->addWidget(history_label);

    auto* leave = new QPushButton(tr("Leave as it is"), this);
    leave->setObjectName(QStringLiteral("leaveButton"));
    leave->setAutoDefault(false);
    auto* amend = new QPushButton(tr("Amend"), this);
    amend->setObjectName(QStringLiteral("amendButton"));
    amend->setDefault(true);
    make_primary(*amend);
    connect(amend, &QPushButton::clicked, this, &AmendDialog::submit);
    connect(leave, &QPushButton::clicked, this, &QDialog::reject);
    auto* buttons = new QHBoxLayout;
    buttons->addStretch();
    buttons->addWidget(leave);
    buttons->addWidget(amend);
    column->addSpacing(spacing::grid_px);
    column->addLayout(buttons);
    gauge_edit_->setFocus();
    gauge_edit_->selectAll();
}

EntryTexts AmendDialog::texts() const {
    EntryTexts texts{
        time_edit_->text(), gauge_edit_->text(), register_edit_->text(), watts_edit_->text(), display_edit_->text(), remark_edit_->text(), {}};
    if (second_register_edit_ != nullptr) texts.second_register = second_register_edit_->text();
    if (const QVariant mark = mark_combo_->currentData(); mark.isValid()) texts.mark = static_cast<MarkKind>(mark.toInt());
    return texts;
}

QString AmendDialog::reason() const { return reason_edit_->text().trimmed(); }

void AmendDialog::refuse(const QString& sentence) {
    message_label_->setText(sentence);
    message_label_->setAccessibleName(sentence);
    message_label_->show();
}

void AmendDialog::submit() {
    EntryTexts typed = texts();
    // An empty time is "now" in the entry row; here it means the time that stands.
    const QString standing = EntryTexts::of(values_, zone_).time;
    if (typed.time.trimmed().isEmpty()) typed.time = standing;
    EntryReading entry = read_entry(typed, now_ms_, zone_);
    // An hour that occurs twice, and parts of a second, stand in no text.
    if (entry.values && typed.time == standing) entry.values->time_ms = values_.time_ms;
    if (!entry.values) {
        refuse(entry.message);
        return;
    }
    values_ = *entry.values;
    emit submitted();
}

} // namespace ullage
