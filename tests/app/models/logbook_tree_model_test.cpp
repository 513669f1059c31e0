// SPDX-License-Identifier: GPL-3.0-or-later
#include "models_fixture.h"

#include "models/logbook_tree_model.h"

#include <QAbstractItemModelTester>
#include <QStringList>

namespace ullage {

using test::ModelsTest;
using Row = LogbookTreeModel::Row;

namespace {

QStringList titles(const QAbstractItemModel& model, const QModelIndex& parent = {}) {
    QStringList found;
    for (int row = 0; row < model.rowCount(parent); ++row) {
        const auto index = model.index(row, 0, parent);
        found << index.data().toString();
        found << titles(model, index);
    }
    return found;
}

/// Every change that a document can announce, under the eyes of Qt's own model tester.
constexpr auto strict = QAbstractItemModelTester::FailureReportingMode::Fatal;

} // namespace

TEST_F(ModelsTest, the_tree_holds_units_with_runs_meters_and_the_comparison) {
    Meter meter;
    meter.name = "Socket meter A";
    meter.limit_percent = 1;
    ASSERT_TRUE(document.addMeter(meter));
    const auto run = start_drain(osk);
    note(run, 100, 0);
    note(run, 95, 64);
    const LogbookTreeModel model(document);
    EXPECT_EQ(titles(model), (QStringList{"Running tests", "Units", "Osk 1200", "drain 14 May, 64 W", "Meters", "Socket meter A, ±1 %", "Load lists",
                                          "None yet: add a load list", "Across units", "Comparison", "Sizing", "PV input"}));
}

TEST_F(ModelsTest, an_empty_section_says_what_to_do_and_offers_it) {
    ASSERT_TRUE(document.withdrawUnit(osk.uuid));
    const LogbookTreeModel model(document);
    const auto hint = model.index(0, 0, model.index(1, 0));
    EXPECT_EQ(model.rowKind(hint), Row::hint);
    EXPECT_EQ(hint.data().toString(), "None yet: add a unit");
    EXPECT_EQ(hint.data(LogbookTreeModel::UuidRole).toString(), "addUnitAction");
    EXPECT_TRUE(model.flags(hint).testFlag(Qt::ItemIsSelectable)) << "the keyboard reaches it";
}

TEST_F(ModelsTest, a_running_run_is_open_until_it_is_ended) {
    auto run = start_drain(osk);
    const LogbookTreeModel model(document);
    EXPECT_TRUE(model.indexOf(Row::run, run.uuid.text()).data(LogbookTreeModel::OpenRole).toBool());
    EXPECT_TRUE(model.indexOf(Row::run, run.uuid.text()).data(Qt::AccessibleTextRole).toString().contains("running"));
    run.end = RunEnd::found_off;
    ASSERT_TRUE(document.updateRun(run));
    EXPECT_FALSE(model.indexOf(Row::run, run.uuid.text()).data(LogbookTreeModel::OpenRole).toBool());
}

TEST_F(ModelsTest, an_overdue_run_is_told_and_announced_once) {
    const auto run = start_drain(osk);
    LogbookTreeModel model(document);
    const QAbstractItemModelTester tester(&model, strict);
    int changes = 0;
    QObject::connect(&model, &QAbstractItemModel::dataChanged, [&changes] { ++changes; });
    const auto row = model.indexOf(Row::run, run.uuid.text());
    EXPECT_FALSE(row.data(LogbookTreeModel::OverdueRole).toBool());
    model.setOverdue({run.uuid});
    model.setOverdue({run.uuid});
    EXPECT_EQ(changes, 1);
    EXPECT_TRUE(row.data(LogbookTreeModel::OverdueRole).toBool());
    EXPECT_TRUE(row.data(Qt::AccessibleTextRole).toString().contains("overdue"));
    model.setOverdue({});
    EXPECT_FALSE(row.data(LogbookTreeModel::OverdueRole).toBool());
}

TEST_F(ModelsTest, the_tree_stays_a_sound_model_through_every_change) {
    LogbookTreeModel model(document);
    const QAbstractItemModelTester tester(&model, strict);
    int resets = 0;
    QObject::connect(&model, &QAbstractItemModel::modelReset, [&resets] { ++resets; });
    auto run = start_drain(osk);
    note(run, 100, 0);
    note(run, 90, 100);
    Meter meter;
    meter.name = "Socket meter A";
    ASSERT_TRUE(document.addMeter(meter));
    run.end = RunEnd::cut_off_seen;
    ASSERT_TRUE(document.updateRun(run));
    ASSERT_TRUE(document.withdrawRun(run.uuid));
    while (document.undoStack().canUndo()) document.undoStack().undo();
    while (document.undoStack().canRedo()) document.undoStack().redo();
    document.close();
    EXPECT_EQ(model.rowCount(), 0);
    ASSERT_TRUE(document.open(QString::fromStdString((folder / "bench.ullage").string())));
    EXPECT_EQ(model.rowCount(), 5);
    EXPECT_GT(resets, 5);
}

TEST_F(ModelsTest, a_new_reading_renames_its_run_without_resetting_the_tree) {
    const auto run = start_drain(osk);
    note(run, 100, 0);
    LogbookTreeModel model(document);
    int resets = 0;
    QModelIndexList changed;
    QObject::connect(&model, &QAbstractItemModel::modelReset, [&resets] { ++resets; });
    QObject::connect(&model, &QAbstractItemModel::dataChanged, [&changed](const QModelIndex& from) { changed << from; });
    const QPersistentModelIndex row = model.indexOf(Row::run, run.uuid.text());
    note(run, 95, 64);
    EXPECT_EQ(resets, 0);
    EXPECT_TRUE(changed.contains(row));
    EXPECT_EQ(row.data().toString(), "drain 14 May, 64 W");
}

TEST_F(ModelsTest, a_units_vessel_is_filled_as_its_gauge_while_it_runs_and_else_by_its_measured_drain) {
    LogbookTreeModel model(document);
    EXPECT_FALSE(model.indexOf(Row::unit, osk.uuid.text()).data(LogbookTreeModel::FilledRole).isValid());
    EXPECT_EQ(model.indexOf(Row::unit, osk.uuid.text()).data(LogbookTreeModel::RatedRole).toDouble(), 1200.0);
    auto whole = start_drain(osk);
    note(whole, 100, 0);
    note(whole, 0, 900);
    whole.end = RunEnd::cut_off_seen;
    ASSERT_TRUE(document.updateRun(whole));
    clock.advance_hours(24);
    auto part = start_drain(osk);
    note(part, 100, 900);
    note(part, 60, 1300);
    EXPECT_EQ(model.indexOf(Row::unit, osk.uuid.text()).data(LogbookTreeModel::FilledRole).toDouble(), 720.0)
        << "60 % of 1200 Wh, as its gauge shows";
    part.end = RunEnd::stopped_by_tester;
    ASSERT_TRUE(document.updateRun(part));
    EXPECT_EQ(model.indexOf(Row::unit, osk.uuid.text()).data(LogbookTreeModel::FilledRole).toDouble(), 900.0);
}

} // namespace ullage
