// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/run_page.h"

#include "dialogs/amend_dialog.h"
#include "models/readings_model.h"
#include "pages/parts/page_parts.h"
#include "pages/parts/result_strip.h"
#include "pages/parts/run_head.h"
#include "pages/parts/usable_view.h"
#include "pages/run/accounts_view.h"
#include "pages/run/entry_row.h"
#include "pages/run/findings_view.h"
#include "pages/run/live_bar.h"
#include "pages/run/log_view.h"
#include "pages/run/photo_strip.h"
#include "pages/run/readings_export.h"
#include "pages/run/readings_view.h"
#include "pages/run/run_charts_panel.h"
#include "pages/run/run_photos.h"
#include "services/reminders.h"
#include "services/table_copy.h"
#include "style/words.h"

#include <QAction>
#include <QSplitter>

namespace ullage {

RunPage::RunPage(Document& document, const Reminders* reminders, QWidget* parent)
    : QWidget(parent), document_(document), reminders_(reminders), presenter_(document, reminders), model_(new ReadingsModel(document, this)),
      head_(new RunHead(this)), strip_(new ResultStrip(this)), live_(new LiveBar(document, this)), accounts_(new AccountsView(this)),
      readings_(new ReadingsView(*model_, this)), photos_(new RunPhotos(document, this)), entry_(new EntryRow(document, this)),
      charts_(new RunChartsPanel(this)), log_(new LogView(document, this)), usable_(new UsableView(this)), findings_(new FindingsView(this)) {
    setObjectName(QStringLiteral("runPage"));
    setAcceptDrops(true);
    build();
    connectParts();
    refresh();
}

void RunPage::connectParts() {
    connect(head_, &RunHead::markAsked, entry_, &EntryRow::askMark);
    connect(head_, &RunHead::endAsked, this, &RunPage::endRunAsked);
    connect(head_, &RunHead::amendAsked, this, &RunPage::amendChosenOrLast);
    connect(head_, &RunHead::ruleAsked, this, [this] { emit ruleAsked(runUuid()); });
    head_->setRemindersOffered(reminders_ != nullptr);
    if (reminders_) connect(reminders_, &Reminders::looked, this, &RunPage::showFigures);
    connect(head_, &RunHead::withdrawAsked, this, &RunPage::withdrawChosen);
    connect(head_, &RunHead::photoAsked, this, &RunPage::attachPhotoAsked);
    connect(head_, &RunHead::editAsked, this, [this] { emit editRunAsked(runUuid()); });
    for (QAction* action : head_->runActions())
        if (action->objectName() == QLatin1String("amendAction") || action->objectName() == QLatin1String("withdrawAction") ||
            action->objectName() == QLatin1String("photoAction"))
            readings_->addAction(action);
    offer_table_copy(*readings_, [this] { return chosen_readings(document_, presenter_.runUuid(), readings_->selectedReadings()); });

    connect(readings_, &ReadingsView::readingsChosen, this, [this](const std::vector<ReadingId>& chosen) { chooseReadings(chosen, readings_); });
    connect(charts_, &RunChartsPanel::readingsChosen, this, [this](const std::vector<ReadingId>& chosen) { chooseReadings(chosen, charts_); });
    connect(findings_, &FindingsView::readingsChosen, this, [this](const std::vector<ReadingId>& chosen) { chooseReadings(chosen, findings_); });
    connect(findings_, &FindingsView::assumptionAccepted, this, [this](const ReadingId& reading) { tell(presenter_.acceptAssumption(reading)); });
    connect(readings_, &ReadingsView::amendAsked, this, &RunPage::amend);
    connect(readings_, &ReadingsView::withdrawAsked, this, &RunPage::withdrawChosen);
    connect(entry_, &EntryRow::recorded, this, [this](const ReadingId& reading) { readings_->scrollTo(model_->index(model_->rowOf(reading), 0)); });

    connect(live_, &LiveBar::readAsked, this, &RunPage::readLiveAsked);
    connect(live_, &LiveBar::error, this, &RunPage::error);
    connect(log_, &LogView::importAsked, this, &RunPage::importLogAsked);
    connect(log_, &LogView::followAsked, this, &RunPage::followLogAsked);
    connect(log_, &LogView::applianceAsked, this, [this] { emit logApplianceAsked(runUuid()); });
    connect(entry_, &EntryRow::photoPasteAsked, this, &RunPage::pastePhotos);
    connect(photos_, &RunPhotos::error, this, &RunPage::error);
    // Those of the readings and those that wait for one.
    for (auto* strip : findChildren<PhotoStrip*>()) connect(strip, &PhotoStrip::saveAsked, this, &RunPage::photoSaveAsked);
    connect(photos_, &RunPhotos::readingAsked, this, [this](const ReadingId& reading) { chooseReadings({reading}, nullptr); });

    connect(&document_, &Document::readingsChanged, this, [this](const RunId& run) {
        if (run == runUuid()) follow();
    });
    for (auto signal : {&Document::runsChanged, &Document::unitsChanged, &Document::metersChanged})
        connect(&document_, signal, this, &RunPage::follow);
    for (auto signal : {&Document::opened, &Document::closed}) connect(&document_, signal, this, [this] { showRun({}); });
    minute_timer_.setSingleShot(true);
    connect(&minute_timer_, &QTimer::timeout, this, &RunPage::showFigures);
    connect(&minute_timer_, &QTimer::timeout, charts_, &RunChartsPanel::countDown);
}

void RunPage::showRun(const RunId& runUuid) {
    presenter_.setRun(runUuid);
    model_->setRun(runUuid);
    entry_->setRun(runUuid);
    photos_->setRun(runUuid);
    chooseReadings({}, nullptr);
    refresh();
    arrangeAhead();
    if (model_->rowCount() > 0) readings_->scrollToBottom();
}

void RunPage::follow() {
    stale_ = !isVisible();
    if (!stale_) refresh();
}

void RunPage::refresh() {
    stale_ = false;
    const RunRecord* record = presenter_.record();
    for (QWidget* part : {static_cast<QWidget*>(head_), static_cast<QWidget*>(strip_), static_cast<QWidget*>(levels_)})
        part->setVisible(record != nullptr);
    if (record == nullptr) return;
    head_->setRun(*record);
    live_->setRun(runUuid());
    log_->setRun(runUuid());
    charts_->setRun([this] { return presenter_.charted(); });
    usable_->setTested(presenter_.tested());
    showAccounts();
    findings_->setItems(presenter_.findings(), tr("Nothing to say yet. With readings of gauge and register the findings stand here."));
    readings_->setEmptyText(tr("No readings yet. Type what the gauge and the meter's register show into the row below and press "
                               "Enter; the time is filled in."));
    showFigures();
    updateActions();
}

void RunPage::showAccounts() {
    const TwoAccounts& accounts = presenter_.accounts();
    const bool told_before = accounts_told_;
    accounts_told_ = accounts.told;
    if (accounts_told_) accounts_->setAccounts(accounts, presenter_.record()->run, document_.clock().now_ms());
    if (!accounts_told_) placeAccounts(false);
    accounts_->setVisible(accounts_told_);
    if (accounts_told_ || told_before) arrange();
}

void RunPage::showFigures() {
    minute_timer_.start(ms_to_next_minute(document_.clock().now_ms()));
    if (presenter_.record() == nullptr) return;
    strip_->setFigures(presenter_.figures());
    // Both accounts count down with the strip.
    if (accounts_told_) accounts_->setAccounts(presenter_.accounts(), presenter_.record()->run, document_.clock().now_ms());
}

QList<QAction*> RunPage::runActions() const { return head_->runActions(); }

void RunPage::setLiveReader(LiveReader& reader) { live_->setReader(reader); }

void RunPage::setLogFollower(LogFollower& follower) { log_->setFollower(follower); }

void RunPage::focusEntry() { entry_->focusGauge(); }

void RunPage::askMark() { entry_->askMark(); }

void RunPage::recordMark(MarkKind mark) { entry_->recordMark(mark); }

void RunPage::chooseReadings(const std::vector<ReadingId>& readingUuids, const QWidget* source) {
    if (source != readings_) readings_->selectReadings(readingUuids);
    if (source != findings_) findings_->clearSelection();
    charts_->setHighlighted(readingUuids);
    photos_->setReading(readingUuids.size() == 1 ? readingUuids.front() : ReadingId());
    updateActions();
}

void RunPage::updateActions() {
    const auto chosen = readings_->selectedReadings().size();
    const bool enterable = !document_.isLooking();
    head_->setEnterable(enterable);
    head_->setReadingChosen(enterable && (chosen == 1 || (chosen == 0 && model_->rowCount() > 0)), enterable && chosen > 0);
}

void RunPage::amendChosenOrLast() {
    const std::vector<ReadingId> chosen = readings_->selectedReadings();
    // Whoever is about to type the next reading means the last one, whatever is still chosen in the table.
    const bool chosen_meant = chosen.size() == 1 && !entry_->isAncestorOf(focusWidget());
    amend(chosen_meant ? chosen.front() : presenter_.lastEntered());
}

void RunPage::amend(const ReadingId& readingUuid) {
    const auto reading = presenter_.toAmend(readingUuid);
    if (!reading) return;
    auto* dialog = new AmendDialog(reading->values, reading->history, document_.clock().now_ms(), reading->time_zone, reading->two_meters, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &AmendDialog::submitted, this, [this, dialog, uuid = reading->uuid] {
        const auto amended = presenter_.amend(uuid, dialog->values(), dialog->reason());
        if (amended) dialog->accept();
        else dialog->refuse(text_of(amended.error().sentence()));
    });
    // After the dialog the keyboard is where the next reading is typed.
    connect(
        dialog, &QDialog::finished, this,
        [this] {
            window()->activateWindow();
            focusEntry();
        },
        Qt::QueuedConnection);
    dialog->open();
}

void RunPage::withdrawChosen() { tell(presenter_.withdraw(readings_->selectedReadings())); }

void RunPage::setWithdrawnShown(bool shown) { model_->setWithdrawnShown(shown); }

void RunPage::keepDraft() { entry_->keepDraft(); }

void RunPage::takeDraft(const RunId& runUuid) {
    if (runUuid == this->runUuid()) entry_->takeDraft();
}

QString RunPage::draft() const { return entry_->texts().draft(); }

std::vector<PhotoId> RunPage::waitingPhotos() const { return entry_->waitingPhotos(); }

void RunPage::clearEntry() { entry_->clear(); }

void RunPage::tell(const Result<void>& outcome) {
    if (outcome) emit done();
    else emit error(text_of(outcome.error().sentence()));
}

} // namespace ullage
