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
#include "window/bench_controller.h"
#include "window/comparison_controller.h"
#include "window/file_controller.h"
#include "window/live_controller.h"
#include "window/load_list_controller.h"
#include "window/log_controller.h"
#include "window/page_stack.h"
#include "window/record_controller.h"
#include "window/report_controller.h"
#include "window/view_controller.h"

namespace ullage {

namespace {

const QString kwh_price_name = QStringLiteral("kwh-price");
const QString sizing_choices_name = QStringLiteral("sizing-choices");

} // namespace

void MainWindow::preparePages() {
    using Row = LogbookTreeModel::Row;
    const auto nothing = [] { return std::string(); };
    const auto always = [](const std::string&) { return true; };
    // The likeliest first: in this order they are made in quiet moments.
    pages_->add(
        pages_->run(), Row::run, [this] { return new RunPage(document_, reminders_); }, [this] { connectRunPage(); }, &PageStack::showRun,
        [this] { return pages_->runUuid(); }, [this](const std::string& uuid) { return document_.run(uuid) != nullptr; });
    pages_->add(
        pages_->unit(), Row::unit, [this] { return new UnitPage(document_); }, [this] { connectUnitPage(); }, &PageStack::showUnit,
        [this] { return pages_->unitUuid(); }, [this](const std::string& uuid) { return document_.unit(uuid) != nullptr; });
    pages_->add(
        pages_->comparison(), Row::comparison, [this] { return new ComparisonPage(document_, prompts_); }, [this] { connectComparisonPage(); },
        [this](const std::string&) { pages_->showComparison(); }, nothing, always);
    pages_->add(
        pages_->bench(), Row::bench, [this] { return new BenchPage(document_, *reminders_); }, [this] { connectBenchPage(); },
        [this](const std::string&) { pages_->showBench(); }, nothing, always);
    pages_->add(
        pages_->sizing(), Row::sizing, [this] { return new SizingPage(document_); }, [this] { connectSizingPage(); },
        [this](const std::string&) { pages_->showSizing(); }, nothing, always);
    pages_->add(
        pages_->loadLists(), Row::load_list, [this] { return new LoadListsPage(document_); }, [this] { connectLoadListsPage(); },
        &PageStack::showLoadList, [this] { return pages_->loadLists()->selectedList(); }, always);
    pages_->add(
        pages_->pv(), Row::pv_input, [this] { return new PvPage(document_); }, [this] { connectPvPage(); },
        [this](const std::string&) { pages_->showPvInput(); }, nothing, always);
    pages_->add(
        pages_->meters(), Row::meter, [this] { return new MetersPage(document_); }, [this] { connectMetersPage(); }, &PageStack::showMeter,
        [this] { return pages_->meterUuid(); }, [this](const std::string& uuid) { return document_.meter(uuid) != nullptr; });
}

void MainWindow::connectBenchPage() {
    connect(pages_->bench(), &BenchPage::readingAsked, this, [this](const QString& run) { pages_->enterReading(utf8_of(run)); });
    connect(pages_->bench(), &BenchPage::ruleAsked, this, [this](const QString& run) { bench_->editRule(utf8_of(run)); });
    connect(pages_->bench(), &BenchPage::displayAsked, bench_, &BenchController::showDisplay);
    connect(pages_->bench(), &BenchPage::startRunAsked, records_, &RecordController::startRun);
}

void MainWindow::connectPvPage() {
    connect(pages_->pv(), &PvPage::editUnitAsked, this, [this](const QString& unit) { records_->editClaims(utf8_of(unit)); });
}

void MainWindow::connectUnitPage() {
    connect(pages_->unit(), &UnitPage::startRunAsked, records_, &RecordController::startRun);
    connect(pages_->unit(), &UnitPage::reportAsked, reports_, &ReportController::makeUnitReport);
    connect(pages_->unit(), &UnitPage::editUnitAsked, records_, &RecordController::editUnit);
    connect(pages_->unit(), &UnitPage::importAsked, files_, &FileController::importSheet);
    connect(pages_->unit(), &UnitPage::runChosen, this, [this](const QString& run) { pages_->showRun(utf8_of(run)); });
    pages_->unit()->setKwhPriceText(settings_.remembered(kwh_price_name));
    connect(pages_->unit(), &UnitPage::kwhPriceTyped, this, [this](const QString& text) { settings_.remember(kwh_price_name, text); });
}

void MainWindow::connectRunPage() {
    pages_->run()->setChartsShown(settings_.chartsShown());
    pages_->run()->setLogFollower(*log_follower_);
    pages_->run()->setLiveReader(*live_reader_);
    connect(pages_->run(), &RunPage::readLiveAsked, this, [this](const QString& run) { live_->readLive(utf8_of(run)); });
    connect(pages_->run(), &RunPage::importLogAsked, logs_, &LogController::chooseLog);
    connect(pages_->run(), &RunPage::followLogAsked, logs_, &LogController::followLog);
    connect(pages_->run(), &RunPage::ruleAsked, this, [this](const QString& run) { bench_->editRule(utf8_of(run)); });
    connect(pages_->run(), &RunPage::endRunAsked, this, [this] { records_->endRun(); });
    connect(pages_->run(), &RunPage::editRunAsked, records_, &RecordController::editRun);
    connect(pages_->run(), &RunPage::logApplianceAsked, this, [this](const QString& run) { logs_->addLogAppliance(utf8_of(run)); });
    connect(pages_->run(), &RunPage::attachPhotoAsked, files_, &FileController::attachPhoto);
    connect(pages_->run(), &RunPage::photoSaveAsked, files_, &FileController::savePhoto);
}

void MainWindow::connectMetersPage() {
    connect(pages_->meters(), &MetersPage::addMeterAsked, records_, &RecordController::addMeter);
    connect(pages_->meters(), &MetersPage::editMeterAsked, records_, &RecordController::editMeter);
    connect(pages_->meters(), &MetersPage::sourceAsked, live_, &LiveController::editSource);
    connect(pages_->meters(), &MetersPage::withdrawMeterAsked, records_, &RecordController::withdrawMeter);
    connect(pages_->meters(), &MetersPage::meterChosen, this, [this](const QString& meter) { pages_->showMeter(utf8_of(meter)); });
}

void MainWindow::connectComparisonPage() {
    connect(pages_->comparison(), &ComparisonPage::otherLogbooksChosen, this,
            [this](const QStringList& paths) { comparing_->rememberLogbooks(paths); });
    connect(pages_->comparison(), &ComparisonPage::runAsked, this, [this](const QString& run) { pages_->showRun(utf8_of(run)); });
    if (document_.isOpen()) comparing_->showComparedLogbooks();
}

void MainWindow::connectLoadListsPage() {
    connect(pages_->loadLists(), &LoadListsPage::addListAsked, load_lists_, &LoadListController::addLoadList);
    connect(pages_->loadLists(), &LoadListsPage::importListAsked, files_, &FileController::importLoadList);
    connect(pages_->loadLists(), &LoadListsPage::editListAsked, load_lists_, &LoadListController::editLoadList);
    connect(pages_->loadLists(), &LoadListsPage::withdrawListAsked, load_lists_, &LoadListController::withdrawLoadList);
    connect(pages_->loadLists(), &LoadListsPage::addApplianceAsked, load_lists_, &LoadListController::addAppliance);
    connect(pages_->loadLists(), &LoadListsPage::editApplianceAsked, load_lists_, &LoadListController::editAppliance);
    connect(pages_->loadLists(), &LoadListsPage::removeApplianceAsked, load_lists_, &LoadListController::removeAppliance);
    connect(pages_->loadLists(), &LoadListsPage::listChosen, this, [this](const QString& list) {
        selectInTree();
        pages_->rememberPage();
        if (pages_->sizing().isMade()) pages_->sizing()->chooseList(utf8_of(list));
    });
    connect(pages_->loadLists(), &LoadListsPage::applianceChosen, this, &MainWindow::updateActions);
}

void MainWindow::connectSizingPage() {
    pages_->sizing()->setChoicesText(settings_.remembered(sizing_choices_name));
    connect(pages_->sizing(), &SizingPage::choicesChanged, this, [this](const QString& text) { settings_.remember(sizing_choices_name, text); });
    connect(pages_->sizing(), &SizingPage::loadListsAsked, this, [this] { pages_->showLoadList(pages_->sizing()->selectedList()); });
    connect(pages_->sizing(), &SizingPage::reportAsked, reports_, &ReportController::makeSizingReport);
    connect(pages_->sizing(), &SizingPage::exportAsked, load_lists_, &LoadListController::exportSizing);
    if (pages_->loadLists().isMade()) pages_->sizing()->chooseList(pages_->loadLists()->selectedList());
}

} // namespace ullage
