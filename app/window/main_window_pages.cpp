// SPDX-License-Identifier: GPL-3.0-or-later
// How each page is made when it is first needed, and what it tells the window.
#include "window/main_window.h"

#include "pages/bench/bench_page.h"
#include "pages/comparison/comparison_page.h"
#include "pages/meters/meters_page.h"
#include "pages/pv/pv_page.h"
#include "pages/run/run_page.h"
#include "pages/sizing/load_lists_page.h"
#include "pages/sizing/sizing_page.h"
#include "pages/unit/unit_page.h"
#include "services/settings.h"
#include "style/words.h"
#include "window/message_bar.h"

#include <QCryptographicHash>
#include <QStackedWidget>
#include <QTimer>

#include <algorithm>
#include <type_traits>
#include <utility>

namespace ullage {

namespace {

constexpr int rest_between_pages_ms = 20; ///< for what the user does meanwhile
const QString kwh_price_name = QStringLiteral("kwh-price");
const QString comparison_columns = QStringLiteral("comparisonColumns");

/// Which logbooks were compared beside the one at `path`.
QString compared_logbooks_name(const QString& path) {
    return QStringLiteral("comparedWith-") + QString::fromLatin1(QCryptographicHash::hash(path.toUtf8(), QCryptographicHash::Sha1).toHex());
}

} // namespace

void MainWindow::preparePages() {
    using Row = LogbookTreeModel::Row;
    const auto nothing = [] { return std::string(); };
    const auto always = [](const std::string&) { return true; };
    // The likeliest first: in this order they are made in quiet moments.
    addPage(
        run_page_, Row::run, [this] { return new RunPage(document_, reminders_); }, &MainWindow::connectRunPage, &MainWindow::showRun,
        [this] { return run_uuid_; }, [this](const std::string& uuid) { return document_.run(uuid) != nullptr; });
    addPage(
        unit_page_, Row::unit, [this] { return new UnitPage(document_); }, &MainWindow::connectUnitPage, &MainWindow::showUnit,
        [this] { return unit_uuid_; }, [this](const std::string& uuid) { return document_.unit(uuid) != nullptr; });
    addPage(
        comparison_page_, Row::comparison, [this] { return new ComparisonPage(document_, prompts_); }, &MainWindow::connectComparisonPage,
        [this](const std::string&) { showComparison(); }, nothing, always);
    addPage(
        bench_page_, Row::bench, [this] { return new BenchPage(document_, *reminders_); }, &MainWindow::connectBenchPage,
        [this](const std::string&) { showBench(); }, nothing, always);
    addPage(
        sizing_page_, Row::sizing, [this] { return new SizingPage(document_); }, &MainWindow::connectSizingPage,
        [this](const std::string&) { showSizing(); }, nothing, always);
    addPage(
        load_lists_page_, Row::load_list, [this] { return new LoadListsPage(document_); }, &MainWindow::connectLoadListsPage,
        &MainWindow::showLoadList, [this] { return load_lists_page_->selectedList(); }, always);
    addPage(
        pv_page_, Row::pv_input, [this] { return new PvPage(document_); }, &MainWindow::connectPvPage, [this](const std::string&) { showPvInput(); },
        nothing, always);
    addPage(
        meters_page_, Row::meter, [this] { return new MetersPage(document_); }, &MainWindow::connectMetersPage, &MainWindow::showMeter,
        [this] { return meter_uuid_; }, [this](const std::string& uuid) { return document_.meter(uuid) != nullptr; });
}

template <class Page, class Make, class Show, class Uuid, class IsThere>
void MainWindow::addPage(LatePage<Page>& page, LogbookTreeModel::Row row, Make make, void (MainWindow::*connect_page)(), Show show, Uuid uuid,
                         IsThere is_there) {
    page.comeFrom(std::move(make), [this, &page, connect_page] {
        pageMade(page);
        (this->*connect_page)();
    });
    page_table_.push_back({page.name(), row, [&page] { return page.widget(); }, [&page] { (void)page.get(); },
                           [this, show](const std::string& shown) {
                               if constexpr (std::is_member_function_pointer_v<Show>) (this->*show)(shown);
                               else show(shown);
                           },
                           uuid, is_there});
}

const PageEntry* MainWindow::currentPage() const {
    const auto found =
        std::ranges::find_if(page_table_, [page = pages_->currentWidget()](const PageEntry& entry) { return page && entry.widget() == page; });
    return found == page_table_.end() ? nullptr : &*found;
}

template <class Page>
void MainWindow::pageMade(LatePage<Page>& page) {
    pages_->addWidget(page);
    // What any page notices, and what goes wrong there, stands in the one bar.
    if constexpr (requires { &Page::notice; }) connect(page.get(), &Page::notice, messages_, &MessageBar::showNote);
    if constexpr (requires { &Page::error; }) connect(page.get(), &Page::error, messages_, &MessageBar::showError);
    // The window answers an event of the document after its pages, since it may show one of them then.
    document_.disconnect(this);
    connectDocument();
}

void MainWindow::connectBenchPage() {
    connect(bench_page_, &BenchPage::readingAsked, this, [this](const QString& run) { enterReading(utf8_of(run)); });
    connect(bench_page_, &BenchPage::ruleAsked, this, [this](const QString& run) { editRule(utf8_of(run)); });
    connect(bench_page_, &BenchPage::startRunAsked, this, &MainWindow::startRun);
}

void MainWindow::connectPvPage() {
    connect(pv_page_, &PvPage::editUnitAsked, this, [this](const QString& unit) { editClaims(utf8_of(unit)); });
}

void MainWindow::connectUnitPage() {
    connect(unit_page_, &UnitPage::startRunAsked, this, &MainWindow::startRun);
    connect(unit_page_, &UnitPage::editUnitAsked, this, &MainWindow::editUnit);
    connect(unit_page_, &UnitPage::importAsked, this, &MainWindow::importSheet);
    connect(unit_page_, &UnitPage::runChosen, this, [this](const QString& run) { showRun(utf8_of(run)); });
    unit_page_->setKwhPriceText(settings_.remembered(kwh_price_name));
    connect(unit_page_, &UnitPage::kwhPriceTyped, this, [this](const QString& text) { settings_.remember(kwh_price_name, text); });
}

void MainWindow::connectRunPage() {
    run_page_->setChartsShown(settings_.chartsShown());
    run_page_->setLogFollower(*log_follower_);
    connect(run_page_, &RunPage::importLogAsked, this, &MainWindow::chooseLog);
    connect(run_page_, &RunPage::followLogAsked, this, &MainWindow::followLog);
    connect(run_page_, &RunPage::ruleAsked, this, [this](const QString& run) { editRule(utf8_of(run)); });
    connect(run_page_, &RunPage::editRunAsked, this, &MainWindow::editRun);
    connect(run_page_, &RunPage::logApplianceAsked, this, [this](const QString& run) { addLogAppliance(utf8_of(run)); });
    connect(run_page_, &RunPage::attachPhotoAsked, this, &MainWindow::attachPhoto);
    connect(run_page_, &RunPage::photoSaveAsked, this, &MainWindow::savePhoto);
}

void MainWindow::connectMetersPage() {
    connect(meters_page_, &MetersPage::addMeterAsked, this, &MainWindow::addMeter);
    connect(meters_page_, &MetersPage::editMeterAsked, this, &MainWindow::editMeter);
    connect(meters_page_, &MetersPage::withdrawMeterAsked, this, &MainWindow::withdrawMeter);
    connect(meters_page_, &MetersPage::meterChosen, this, [this](const QString& meter) { showMeter(utf8_of(meter)); });
}

void MainWindow::connectComparisonPage() {
    comparison_page_->setColumns(settings_.remembered(comparison_columns));
    connect(comparison_page_, &ComparisonPage::columnsChosen, this,
            [this](const QString& choice) { settings_.remember(comparison_columns, choice); });
    connect(comparison_page_, &ComparisonPage::otherLogbooksChosen, this,
            [this](const QStringList& paths) { settings_.remember(compared_logbooks_name(document_.path()), paths.join(QLatin1Char('\n'))); });
    connect(comparison_page_, &ComparisonPage::runAsked, this, [this](const QString& run) { showRun(utf8_of(run)); });
    if (document_.isOpen()) showComparedLogbooks();
}

void MainWindow::showComparedLogbooks() {
    comparison_page_->setOtherLogbooks(settings_.remembered(compared_logbooks_name(document_.path())).split(QLatin1Char('\n'), Qt::SkipEmptyParts));
}

bool MainWindow::makeNextPage() {
    const auto next = std::ranges::find_if(page_table_, [](const PageEntry& entry) { return entry.widget() == nullptr; });
    if (next == page_table_.end()) return false;
    next->make();
    return true;
}

void MainWindow::makeAllPages() {
    while (makeNextPage()) {}
}

void MainWindow::paintEvent(QPaintEvent* event) {
    QMainWindow::paintEvent(event);
    if (painted_) return;
    painted_ = true;
    QTimer::singleShot(0, this, &MainWindow::goOnMakingPages);
}

void MainWindow::goOnMakingPages() {
    if (makeNextPage()) QTimer::singleShot(rest_between_pages_ms, this, &MainWindow::goOnMakingPages);
}

} // namespace ullage
