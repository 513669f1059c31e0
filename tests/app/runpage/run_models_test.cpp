// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/budget_model.h"
#include "models/intervals_model.h"
#include "run_page_fixture.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

namespace ullage {

using test::RunPageTest;

namespace {

/// Lets the tester's complaints fail the test: it reports by warnings of its own category.
struct Complaints {
    static inline QStringList heard;
    static void listen(QtMsgType, const QMessageLogContext& context, const QString& message) {
        if (QLatin1String(context.category) == QLatin1String("qt.modeltest")) heard << message;
    }
    QtMessageHandler before;
    Complaints() : before(qInstallMessageHandler(listen)) { heard.clear(); }
    ~Complaints() {
        qInstallMessageHandler(before);
        EXPECT_TRUE(heard.isEmpty()) << heard.join(QLatin1Char('\n')).toStdString();
    }
};

QString cell(const QAbstractItemModel& model, int row, int column) { return model.index(row, column).data().toString(); }

} // namespace

TEST_F(RunPageTest, the_readings_model_keeps_the_rules_of_models_through_every_change) {
    const Complaints complaints;
    ReadingsModel model(document);
    const QAbstractItemModelTester tester(&model, QAbstractItemModelTester::FailureReportingMode::Warning);
    model.setRun(run.uuid);
    EXPECT_EQ(model.rowCount(), 0);
    recordSample();
    EXPECT_EQ(model.rowCount(), 13); // 11 readings under two days
    const ReadingId third = readings()[2].uuid;
    ASSERT_TRUE(document.withdrawReading(third, {}));
    EXPECT_EQ(model.rowCount(), 12);
    document.undoStack().undo();
    EXPECT_EQ(model.rowCount(), 13);
    ReadingValues moved = readings()[2].values;
    moved.time_ms += 12 * 3'600'000; // to the other day
    ASSERT_TRUE(document.amend(third, moved, {}));
    EXPECT_EQ(model.rowCount(), 13);
    document.close();
    EXPECT_EQ(model.rowCount(), 0);
}

TEST_F(RunPageTest, the_readings_model_shows_readings_under_their_local_day) {
    recordSample();
    ReadingsModel model(document);
    model.setRun(run.uuid);
    EXPECT_EQ(cell(model, 0, 0), QStringLiteral("Fri 14 May"));
    EXPECT_TRUE(model.index(0, 0).data(ReadingsModel::DayRole).toBool());
    EXPECT_FALSE(model.flags(model.index(0, 0)).testFlag(Qt::ItemIsSelectable));
    EXPECT_EQ(cell(model, 1, ReadingsRow::time), QStringLiteral("18:00"));
    EXPECT_EQ(cell(model, 1, ReadingsRow::register_value), QStringLiteral("4312"));
    EXPECT_EQ(cell(model, 1, ReadingsRow::delivered), QStringLiteral("0"));
    EXPECT_EQ(cell(model, 1, ReadingsRow::load), QString());
    EXPECT_EQ(cell(model, 1, ReadingsRow::remark), QStringLiteral("start, full"));
    EXPECT_EQ(cell(model, 2, ReadingsRow::time), QStringLiteral("19:06"));
    EXPECT_EQ(cell(model, 2, ReadingsRow::delivered), QStringLiteral("71"));
    EXPECT_EQ(cell(model, 2, ReadingsRow::load), QStringLiteral("65")); // 71 Wh in 1.1 h
    EXPECT_EQ(cell(model, 6, 0), QStringLiteral("Sat 15 May"));
    // Before the end against what the drain is expected to deliver: 936 Wh so far, and the mean load up to the cut-off as forecast.
    const auto forecast = document.casebook().forecast_at_last_reading(run.uuid);
    ASSERT_TRUE(forecast->cut_off);
    const EnergyAnalysis& energy = document.analysis(run.uuid).energy;
    const double expected_wh = 936 + *energy.mean_load_w.value * hours_between(energy.track.points.back().time_ms, forecast->cut_off->estimate_ms);
    EXPECT_NEAR(cell(model, 2, ReadingsRow::error).toDouble(), 95 - 100 * (1 - 71 / expected_wh), 0.051);
    EXPECT_EQ(model.headerData(ReadingsRow::error, Qt::Horizontal, Qt::DisplayRole).toString(),
              QStringLiteral("error, pt\nif %1 Wh").arg(expected_wh, 0, 'f', 0));
}

TEST_F(RunPageTest, a_register_reading_that_is_left_out_is_shown_apart) {
    recordSample();
    const Reading fifth = readings()[4];
    ReadingValues typo = fifth.values;
    typo.register_wh = 46640; // a digit too many
    ASSERT_TRUE(document.amend(fifth.uuid, typo, {}));
    ReadingsModel model(document);
    model.setRun(run.uuid);
    const QModelIndex index = model.index(model.rowOf(fifth.uuid), ReadingsRow::register_value);
    EXPECT_EQ(index.data(ReadingsModel::EmphasisRole).toInt(), static_cast<int>(ReadingsModel::Emphasis::left_out));
    EXPECT_TRUE(index.data(Qt::ToolTipRole).toString().startsWith(QStringLiteral("assumed: typing error")))
        << index.data(Qt::ToolTipRole).toString().toStdString();
}

TEST_F(RunPageTest, stuck_readings_are_marked_doubtful_but_not_the_first_of_them) {
    recordSample();
    ReadingsModel model(document);
    model.setRun(run.uuid);
    const auto doubtful = [&](std::size_t at) { return model.index(model.rowOf(readings()[at].uuid), 0).data(ReadingsModel::DoubtfulRole).toBool(); };
    EXPECT_FALSE(doubtful(3));
    EXPECT_FALSE(doubtful(4));
    EXPECT_TRUE(doubtful(5));
    EXPECT_TRUE(doubtful(6));
    EXPECT_FALSE(doubtful(7));
}

TEST_F(RunPageTest, the_interval_and_budget_models_show_the_analysis) {
    recordSample();
    const RunAnalysis& analysis = document.analysis(run.uuid);
    const Complaints complaints;
    IntervalsModel intervals;
    const QAbstractItemModelTester intervals_tester(&intervals, QAbstractItemModelTester::FailureReportingMode::Warning);
    intervals.setRun(record(), analysis);
    ASSERT_EQ(intervals.rowCount(), 10);
    EXPECT_EQ(cell(intervals, 0, IntervalsModel::SpanColumn), QStringLiteral("18:00 to 19:06"));
    EXPECT_EQ(cell(intervals, 0, IntervalsModel::PointsColumn), QStringLiteral("5"));
    EXPECT_EQ(cell(intervals, 0, IntervalsModel::ImpliedColumn), QStringLiteral("60"));
    EXPECT_EQ(cell(intervals, 0, IntervalsModel::DeliveredColumn), QStringLiteral("71"));
    EXPECT_EQ(cell(intervals, 0, IntervalsModel::RatioColumn), QStringLiteral("1.18"));
    EXPECT_EQ(cell(intervals, 0, IntervalsModel::PerPointColumn), QStringLiteral("14.2"));
    EXPECT_EQ(cell(intervals, 4, IntervalsModel::PerPointColumn), QString(QChar(0x2013))); // the gauge did not move
    EXPECT_FALSE(intervals.index(4, IntervalsModel::PerPointColumn).data(Qt::ToolTipRole).toString().isEmpty());

    BudgetModel budget;
    const QAbstractItemModelTester budget_tester(&budget, QAbstractItemModelTester::FailureReportingMode::Warning);
    budget.setBudget(analysis.energy.budget);
    ASSERT_GT(budget.rowCount(), 1);
    double shares = 0;
    for (int row = 0; row < budget.rowCount(); ++row) shares += budget.index(row, 0).data(BudgetModel::ShareRole).toDouble();
    EXPECT_NEAR(shares, 1.0, 1e-9);
    budget.setBudget({});
    EXPECT_EQ(budget.rowCount(), 0);
}

} // namespace ullage
