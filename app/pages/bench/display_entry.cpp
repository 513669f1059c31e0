// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/bench/display_entry.h"

#include "style/roles.h"
#include "style/spacing.h"
#include "style/style_sheet.h"
#include "style/words.h"

#include <QAccessible>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScopedValueRollback>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage {

namespace {

constexpr int keep_after_ms = 300;

} // namespace

DisplayEntry::DisplayEntry(Document& document, QWidget* parent)
    : QFrame(parent), document_(document), title_label_(new QLabel(this)), rest_label_(new QLabel(this)), message_label_(new QLabel(this)),
      question_bar_(new QuestionBar(this)), flow_(new EntryFlow(document, *question_bar_, this)) {
    setObjectName(QStringLiteral("displayEntry"));
    make_panel(*this);
    auto* fields = new QGridLayout;
    fields->setHorizontalSpacing(spacing::panel_gap_px);
    const auto place = [&](QLineEdit* field, int column) {
        auto* label = new QLabel(field->accessibleName(), this);
        label->setBuddy(field);
        fields->addWidget(label, 0, column);
        fields->addWidget(field, 1, column);
        fields->setColumnStretch(column, column == 0 ? 2 : column == 1 ? 3 : 0);
        return label;
    };
    place(gauge_edit_ = addField("displayGaugeEdit", tr("gauge, %")), 0);
    place(register_edit_ = addField("displayRegisterEdit", tr("register, Wh")), 1);
    second_label_ = place(second_edit_ = addField("displaySecondEdit", tr("second register, Wh")), 2);
    title_label_->setObjectName(QStringLiteral("displayEntryTitle"));
    rest_label_->setObjectName(QStringLiteral("displayEntryRest"));
    message_label_->setObjectName(QStringLiteral("displayEntryMessage"));
    for (QLabel* label : {title_label_, rest_label_, message_label_}) {
        label->setTextFormat(Qt::PlainText);
        label->setWordWrap(true);
    }
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px, spacing::page_margin_px, spacing::page_margin_px);
    column->setSpacing(spacing::grid_px);
    column->addWidget(title_label_);
    column->addLayout(fields);
    column->addWidget(rest_label_);
    column->addWidget(message_label_);
    column->addWidget(question_bar_);
    setTabOrder(gauge_edit_, register_edit_);
    setTabOrder(register_edit_, second_edit_);
    draft_timer_.setSingleShot(true);
    draft_timer_.setInterval(keep_after_ms);
    connect(&draft_timer_, &QTimer::timeout, this, &DisplayEntry::keepDraft);
    connect(flow_, &EntryFlow::refused, this, [this](const QString& message, EntryField field) { showMessage(message, fieldOf(field)); });
    connect(flow_, &EntryFlow::failed, this, [this](const QString& message) { showMessage(message, gauge_edit_); });
    connect(flow_, &EntryFlow::asked, this, [this] {
        keepDraft();
        emit resized();
    });
    connect(flow_, &EntryFlow::correctionAsked, this, [this](EntryField field) {
        fieldOf(field)->setFocus(Qt::OtherFocusReason);
        fieldOf(field)->selectAll();
        emit resized();
    });
    connect(flow_, &EntryFlow::recorded, this, [this] {
        const QScopedValueRollback filling(filling_, true);
        for (QLineEdit* field : {gauge_edit_, register_edit_, second_edit_}) field->clear();
        kept_ = {};
        leave();
    });
    hide();
}

QLineEdit* DisplayEntry::addField(const char* name, const QString& label) {
    auto* field = new QLineEdit(this);
    field->setObjectName(QLatin1String(name));
    field->setAccessibleName(label);
    field->installEventFilter(this);
    connect(field, &QLineEdit::textChanged, this, &DisplayEntry::edited);
    return field;
}

void DisplayEntry::setLook(const Palette& colours, int digit_px) {
    QString sheet = style_sheet(colours, font());
    sheet += QStringLiteral("QWidget { font-size: %1px; } QLineEdit { font-size: %2px; font-weight: bold; } "
                            "QFrame#displayEntry { background: %3; border: 3px solid %4; } QLabel { color: %5; }"
                            "QLabel#displayEntryMessage { color: %6; } QLabel#displayEntryRest { color: %7; }")
                 .arg(std::max(12, digit_px / 3))
                 .arg(digit_px)
                 .arg(colours.panel.name(), colours.accent.name(), colours.ink.name(), colours.fault_ink.name(), colours.soft.name());
    if (sheet != styleSheet()) setStyleSheet(sheet);
}

void DisplayEntry::open(const RunId& runUuid, const QString& title) {
    if (isVisible()) leave();
    run_uuid_ = runUuid;
    const RunRecord* run = document_.run(run_uuid_);
    if (run == nullptr) return;
    flow_->setRun(run_uuid_);
    kept_ = EntryTexts::fromDraft(document_.draft(run_uuid_));
    {
        const QScopedValueRollback filling(filling_, true);
        gauge_edit_->setText(kept_.gauge);
        register_edit_->setText(kept_.register_value);
        second_edit_->setText(kept_.second_register);
    }
    const bool two = run->run.second_meter_uuid.has_value() || !kept_.second_register.isEmpty();
    second_edit_->setVisible(two);
    second_label_->setVisible(two);
    title_label_->setText(title);
    QStringList rest;
    for (const QString& text : {kept_.time, kept_.watts, kept_.display_watts, kept_.remark})
        if (!text.trimmed().isEmpty()) rest << text.trimmed();
    if (kept_.mark) rest << text_of(say_mark(*kept_.mark));
    rest_label_->setText(rest.isEmpty()
                             ? tr("Enter records, Esc goes back.")
                             : tr("With what is half typed on its page: %1. Enter records, Esc goes back.").arg(rest.join(QStringLiteral(", "))));
    message_label_->hide();
    show();
    raise();
    gauge_edit_->setFocus(Qt::OtherFocusReason);
    gauge_edit_->selectAll();
    emit resized();
}

void DisplayEntry::leave() {
    keepDraft();
    flow_->drop();
    hide();
    emit left(run_uuid_);
}

EntryTexts DisplayEntry::texts() const {
    EntryTexts texts = kept_;
    texts.gauge = gauge_edit_->text();
    texts.register_value = register_edit_->text();
    texts.second_register = second_edit_->text();
    return texts;
}

void DisplayEntry::keepDraft() {
    draft_timer_.stop();
    if (document_.run(run_uuid_) == nullptr) return;
    const QString draft = texts().draft();
    if (draft == document_.draft(run_uuid_)) return;
    if (const auto kept = document_.keepDraft(run_uuid_, draft); !kept && message_label_->isHidden())
        showMessage(tr("What is typed here is not on the disk. %1").arg(text_of(kept.error().sentence())), nullptr);
}

void DisplayEntry::edited() {
    if (filling_) return;
    flow_->drop();
    showMessage({}, nullptr);
    draft_timer_.start();
}

QLineEdit* DisplayEntry::fieldOf(EntryField field) const {
    if (field == EntryField::register_value) return register_edit_;
    return field == EntryField::second_register && !second_edit_->isHidden() ? second_edit_ : gauge_edit_;
}

void DisplayEntry::showMessage(const QString& message, QWidget* field) {
    for (QLineEdit* each : {gauge_edit_, register_edit_, second_edit_}) set_wrong(*each, each == field && !message.isEmpty());
    const bool changed = message != message_label_->text() || message_label_->isHidden() != message.isEmpty();
    message_label_->setText(message);
    message_label_->setVisible(!message.isEmpty());
    if (changed) emit resized();
    if (message.isEmpty()) return;
    message_label_->setAccessibleName(message);
    QAccessibleEvent alert(message_label_, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
    if (field != nullptr) field->setFocus(Qt::OtherFocusReason);
}

bool DisplayEntry::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        switch (static_cast<QKeyEvent*>(event)->key()) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
            showMessage({}, nullptr);
            flow_->record(texts());
            return true;
        case Qt::Key_Escape: leave(); return true;
        default: break;
        }
    }
    return QFrame::eventFilter(watched, event);
}

void DisplayEntry::keyPressEvent(QKeyEvent* event) {
    // Nothing typed while a question stands means the display below.
    if (event->key() == Qt::Key_Escape) leave();
    event->accept();
}

} // namespace ullage
