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

void MainWindow::prepare_pages() {
    using Row = LogbookTreeModel::Row;
    const auto nothing = [] { return std::string(); };
    const auto always = [](const std::string&) { return true; };
    // The likeliest first: in this order they are made in quiet moments.
    add_page(
        run_page_, Row::run, [this] { return new RunPage(document_, reminders_); }, &MainWindow::connect_run_page, &MainWindow::showRun,
        [this] { return run_uuid_; }, [this](const std::string& uuid) { return document_.run(uuid) != nullptr; });
    add_page(
        unit_page_, Row::unit, [this] { return new UnitPage(document_); }, &MainWindow::connect_unit_page, &MainWindow::showUnit,
        [this] { return unit_uuid_; }, [this](const std::string& uuid) { return document_.unit(uuid) != nullptr; });
    add_page(
        comparison_page_, Row::comparison, [this] { return new ComparisonPage(document_, prompts_); }, &MainWindow::connect_comparison_page,
        [this](const std::string&) { showComparison(); }, nothing, always);
    add_page(
        bench_page_, Row::bench, [this] { return new BenchPage(document_, *reminders_); }, &MainWindow::connect_bench_page,
        [this](const std::string&) { showBench(); }, nothing, always);
    add_page(
        sizing_page_, Row::sizing, [this] { return new SizingPage(document_); }, &MainWindow::connect_sizing_page,
        [this](const std::string&) { showSizing(); }, nothing, always);
    add_page(
        load_lists_page_, Row::load_list, [this] { return new LoadListsPage(document_); }, &MainWindow::connect_load_lists_page,
        &MainWindow::showLoadList, [this] { return load_lists_page_->selectedList(); }, always);
    add_page(
        pv_page_, Row::pv_input, [this] { return new PvPage(document_); }, &MainWindow::connect_pv_page,
        [this](const std::string&) { showPvInput(); }, nothing, always);
    add_page(
        meters_page_, Row::meter, [this] { return new MetersPage(document_); }, &MainWindow::connect_meters_page, &MainWindow::showMeter,
        [this] { return meter_uuid_; }, [this](const std::string& uuid) { return document_.meter(uuid) != nullptr; });
}

template <class Page, class Make, class Show, class Uuid, class IsThere>
void MainWindow::add_page(LatePage<Page>& page, LogbookTreeModel::Row row, Make make, void (MainWindow::*connect_page)(), Show show, Uuid uuid,
                          IsThere is_there) {
    page.comeFrom(std::move(make), [this, &page, connect_page] {
        page_made(page);
        (this->*connect_page)();
    });
    page_table_.push_back({page.name(), row, [&page] { return page.widget(); }, [&page] { (void)page.get(); },
                           [this, show](const std::string& shown) {
                               if constexpr (std::is_member_function_pointer_v<Show>) (this->*show)(shown);
                               else show(shown);
                           },
                           uuid, is_there});
}

const PageEntry* MainWindow::current_page() const {
    const auto found =
        std::ranges::find_if(page_table_, [page = pages_->currentWidget()](const PageEntry& entry) { return page && entry.widget() == page; });
    return found == page_table_.end() ? nullptr : &*found;
}

template <class Page>
void MainWindow::page_made(LatePage<Page>& page) {
    pages_->addWidget(page);
    // What any page notices, and what goes wrong there, stands in the one bar.
    if constexpr (requires { &Page::notice; }) connect(page.get(), &Page::notice, messages_, &MessageBar::showNote);
    if constexpr (requires { &Page::error; }) connect(page.get(), &Page::error, messages_, &MessageBar::showError);
    // The window answers an event of the document after its pages, since it may show one of them then.
    document_.disconnect(this);
    connect_document();
}

void MainWindow::connect_bench_page() {
    connect(bench_page_, &BenchPage::readingAsked, this, [this](const QString& run) { enterReading(utf8_of(run)); });
    connect(bench_page_, &BenchPage::ruleAsked, this, [this](const QString& run) { edit_rule(utf8_of(run)); });
    connect(bench_page_, &BenchPage::startRunAsked, this, &MainWindow::start_run);
}

void MainWindow::connect_pv_page() {
    connect(pv_page_, &PvPage::editUnitAsked, this, [this](const QString& unit) { edit_claims(utf8_of(unit)); });
}

void MainWindow::connect_unit_page() {
    connect(unit_page_, &UnitPage::startRunAsked, this, &MainWindow::start_run);
    connect(unit_page_, &UnitPage::editUnitAsked, this, &MainWindow::edit_unit);
    connect(unit_page_, &UnitPage::importAsked, this, &MainWindow::import_sheet);
    connect(unit_page_, &UnitPage::runChosen, this, [this](const QString& run) { showRun(utf8_of(run)); });
    unit_page_->setKwhPriceText(settings_.remembered(kwh_price_name));
    connect(unit_page_, &UnitPage::kwhPriceTyped, this, [this](const QString& text) { settings_.remember(kwh_price_name, text); });
}

void MainWindow::connect_run_page() {
    run_page_->setChartsShown(settings_.chartsShown());
    run_page_->setLogFollower(*log_follower_);
    connect(run_page_, &RunPage::importLogAsked, this, &MainWindow::import_log);
    connect(run_page_, &RunPage::followLogAsked, this, &MainWindow::follow_log);
    connect(run_page_, &RunPage::ruleAsked, this, [this](const QString& run) { edit_rule(utf8_of(run)); });
    connect(run_page_, &RunPage::editRunAsked, this, &MainWindow::edit_run);
    connect(run_page_, &RunPage::logApplianceAsked, this, [this](const QString& run) { add_log_appliance(utf8_of(run)); });
    connect(run_page_, &RunPage::attachPhotoAsked, this, &MainWindow::attach_photo);
    connect(run_page_, &RunPage::photoSaveAsked, this, &MainWindow::save_photo);
}

void MainWindow::connect_meters_page() {
    connect(meters_page_, &MetersPage::addMeterAsked, this, &MainWindow::add_meter);
    connect(meters_page_, &MetersPage::editMeterAsked, this, &MainWindow::edit_meter);
    connect(meters_page_, &MetersPage::withdrawMeterAsked, this, &MainWindow::withdraw_meter);
    connect(meters_page_, &MetersPage::meterChosen, this, [this](const QString& meter) { showMeter(utf8_of(meter)); });
}

void MainWindow::connect_comparison_page() {
    comparison_page_->setColumns(settings_.remembered(comparison_columns));
    connect(comparison_page_, &ComparisonPage::columnsChosen, this,
            [this](const QString& choice) { settings_.remember(comparison_columns, choice); });
    connect(comparison_page_, &ComparisonPage::otherLogbooksChosen, this,
            [this](const QStringList& paths) { settings_.remember(compared_logbooks_name(document_.path()), paths.join(QLatin1Char('\n'))); });
    connect(comparison_page_, &ComparisonPage::runAsked, this, [this](const QString& run) { showRun(utf8_of(run)); });
    if (document_.isOpen()) show_compared_logbooks();
}

void MainWindow::show_compared_logbooks() {
    comparison_page_->setOtherLogbooks(settings_.remembered(compared_logbooks_name(document_.path())).split(QLatin1Char('\n'), Qt::SkipEmptyParts));
}

bool MainWindow::make_next_page() {
    const auto next = std::ranges::find_if(page_table_, [](const PageEntry& entry) { return entry.widget() == nullptr; });
    if (next == page_table_.end()) return false;
    next->make();
    return true;
}

void MainWindow::makeAllPages() {
    while (make_next_page()) {}
}

void MainWindow::paintEvent(QPaintEvent* event) {
    QMainWindow::paintEvent(event);
    if (painted_) return;
    painted_ = true;
    QTimer::singleShot(0, this, &MainWindow::go_on_making_pages);
}

void MainWindow::go_on_making_pages() {
    if (make_next_page()) QTimer::singleShot(rest_between_pages_ms, this, &MainWindow::go_on_making_pages);
}

} // namespace ullage
