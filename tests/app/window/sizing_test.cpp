// SPDX-License-Identifier: GPL-3.0-or-later
#include "window_fixture.h"

#include "charts/line_chart.h"
#include "models/table_model.h"
#include "pages/sizing/sizing_page.h"

#include <QComboBox>
#include <QDoubleSpinBox>
#include <QFile>
#include <QLabel>
#include <QTableView>
#include <QTreeView>

namespace ullage {

using test::WindowTest;

namespace {

/// The sizing page of the window; on the sample logbook where a test opens it.
class SizingTest : public WindowTest {
protected:
    void open_sample() {
        trigger("sampleLogbookAction");
        trigger("sizingAction");
    }

    [[nodiscard]] const Sizing& sizing() const { return find<SizingPage>("sizingPage")->sizing(); }
    void set(const char* spin, double value) {
        find<QDoubleSpinBox>(spin)->setValue(value);
        QApplication::processEvents();
    }
    [[nodiscard]] const SizedUnit& unit(const std::string& name) const {
        for (const SizedUnit& each : sizing().units)
            if (each.unit.name == name) return each;
        throw std::runtime_error(name);
    }
};

} // namespace

TEST_F(SizingTest, without_a_load_list_the_page_says_what_to_do) {
    new_logbook();
    trigger("sizingAction");
    EXPECT_EQ(page(), QStringLiteral("sizingPage"));
    EXPECT_TRUE(find<QLabel>("noSizingLabel")->isVisible());
    EXPECT_FALSE(enabled("sizingReportAction"));
    EXPECT_FALSE(find<QPushButton>("sizingReportButton")->isEnabled());
}

TEST_F(SizingTest, the_sample_list_is_sized_and_the_tree_stands_on_the_page) {
    open_sample();
    EXPECT_EQ(find<QTreeView>("logbookTree")->currentIndex().data().toString(), QStringLiteral("Sizing"));
    EXPECT_EQ(find<QComboBox>("sizingListCombo")->currentText(), QStringLiteral("Show night"));
    const auto* units = find<QTableView>("sizingUnitsTable");
    EXPECT_EQ(units->model()->rowCount(), static_cast<int>(document.units().size()));
    EXPECT_EQ(unit("Pelm 900").basis, SizingBasis::own_fit);
    EXPECT_TRUE(find<QLabel>("sizingCautionsLabel")->text().contains(QStringLiteral("licensed electrician")));
    EXPECT_EQ(find<LineChart>("sizingChart")->content().series.size(), 2U);
    EXPECT_EQ(find<LineChart>("sizingChart")->content().series.front().points.size(), 73U);
}

TEST_F(SizingTest, choices_work_at_once_and_are_remembered) {
    open_sample();
    const double by_rule_w = sizing().needs.front().array.by_rule_w;
    set("peakSunHoursSpin", 2);
    EXPECT_NEAR(sizing().needs.front().array.by_rule_w, 2 * by_rule_w, 1e-6) << "half the sun, twice the array";
    const auto before = unit("Osk 1200").units_needed.sure;
    ASSERT_TRUE(before);
    set("autonomyDaysSpin", 2);
    EXPECT_GT(unit("Osk 1200").units_needed.sure, before);
    EXPECT_TRUE(find<QLabel>("noMonthsLabel")->isVisible());
    set("month12Spin", 0.9);
    EXPECT_FALSE(find<QLabel>("noMonthsLabel")->isVisible());
    EXPECT_EQ(find<QTableView>("sizingMonthsTable")->model()->index(0, 0).data().toString(), QStringLiteral("December"));
    set("unitsSpin", 2);
    EXPECT_EQ(sizing().courses.front()->units, 2);
    show(); // another start of the program
    trigger("sizingAction");
    EXPECT_EQ(find<QDoubleSpinBox>("peakSunHoursSpin")->value(), 2);
    EXPECT_EQ(find<QDoubleSpinBox>("month12Spin")->value(), 0.9);
    EXPECT_EQ(find<QDoubleSpinBox>("month1Spin")->text(), QStringLiteral("–"));
}

TEST_F(SizingTest, the_chart_and_its_words_are_those_of_the_unit_chosen) {
    open_sample();
    auto* units = find<QTableView>("sizingUnitsTable");
    for (int row = 0; row < units->model()->rowCount(); ++row) {
        units->setCurrentIndex(units->model()->index(row, 0));
        EXPECT_TRUE(find<QLabel>("sizingCourseLabel")->text().startsWith(units->model()->index(row, 0).data().toString()));
    }
}

TEST_F(SizingTest, a_change_of_the_list_or_of_a_unit_is_followed) {
    open_sample();
    const double before_wh = sizing().totals.daily_wh;
    LoadList list = document.loadLists().front();
    list.appliances.front().hours_per_day += 1;
    ASSERT_TRUE(document.updateLoadList(list));
    EXPECT_GT(sizing().totals.daily_wh, before_wh);
    Unit untested;
    untested.name = "Untested 500";
    untested.rated_energy_wh = 500;
    ASSERT_TRUE(document.addUnit(untested));
    EXPECT_EQ(unit("Untested 500").basis, SizingBasis::expectation);
    document.undoStack().undo();
    document.undoStack().undo();
    EXPECT_NEAR(sizing().totals.daily_wh, before_wh, 1e-9);
}

TEST_F(SizingTest, the_report_and_the_export_are_written_where_the_tester_says) {
    open_sample();
    prompts.to_save = file("sizing.pdf");
    click("sizingReportButton");
    click("submitButton");
    QFile pdf(file("sizing.pdf"));
    ASSERT_TRUE(pdf.open(QFile::ReadOnly)) << message().toStdString();
    EXPECT_TRUE(pdf.readAll().startsWith("%PDF-"));
    click("exportSizingButton");
    EXPECT_TRUE(find<QComboBox>("subjectCombo")->count() >= 3);
}

} // namespace ullage
