// SPDX-License-Identifier: GPL-3.0-or-later
// How each page is made when it is first needed, and what it tells the window.
#include "window/main_window.h"

#include "pages/bench/bench_page.h"
#include "pages/comparison/comparison_page.h"
#include "pages/sizing/load_lists_page.h"
#include "window/message_bar.h"
#include "pages/meters/meters_page.h"
#include "pages/pv/pv_page.h"
#include "pages/run/run_page.h"
#include "pages/sizing/sizing_page.h"
#include "pages/unit/unit_page.h"
#include "services/settings.h"

#include <QCryptographicHash>
#include <QStackedWidget>
#include <QTimer>

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
    unit_page_.comeFrom([this] { return new UnitPage(document_); }, [this] {
        page_made(unit_page_);
        connect_unit_page();
    });
    run_page_.comeFrom([this] { return new RunPage(document_, reminders_); }, [this] {
        page_made(run_page_);
        connect_run_page();
    });
    meters_page_.comeFrom([this] { return new MetersPage(document_); }, [this] {
        page_made(meters_page_);
        connect_meters_page();
    });
    load_lists_page_.comeFrom([this] { return new LoadListsPage(document_); }, [this] {
        page_made(load_lists_page_);
        connect_load_lists_page();
    });
    comparison_page_.comeFrom([this] { return new ComparisonPage(document_, prompts_); }, [this] {
        page_made(comparison_page_);
        connect_comparison_page();
    });
    bench_page_.comeFrom([this] { return new BenchPage(document_, *reminders_); }, [this] {
        page_made(bench_page_);
        connect(bench_page_, &BenchPage::readingAsked, this, [this](const QString& run) { enterReading(run.toStdString()); });
        connect(bench_page_, &BenchPage::ruleAsked, this, [this](const QString& run) { edit_rule(run.toStdString()); });
        connect(bench_page_, &BenchPage::startRunAsked, this, &MainWindow::start_run);
    });
    pv_page_.comeFrom([this] { return new PvPage(document_); }, [this] {
        page_made(pv_page_);
        connect(pv_page_, &PvPage::failed, messages_, &MessageBar::showError);
        connect(pv_page_, &PvPage::editUnitAsked, this, [this](const QString& unit) { edit_claims(unit.toStdString()); });
    });
    sizing_page_.comeFrom([this] { return new SizingPage(document_); }, [this] {
        page_made(sizing_page_);
        connect_sizing_page();
    });
}

template <class Page>
void MainWindow::page_made(LatePage<Page>& page) {
    pages_->addWidget(page);
    // The window answers an event of the document after its pages, since it may show one of them then.
    document_.disconnect(this);
    connect_document();
}

void MainWindow::connect_unit_page() {
    connect(unit_page_, &UnitPage::startRunAsked, this, &MainWindow::start_run);
    connect(unit_page_, &UnitPage::editUnitAsked, this, &MainWindow::edit_unit);
    connect(unit_page_, &UnitPage::importAsked, this, &MainWindow::import_sheet);
    connect(unit_page_, &UnitPage::runChosen, this, [this](const QString& run) { showRun(run.toStdString()); });
    unit_page_->setKwhPriceText(settings_.remembered(kwh_price_name));
    connect(unit_page_, &UnitPage::kwhPriceTyped, this, [this](const QString& text) { settings_.remember(kwh_price_name, text); });
}

void MainWindow::connect_run_page() {
    run_page_->setChartsShown(settings_.chartsShown());
    run_page_->setLogFollower(*log_follower_);
    connect(run_page_, &RunPage::importLogRequested, this, &MainWindow::import_log);
    connect(run_page_, &RunPage::followLogRequested, this, &MainWindow::follow_log);
    connect(run_page_, &RunPage::ruleRequested, this, [this](const QString& run) { edit_rule(run.toStdString()); });
    connect(run_page_, &RunPage::editRunRequested, this, &MainWindow::edit_run);
    connect(run_page_, &RunPage::logApplianceRequested, this, [this](const QString& run) { add_log_appliance(run.toStdString()); });
    connect(run_page_, &RunPage::attachPhotoRequested, this, &MainWindow::attach_photo);
    connect(run_page_, &RunPage::photoSaveAsked, this, &MainWindow::save_photo);
}

void MainWindow::connect_meters_page() {
    connect(meters_page_, &MetersPage::addMeterAsked, this, &MainWindow::add_meter);
    connect(meters_page_, &MetersPage::editMeterAsked, this, &MainWindow::edit_meter);
    connect(meters_page_, &MetersPage::withdrawMeterAsked, this, &MainWindow::withdraw_meter);
    connect(meters_page_, &MetersPage::meterSelected, this, [this](const QString& meter) { showMeter(meter.toStdString()); });
}

void MainWindow::connect_comparison_page() {
    comparison_page_->setColumns(settings_.remembered(comparison_columns));
    connect(comparison_page_, &ComparisonPage::columnsChosen, this,
            [this](const QString& choice) { settings_.remember(comparison_columns, choice); });
    connect(comparison_page_, &ComparisonPage::told, messages_, &MessageBar::showNote);
    connect(comparison_page_, &ComparisonPage::refused, messages_, &MessageBar::showError);
    connect(comparison_page_, &ComparisonPage::otherLogbooksChosen, this,
            [this](const QStringList& paths) { settings_.remember(compared_logbooks_name(document_.path()), paths.join(QLatin1Char('\n'))); });
    connect(comparison_page_, &ComparisonPage::runRequested, this, [this](const QString& run) { showRun(run.toStdString()); });
    if (document_.isOpen()) show_compared_logbooks();
}

void MainWindow::show_compared_logbooks() {
    comparison_page_->setOtherLogbooks(
        settings_.remembered(compared_logbooks_name(document_.path())).split(QLatin1Char('\n'), Qt::SkipEmptyParts));
}

bool MainWindow::make_next_page() {
    // The likeliest first.
    const auto make = [](auto& page) { return !page.isMade() && page.get(); };
    return make(run_page_) || make(unit_page_) || make(comparison_page_) || make(bench_page_) || make(sizing_page_) || make(load_lists_page_) ||
           make(pv_page_) || make(meters_page_);
}

void MainWindow::makeAllPages() {
    while (make_next_page()) {
    }
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
