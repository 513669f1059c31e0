// SPDX-License-Identifier: GPL-3.0-or-later
// The promise that actions in the window do not keep it from turning for longer than 100 ms, on a logbook of 1,000 units. It is no test of speed:
// what takes longer has to be done beside the window. The 100 ms are those of the machine of the figures; see machine_pace().
#include "turns_fixture.h"

#include "base/instant.h"
#include "window/page_stack.h"

#include <QDialog>
#include <QFile>
#include <QFileInfo>
#include <QListWidget>
#include <QTabWidget>
#include <QTableView>

namespace ullage::test {

TEST_F(TurnTest, the_window_turns_while_pages_are_opened_and_units_and_runs_switched) {
    const UnitId unit = document.units()[500].uuid;
    const MeterId meter = document.meters()[0].uuid;
    const RunId run = document.runs()[1500]->run.uuid, other_run = document.runs()[1700]->run.uuid;
    expect_turning("a unit", [&] { window->showUnit(unit); });
    expect_turning("a run", [&] { window->showRun(run); });
    expect_turning("another run", [&] { window->showRun(other_run); });
    expect_turning("a meter", [&] { window->showMeter(meter); });
    for (const char* page : {"benchAction", "loadListsAction", "sizingAction", "pvInputAction"}) expect_turning(page);
    expect_turning("closeLogbookAction");
}

TEST_F(TurnTest, the_window_turns_while_readings_are_recorded_and_commands_undone) {
    const RunId run = document.runs()[1500]->run.uuid;
    window->showRun(run);
    ReadingValues last = document.run(run)->readings.back().values, first = document.run(run)->readings.front().values;
    last.time_ms += 60'000;
    first.time_ms -= 60'000;
    expect_turning("record a reading", [&] { EXPECT_TRUE(document.record(run, last)); });
    expect_turning("undoAction");
    expect_turning("redoAction");
    expect_turning("record one before all others", [&] { EXPECT_TRUE(document.record(run, first)); });
    expect_turning("undoAction");
    expect_turning("withdrawRunAction");
    expect_turning("undoAction");
    expect_turning("add a unit", [&] { add_unit(); });
}

TEST_F(TurnTest, the_window_turns_while_a_run_sheet_is_imported_and_a_copy_saved) {
    const QString path = write("tarrow.csv", sheet());
    expect_turning("import a run sheet", [&] { window->importSheets({path}); });
    EXPECT_EQ(document.units().size(), 1001U);
    expect_turning("undoAction");
    prompts.to_save = file("copy.ullage");
    expect_turning("saveCopyAction");
}

/// The comparison of all units, with what waits for it done.
class ComparisonTurnTest : public TurnTest {
protected:
    void SetUp() override {
        TurnTest::SetUp();
        const double most = most_ms();
        double longest_ms = most;
        for (int tries = 0; tries < most_tries && longest_ms >= most; ++tries) {
            if (tries > 0) window->openLogbook(file("large.ullage"));
            longest_ms = settling_ms([&] { trigger("comparisonAction"); });
        }
        EXPECT_LT(longest_ms, most) << "show the comparison";
    }

    double settling_ms(const std::function<void()>& action) {
        return watch_.longest_ms(action, [&] { return find<QPushButton>("copyTableButton")->isEnabled(); });
    }
    /// The action, until the page is complete again.
    void expect_settling(const char* what, const std::function<void()>& action) { EXPECT_LT(settling_ms(action), most_ms()) << what; }
};

TEST_F(ComparisonTurnTest, the_window_turns_while_units_are_compared_sorted_and_filtered) {
    auto* table = find<QTableView>("comparisonView");
    EXPECT_EQ(table->model()->rowCount(), 1000);
    expect_settling("every drain", [&] { click("everyDrainButton"); });
    EXPECT_EQ(table->model()->rowCount(), 3000);
    expect_settling("one row a unit", [&] { click("onePerUnitButton"); });
    for (int column = 1; column < 6; ++column)
        expect_turning("sort", [&] { table->sortByColumn(column, column % 2 ? Qt::AscendingOrder : Qt::DescendingOrder); });
    expect_settling("filter", [&] { type("filterEdit", QStringLiteral("0007")); });
    expect_settling("no filter", [&] { type("filterEdit", {}); });
    auto* tabs = find<QTabWidget>("comparisonTabs");
    for (int tab = 0; tab < tabs->count(); ++tab) expect_turning("a tab", [&] { tabs->setCurrentIndex(tab); });
    expect_settling("at one load", [&] { click("atLoadButton"); });
}

TEST_F(ComparisonTurnTest, the_window_turns_while_the_comparison_is_copied_and_a_unit_of_it_changes) {
    expect_settling("copy", [&] { trigger("copyComparisonAction"); });
    const RunId run = document.runs()[1500]->run.uuid;
    ReadingValues late = document.run(run)->readings.back().values;
    late.time_ms += 60'000;
    expect_settling("a reading recorded", [&] { EXPECT_TRUE(document.record(run, late)); });
    ASSERT_TRUE(QFile::copy(made_, file("other.ullage")));
    prompts.to_open = {file("other.ullage")};
    expect_settling("add units of another logbook", [&] { trigger("addComparedLogbooksAction"); });
}

TEST_F(ComparisonTurnTest, the_window_turns_while_its_looks_change) {
    for (const char* look : {"largerTextAction", "usualTextAction", "darkThemeAction", "lightThemeAction"}) {
        const double most = most_ms();
        double longest_ms = most;
        for (int tries = 0; tries < most_tries && longest_ms >= most; ++tries) longest_ms = watch_.longest_ms([&] { trigger(look); });
        EXPECT_LT(longest_ms, most) << look;
    }
    expect_turning("sizing", [&] { trigger("sizingAction"); });
}

TEST_F(WindowTest, the_window_turns_while_the_sample_logbook_is_made) {
    TurnWatch watch;
    EXPECT_LT(watch.longest_ms([&] { trigger("sampleLogbookAction"); }), most_ms());
    EXPECT_TRUE(document.isOpen());
}

TEST_F(TurnTest, the_window_turns_while_readings_are_exported_and_reports_made) {
    expect_turning("exportReadingsAction");
    auto* dialog = find<QDialog>("exportDialog");
    ASSERT_TRUE(dialog);
    auto* forms = find<QListWidget>("formsList");
    for (int form = 0; form < forms->count(); ++form) expect_turning("preview", [&] { forms->setCurrentRow(form); });
    forms->setCurrentRow(0);
    prompts.to_save = file("readings.csv");
    expect_turning("save as CSV", [&] { click("saveButton"); });
    EXPECT_GT(QFileInfo(prompts.to_save).size(), 1'000'000);
    expect_turning("copy", [&] { click("copyButton"); });
    dialog->close();

    window->showRun(document.runs()[1500]->run.uuid);
    trigger("runReportAction");
    prompts.to_save = file("run.pdf");
    expect_turning("a report", [&] { click("submitButton"); });
    EXPECT_TRUE(QFile::exists(prompts.to_save));
}

/// A run with a reading a second, as a meter that is read by a program gives it.
class LongRunTurnTest : public WindowTest {
protected:
    static constexpr int readings = 100'000;

    void SetUp() override {
        WindowTest::SetUp();
        new_logbook();
        QByteArray sheet = "# unit: Osk 1200\n# rated_energy_wh: 1200\n# meter: plug\n# meter_step_wh: 0.1\n# meter_limit_percent: 1\n# run: drain\n"
                           "# started_full: yes\n# ended: cut-off seen\n# time_zone: UTC\ntime,gauge_percent,register_wh\n";
        for (int i = 0; i < readings; ++i) {
            const double share = static_cast<double>(i) / (readings - 1);
            sheet += QByteArray::fromStdString(format_iso8601(clock.now_ms() + 1000LL * (i - readings), "UTC")) + ',' +
                     QByteArray::number(100 - 60 * share, 'f', 0) + ',' + QByteArray::number(500 * share, 'f', 1) + '\n';
        }
        const QString path = write("long.csv", sheet);
        expect_turning("import", [&] { window->importSheets({path}); });
        ASSERT_EQ(document.runs().size(), 1U) << message().toStdString();
        run = document.runs().front()->run.uuid;
    }

    void expect_turning(const char* what, const std::function<void()>& action) { EXPECT_LT(watch.longest_ms(action), most_ms()) << what; }

    TurnWatch watch;
    RunId run;
};

TEST_F(LongRunTurnTest, nobody_reads_that_the_logbook_is_empty_while_its_readings_are_analysed) {
    const QString path = document.path();
    trigger("closeLogbookAction");
    ASSERT_EQ(page(), QStringLiteral("welcomePage"));
    QStringList seen;
    QObject::connect(find<PageStack>("pagesStack"), &PageStack::analysed, window.get(), [&] { seen << page(); });
    window->openLogbook(path);
    EXPECT_EQ(seen.size(), 1) << "what stood there until the page could be shown";
    EXPECT_FALSE(seen.contains(QStringLiteral("welcomePage")));
}

TEST_F(LongRunTurnTest, the_window_turns_while_a_long_run_is_imported_shown_and_exported) {
    expect_turning("its unit", [&] { window->showUnit(document.units()[0].uuid); });
    expect_turning("the run", [&] { window->showRun(run); });
    auto* tabs = find<QTabWidget>("chartsTabs");
    for (int tab = 0; tab < tabs->count(); ++tab) expect_turning("a tab", [&] { tabs->setCurrentIndex(tab); });
    auto* table = find<QTableView>("readingsView");
    for (const int row : {0, 500, 50'000}) expect_turning("choose a reading", [&] { table->selectRow(row); });
    expect_turning("export", [&] { trigger("exportReadingsAction"); });
}

} // namespace ullage::test
