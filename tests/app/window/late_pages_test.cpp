// SPDX-License-Identifier: GPL-3.0-or-later
// Pages are made when they are needed: each must know the logbook that was opened before it was there.
#include "window_fixture.h"

#include "pages/run/run_page.h"
#include "pages/sizing/sizing_page.h"
#include "pages/unit/unit_page.h"

#include <QLabel>
#include <QStackedWidget>
#include <QTableView>

namespace ullage::test {
namespace {

/// A window that has just been started on a logbook with a run, a load list and a PV sheet.
class LatePagesTest : public WindowTest {
protected:
    void SetUp() override {
        ASSERT_TRUE(document.create(file("bench.ullage")));
        Unit osk;
        osk.name = "Osk 1200";
        unit = document.addUnit(osk).value().uuid;
        Meter socket;
        socket.name = "Socket meter A";
        ASSERT_TRUE(document.addMeter(socket));
        ullage::Run drain;
        drain.unit_uuid = unit;
        run = document.addRun(drain).value().uuid;
        LoadList list;
        list.name = "show night";
        list.appliances.push_back({"lamp", 60.0, 1, {}, 4, 0, {}, 1, false});
        load_list = document.addLoadList(list).value().uuid;
        start();
    }
    void start() {
        window = std::make_unique<MainWindow>(document, settings, prompts);
        window->resize(1280, 800);
    }
    [[nodiscard]] int pages_made() const { return window->findChild<QStackedWidget*>(QStringLiteral("pagesStack"))->count(); }

    UnitId unit;
    RunId run;
    LoadListId load_list;
};

TEST_F(LatePagesTest, only_the_page_in_sight_is_made_before_the_window_is_painted_and_the_rest_after_it) {
    EXPECT_EQ(page(), "runPage"); // of the run that is still going on
    EXPECT_EQ(pages_made(), 2);   // with the one that stands there without a logbook
    window->show();
    EXPECT_TRUE(QTest::qWaitFor([&] { return pages_made() == 9; }));
    EXPECT_EQ(page(), "runPage");
}

TEST_F(LatePagesTest, each_page_shows_the_logbook_that_was_opened_before_it) {
    window->showUnit(unit);
    EXPECT_EQ(page(), "unitPage");
    EXPECT_EQ(find<QLabel>("unitNameLabel")->text(), "Osk 1200");
    window->showLoadLists();
    EXPECT_EQ(page(), "loadListsPage");
    EXPECT_EQ(find<QTableView>("loadListsTable")->model()->rowCount(), 1);
    window->showSizing();
    EXPECT_EQ(page(), "sizingPage");
    EXPECT_TRUE(window->findChild<SizingPage*>()->awaitSizing());
    EXPECT_EQ(window->findChild<SizingPage*>()->selectedList(), load_list);
    window->showMeter(document.meters().front().uuid);
    EXPECT_EQ(page(), "metersPage");
    EXPECT_EQ(find<QTableView>("metersTable")->model()->rowCount(), 1);
    for (const auto& [show_page, name] :
         {std::pair{&MainWindow::showComparison, "comparisonPage"}, {&MainWindow::showBench, "benchPage"}, {&MainWindow::showPvInput, "pvPage"}}) {
        (window.get()->*show_page)();
        EXPECT_EQ(page(), name);
    }
}

TEST_F(LatePagesTest, a_page_made_for_one_logbook_shows_the_remembered_page_of_the_next_one_opened) {
    const auto first_run = run;
    ASSERT_EQ(page(), "runPage");
    ASSERT_TRUE(document.create(file("other.ullage")));
    Unit pelm;
    pelm.name = "Pelm 900";
    ASSERT_TRUE(document.addUnit(pelm));
    EXPECT_EQ(page(), "unitPage");
    window->openLogbook(file("bench.ullage"));
    EXPECT_EQ(page(), "runPage");
    EXPECT_EQ(window->findChild<RunPage*>()->runUuid(), first_run);
}

TEST_F(LatePagesTest, a_reading_is_stored_in_the_entry_row_of_a_page_that_was_just_made) {
    window->show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
    type("gaugeEdit", "100");
    QTest::keyClick(find<QLineEdit>("gaugeEdit"), Qt::Key_Return);
    EXPECT_EQ(document.run(run)->readings.size(), 1U);
}

} // namespace
} // namespace ullage::test
