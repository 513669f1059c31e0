// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/entry_row.h"

#include "base/number.h"
#include "formats/entry/entry_text.h"
#include "measure/before_reset.h"
#include "measure/entry_mend.h"
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
      question_bar_(new QuestionBar(this)), photos_(new WaitingPhotos(document, this)) {
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
    if (event->type() == QEvent::ShortcutOverride && texts().empty()) {
        // An empty row has nothing to take back by itself: the key means the logbook.
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) {
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

void EntryRow::setRun(const QString& runUuid) {
    keepDraft();
    run_uuid_ = runUuid;
    const bool known = document_.run(utf8_of(runUuid)) != nullptr;
    setEnabled(known);
    questioned_.reset();
    question_bar_->drop();
    showMessage({});
    photos_->setRun(runUuid);
    setTexts(known ? EntryTexts::fromDraft(document_.draft(utf8_of(runUuid))) : EntryTexts());
    showSecondRegister();
    showNow();
}

void EntryRow::showSecondRegister() {
    const auto* run = document_.run(utf8_of(run_uuid_));
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

std::vector<std::string> EntryRow::waitingPhotos() const { return photos_->uuids(); }

QString EntryRow::message() const { return message_label_->isHidden() ? QString() : message_label_->text(); }

void EntryRow::takeTime(const QString& text) {
    time_edit_->selectAll();
    time_edit_->insert(text); // so that Ctrl+Z in the field brings back what stood there
    time_edit_->setFocus(Qt::OtherFocusReason);
}

void EntryRow::edited() {
    photos_->setTimeText(time_edit_->text());
    if (filling_) return;
    questioned_.reset();
    question_bar_->drop();
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
    const RunRecord* run = document_.run(utf8_of(run_uuid_));
    if (run == nullptr) {
        showMessage(tr("This run is no longer in the open logbook; what you typed stands here until you choose another run."));
        return;
    }
    const UtcMs now_ms = document_.clock().now_ms();
    const EntryReading entry = read_entry(texts(), now_ms, run->run.time_zone, steps_of(*run));
    if (!entry.values) {
        showMessage(entry.message, widgetOf(entry.field));
        return;
    }
    showMessage({});
    const auto doubts = entry_doubts(*run, *entry.values, now_ms);
    if (doubts.empty()) {
        write({*entry.values});
        return;
    }
    QStringList sentences;
    for (const Doubt& doubt : doubts) sentences << text_of(doubt.sentence);
    QString question = sentences.join(QStringLiteral("; "));
    question[0] = question[0].toUpper();
    questioned_ = entry.values;
    doubted_ = doubts.front().part;
    const bool fell = std::ranges::any_of(doubts, [](const Doubt& d) { return d.kind == DoubtKind::register_fell; });
    mended_ = mended_entry(*run, *entry.values, doubts, now_ms);
    const QString meant = mended_ ? tr("%1 Wh").arg(text_of(exact_text(*mended_->register_wh))) : QString();
    question_bar_->ask(question + tr(". Is that right?"), fell && !texts().mark, meant);
    keepDraft();
}

void EntryRow::answer(QuestionBar::Answer answer) {
    if (!questioned_) return;
    ReadingValues values = *questioned_;
    switch (answer) {
    case QuestionBar::Answer::correct:
        questioned_.reset();
        focusDoubted();
        return;
    case QuestionBar::Answer::zeroed:
        question_bar_->askValue(tr("What did the register show just before? With it nothing is missing. Where it is not known, press Enter."));
        return;
    case QuestionBar::Answer::mended: values = mended_.value_or(values); break;
    case QuestionBar::Answer::swapped: values.mark = MarkKind::meter_swapped; break;
    case QuestionBar::Answer::keep: break;
    }
    questioned_.reset();
    write({values});
}

void EntryRow::takeBefore(const QString& text) {
    if (!questioned_) return;
    ReadingValues values = *questioned_;
    if (text.trimmed().isEmpty()) {
        values.mark = MarkKind::meter_zeroed;
        questioned_.reset();
        question_bar_->drop();
        return write({values});
    }
    const RunRecord* run = document_.run(utf8_of(run_uuid_));
    const auto before_wh = parse_register_wh(utf8_of(text.trimmed()), run == nullptr ? std::nullopt : steps_of(*run).first_wh);
    if (run == nullptr || !before_wh) return question_bar_->refuseValue(before_wh ? QString() : text_of(before_wh.error().sentence()));
    const auto readings = readings_of_reset(*run, values, before_wh.value());
    if (!readings) return question_bar_->refuseValue(text_of(readings.error().sentence()));
    questioned_.reset();
    question_bar_->drop();
    write(readings.value());
}

void EntryRow::write(const std::vector<ReadingValues>& values) {
    const auto noted = document_.recordTogether(utf8_of(run_uuid_), values, photos_->uuids());
    if (!noted) {
        showMessage(tr("Not recorded. %1").arg(text_of(noted.error().sentence())));
        focusGauge();
        return;
    }
    clear();
    emit recorded(raw_text(noted.value().uuid));
}

void EntryRow::clear() {
    questioned_.reset();
    question_bar_->drop();
    showMessage({});
    setTexts({});
    keepDraft();
    showNow();
    focusGauge();
}

void EntryRow::keepDraft() {
    draft_timer_.stop();
    if (run_uuid_.isEmpty() || document_.run(utf8_of(run_uuid_)) == nullptr) return;
    const QString draft = texts().draft();
    if (draft == document_.draft(utf8_of(run_uuid_))) return;
    if (const auto kept = document_.keepDraft(utf8_of(run_uuid_), draft); !kept && message().isEmpty())
        showMessage(tr("What is typed here is not on the disk. %1").arg(text_of(kept.error().sentence())));
}

void EntryRow::showNow() {
    const RunRecord* run = document_.run(utf8_of(run_uuid_));
    const UtcMs now_ms = document_.clock().now_ms();
    time_edit_->setPlaceholderText(run == nullptr ? QString() : raw_text(clock_text(now_ms, run->run.time_zone)));
    minute_timer_.start(ms_to_next_minute(now_ms));
}

void EntryRow::focusDoubted() {
    QLineEdit* field = gauge_edit_;
    switch (doubted_) {
    case DoubtedPart::time: field = time_edit_; break;
    case DoubtedPart::register_value: field = register_edit_; break;
    case DoubtedPart::meter_power: field = watts_edit_; break;
    case DoubtedPart::display_power: field = display_edit_; break;
    case DoubtedPart::run:
    case DoubtedPart::gauge: break;
    }
    field->setFocus(Qt::OtherFocusReason);
    field->selectAll();
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
