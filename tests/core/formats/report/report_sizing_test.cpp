// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/report/report_sizing.h"
#include "formats/results/sizing_output.h"
#include "report_samples.h"
#include "support/has_text.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ullage::test {
namespace {

/// A lamp at night for a unit that nobody tested, whose name holds a number that is no figure.
Sizing lamp_sizing() {
    LoadList list;
    list.name = "Cabin 1.5";
    Appliance lamp;
    lamp.name = "lamp";
    lamp.power_w = 40;
    lamp.hours_per_day = lamp.night_hours = 5.5;
    list.appliances = {lamp};
    Unit unit;
    unit.uuid = UnitId("untested");
    unit.name = "Untested 2.5k";
    unit.rated_energy_wh = 2500;
    SizingChoices choices;
    choices.month_sun_hours[11] = 0.9;
    const UnitFit none;
    return size_for(list, {{&unit, &none, nullptr}}, choices);
}

std::string all_text(const Report& report) {
    std::string text = report.title + '\n' + report.subtitle + '\n';
    for (const ReportBlock& block : report.blocks) text += text_of(block);
    return text;
}

TEST(ReportSizing, numbers_take_the_form_of_the_reader_and_names_stay) {
    ReportOptions options;
    options.decimal_sign = ',';
    const std::string text = all_text(sizing_report(lamp_sizing(), options));
    EXPECT_TRUE(contains(text, "8,52 to 9,09 d")) << text << "75 to 80 % of 2500 Wh for 220 Wh a day";
    EXPECT_TRUE(contains(text, "Untested 2.5k"));
    EXPECT_TRUE(contains(text, "Cabin 1.5"));
    EXPECT_TRUE(contains(text, "an expectation, not a measurement")) << text;
    EXPECT_TRUE(contains(text, "derating 0,75")) << text;
    EXPECT_TRUE(contains(text, "December"));
    EXPECT_TRUE(contains(text, "licensed electrician"));
}

TEST(ReportSizing, each_unit_with_a_course_has_its_place_for_a_drawing) {
    const Report report = sizing_report(lamp_sizing(), {});
    EXPECT_TRUE(std::ranges::any_of(report.blocks, [](const ReportBlock& block) {
        const auto* picture = std::get_if<ReportPicture>(&block);
        return picture && picture->key == report_picture_key("course", "untested");
    }));
}

TEST(ReportSizing, a_string_that_exceeds_the_limit_when_cold_is_reported_as_a_danger) {
    PvSheetText sheet;
    sheet.sheet.name = "Roof";
    sheet.sheet.voc_v = 24.3;
    sheet.sheet.series = 3;
    sheet.sheet.coldest_c = -15;
    sheet.limits.max_v = 60;
    const PvCheck check = check_pv(sheet);
    ASSERT_EQ(check.verdict, PvVerdict::over_voltage_when_cold);
    const Report report = pv_report(sheet, check, {});
    const auto verdict = std::ranges::find_if(report.blocks, [](const ReportBlock& block) { return std::holds_alternative<ReportFindings>(block); });
    ASSERT_NE(verdict, report.blocks.end());
    const auto& item = std::get<ReportFindings>(*verdict).items.front();
    EXPECT_EQ(item.weight, Weight::fault);
    EXPECT_EQ(item.sentence, "DANGER: exceeds the voltage limit when cold");
    EXPECT_TRUE(contains(all_text(report), "60.0")) << "the limit stands in the comparisons";
}

TEST(SizingTables, the_course_holds_every_hour_that_is_shown_and_months_only_those_stated) {
    const Sizing sizing = lamp_sizing();
    EXPECT_EQ(sizing_course_table(sizing).rows.size(), sizing.courses[0]->points.size());
    EXPECT_GE(sizing.courses[0]->points.size(), 24U * 8) << "8.5 days without sun are shown to their end";
    const Table months = sizing_months_table(sizing);
    ASSERT_EQ(months.rows.size(), 1U);
    const auto& margin = std::get<Quantity>(months.rows[0][6]);
    EXPECT_NEAR(margin.value.value(), sizing.needs[0].array.array_w * 0.9 * 0.75 - 220 / 0.9, 1e-9);
    EXPECT_LT(margin.value.value(), 0) << "the array was made for 4 h of sun";
}

} // namespace
} // namespace ullage::test
