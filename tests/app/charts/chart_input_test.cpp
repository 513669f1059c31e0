// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/charts/sample_content.h"
#include "charts/bar_chart.h"
#include "charts/line_chart.h"
#include "charts/vessel_row.h"

#include <gtest/gtest.h>

#include <QAccessible>
#include <QApplication>
#include <QGraphicsView>
#include <QImage>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>
#include <QWheelEvent>

#include <algorithm>

namespace ullage {
namespace {

class LineChartInput : public testing::Test {
protected:
    void SetUp() override {
        chart_.resize(600, 420);
        chart_.setContent(sample::drain());
        chart_.show();
        QApplication::processEvents();
        auto* view = chart_.findChild<QGraphicsView*>();
        ASSERT_NE(view, nullptr);
        target_ = view->viewport();
    }

    void move_to(const QPointF& place) { QTest::mouseMove(target_, place.toPoint()); }
    void click(const QPointF& place) { QTest::mouseClick(target_, Qt::LeftButton, Qt::NoModifier, place.toPoint()); }

    void drag(const QPointF& from, const QPointF& to, Qt::KeyboardModifiers keys = Qt::NoModifier) {
        QTest::mousePress(target_, Qt::LeftButton, keys, from.toPoint());
        QTest::mouseMove(target_, ((from + to) / 2).toPoint());
        QTest::mouseMove(target_, to.toPoint());
        QTest::mouseRelease(target_, Qt::LeftButton, keys, to.toPoint());
    }

    bool wheel(const QPointF& place, int eighths) {
        QWheelEvent event(place, target_->mapToGlobal(place), {}, {0, eighths}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
        QApplication::sendEvent(target_, &event);
        return event.isAccepted();
    }

    LineChart chart_;
    QWidget* target_ = nullptr;
};

} // namespace

TEST(LineChart, makes_its_drawing_when_it_is_wanted_first_and_tells_its_content_before) {
    QWidget page;
    LineChart chart(&page);
    QPushButton next(QStringLiteral("next"), &page);
    chart.setContent(sample::drain());
    EXPECT_EQ(chart.content().series.size(), sample::drain().series.size());
    EXPECT_EQ(chart.accessibleName(), sample::drain().description);
    EXPECT_EQ(chart.findChild<QGraphicsView*>(), nullptr);
    chart.resize(600, 420);
    page.show();
    auto* view = chart.findChild<QGraphicsView*>();
    ASSERT_NE(view, nullptr);
    EXPECT_TRUE(view->isVisible());
    EXPECT_EQ(view->size(), chart.size());
    EXPECT_EQ(view->accessibleName(), sample::drain().description);
    EXPECT_EQ(chart.content().series.size(), sample::drain().series.size());
    EXPECT_EQ(chart.nextInFocusChain(), view) << "the keyboard reaches it before what was made after the chart";
    chart.resize(500, 300);
    EXPECT_EQ(view->size(), chart.size());
}

TEST_F(LineChartInput, hovering_over_a_point_shows_its_reading_and_leaving_hides_it) {
    move_to(chart_.pixelOf(8.4, 540));
    EXPECT_EQ(chart_.readout().toStdString(), "delivered\n8.4 h,  540 Wh\nmeter A");
    move_to(chart_.pixelOf(3, 1100));
    EXPECT_TRUE(chart_.readout().isEmpty());
}

TEST_F(LineChartInput, a_click_on_a_point_names_the_series_and_the_index) {
    QSignalSpy spy(&chart_, &LineChart::pointClicked);
    click(chart_.pixelOf(8.4, 348));
    ASSERT_EQ(spy.count(), 1);
    EXPECT_EQ(spy[0][0].toString().toStdString(), "gauge");
    EXPECT_EQ(spy[0][1].toInt(), 6);
}

TEST_F(LineChartInput, a_click_where_nothing_lies_does_nothing) {
    QSignalSpy spy(&chart_, &LineChart::pointClicked);
    for (const QPointF place : {QPointF(1, 1), QPointF(598, 418), QPointF(300, 60), QPointF(2, 418)}) {
        click(place);
        QTest::mouseDClick(target_, Qt::LeftButton, Qt::NoModifier, place.toPoint());
        QTest::mouseClick(target_, Qt::RightButton, Qt::NoModifier, place.toPoint());
    }
    EXPECT_EQ(spy.count(), 0);
    EXPECT_EQ(chart_.visibleSpan(), std::pair(0.0, 18.0));
}

TEST_F(LineChartInput, a_click_on_a_name_hides_its_curve_and_another_shows_it_again) {
    const QImage before = chart_.grab().toImage();
    ASSERT_FALSE(chart_.labelPlace(QStringLiteral("gauge")).isEmpty());
    click(chart_.labelPlace(QStringLiteral("gauge")).center());
    EXPECT_FALSE(chart_.isGroupVisible(QStringLiteral("gauge")));
    EXPECT_NE(chart_.grab().toImage(), before);
    move_to(chart_.pixelOf(8.4, 348));
    EXPECT_TRUE(chart_.readout().isEmpty()) << "a hidden curve answers to nothing";
    click(chart_.labelPlace(QStringLiteral("gauge")).center());
    EXPECT_TRUE(chart_.isGroupVisible(QStringLiteral("gauge")));
}

TEST_F(LineChartInput, the_wheel_zooms_around_the_pointer_and_a_double_click_shows_all) {
    const QPointF place = chart_.pixelOf(6, 400);
    EXPECT_TRUE(wheel(place, 120));
    const auto [from, to] = chart_.visibleSpan();
    EXPECT_NEAR(to - from, 18.0 / 1.2, 1e-9);
    EXPECT_NEAR(chart_.pixelOf(6, 400).x(), place.x(), 8); // the plot's own width may change with the labels
    QTest::mouseDClick(target_, Qt::LeftButton, Qt::NoModifier, place.toPoint());
    EXPECT_EQ(chart_.visibleSpan(), std::pair(0.0, 18.0));
}

TEST_F(LineChartInput, zooming_out_of_the_whole_is_left_to_the_page_around) {
    EXPECT_FALSE(wheel(chart_.pixelOf(6, 400), -120));
    EXPECT_EQ(chart_.visibleSpan(), std::pair(0.0, 18.0));
}

TEST_F(LineChartInput, dragging_selects_a_span_and_with_shift_moves_it) {
    QSignalSpy spy(&chart_, &LineChart::visibleSpanChanged);
    drag(chart_.pixelOf(4, 200), chart_.pixelOf(10, 250));
    ASSERT_GE(spy.count(), 1);
    auto [from, to] = chart_.visibleSpan();
    EXPECT_NEAR(from, 4, 0.1);
    EXPECT_NEAR(to, 10, 0.1);
    drag(chart_.pixelOf(6, 200), chart_.pixelOf(7, 200), Qt::ShiftModifier);
    EXPECT_NEAR(chart_.visibleSpan().first, from - 1, 0.2);
    EXPECT_NEAR(chart_.visibleSpan().second, to - 1, 0.2);
}

TEST_F(LineChartInput, keys_zoom_move_and_reset) {
    QTest::keyClick(&chart_, Qt::Key_Plus);
    auto* view = chart_.findChild<QGraphicsView*>();
    QTest::keyClick(view, Qt::Key_Plus);
    const auto zoomed = chart_.visibleSpan();
    EXPECT_LT(zoomed.second - zoomed.first, 18.0);
    QTest::keyClick(view, Qt::Key_Left);
    EXPECT_LT(chart_.visibleSpan().first, zoomed.first);
    QTest::keyClick(view, Qt::Key_Home);
    EXPECT_EQ(chart_.visibleSpan(), std::pair(0.0, 18.0));
}

TEST_F(LineChartInput, highlights_change_the_picture_and_bad_indices_do_nothing) {
    const QImage before = chart_.grab().toImage();
    chart_.setHighlighted(QStringLiteral("delivered"), {-3, 4000});
    EXPECT_EQ(chart_.grab().toImage(), before);
    chart_.setHighlighted(QStringLiteral("delivered"), {5});
    EXPECT_NE(chart_.grab().toImage(), before);
    chart_.setHighlighted(QStringLiteral("delivered"), {});
    EXPECT_EQ(chart_.grab().toImage(), before);
}

TEST_F(LineChartInput, new_readings_keep_the_zoom_and_other_data_reset_it) {
    chart_.zoomTo(2, 6);
    ChartContent content = sample::drain();
    content.series[1].points.push_back({15.5, 1000});
    chart_.setContent(content);
    EXPECT_EQ(chart_.visibleSpan(), std::pair(2.0, 6.0));
    ChartContent other;
    other.series = {{.id = QStringLiteral("late"), .points = {{100, 1}, {120, 2}}}};
    chart_.setContent(other);
    EXPECT_EQ(chart_.visibleSpan(), std::pair(100.0, 120.0));
}

TEST_F(LineChartInput, what_came_while_the_chart_was_out_of_sight_is_drawn_once_it_is_seen) {
    const QImage drain = chart_.grab().toImage();
    chart_.setContent(sample::long_trace(200));
    const QImage trace = chart_.grab().toImage();
    ASSERT_NE(drain, trace);
    chart_.setContent(sample::drain());
    chart_.hide();
    chart_.setContent(sample::long_trace(200));
    chart_.show();
    QApplication::processEvents();
    EXPECT_EQ(chart_.grab().toImage(), trace);
}

TEST_F(LineChartInput, a_chart_that_was_never_shown_can_be_grabbed) {
    LineChart unseen;
    unseen.resize(600, 420);
    unseen.setContent(sample::drain());
    EXPECT_EQ(unseen.grab().toImage(), chart_.grab().toImage());
}

TEST_F(LineChartInput, an_empty_chart_takes_all_input) {
    ChartContent content;
    content.empty_text = QStringLiteral("No readings yet.");
    chart_.setContent(content);
    const QImage image = chart_.grab().toImage();
    EXPECT_EQ(image.size(), chart_.size());
    click({300, 200});
    wheel({300, 200}, 120);
    drag({100, 100}, {400, 200});
    move_to({200, 200});
    EXPECT_TRUE(chart_.readout().isEmpty());
}

TEST_F(LineChartInput, a_long_trace_shows_its_spikes_at_every_zoom) {
    chart_.setContent(sample::long_trace(200000));
    const auto spike = chart_.pixelOf(10.0 * (200000 / 3) / 200000.0, 180);
    move_to(spike);
    EXPECT_TRUE(chart_.readout().contains(QStringLiteral("180"))) << chart_.readout().toStdString();
    chart_.zoomTo(2, 4);
    move_to(chart_.pixelOf(10.0 * (200000 / 3) / 200000.0, 180));
    EXPECT_TRUE(chart_.readout().contains(QStringLiteral("180"))) << chart_.readout().toStdString();
}

TEST(BarChartInput, a_click_on_a_row_names_it_and_elsewhere_nothing) {
    BarChart chart;
    chart.resize(520, 340);
    chart.setContent(sample::bars());
    chart.show();
    QApplication::processEvents();
    auto* view = chart.findChild<QGraphicsView*>();
    ASSERT_NE(view, nullptr);
    QSignalSpy spy(&chart, &BarChart::barClicked);
    QTest::mouseClick(view->viewport(), Qt::LeftButton, Qt::NoModifier, chart.rowPlace(2).center().toPoint());
    ASSERT_EQ(spy.count(), 1);
    EXPECT_EQ(spy[0][0].toInt(), 2);
    QTest::mouseClick(view->viewport(), Qt::LeftButton, Qt::NoModifier, QPoint(515, 337));
    EXPECT_EQ(spy.count(), 1);
    chart.setContent({});
    QTest::mouseClick(view->viewport(), Qt::LeftButton, Qt::NoModifier, QPoint(200, 100));
    EXPECT_EQ(spy.count(), 1);
}

TEST(BarChartInput, a_bar_is_as_long_as_its_value) {
    BarChart chart;
    chart.resize(520, 340);
    BarContent content;
    content.bars = {{QStringLiteral("all"), 100.0}, {QStringLiteral("half"), 50.0}};
    chart.setContent(content);
    chart.show();
    QApplication::processEvents();
    const QImage image = chart.grab().toImage();
    const auto length = [&](int row) {
        const int y = static_cast<int>(chart.rowPlace(row).center().y()) + 6;
        int count = 0;
        for (int x = 0; x < image.width(); ++x) {
            const QColor colour(image.pixel(x, y));
            count += colour.blue() > colour.red() + 60 ? 1 : 0;
        }
        return count;
    };
    EXPECT_GT(length(0), 100);
    EXPECT_NEAR(length(1), length(0) / 2.0, 3);
}

TEST(VesselRowInput, a_click_names_the_vessel) {
    VesselRow row;
    row.resize(640, 320);
    row.setContent(sample::vessels());
    row.show();
    QSignalSpy spy(&row, &VesselRow::vesselClicked);
    QTest::mouseClick(&row, Qt::LeftButton, Qt::NoModifier, QPoint(400, 200));
    ASSERT_EQ(spy.count(), 1);
    EXPECT_EQ(spy[0][0].toInt(), 2);
}

namespace {

class VesselKeys : public testing::Test {
protected:
    void SetUp() override {
        row.resize(640, 320);
        row.setContent(sample::vessels());
        row.show();
        row.activateWindow();
        row.setFocus();
        QApplication::processEvents();
    }
    void press(Qt::Key key) { QTest::keyClick(&row, key); }

    VesselRow row;
};

} // namespace

TEST_F(VesselKeys, arrows_go_from_vessel_to_vessel_and_enter_or_space_does_what_a_click_does) {
    ASSERT_TRUE(row.focusPolicy() & Qt::TabFocus);
    const int last = static_cast<int>(row.content().columns.size()) - 1;
    ASSERT_GE(last, 2);
    QSignalSpy spy(&row, &VesselRow::vesselClicked);
    EXPECT_EQ(row.current(), 0);
    press(Qt::Key_Left);
    EXPECT_EQ(row.current(), 0) << "none before the first";
    press(Qt::Key_Right);
    press(Qt::Key_Return);
    press(Qt::Key_End);
    press(Qt::Key_Right);
    press(Qt::Key_Space);
    press(Qt::Key_Home);
    EXPECT_EQ(row.current(), 0);
    ASSERT_EQ(spy.count(), 2);
    EXPECT_EQ(spy[0][0].toInt(), 1);
    EXPECT_EQ(spy[1][0].toInt(), last);
    row.setContent({{}, {}, QStringLiteral("none")});
    EXPECT_EQ(row.focusPolicy(), Qt::NoFocus) << "nothing to go to";
}

TEST_F(VesselKeys, the_vessel_they_are_at_is_marked_while_the_row_has_the_keyboard_by_keys) {
    const auto drawn = [this](int column) { return row.grab(row.columnPlace(column).toAlignedRect()).toImage(); };
    row.clearFocus();
    const QImage first = drawn(0), second = drawn(1);
    row.setFocus(Qt::ActiveWindowFocusReason);
    EXPECT_EQ(drawn(0), first) << "the window has come to the front, nobody has gone here";
    row.clearFocus();
    row.setFocus(Qt::TabFocusReason);
    EXPECT_NE(drawn(0), first);
    press(Qt::Key_Right);
    EXPECT_EQ(drawn(0), first);
    EXPECT_NE(drawn(1), second);
    row.clearFocus();
    EXPECT_EQ(drawn(1), second);
}

TEST_F(VesselKeys, the_tree_has_a_part_for_each_vessel_that_tells_its_facts_and_can_be_pressed) {
    auto* face = QAccessible::queryAccessibleInterface(&row);
    ASSERT_TRUE(face);
    ASSERT_EQ(face->childCount(), static_cast<int>(row.content().columns.size()));
    for (int column = 0; column < face->childCount(); ++column) {
        const VesselColumn& shown = row.content().columns[static_cast<std::size_t>(column)];
        auto* part = face->child(column);
        ASSERT_TRUE(part && part->isValid());
        EXPECT_EQ(face->indexOfChild(part), column);
        EXPECT_EQ(part->text(QAccessible::Name), shown.name);
        for (const QString& fact : vessel_facts(shown)) EXPECT_TRUE(part->text(QAccessible::Description).contains(fact)) << fact.toStdString();
        const QPoint middle = part->rect().center();
        EXPECT_EQ(face->childAt(middle.x(), middle.y()), part);
    }
    press(Qt::Key_Right);
    EXPECT_EQ(face->focusChild(), face->child(1));
    EXPECT_TRUE(face->child(1)->state().focused);
    EXPECT_FALSE(face->child(0)->state().focused);
    QSignalSpy spy(&row, &VesselRow::vesselClicked);
    face->child(2)->actionInterface()->doAction(QAccessibleActionInterface::pressAction());
    ASSERT_EQ(spy.count(), 1);
    EXPECT_EQ(spy[0][0].toInt(), 2);
    auto* gone = face->child(2);
    row.setContent({{}, {row.content().columns.front()}, {}});
    EXPECT_FALSE(gone->isValid());
}

} // namespace ullage
