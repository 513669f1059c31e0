// SPDX-License-Identifier: GPL-3.0-or-later
#include "window_fixture.h"

#include "charts/line_chart.h"
#include "pages/pv/pv_verdict.h"
#include "style/theme.h"

#include <QAction>
#include <QComboBox>
#include <QLabel>
#include <QScrollArea>

#include <algorithm>

namespace ullage::test {

class PvPageTest : public WindowTest {
protected:
    void SetUp() override {
        WindowTest::SetUp();
        ASSERT_TRUE(document.create(file("pv.ullage")));
        Unit unit;
        unit.name = "Specimen";
        unit.pv_max_v = 60;
        unit.pv_max_a = 15;
        unit.pv_max_w = 500;
        unit.pv_start_v = 12;
        ASSERT_TRUE(document.addUnit(unit));
        trigger("pvInputAction");
    }

    [[nodiscard]] QString said(const char* label) const { return find<QLabel>(label)->text(); }
    [[nodiscard]] PvVerdict verdict() const { return find<PvVerdictView>("pvVerdictPanel")->verdict(); }

    /// Types into a field and leaves it.
    void enter(const char* name, const QString& text) {
        auto* edit = find<QLineEdit>(name);
        edit->setFocus();
        type(name, text);
        QTest::keyClick(edit, Qt::Key_Tab);
        QApplication::processEvents();
    }

    void fill() {
        enter("pvVocVEdit", "24.3");
        enter("pvVmpVEdit", "20.4");
        enter("pvIscAEdit", "10.2");
        enter("pvImpAEdit", "9.8");
        enter("pvVocCoefficientEdit", "-0.30");
        enter("pvVmpCoefficientEdit", "-0.40");
        enter("pvSeriesEdit", "2");
        enter("pvColdestCEdit", "-15");
        enter("pvHottestCEdit", "35");
    }
};

TEST_F(PvPageTest, without_a_sheet_the_page_says_what_to_do) {
    EXPECT_EQ(page(), "pvPage");
    EXPECT_TRUE(find<QLabel>("noPvSheetsLabel")->isVisible());
    EXPECT_FALSE(enabled("withdrawPvSheetAction"));
    click("addPvSheetButton");
    EXPECT_EQ(document.pvSheets().size(), 1U);
    EXPECT_FALSE(find<QLabel>("noPvSheetsLabel")->isVisible());
    EXPECT_EQ(verdict(), PvVerdict::not_known);
    EXPECT_TRUE(said("pvHeadlineLabel").startsWith("Do not connect yet")) << said("pvHeadlineLabel").toStdString();
}

TEST_F(PvPageTest, no_line_of_the_answer_is_cut_however_much_it_has_to_say) {
    window->resize(1280, 800);
    click("addPvSheetButton");
    const auto expect_whole = [this] {
        QTest::qWait(50); // layouts follow in later turns
        const auto* answer = find<QScrollArea>("pvAnswerScroll")->widget();
        for (const QLabel* label : answer->findChildren<QLabel*>())
            if (label->isVisible() && label->wordWrap()) {
                EXPECT_GE(label->height(), label->heightForWidth(label->width())) << label->objectName().toStdString();
            }
    };
    expect_whole();
    fill();
    enter("pvParallelEdit", "4");
    expect_whole();
    EXPECT_TRUE(said("pvAssumedLabel").contains("each needs its own fuse"));
}

TEST_F(PvPageTest, fields_stand_in_one_column_where_larger_text_leaves_no_room_for_two) {
    click("addPvSheetButton");
    QTest::qWait(50);
    const auto* voc = find<QLineEdit>("pvVocVEdit");
    const auto* vmp = find<QLineEdit>("pvVmpVEdit");
    EXPECT_EQ(voc->y(), vmp->y());
    const QFont usual = QApplication::font();
    QFont large = usual;
    large.setPointSizeF(2 * usual.pointSizeF());
    QApplication::setFont(large);
    apply_theme(*qApp, Theme::light);
    QTest::qWait(50);
    const auto* viewport = find<QScrollArea>("pvFormScroll")->viewport();
    EXPECT_LT(voc->y(), vmp->y());
    for (const QLineEdit* edit : {voc, vmp}) EXPECT_LE(edit->mapTo(viewport, QPoint(edit->width(), 0)).x(), viewport->width());
    QApplication::setFont(usual);
    apply_theme(*qApp, Theme::light);
    QTest::qWait(50);
    EXPECT_EQ(voc->y(), vmp->y());
}

TEST_F(PvPageTest, a_string_inside_the_limits_fits_and_every_field_is_in_the_logbook) {
    click("addPvSheetButton");
    fill();
    EXPECT_EQ(verdict(), PvVerdict::fits) << said("pvHeadlineLabel").toStdString();
    const PvSheet& kept = document.pvSheets().at(0);
    EXPECT_EQ(kept.voc_v, 24.3);
    EXPECT_EQ(kept.voc_coefficient, (PvCoefficient{-0.30, PvPerDegree::percent}));
    EXPECT_EQ(kept.series, 2);
    EXPECT_TRUE(said("pvSuggestionLabel").contains("2 modules in series"));
    EXPECT_TRUE(said("pvLimitsLabel").contains("Specimen"));
}

TEST_F(PvPageTest, one_module_too_many_is_danger_in_words_as_it_is_typed) {
    click("addPvSheetButton");
    fill();
    type("pvSeriesEdit", "3");
    EXPECT_EQ(verdict(), PvVerdict::over_voltage_when_cold);
    EXPECT_EQ(document.pvSheets().at(0).series, 2) << "not left yet";
    EXPECT_EQ(said("pvVerdictLabel"), "DANGER: exceeds the voltage limit when cold");
    EXPECT_TRUE(said("pvHeadlineLabel").contains("do not connect"));
    EXPECT_TRUE(said("pvComparisonsLabel").contains("✕&nbsp;beyond"));
    const auto& series = find<LineChart>("pvChart")->content().series;
    const auto mark = std::ranges::find(series, QString("danger"), &ChartSeries::id);
    ASSERT_NE(mark, series.end());
    EXPECT_NEAR(mark->points.at(0).y, 81.648, 1e-9);
}

TEST_F(PvPageTest, the_sign_and_ground_of_danger_differ_from_those_of_a_string_that_fits) {
    click("addPvSheetButton");
    fill();
    auto* panel = find<PvVerdictView>("pvVerdictPanel");
    const QImage fits = panel->grab().toImage();
    type("pvSeriesEdit", "3");
    QApplication::processEvents();
    const QImage danger = panel->grab().toImage();
    const auto ground = [](const QImage& image) { return image.pixelColor(image.width() - 12, image.height() - 12); };
    const auto sign = [](const QImage& image) { return image.pixelColor(16 + 12, image.height() / 2); };
    EXPECT_NE(ground(fits), ground(danger));
    EXPECT_NE(sign(fits), sign(danger));
}

TEST_F(PvPageTest, a_field_that_cannot_be_read_is_explained_and_nothing_is_called_safe) {
    click("addPvSheetButton");
    fill();
    enter("pvVocCoefficientEdit", "0.30");
    EXPECT_EQ(verdict(), PvVerdict::not_known);
    EXPECT_TRUE(said("pvErrorLabel").contains("minus sign")) << said("pvErrorLabel").toStdString();
    EXPECT_EQ(document.pvSheets().at(0).voc_coefficient->value, -0.30) << "the logbook keeps what was understood last";
    enter("pvVocCoefficientEdit", "-0.30");
    EXPECT_EQ(verdict(), PvVerdict::fits);
    EXPECT_EQ(said("pvErrorLabel"), "");
}

TEST_F(PvPageTest, undo_brings_the_field_back_and_withdrawing_takes_the_sheet_away) {
    click("addPvSheetButton");
    fill();
    enter("pvSeriesEdit", "3");
    EXPECT_EQ(document.pvSheets().at(0).series, 3);
    document.undoStack().undo();
    EXPECT_EQ(find<QLineEdit>("pvSeriesEdit")->text(), "2");
    EXPECT_EQ(verdict(), PvVerdict::fits);
    trigger("withdrawPvSheetAction");
    EXPECT_TRUE(document.pvSheets().empty());
    document.undoStack().undo();
    EXPECT_EQ(document.pvSheets().size(), 1U);
}

TEST_F(PvPageTest, new_claims_of_the_unit_change_the_answer_and_half_typed_text_stays) {
    click("addPvSheetButton");
    fill();
    type("pvRemarkEdit", "half");
    Unit unit = document.units().at(0);
    unit.pv_max_v = 50;
    ASSERT_TRUE(document.updateUnit(unit));
    EXPECT_EQ(verdict(), PvVerdict::over_voltage_when_cold);
}

TEST_F(PvPageTest, the_page_names_cautions_and_who_comes_first) {
    click("addPvSheetButton");
    EXPECT_TRUE(said("pvCautionsLabel").contains("licensed electrician"));
    EXPECT_TRUE(said("pvCautionsLabel").contains("live whenever there is light"));
}

TEST_F(PvPageTest, the_tolerance_of_the_module_and_the_short_circuit_limit_of_the_unit_decide_like_the_other_figures) {
    click("addPvSheetButton");
    fill();
    ASSERT_EQ(verdict(), PvVerdict::fits);    // 54.432 V when cold against 60 V
    enter("pvVocTolerancePercentEdit", "12"); // 60.96 V
    EXPECT_EQ(verdict(), PvVerdict::too_close);
    EXPECT_EQ(document.pvSheets().at(0).voc_tolerance_percent, 12);
    enter("pvVocTolerancePercentEdit", "2");
    EXPECT_EQ(verdict(), PvVerdict::fits);
    Unit unit = document.units().at(0);
    unit.pv_short_circuit_a = 12; // 1.25 x 10.2 A = 12.75 A
    ASSERT_TRUE(document.updateUnit(unit));
    EXPECT_EQ(verdict(), PvVerdict::over_short_circuit);
    EXPECT_TRUE(said("pvLimitsLabel").contains("short circuit")) << said("pvLimitsLabel").toStdString();
}

TEST_F(PvPageTest, a_sheet_comes_in_by_menu_and_by_drop_and_says_what_of_its_file_stays_outside) {
    const QByteArray text = "name: roof\nunit: Specimen\nvoc_v: 24.3\nseries: 2\npv_max_v: 60\nvoc_tolerance_percent: 2.5\n";
    prompts.to_open = {write("roof.txt", text)};
    trigger("importPvSheetAction");
    ASSERT_EQ(document.pvSheets().size(), 1U);
    EXPECT_EQ(document.pvSheets().at(0).unit_uuid, document.units().at(0).uuid);
    EXPECT_EQ(document.pvSheets().at(0).voc_tolerance_percent, 2.5);
    EXPECT_EQ(find<QLineEdit>("pvSeriesEdit")->text(), "2");
    EXPECT_EQ(message(), "") << "60 V are what the unit states too";
    drop({write("other.txt", "name: shed\nunit: Nobody\npv_max_v: 44\n")});
    ASSERT_EQ(document.pvSheets().size(), 2U);
    EXPECT_EQ(find<QLineEdit>("pvNameEdit")->text(), "shed");
    EXPECT_TRUE(message().contains("no unit named") && message().contains("unit's claims")) << message().toStdString();
    drop({write("wrong.txt", "volts: 3\n")});
    EXPECT_EQ(document.pvSheets().size(), 2U);
    EXPECT_TRUE(message().contains("wrong.txt")) << message().toStdString();
    document.undoStack().undo();
    EXPECT_EQ(document.pvSheets().size(), 1U);
}

TEST_F(PvPageTest, a_dropped_load_list_goes_into_the_logbook) {
    drop({write("night.csv", "# load_list: Night\nname,power_w,hours_per_day\nlamp,9,4\n")});
    ASSERT_EQ(document.loadLists().size(), 1U) << message().toStdString();
    EXPECT_EQ(document.loadLists().at(0).name, "Night");
    EXPECT_EQ(page(), "loadListsPage");
}

} // namespace ullage::test
