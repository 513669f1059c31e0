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
#include "window/guide_controller.h"
#include "window/live_controller.h"
#include "window/load_list_controller.h"
#include "window/log_controller.h"
#include "window/page_stack.h"
#include "window/record_controller.h"
#include "window/report_controller.h"
#include "window/table_controller.h"
#include "window/view_controller.h"
#include "window/welcome_page.h"

namespace ullage {

namespace {

const QString kwh_price_name = QStringLiteral("kwh-price");
const QString sizing_choices_name = QStringLiteral("sizing-choices");

} // namespace

void MainWindow::preparePages() {
    using Row = LogbookTreeModel::Row;
    const auto nothing = [] { return std::string(); };
    const auto always = [](const std::string&) { return true; };
    pages_->welcome().comeFrom([this] { return new WelcomePage(pages_); }, [this] { connectWelcomePage(); });
    // The likeliest first: in this order they are made in quiet moments.
    pages_->add(
        pages_->run(), Row::run, [this] { return new RunPage(document_, reminders_); }, [this] { connectRunPage(); },
        [this](const std::string& uuid) { pages_->showRun(RunId(uuid)); }, [this] { return pages_->runUuid().text(); },
        [this](const std::string& uuid) { return document_.run(RunId(uuid)) != nullptr; });
    pages_->add(
        pages_->unit(), Row::unit, [this] { return new UnitPage(document_); }, [this] { connectUnitPage(); },
        [this](const std::string& uuid) { pages_->showUnit(UnitId(uuid)); }, [this] { return pages_->unitUuid().text(); },
        [this](const std::string& uuid) { return document_.unit(UnitId(uuid)) != nullptr; });
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
        [this](const std::string& uuid) { pages_->showLoadList(LoadListId(uuid)); }, [this] { return pages_->loadLists()->selectedList().text(); },
        always);
    pages_->add(
        pages_->pv(), Row::pv_input, [this] { return new PvPage(document_); }, [this] { connectPvPage(); },
        [this](const std::string&) { pages_->showPvInput(); }, nothing, always);
    pages_->add(
        pages_->meters(), Row::meter, [this] { return new MetersPage(document_); }, [this] { connectMetersPage(); },
        [this](const std::string& uuid) { pages_->showMeter(MeterId(uuid)); }, [this] { return pages_->meterUuid().text(); },
        [this](const std::string& uuid) { return document_.meter(MeterId(uuid)) != nullptr; });
}

void MainWindow::connectWelcomePage() {
    const WelcomePage* welcome = pages_->welcome();
    connect(welcome, &WelcomePage::newLogbookAsked, files_, &FileController::newLogbook);
    connect(welcome, &WelcomePage::openLogbookAsked, files_, &FileController::chooseLogbook);
    connect(welcome, &WelcomePage::sampleLogbookAsked, files_, &FileController::openSample);
    connect(welcome, &WelcomePage::recentFileAsked, files_, &FileController::openLogbook);
    connect(welcome, &WelcomePage::addUnitAsked, records_, &RecordController::addUnit);
    connect(welcome, &WelcomePage::addMeterAsked, records_, &RecordController::addMeter);
    connect(welcome, &WelcomePage::importAsked, files_, &FileController::importSheet);
    connect(welcome, &WelcomePage::guideAsked, guide_, &GuideController::begin);
    connect(welcome, &WelcomePage::tableAsked, tables_, &TableController::chooseTable);
    tellWelcomePage();
    guide_->refresh();
}

void MainWindow::tellWelcomePage() {
    if (!pages_->welcome().isMade()) return;
    pages_->welcome()->setLogbookOpen(document_.isOpen());
    pages_->welcome()->setRecentFiles(settings_.recentFiles());
}

void MainWindow::connectBenchPage() {
    connect(pages_->bench(), &BenchPage::readingAsked, pages_, &PageStack::enterReading);
    connect(pages_->bench(), &BenchPage::ruleAsked, bench_, &BenchController::editRule);
    connect(pages_->bench(), &BenchPage::displayAsked, bench_, &BenchController::showDisplay);
    connect(pages_->bench(), &BenchPage::startRunAsked, records_, &RecordController::startRun);
}

void MainWindow::connectPvPage() { connect(pages_->pv(), &PvPage::editUnitAsked, records_, &RecordController::editClaims); }

void MainWindow::connectUnitPage() {
    connect(pages_->unit(), &UnitPage::startRunAsked, records_, &RecordController::startRun);
    connect(pages_->unit(), &UnitPage::reportAsked, reports_, &ReportController::makeUnitReport);
    connect(pages_->unit(), &UnitPage::editUnitAsked, records_, &RecordController::editUnit);
    connect(pages_->unit(), &UnitPage::importAsked, files_, &FileController::importSheet);
    connect(pages_->unit(), &UnitPage::runChosen, pages_, &PageStack::showRun);
    pages_->unit()->setKwhPriceText(settings_.remembered(kwh_price_name));
    connect(pages_->unit(), &UnitPage::kwhPriceTyped, this, [this](const QString& text) { settings_.remember(kwh_price_name, text); });
}

void MainWindow::connectRunPage() {
    pages_->run()->setChartsShown(settings_.chartsShown());
    pages_->run()->setLogFollower(*log_follower_);
    pages_->run()->setLiveReader(*live_reader_);
    connect(pages_->run(), &RunPage::readLiveAsked, live_, &LiveController::readLive);
    connect(pages_->run(), &RunPage::importLogAsked, logs_, &LogController::chooseLog);
    connect(pages_->run(), &RunPage::followLogAsked, logs_, &LogController::followLog);
    connect(pages_->run(), &RunPage::ruleAsked, bench_, &BenchController::editRule);
    connect(pages_->run(), &RunPage::endRunAsked, this, [this] { records_->endRun(); });
    connect(pages_->run(), &RunPage::editRunAsked, records_, &RecordController::editRun);
    connect(pages_->run(), &RunPage::logApplianceAsked, logs_, &LogController::addLogAppliance);
    connect(pages_->run(), &RunPage::attachPhotoAsked, files_, &FileController::attachPhoto);
    connect(pages_->run(), &RunPage::photoSaveAsked, files_, &FileController::savePhoto);
}

void MainWindow::connectMetersPage() {
    connect(pages_->meters(), &MetersPage::addMeterAsked, records_, &RecordController::addMeter);
    connect(pages_->meters(), &MetersPage::editMeterAsked, records_, &RecordController::editMeter);
    connect(pages_->meters(), &MetersPage::sourceAsked, live_, &LiveController::editSource);
    connect(pages_->meters(), &MetersPage::withdrawMeterAsked, records_, &RecordController::withdrawMeter);
    connect(pages_->meters(), &MetersPage::meterChosen, pages_, &PageStack::showMeter);
}

void MainWindow::connectComparisonPage() {
    connect(pages_->comparison(), &ComparisonPage::otherLogbooksChosen, this,
            [this](const QStringList& paths) { comparing_->rememberLogbooks(paths); });
    connect(pages_->comparison(), &ComparisonPage::runAsked, pages_, &PageStack::showRun);
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
    connect(pages_->loadLists(), &LoadListsPage::listChosen, this, [this](const LoadListId& list) {
        selectInTree();
        pages_->rememberPage();
        if (pages_->sizing().isMade()) pages_->sizing()->chooseList(list);
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
