// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run_page.h"

#include "dialogs/amend_dialog.h"
#include "fleet/known_depths.h"
#include "measure/mend_acceptance.h"
#include "models/readings_model.h"
#include "models/table_copy.h"
#include "pages/due_figures.h"
#include "pages/entry_row.h"
#include "pages/findings_view.h"
#include "pages/page_parts.h"
#include "pages/photo_strip.h"
#include "pages/readings_export.h"
#include "pages/readings_view.h"
#include "pages/result_strip.h"
#include "pages/run_charts_panel.h"
#include "pages/run_figures.h"
#include "pages/run_head.h"
#include "pages/run_photos.h"
#include "pages/usable_view.h"
#include "services/reminders.h"
#include "style/roles.h"
#include "style/spacing.h"

#include <QAction>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>

#include <optional>

#include <algorithm>

namespace ullage {

namespace {

/// Lines of text that the levels of the page need at least.
constexpr int table_lines = 14, charts_lines = 14, results_lines = 8;

const Reading* reading_of(const RunRecord& record, const std::string& uuid) {
    for (const Reading& reading : record.readings)
        if (reading.uuid == uuid) return &reading;
    return nullptr;
}

} // namespace

RunPage::RunPage(Document& document, const Reminders* reminders, QWidget* parent)
    : QWidget(parent), document_(document), reminders_(reminders), model_(new ReadingsModel(document, this)), head_(new RunHead(this)),
      strip_(new ResultStrip(this)), readings_(new ReadingsView(*model_, this)), photos_(new RunPhotos(document, this)),
      entry_(new EntryRow(document, this)), charts_(new RunChartsPanel(this)), usable_(new UsableView(this)), findings_(new FindingsView(this)) {
    setObjectName(QStringLiteral("runPage"));
    setAcceptDrops(true);
    build();
    connectParts();
    refresh();
}

void RunPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px - 2, spacing::page_margin_px, spacing::grid_px);
    column->setSpacing(spacing::grid_px + 2);
    column->addWidget(head_);
    column->addWidget(strip_);

    error_bar_ = new_panel(this);
    error_bar_->setObjectName(QStringLiteral("runErrorBar"));
    auto* error_line = new QHBoxLayout(error_bar_);
    error_label_ = new QLabel(error_bar_);
    error_label_->setObjectName(QStringLiteral("runErrorLabel"));
    error_label_->setWordWrap(true);
    error_label_->setTextFormat(Qt::PlainText);
    set_text_style(*error_label_, Tone::fault);
    error_line->addWidget(error_label_, 1);
    auto* close = new QPushButton(tr("Close"), error_bar_);
    close->setObjectName(QStringLiteral("closeErrorButton"));
    make_quiet(*close);
    connect(close, &QPushButton::clicked, error_bar_, &QWidget::hide);
    error_line->addWidget(close);
    error_bar_->hide();
    column->addWidget(error_bar_);

    halves_ = new QSplitter(Qt::Horizontal, this);
    halves_->setObjectName(QStringLiteral("readingsSplitter"));
    halves_->setChildrenCollapsible(false);
    halves_->addWidget(buildReadings());
    QFrame* pictures = new_panel(halves_);
    auto* pictures_column = new QVBoxLayout(pictures);
    pictures_column->setContentsMargins(1, 1, 1, 1);
    pictures_column->addWidget(charts_);
    halves_->addWidget(pictures);
    levels_ = new QSplitter(Qt::Vertical, this);
    levels_->setObjectName(QStringLiteral("resultsSplitter"));
    levels_->setChildrenCollapsible(false);
    levels_->addWidget(halves_);
    levels_->addWidget(buildResults());
    levels_->setStretchFactor(0, 1);
    levels_->setStretchFactor(1, 0);
    column->addWidget(levels_, 1);
}

QWidget* RunPage::buildReadings() {
    QFrame* frame = new_panel(halves_);
    auto* column = new QVBoxLayout(frame);
    column->setContentsMargins(1, 1, 1, 1);
    column->setSpacing(0);
    column->addWidget(readings_, 1);
    column->addWidget(photos_);
    column->addWidget(entry_);
    return frame;
}

QWidget* RunPage::buildResults() {
    results_panel_ = new_panel(levels_);
    // It becomes a tab where the page is low (see arrange), and must not keep the page from becoming low.
    results_panel_->setMinimumHeight(spacing::group_gap_px);
    auto* column = new QVBoxLayout(results_panel_);
    column->setContentsMargins(1, 1, 1, 1);
    results_ = new QWidget(results_panel_);
    results_->setObjectName(QStringLiteral("resultsWidget"));
    column->addWidget(results_);
    auto* line = new QHBoxLayout(results_);
    line->setContentsMargins(14, spacing::grid_px, spacing::grid_px, spacing::grid_px);
    line->setSpacing(spacing::group_gap_px);
    line->addWidget(usable_, 1);
    line->addWidget(findings_, 3);
    return results_panel_;
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
    connect(entry_, &EntryRow::recorded, this, [this](const QString& reading) {
        readings_->scrollTo(model_->index(model_->rowOf(reading), 0));
    });

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
    // Only a full drain has depths.
    std::vector<ReferenceDepth> depths;
    if (!analysis.gauge.depths.empty()) depths = known_depths(*record, analysis, document_.unitFit(record->unit.uuid));
    const bool running = record->run.end == RunEnd::still_running;
    charts_->setRun(*record, analysis, depths,
                    running ? &document_.forecast(run_uuid_.toStdString(), document_.clock().now_ms()) : nullptr);
    usable_->setFraction(analysis.energy.usable_fraction);
    // While a run goes on nobody asks where the energy went.
    std::optional<LossSplit> split;
    if (!running) split = split_losses(*record, analysis, document_.unitFit(record->unit.uuid));
    findings_->setItems(finding_items(analysis, split),
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
    const QStringList lines = history ? history_lines(history.value(), record->run.time_zone)
                                      : QStringList{QString::fromStdString(history.error().sentence())};
    auto* dialog = new AmendDialog(reading->values, lines, document_.clock().now_ms(), record->run.time_zone, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &AmendDialog::submitted, this, [this, dialog, uuid = reading->uuid] {
        const auto amended = document_.amend(uuid, dialog->values(), dialog->reason());
        if (amended)
            dialog->accept();
        else
            dialog->refuse(QString::fromStdString(amended.error().sentence()));
    });
    // After the dialog the keyboard is where the next reading is typed.
    connect(dialog, &QDialog::finished, this, [this] {
        window()->activateWindow();
        focusEntry();
    }, Qt::QueuedConnection);
    dialog->open();
}

void RunPage::withdrawChosen() {
    for (const QString& uuid : readings_->selectedReadings())
        if (const auto done = document_.withdrawReading(uuid.toStdString(), {}); !done) {
            showError(QString::fromStdString(done.error().sentence()));
            return;
        }
}

void RunPage::acceptAssumption(const QString& readingUuid) {
    const RunRecord* record = document_.run(run_uuid_.toStdString());
    const Reading* reading = record == nullptr ? nullptr : reading_of(*record, readingUuid.toStdString());
    if (reading == nullptr) return;
    for (const Mend& mend : document_.analysis(run_uuid_.toStdString()).energy.track.mends) {
        if (mend.reading_uuid != reading->uuid) continue;
        const auto acceptance = accept_mend(mend, *reading);
        if (!acceptance) continue;
        const QString reason = QString::fromStdString(acceptance->reason);
        std::optional<Error> error;
        if (acceptance->withdraw) {
            if (const auto done = document_.withdrawReading(reading->uuid, reason); !done) error = done.error();
        } else if (const auto done = document_.amend(reading->uuid, acceptance->values, reason); !done) {
            error = done.error();
        }
        if (error) showError(QString::fromStdString(error->sentence()));
        return;
    }
}

void RunPage::endRun(RunEnd end) {
    const RunRecord* record = document_.run(run_uuid_.toStdString());
    if (record == nullptr) return;
    Run run = record->run;
    run.end = end;
    if (const auto done = document_.updateRun(run); !done) showError(QString::fromStdString(done.error().sentence()));
}

void RunPage::showError(const QString& sentence) {
    error_label_->setText(sentence);
    error_bar_->show();
}

void RunPage::arrange() {
    const int both_px = readings_->neededWidth() + charts_->neededWidth() + 2 * spacing::page_margin_px + halves_->handleWidth();
    const bool stacked = window()->width() < spacing::stacking_width_px || width() < both_px;
    const int line_px = QFontMetrics(text_font(TextSize::body)).height();
    const int free_px = height() - head_->height() - strip_->height() - 3 * spacing::page_margin_px;
    placeResults(free_px < line_px * (table_lines + results_lines + (stacked ? charts_lines : 0)));

    const Qt::Orientation wanted = stacked ? Qt::Vertical : Qt::Horizontal;
    if (halves_->orientation() != wanted || !parts_sized_) {
        halves_->setOrientation(wanted);
        const int table_px = std::max(readings_->neededWidth() + 2, width() * 48 / 100);
        halves_->setSizes(stacked ? QList<int>{height() / 2, height() / 2} : QList<int>{table_px, width() - table_px});
    }
    if (!parts_sized_) {
        const int results_px = results_lines * line_px + 2 * spacing::grid_px;
        levels_->setSizes({height() - results_px, results_px});
        parts_sized_ = isVisible();
    }
}

void RunPage::placeResults(bool as_tab) {
    const int tab = charts_->indexOf(results_);
    if (as_tab == (tab >= 0)) return;
    if (as_tab) {
        charts_->addTab(results_, tr("Findings"));
    } else {
        charts_->removeTab(tab);
        results_panel_->layout()->addWidget(results_);
        results_->show();
    }
    results_panel_->setVisible(!as_tab);
}

void RunPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void RunPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    arrange();
}

} // namespace ullage
