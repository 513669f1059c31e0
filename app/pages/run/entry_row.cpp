// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/entry_row.h"

#include "pages/parts/page_parts.h"
#include "pages/run/photo_intake.h"
#include "pages/run/waiting_photos.h"
#include "style/roles.h"
#include "style/words.h"

#include <QAccessible>
#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QDragEnterEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QMimeData>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QToolButton>

#include <algorithm>
#include <iterator>

namespace ullage {

namespace {

constexpr int draft_delay_ms = 300;

/// Whether pasting here means a photo. A field takes text where there is any, but a copied file also offers its name as text.
bool paste_means_photo() {
    const QMimeData* held = QApplication::clipboard()->mimeData();
    if (held == nullptr) return false;
    return holds_picture_files(*held) || (!held->hasText() && holds_pictures(*held));
}

} // namespace

EntryRow::EntryRow(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), mark_combo_(new QComboBox(this)), more_button_(new QToolButton(this)),
      record_button_(new QPushButton(tr("Record"), this)), extras_(new QWidget(this)), message_label_(new QLabel(this)),
      question_bar_(new QuestionBar(this)), flow_(new EntryFlow(document, *question_bar_, this)), photos_(new WaitingPhotos(document, this)) {
    setObjectName(QStringLiteral("entryRow"));
    buildFields();
    buildRows();
    orderTabs();
    draft_timer_.setSingleShot(true);
    draft_timer_.setInterval(draft_delay_ms);
    connect(&draft_timer_, &QTimer::timeout, this, &EntryRow::keepDraft);
    minute_timer_.setSingleShot(true);
    connect(&minute_timer_, &QTimer::timeout, this, &EntryRow::showNow);
    connect(qApp, &QApplication::focusChanged, this, [this](QWidget* before, QWidget* after) {
        if (before != nullptr && isAncestorOf(before) && (after == nullptr || !isAncestorOf(after))) keepDraft();
    });
    connect(&document_, &Document::runsChanged, this, &EntryRow::showSecondRegister);
    setRun({});
}

void EntryRow::hideEvent(QHideEvent* event) {
    keepDraft();
    QWidget::hideEvent(event);
}

bool EntryRow::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::DragEnter && holds_pictures(*static_cast<QDragEnterEvent*>(event)->mimeData())) {
        // A field would take the file's name as text; unanswered, the drag goes on to the page.
        event->ignore();
        return true;
    }
    if (event->type() == QEvent::ShortcutOverride) {
        // An empty row has nothing to take back by itself: the key means the logbook. Keys by which X11 lets a field delete or move are the menus'.
        const auto* key = static_cast<QKeyEvent*>(event);
        const bool steps = key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo);
        constexpr int of_menus[] = {Qt::Key_D, Qt::Key_E, Qt::Key_H, Qt::Key_K, Qt::Key_U};
        const bool menu = key->modifiers() == Qt::ControlModifier && std::ranges::find(of_menus, key->key()) != std::end(of_menus);
        if (menu || (steps && texts().empty())) {
            event->ignore();
            return true;
        }
    }
    if (event->type() == QEvent::KeyPress) {
        if (static_cast<QKeyEvent*>(event)->matches(QKeySequence::Paste) && paste_means_photo()) {
            emit photoPasteAsked();
            return true;
        }
        switch (static_cast<QKeyEvent*>(event)->key()) {
        case Qt::Key_Return:
        case Qt::Key_Enter: record(); return true;
        case Qt::Key_Escape: clear(); return true;
        default: break;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void EntryRow::setRun(const RunId& runUuid) {
    keepDraft();
    run_uuid_ = runUuid;
    const bool known = document_.run(runUuid) != nullptr;
    setEnabled(known && !document_.isLooking());
    photos_->setRun(runUuid);
    flow_->setRun(runUuid);
    showMessage({});
    setTexts(known ? EntryTexts::fromDraft(document_.draft(runUuid)) : EntryTexts());
    showSecondRegister();
    showNow();
}

void EntryRow::takeDraft() {
    if (run_uuid_.empty()) return;
    draft_timer_.stop();
    flow_->drop();
    showMessage({});
    setTexts(EntryTexts::fromDraft(document_.draft(run_uuid_)));
}

void EntryRow::showSecondRegister() {
    const auto* run = document_.run(run_uuid_);
    second_register_edit_->setVisible((run != nullptr && run->run.second_meter_uuid) || !second_register_edit_->text().isEmpty());
    arrange();
}

EntryTexts EntryRow::texts() const {
    EntryTexts texts{
        time_edit_->text(), gauge_edit_->text(), register_edit_->text(), watts_edit_->text(), display_edit_->text(), remark_edit_->text(), {}};
    texts.second_register = second_register_edit_->text();
    if (const QVariant mark = mark_combo_->currentData(); mark.isValid()) texts.mark = static_cast<MarkKind>(mark.toInt());
    return texts;
}

void EntryRow::setTexts(const EntryTexts& texts) {
    const QScopedValueRollback filling(filling_, true);
    time_edit_->setText(texts.time);
    gauge_edit_->setText(texts.gauge);
    register_edit_->setText(texts.register_value);
    second_register_edit_->setText(texts.second_register);
    watts_edit_->setText(texts.watts);
    display_edit_->setText(texts.display_watts);
    remark_edit_->setText(texts.remark);
    mark_combo_->setCurrentIndex(texts.mark ? std::max(0, mark_combo_->findData(static_cast<int>(*texts.mark))) : 0);
    setUnfolded(texts.mark.has_value() || !texts.display_watts.isEmpty());
}

std::vector<PhotoId> EntryRow::waitingPhotos() const { return photos_->uuids(); }

QString EntryRow::message() const { return message_label_->isHidden() ? QString() : message_label_->text(); }

void EntryRow::takeTime(const QString& text) {
    time_edit_->selectAll();
    time_edit_->insert(text); // so that Ctrl+Z in the field brings back what stood there
    time_edit_->setFocus(Qt::OtherFocusReason);
}

void EntryRow::edited() {
    photos_->setTimeText(time_edit_->text());
    if (filling_) return;
    flow_->drop();
    showMessage({});
    draft_timer_.start();
}

void EntryRow::showMessage(const QString& message, QWidget* field) {
    for (const EntryField each : {EntryField::time, EntryField::gauge, EntryField::register_value, EntryField::second_register, EntryField::watts,
                                  EntryField::display_watts, EntryField::mark, EntryField::remark})
        set_wrong(*widgetOf(each), widgetOf(each) == field && !message.isEmpty());
    message_label_->setText(message);
    message_label_->setVisible(!message.isEmpty());
    if (message.isEmpty()) return;
    message_label_->setAccessibleName(message);
    QAccessibleEvent alert(message_label_, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
    if (field != nullptr) field->setFocus(Qt::OtherFocusReason);
}

QWidget* EntryRow::widgetOf(EntryField field) const {
    switch (field) {
    case EntryField::time: return time_edit_;
    case EntryField::gauge: return gauge_edit_;
    case EntryField::register_value: return register_edit_;
    case EntryField::second_register: return second_register_edit_;
    case EntryField::watts: return watts_edit_;
    case EntryField::display_watts: return display_edit_;
    case EntryField::mark: return mark_combo_;
    case EntryField::remark: return remark_edit_;
    }
    return gauge_edit_;
}

void EntryRow::record() {
    showMessage({});
    flow_->record(texts());
}

void EntryRow::clear() {
    flow_->drop();
    showMessage({});
    setTexts({});
    keepDraft();
    showNow();
    focusGauge();
}

void EntryRow::keepDraft() {
    draft_timer_.stop();
    if (run_uuid_.empty() || document_.run(run_uuid_) == nullptr) return;
    const QString draft = texts().draft();
    if (draft == document_.draft(run_uuid_)) return;
    if (const auto kept = document_.keepDraft(run_uuid_, draft); !kept && message().isEmpty())
        showMessage(tr("What is typed here is not on the disk. %1").arg(text_of(kept.error().sentence())));
}

void EntryRow::showNow() {
    const RunRecord* run = document_.run(run_uuid_);
    const UtcMs now_ms = document_.clock().now_ms();
    time_edit_->setPlaceholderText(run == nullptr ? QString() : raw_text(clock_text(now_ms, run->run.time_zone)));
    minute_timer_.start(ms_to_next_minute(now_ms));
}

void EntryRow::focusField(EntryField field) {
    QWidget* widget = widgetOf(field);
    widget->setFocus(Qt::OtherFocusReason);
    if (auto* edit = qobject_cast<QLineEdit*>(widget)) edit->selectAll();
}

void EntryRow::focusGauge() {
    gauge_edit_->setFocus(Qt::OtherFocusReason);
    gauge_edit_->selectAll();
}

void EntryRow::recordMark(MarkKind mark) {
    auto marked = texts();
    marked.mark = mark;
    setTexts(marked);
    edited();
    record();
}

void EntryRow::askMark() {
    setUnfolded(true);
    mark_combo_->setFocus(Qt::OtherFocusReason);
    mark_combo_->showPopup();
}

} // namespace ullage
