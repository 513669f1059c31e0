// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/line_chart.h"
#include "pages/run/findings_view.h"
#include "pages/run/readings_view.h"
#include "pages/run/run_charts_panel.h"
#include "run_page_fixture.h"

#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

#include <algorithm>
#include <utility>

namespace ullage {

using test::RunPageTest;

namespace {

class SelectionTest : public RunPageTest {
protected:
    void SetUp() override {
        RunPageTest::SetUp();
        recordSample();
        showPage();
        view = find<ReadingsView>("readingsView");
        chart = find<LineChart>("energyChart");
    }
    [[nodiscard]] ReadingId uuid(std::size_t at) const { return readings()[at].uuid; }
    /// How far the chart's picture changes where a point stands.
    [[nodiscard]] QImage around(QPointF place) const { return chart->grab(QRect(place.toPoint() - QPoint(14, 14), QSize(28, 28))).toImage(); }
    [[nodiscard]] QPointF deliveredPoint(std::size_t at) const {
        const auto& points = std::ranges::find(chart->content().series, QStringLiteral("delivered"), &ChartSeries::id)->points;
        return chart->pixelOf(points[at].x, points[at].y);
    }

    ReadingsView* view = nullptr;
    LineChart* chart = nullptr;
};

} // namespace

TEST_F(SelectionTest, clicking_a_point_of_the_chart_selects_its_row) {
    // The page is arranged by now, and the chart has its size.
    QPoint place;
    ASSERT_TRUE(QTest::qWaitFor([&] { return std::exchange(place, deliveredPoint(6).toPoint()) == deliveredPoint(6).toPoint(); }));
    QWidget* target = chart->childAt(place);
    ASSERT_NE(target, nullptr);
    QTest::mouseMove(target, target->mapFrom(chart, place));
    QTest::mouseClick(target, Qt::LeftButton, {}, target->mapFrom(chart, place));
    EXPECT_EQ(view->selectedReadings(), std::vector<ReadingId>{uuid(6)});
}

TEST_F(SelectionTest, an_announced_point_of_each_chart_selects_its_reading) {
    emit chart->pointClicked(QStringLiteral("gauge_implied"), 7);
    EXPECT_EQ(view->selectedReadings(), std::vector<ReadingId>{uuid(7)});
    emit find<LineChart>("errorChart")->pointClicked(QStringLiteral("error"), 3);
    EXPECT_EQ(view->selectedReadings(), std::vector<ReadingId>{uuid(3)});
    emit find<LineChart>("loadChart")->pointClicked(QStringLiteral("load"), 0);
    EXPECT_EQ(view->selectedReadings(), std::vector<ReadingId>{uuid(1)}); // the reading at the step's end
    emit chart->pointClicked(QStringLiteral("delivered"), 99);
    EXPECT_EQ(view->selectedReadings(), std::vector<ReadingId>{uuid(1)}); // a point without a reading changes nothing
}

TEST_F(SelectionTest, selecting_a_row_highlights_its_points_in_the_chart) {
    const QImage plain = around(deliveredPoint(8));
    const auto* model = static_cast<const ReadingsModel*>(view->model());
    const QModelIndex row = model->index(model->rowOf(uuid(8)), ReadingsRow::gauge);
    view->scrollTo(row);
    QTest::mouseClick(view->viewport(), Qt::LeftButton, {}, view->visualRect(row).center());
    ASSERT_EQ(view->selectedReadings(), std::vector<ReadingId>{uuid(8)});
    EXPECT_NE(around(deliveredPoint(8)), plain);
    view->clearSelection();
    EXPECT_EQ(around(deliveredPoint(8)), plain);
}

TEST_F(SelectionTest, a_finding_selects_its_readings_in_table_and_chart) {
    const auto rows = find<FindingsView>("findingsView")->rows();
    const auto stuck = std::ranges::find_if(
        rows, [](const FindingRow* row) { return row->item().sort == FindingItem::Sort::fault && row->item().readings.size() >= 3; });
    ASSERT_NE(stuck, rows.end()) << "the sample sticks at 71 %";
    const QImage plain = around(deliveredPoint(5));
    QTest::mouseClick(*stuck, Qt::LeftButton);
    EXPECT_EQ(view->selectedReadings(), (*stuck)->item().readings);
    EXPECT_EQ(std::ranges::count((*stuck)->item().readings, uuid(5)), 1);
    EXPECT_TRUE((*stuck)->isSelected());
    EXPECT_NE(around(deliveredPoint(5)), plain);
    emit chart->pointClicked(QStringLiteral("delivered"), 1);
    EXPECT_FALSE((*stuck)->isSelected());
}

TEST(Findings, open_with_what_matters_and_fold_what_is_not_known) {
    FindingsView findings;
    const auto item = [](FindingItem::Sort sort, const char* sentence) { return FindingItem{sort, QString::fromLatin1(sentence), {}, {}}; };
    findings.setItems(
        {item(FindingItem::Sort::note, "Few."), item(FindingItem::Sort::not_known, "This."), item(FindingItem::Sort::not_known, "That.")}, {});
    findings.show();
    auto* fold = findings.findChild<QPushButton*>(QStringLiteral("notKnownButton"));
    ASSERT_NE(fold, nullptr);
    EXPECT_TRUE(fold->text().endsWith("Not known: 2"));
    EXPECT_TRUE(findings.rows()[0]->isVisible());
    EXPECT_FALSE(findings.rows()[1]->isVisible());
    QTest::mouseClick(fold, Qt::LeftButton);
    EXPECT_TRUE(findings.rows()[2]->isVisible());
    findings.setItems({item(FindingItem::Sort::not_known, "This.")}, {});
    EXPECT_TRUE(findings.rows()[0]->isVisible()) << "there is nothing else to say";
}

TEST_F(SelectionTest, a_finding_is_chosen_by_keyboard_too) {
    const auto rows = find<FindingsView>("findingsView")->rows();
    const auto first = std::ranges::find_if(rows, [](const FindingRow* row) { return !row->item().readings.empty(); });
    ASSERT_NE(first, rows.end());
    (*first)->setFocus();
    press(Qt::Key_Space);
    EXPECT_EQ(view->selectedReadings(), (*first)->item().readings);
}

TEST_F(SelectionTest, an_interval_selects_the_readings_at_both_ends) {
    auto* tabs = find<QTabWidget>("chartsTabs");
    auto* intervals = find<QTableView>("intervalsView");
    tabs->setCurrentWidget(intervals);
    ASSERT_EQ(intervals->model()->rowCount(), 10);
    QTest::mouseClick(intervals->viewport(), Qt::LeftButton, {}, intervals->visualRect(intervals->model()->index(2, 1)).center());
    EXPECT_EQ(view->selectedReadings(), (std::vector<ReadingId>{uuid(2), uuid(3)}));
}

TEST_F(SelectionTest, a_new_reading_leaves_the_selection_where_it_was) {
    view->selectReadings({uuid(2)});
    clock.advance_hours(0.5);
    type("gaugeEdit", "15");
    type("registerEdit", "5280");
    press(Qt::Key_Return);
    ASSERT_EQ(readings().size(), 12U) << entry().message().toStdString();
    EXPECT_EQ(view->selectedReadings(), std::vector<ReadingId>{uuid(2)});
}

TEST_F(SelectionTest, a_gauge_without_a_fault_is_not_accused) {
    // The same drain with a gauge that follows the meter: 12 Wh a point.
    for (const Reading& reading : readings()) {
        ReadingValues honest = reading.values;
        const double depth = (*honest.register_wh - 4312) / 12.0;
        honest.gauge_percent = 100.0 - static_cast<int>(depth + 0.5);
        if (honest != reading.values) {
            ASSERT_TRUE(document.amend(reading.uuid, honest, {}));
        }
    }
    for (const FindingRow* row : find<FindingsView>("findingsView")->rows())
        EXPECT_NE(row->item().sort, FindingItem::Sort::fault) << row->item().sentence.toStdString();
}

} // namespace ullage
