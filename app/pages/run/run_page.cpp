// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/run_page.h"

#include "dialogs/amend_dialog.h"
#include "measure/register_correction_acceptance.h"
#include "models/readings_model.h"
#include "pages/parts/due_figures.h"
#include "pages/parts/page_parts.h"
#include "pages/parts/result_strip.h"
#include "pages/parts/run_figures.h"
#include "pages/parts/run_head.h"
#include "pages/parts/usable_view.h"
#include "pages/run/entry_row.h"
#include "pages/run/findings_view.h"
#include "pages/run/log_view.h"
#include "pages/run/photo_strip.h"
#include "pages/run/readings_export.h"
#include "pages/run/readings_view.h"
#include "pages/run/run_charts_panel.h"
#include "pages/run/run_photos.h"
#include "pages/run/run_tested.h"
#include "services/reminders.h"
#include "services/table_copy.h"
#include "style/words.h"
#include "unit/known_depths.h"

#include <QAction>
#include <QLabel>
#include <QSplitter>

#include <optional>

namespace ullage {

namespace {

const Reading* reading_of(const RunRecord& record, const std::string& uuid) {
    for (const Reading& reading : record.readings)
        if (reading.uuid == uuid) return &reading;
    return nullptr;
}

RunChartsPanel::Shown shown_in_charts(const Document& document, const std::string& uuid) {
    RunChartsPanel::Shown shown{document.sharedRun(uuid)};
    if (!shown.record) return shown;
    shown.analysis = &document.analysis(uuid);
    // Only a full drain has depths.
    if (!shown.analysis->gauge.depths.empty()) shown.depths = known_depths(*shown.record, *shown.analysis, document.unitFit(shown.record->unit.uuid));
    if (shown.record->run.end == RunEnd::still_running) shown.forecast = &document.forecast(uuid, document.clock().now_ms());
    return shown;
}

} // namespace

RunPage::RunPage(Document& document, const Reminders* reminders, QWidget* parent)
    : QWidget(parent), document_(document), reminders_(reminders), model_(new ReadingsModel(document, this)), head_(new RunHead(this)),
      strip_(new ResultStrip(this)), readings_(new ReadingsView(*model_, this)), photos_(new RunPhotos(document, this)),
      entry_(new EntryRow(document, this)), charts_(new RunChartsPanel(this)), log_(new LogView(document, this)), usable_(new UsableView(this)),
      findings_(new FindingsView(this)) {
    setObjectName(QStringLiteral("runPage"));
    setAcceptDrops(true);
    build();
    connectParts();
    refresh();
}

void RunPage::connectParts() {
    connect(head_, &RunHead::markAsked, entry_, &EntryRow::askMark);
    connect(head_, &RunHead::endAsked, this, &RunPage::endRun);
    connect(head_, &RunHead::amendAsked, this, &RunPage::amendChosenOrLast);
    connect(head_, &RunHead::ruleAsked, this, [this] { emit ruleRequested(run_uuid_); });
    head_->setRemindersOffered(reminders_ != nullptr);
    if (reminders_) connect(reminders_, &Reminders::looked, this, &RunPage::showFigures);
    connect(head_, &RunHead::withdrawAsked, this, &RunPage::withdrawChosen);
    connect(head_, &RunHead::photoAsked, this, &RunPage::attachPhotoRequested);
    connect(head_, &RunHead::editAsked, this, [this] { emit editRunRequested(run_uuid_); });
    for (QAction* action : head_->runActions())
        if (action->objectName() == QLatin1String("amendAction") || action->objectName() == QLatin1String("withdrawAction") ||
            action->objectName() == QLatin1String("photoAction"))
            readings_->addAction(action);
    offer_table_copy(*readings_, [this] { return chosen_readings(document_, run_uuid_.toStdString(), readings_->selectedReadings()); });

    connect(readings_, &ReadingsView::readingsChosen, this, [this](const QStringList& chosen) { chooseReadings(chosen, readings_); });
    connect(charts_, &RunChartsPanel::readingsChosen, this, [this](const QStringList& chosen) { chooseReadings(chosen, charts_); });
    connect(findings_, &FindingsView::readingsSelected, this, [this](const QStringList& chosen) { chooseReadings(chosen, findings_); });
    connect(findings_, &FindingsView::assumptionAccepted, this, &RunPage::acceptAssumption);
    connect(readings_, &ReadingsView::amendAsked, this, &RunPage::amend);
    connect(readings_, &ReadingsView::withdrawAsked, this, &RunPage::withdrawChosen);
    connect(entry_, &EntryRow::recorded, this, [this](const QString& reading) { readings_->scrollTo(model_->index(model_->rowOf(reading), 0)); });

    connect(log_, &LogView::importAsked, this, &RunPage::importLogRequested);
    connect(log_, &LogView::followAsked, this, &RunPage::followLogRequested);
    connect(log_, &LogView::applianceAsked, this, [this] { emit logApplianceRequested(run_uuid_); });
    connect(entry_, &EntryRow::photoPasteAsked, this, &RunPage::pastePhotos);
    connect(photos_, &RunPhotos::refused, this, &RunPage::showError);
    // Those of the readings and those that wait for one.
    for (auto* strip : findChildren<PhotoStrip*>()) connect(strip, &PhotoStrip::saveAsked, this, &RunPage::photoSaveAsked);
    connect(photos_, &RunPhotos::readingWanted, this, [this](const QString& reading) { chooseReadings({reading}, nullptr); });

    connect(&document_, &Document::readingsChanged, this, [this](const QString& run) {
        if (run == run_uuid_) refresh();
    });
    for (auto signal : {&Document::runsChanged, &Document::unitsChanged, &Document::metersChanged})
        connect(&document_, signal, this, &RunPage::refresh);
    for (auto signal : {&Document::opened, &Document::closed}) connect(&document_, signal, this, [this] { showRun({}); });
    minute_timer_.setSingleShot(true);
    connect(&minute_timer_, &QTimer::timeout, this, &RunPage::showFigures);
}

void RunPage::showRun(const QString& runUuid) {
    run_uuid_ = runUuid;
    error_bar_->hide();
    model_->setRun(runUuid);
    entry_->setRun(runUuid);
    photos_->setRun(runUuid);
    chooseReadings({}, nullptr);
    refresh();
    if (model_->rowCount() > 0) readings_->scrollToBottom();
}

void RunPage::refresh() {
    const RunRecord* record = document_.run(run_uuid_.toStdString());
    for (QWidget* part : {static_cast<QWidget*>(head_), static_cast<QWidget*>(strip_), static_cast<QWidget*>(levels_)})
        part->setVisible(record != nullptr);
    if (record == nullptr) return;
    const RunAnalysis& analysis = document_.analysis(run_uuid_.toStdString());
    head_->setRun(*record);
    log_->setRun(run_uuid_);
    const bool running = record->run.end == RunEnd::still_running;
    charts_->setRun([this] { return shown_in_charts(document_, run_uuid_.toStdString()); });
    show_tested(*usable_, *record, analysis.energy);
    // While a run goes on nobody asks where the energy went.
    std::optional<LossSplit> split;
    if (!running) split = split_losses(*record, analysis, document_.unitFit(record->unit.uuid));
    findings_->setItems(finding_items(analysis, split, record->run.kind),
                        tr("Nothing to say yet. With readings of gauge and register the findings stand here."));
    readings_->setEmptyText(tr("No readings yet. Type what the gauge and the meter's register show into the row below and press "
                               "Enter; the time is filled in."));
    showFigures();
    updateActions();
}

void RunPage::showFigures() {
    const UtcMs now_ms = document_.clock().now_ms();
    minute_timer_.start(ms_to_next_minute(now_ms));
    const RunRecord* record = document_.run(run_uuid_.toStdString());
    if (record == nullptr) return;
    OpenRunView open;
    if (reminders_ && record->run.end == RunEnd::still_running) {
        open.forecast = &reminders_->forecast(record->run.uuid);
        open.due = due_figure(reminders_->state(record->run.uuid), now_ms);
    } else if (record->run.end == RunEnd::still_running) {
        open.forecast = &document_.forecast(record->run.uuid, now_ms);
    }
    strip_->setFigures(run_figures(*record, document_.analysis(record->run.uuid), now_ms, open));
}

QList<QAction*> RunPage::runActions() const { return head_->runActions(); }

void RunPage::setLogFollower(LogFollower& follower) { log_->setFollower(follower); }

void RunPage::focusEntry() { entry_->focusGauge(); }

void RunPage::askMark() { entry_->askMark(); }

void RunPage::recordMark(MarkKind mark) { entry_->recordMark(mark); }

void RunPage::chooseReadings(const QStringList& readingUuids, const QWidget* source) {
    if (source != readings_) readings_->selectReadings(readingUuids);
    if (source != findings_) findings_->clearSelection();
    charts_->setHighlighted(readingUuids);
    photos_->setReading(readingUuids.size() == 1 ? readingUuids.front() : QString());
    updateActions();
}

void RunPage::updateActions() {
    const auto chosen = readings_->selectedReadings().size();
    head_->setReadingChosen(chosen == 1 || (chosen == 0 && model_->rowCount() > 0), chosen > 0);
}

void RunPage::amendChosenOrLast() {
    const QStringList chosen = readings_->selectedReadings();
    // Whoever is about to type the next reading means the last one, whatever is still chosen in the table.
    if (chosen.size() == 1 && !entry_->isAncestorOf(focusWidget())) return amend(chosen.front());
    const RunRecord* record = document_.run(run_uuid_.toStdString());
    if (record == nullptr) return;
    const Reading* last = nullptr;
    for (const Reading& reading : record->readings)
        if (!reading.withdrawn && (last == nullptr || reading.sequence > last->sequence)) last = &reading;
    if (last) amend(QString::fromStdString(last->uuid));
}

void RunPage::amend(const QString& readingUuid) {
    const RunRecord* record = document_.run(run_uuid_.toStdString());
    const Reading* reading = record == nullptr ? nullptr : reading_of(*record, readingUuid.toStdString());
    if (reading == nullptr) return;
    const auto history = document_.history(reading->uuid);
    const QStringList lines = history ? history_lines(history.value(), record->run.time_zone) : QStringList{text_of(history.error().sentence())};
    auto* dialog = new AmendDialog(reading->values, lines, document_.clock().now_ms(), record->run.time_zone, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &AmendDialog::submitted, this, [this, dialog, uuid = reading->uuid] {
        const auto amended = document_.amend(uuid, dialog->values(), dialog->reason());
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

void RunPage::withdrawChosen() {
    for (const QString& uuid : readings_->selectedReadings())
        if (const auto done = document_.withdrawReading(uuid.toStdString(), {}); !done) {
            showError(text_of(done.error().sentence()));
            return;
        }
}

void RunPage::acceptAssumption(const QString& readingUuid) {
    const RunRecord* record = document_.run(run_uuid_.toStdString());
    const Reading* reading = record == nullptr ? nullptr : reading_of(*record, readingUuid.toStdString());
    if (reading == nullptr) return;
    for (const RegisterCorrection& register_correction : document_.analysis(run_uuid_.toStdString()).energy.track.register_corrections) {
        if (register_correction.reading_uuid != reading->uuid) continue;
        const auto acceptance = accept_register_correction(register_correction, *reading);
        if (!acceptance) continue;
        const QString reason = text_of(acceptance->reason);
        std::optional<Error> error;
        if (acceptance->withdraw) {
            if (const auto done = document_.withdrawReading(reading->uuid, reason); !done) error = done.error();
        } else if (const auto done = document_.amend(reading->uuid, acceptance->values, reason); !done) {
            error = done.error();
        }
        if (error) showError(text_of(error->sentence()));
        return;
    }
}

void RunPage::endRun(RunEnd end) {
    const RunRecord* record = document_.run(run_uuid_.toStdString());
    if (record == nullptr) return;
    Run run = record->run;
    run.end = end;
    if (const auto done = document_.updateRun(run); !done) showError(text_of(done.error().sentence()));
}

QString RunPage::draft() const { return entry_->texts().draft(); }

void RunPage::showError(const QString& sentence) {
    error_label_->setText(sentence);
    error_bar_->show();
}

} // namespace ullage
