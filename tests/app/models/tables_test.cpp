// SPDX-License-Identifier: GPL-3.0-or-later
#include "models_fixture.h"

#include "models/meters_model.h"
#include "models/quantity_cell.h"
#include "models/unit_runs_model.h"

#include <QAbstractItemModelTester>

namespace ullage {

using test::ModelsTest;

namespace {

constexpr auto fatal = QAbstractItemModelTester::FailureReportingMode::Fatal;

} // namespace

TEST_F(ModelsTest, the_runs_of_a_unit_show_what_they_delivered_with_its_interval) {
    Meter meter;
    meter.name = "Socket meter A";
    meter.limit_percent = 1;
    meter.step_wh = 1;
    meter = document.addMeter(meter).value();
    auto run = start_drain(osk);
    run.meter_uuid = meter.uuid;
    ASSERT_TRUE(document.updateRun(run));
    note(run, 100, 0);
    note(run, 0, 900);
    run.end = RunEnd::cut_off_seen;
    ASSERT_TRUE(document.updateRun(run));

    UnitRunsModel model(document);
    const QAbstractItemModelTester tester(&model, fatal);
    model.setUnit(osk.uuid);
    ASSERT_EQ(model.rowCount(), 1);
    const auto delivered = model.index(0, UnitRunsModel::DeliveredColumn);
    EXPECT_TRUE(delivered.data().toString().startsWith("900"));
    EXPECT_TRUE(delivered.data(IntervalRole).toString().startsWith("±"));
    EXPECT_EQ(model.index(0, UnitRunsModel::EndColumn).data().toString(), "cut-off seen");
    const auto fraction = model.index(0, UnitRunsModel::FractionColumn);
    EXPECT_TRUE(fraction.data().toString().startsWith("75"));
    EXPECT_TRUE(fraction.data(Qt::ToolTipRole).toString().startsWith("measured"));
    EXPECT_EQ(model.index(0, 0).data(UnitRunsModel::UuidRole).toString().toStdString(), run.uuid.text());
}

TEST_F(ModelsTest, what_is_not_known_says_so_and_why) {
    start_drain(osk);
    UnitRunsModel model(document);
    model.setUnit(osk.uuid);
    ASSERT_EQ(model.rowCount(), 1);
    const auto delivered = model.index(0, UnitRunsModel::DeliveredColumn);
    EXPECT_EQ(delivered.data().toString(), "not known");
    EXPECT_TRUE(delivered.data(SoftRole).toBool());
    EXPECT_GT(delivered.data(Qt::ToolTipRole).toString().size(), 12);
}

TEST_F(ModelsTest, a_runs_table_without_a_unit_is_empty) {
    start_drain(osk);
    UnitRunsModel model(document);
    EXPECT_EQ(model.rowCount(), 0);
    model.setUnit(UnitId("no such unit"));
    EXPECT_EQ(model.rowCount(), 0);
}

TEST_F(ModelsTest, the_runs_table_follows_the_document) {
    UnitRunsModel model(document);
    const QAbstractItemModelTester tester(&model, fatal);
    model.setUnit(osk.uuid);
    const auto run = start_drain(osk);
    EXPECT_EQ(model.rowCount(), 1);
    note(run, 100, 0);
    note(run, 50, 500);
    EXPECT_TRUE(model.index(0, UnitRunsModel::DeliveredColumn).data().toString().startsWith("500"));
    ASSERT_TRUE(document.withdrawRun(run.uuid));
    EXPECT_EQ(model.rowCount(), 0);
    document.undoStack().undo();
    EXPECT_EQ(model.rowCount(), 1);
}

TEST_F(ModelsTest, the_meters_table_shows_limits_and_counts_runs) {
    MetersModel model(document);
    const QAbstractItemModelTester tester(&model, fatal);
    Meter meter;
    meter.name = "Socket meter B";
    meter.limit_percent = 2;
    meter = document.addMeter(meter).value();
    ASSERT_EQ(model.rowCount(), 1);
    EXPECT_EQ(model.rowOf(meter.uuid), 0);
    EXPECT_EQ(model.index(0, MetersModel::LimitColumn).data().toString(), "2");
    EXPECT_EQ(model.index(0, MetersModel::StepColumn).data().toString(), "not stated");
    EXPECT_EQ(model.index(0, MetersModel::RunsColumn).data().toInt(), 0);
    ullage::Run run;
    run.unit_uuid = osk.uuid;
    run.meter_uuid = meter.uuid;
    ASSERT_TRUE(document.addRun(run));
    EXPECT_EQ(model.index(0, MetersModel::RunsColumn).data().toInt(), 1);
    document.close();
    EXPECT_EQ(model.rowCount(), 0);
}

} // namespace ullage
