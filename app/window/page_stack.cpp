// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/page_stack.h"

#include "pages/bench/bench_page.h"
#include "pages/comparison/comparison_page.h"
#include "pages/meters/meters_page.h"
#include "pages/pv/pv_page.h"
#include "pages/run/run_page.h"
#include "pages/sizing/load_lists_page.h"
#include "pages/sizing/sizing_page.h"
#include "pages/unit/unit_page.h"
#include "services/analyse_units.h"
#include "services/settings.h"
#include "style/words.h"
#include "window/remembered_page.h"
#include "window/welcome_page.h"

#include <QSplitter>
#include <QTimer>

#include <algorithm>

namespace ullage {

namespace {

constexpr int rest_between_pages_ms = 20; ///< for what the user does meanwhile

} // namespace

PageStack::PageStack(Document& document, Settings& settings) : document_(document), settings_(settings), nothing_(new QWidget) {
    setObjectName(QStringLiteral("pagesStack"));
    addWidget(nothing_);
}

QSize PageStack::minimumSizeHint() const {
    constexpr int most_px = 560;
    const QSize least = QStackedWidget::minimumSizeHint();
    return {least.width(), std::min(least.height(), most_px)};
}

void PageStack::showWelcome() {
    // A window that is still to be shown may open a logbook first.
    if (currentWidget() == nothing_ && !isVisible()) return;
    if (indexOf(welcome_page_) < 0) addWidget(welcome_page_);
    setCurrentWidget(welcome_page_);
}

void PageStack::showEvent(QShowEvent* event) {
    QStackedWidget::showEvent(event);
    if (currentWidget() == nothing_) showWelcome();
}

void PageStack::forget() {
    unit_uuid_ = {};
    run_uuid_ = {};
    meter_uuid_ = {};
}

void PageStack::showRow(LogbookTreeModel::Row row, const std::string& uuid) {
    const auto entry = std::ranges::find(page_table_, row, &PageEntry::row);
    if (entry != page_table_.end()) entry->show(uuid);
}

void PageStack::leaveWhatIsGone() {
    // What was shown may have been withdrawn, or have come back on undo.
    const auto* page = currentWidget();
    if (page == run_page_ && !document_.run(run_uuid_)) {
        if (document_.unit(unit_uuid_)) showUnit(unit_uuid_);
        else showDefaultPage();
    } else if ((page == unit_page_ && !document_.unit(unit_uuid_)) || ((page == welcome_page_ || page == nothing_) && !document_.units().empty())) {
        showDefaultPage();
    }
}

void PageStack::keepSplitters() {
    for (const auto* page : restored_)
        for (const auto* splitter : page->findChildren<QSplitter*>()) settings_.setLayout(splitter->objectName(), splitter->saveState());
}

void PageStack::showUnit(const UnitId& unit_uuid) {
    if (!document_.unit(unit_uuid) || !analyseFirst({unit_uuid}, true)) return emit moved();
    unit_uuid_ = unit_uuid;
    run_uuid_ = {};
    unit_page_->showUnit(unit_uuid);
    setCurrentWidget(unit_page_);
    emit moved();
    rememberPage();
}

void PageStack::showRun(const RunId& run_uuid) {
    const auto* record = document_.run(run_uuid);
    if (!record) return;
    if (const UnitId unit = record->unit.uuid; !analyseFirst({unit}, true)) return emit moved();
    record = document_.run(run_uuid);
    if (!record) return;
    unit_uuid_ = record->unit.uuid;
    const bool other = run_uuid_ != run_uuid || currentWidget() != run_page_;
    run_uuid_ = run_uuid;
    if (other) run_page_->showRun(run_uuid);
    setCurrentWidget(run_page_);
    QTimer::singleShot(0, this, [this] { restoreSplitters(*run_page_); });
    emit moved();
    rememberPage();
}

void PageStack::showMeter(const MeterId& meter_uuid) {
    if (!document_.meter(meter_uuid)) return;
    meter_uuid_ = meter_uuid;
    meters_page_->showMeter(meter_uuid);
    setCurrentWidget(meters_page_);
    emit moved();
    rememberPage();
}

void PageStack::showComparison() {
    if (!document_.isOpen()) return;
    setCurrentWidget(comparison_page_); // which brings itself up to date
    QTimer::singleShot(0, this, [this] { restoreSplitters(*comparison_page_); });
    emit moved();
    rememberPage();
}

void PageStack::showBench() {
    if (!document_.isOpen()) return;
    setCurrentWidget(bench_page_);
    emit moved();
    rememberPage();
}

void PageStack::enterReading(const RunId& run_uuid) {
    if (!document_.run(run_uuid)) return;
    showRun(run_uuid);
    run_page_->focusEntry();
}

void PageStack::showPvInput() {
    if (!document_.isOpen()) return;
    pv_page_->refresh();
    setCurrentWidget(pv_page_);
    emit moved();
    rememberPage();
}

void PageStack::showPvSheet(const PvSheetId& sheet_uuid) {
    showPvInput();
    if (document_.isOpen()) pv_page_->showSheet(sheet_uuid);
}

void PageStack::showSizing() {
    if (!document_.isOpen()) return;
    std::vector<UnitId> units;
    if (!document_.loadLists().empty())
        for (const Unit& unit : document_.units()) units.push_back(unit.uuid);
    if (!analyseFirst(units, false)) return emit moved();
    setCurrentWidget(sizing_page_);
    sizing_page_->refresh();
    emit moved();
    rememberPage();
}

void PageStack::showLoadList(const LoadListId& list_uuid) {
    if (!document_.isOpen()) return;
    load_lists_page_->showLoadList(list_uuid);
    setCurrentWidget(load_lists_page_);
    emit moved();
    rememberPage();
}

void PageStack::showLoadLists() { showLoadList(load_lists_page_->selectedList()); }

void PageStack::showDefaultPage() {
    for (const auto* record : document_.runs())
        if (record->run.end == RunEnd::still_running) return showRun(record->run.uuid);
    if (!document_.units().empty()) return showUnit(document_.units().front().uuid);
    unit_uuid_ = {};
    run_uuid_ = {};
    showWelcome();
    emit moved();
}

bool PageStack::analyseFirst(const std::vector<UnitId>& unit_uuids, bool with_runs) {
    if (document_.readingsToAnalyse(unit_uuids, with_runs) <= Document::most_analysed_at_once) return true;
    // Nobody should read meanwhile that there is nothing in the logbook.
    if (currentWidget() == welcome_page_) setCurrentWidget(nothing_);
    const bool whole = analyse_units_beside(document_, unit_uuids, with_runs, window());
    emit analysed();
    return whole;
}

const PageEntry* PageStack::currentPage() const {
    const auto found = std::ranges::find_if(page_table_, [page = currentWidget()](const PageEntry& entry) { return page && entry.widget() == page; });
    return found == page_table_.end() ? nullptr : &*found;
}

UnitId PageStack::currentUnit() const {
    const auto* page = currentWidget();
    return page == run_page_ || page == unit_page_ ? unit_uuid_ : UnitId();
}

void PageStack::rememberPage() {
    if (!document_.isOpen()) return;
    const PageEntry* page = currentPage();
    if (!page) return; // what stands there while a logbook is being opened was not chosen
    remember_page(settings_, document_.path(), {page->name, page->uuid()});
}

bool PageStack::showRememberedPage() {
    const auto remembered = remembered_page(settings_, document_.path());
    if (!remembered) return false;
    const auto entry = std::ranges::find(page_table_, remembered->name, &PageEntry::name);
    if (entry == page_table_.end() || !entry->is_there(remembered->uuid)) return false;
    entry->show(remembered->uuid);
    return true;
}

void PageStack::makeRememberedPage(const QString& logbook) {
    const auto remembered = remembered_page(settings_, logbook);
    if (!remembered) return;
    const auto entry = std::ranges::find(page_table_, remembered->name, &PageEntry::name);
    if (entry != page_table_.end()) entry->make();
}

void PageStack::restoreSplitters(const QWidget& page) {
    if (!page.isVisible() || restored_.contains(&page)) return;
    restored_.insert(&page);
    for (auto* splitter : page.findChildren<QSplitter*>()) {
        const auto orientation = splitter->orientation();
        const auto sizes = splitter->sizes();
        if (!splitter->restoreState(settings_.layout(splitter->objectName()))) continue;
        // The page stacks its parts by its own width: places of the other arrangement do not fit.
        if (splitter->orientation() == orientation) continue;
        splitter->setOrientation(orientation);
        splitter->setSizes(sizes);
    }
}

bool PageStack::makeNextPage() {
    const auto next = std::ranges::find_if(page_table_, [](const PageEntry& entry) { return entry.widget() == nullptr; });
    if (next == page_table_.end()) return false;
    next->make();
    return true;
}

void PageStack::makeAllPages() {
    while (makeNextPage()) {}
}

void PageStack::makePagesInTurns() {
    if (makeNextPage()) QTimer::singleShot(rest_between_pages_ms, this, &PageStack::makePagesInTurns);
}

} // namespace ullage
