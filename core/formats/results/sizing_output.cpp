// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/results/sizing_output.h"

#include "base/language.h"
#include "base/quantity.h"
#include "base/version.h"
#include "formats/json/quantity_json.h"
#include "formats/text/quantity_title.h"
#include "formats/text/table_unicode.h"

#include <string_view>

namespace ullage {

namespace {

Message line_of(const Quantity& quantity) {
    const int decimals = quantity_decimals(quantity.key);
    Message value = say_quantity(quantity, decimals);
    // A lopsided interval is shown by its ends alone.
    if (quantity.value && quantity.lower && value.english().find("±") == std::string::npos)
        value = say(phrase("results", "%1, likely %2"), value, say_number(*quantity.value, decimals));
    if (quantity.kind != Kind::not_known) value = say(phrase("results", "%1 (%2)"), value, say_kind(quantity.kind));
    return say(phrase("results", "%1: %2"), quantity_title(quantity.key), value);
}

/// "units for 2 days: 3, why; by the battery rule: 4".
Message units_line(const Sizing& sizing, const SizedUnit& unit) {
    Message needed = say_units_needed(unit.units_needed);
    if (!unit.units_needed.reason.empty()) needed = say_joined({needed, unit.units_needed.reason}, ", ");
    const Message days = say_days(sizing.choices.autonomy_days);
    if (!unit.units_by_rule) return say(phrase("results", "units for %1: %2"), days, needed);
    return say(phrase("results", "units for %1: %2; by the battery rule: %3"), days, needed, say_number(*unit.units_by_rule));
}

std::string unit_text(const Sizing& sizing, std::size_t at) {
    const SizedUnit& unit = sizing.units[at];
    std::string text = "\n";
    const auto line = [&text](const Message& words, std::string_view indent) {
        text += indent;
        text += one_line(words.text()) + '\n';
    };
    line(say(phrase("results", "%1: %2"), unit.unit.name, say_sizing_basis(unit.basis)), "");
    for (const Quantity* quantity : {&unit.days, &unit.lasts_h, &unit.run_time_h, &unit.days_left_on}) {
        const bool same = quantity == &unit.days_left_on && sizing.totals.always_connected;
        if (!same) line(line_of(*quantity), "  ");
    }
    if (!unit.days.reason.empty()) line(unit.days.reason, "    ");
    line(say(phrase("results", "rated output: %1; peak output: %2"), say_power_fit(unit.output), say_power_fit(unit.peak)), "  ");
    line(units_line(sizing, unit), "  ");
    for (const Message& remark : unit.remarks) line(remark, "  ");
    if (const Message course = course_sentence(sizing, at); !course.empty()) line(course, "  ");
    return text;
}

Json count_or_null(const std::optional<int>& count) { return count ? Json(*count) : Json(nullptr); }

Json course_json(const std::optional<ChargeCourse>& course) {
    if (!course) return nullptr;
    Json points = Json::array();
    for (const CoursePoint& point : course->points)
        points.push_back({{"hour", point.hour},
                          {"with_pv_percent", {point.with_pv_lower_percent, point.with_pv_percent, point.with_pv_upper_percent}},
                          {"without_pv_percent", {point.without_pv_lower_percent, point.without_pv_percent, point.without_pv_upper_percent}}});
    return {{"units", course->units},
            {"empty_without_pv_h", number_json(course->empty_without_pv_h)},
            {"empty_with_pv_h", number_json(course->empty_with_pv_h)},
            {"lower_empty_with_pv_h", number_json(course->lower_empty_with_pv_h)},
            {"alike_from_day", course->alike_from_day},
            {"unserved_wh", course->unserved_wh},
            {"surplus_wh", course->surplus_wh},
            {"clipped_wh", course->clipped_wh},
            {"points", std::move(points)}};
}

Json needs_json(const DailyNeeds& needs) {
    Json months = Json::array();
    for (const PvMonth& month : needs.months)
        months.push_back({{"month", month.month},
                          {"sun_hours", month.sun_hours},
                          {"daily_wh", month.daily_wh},
                          {"margin_wh", month.margin_wh},
                          {"array_to_load", number_json(month.array_to_load)}});
    return {{"load_wh", needs.load_wh},
            {"own_wh", needs.own_wh},
            {"own_draw_known", needs.own_draw_known},
            {"array",
             {{"daily_need_wh", needs.array.daily_need_wh},
              {"by_rule_w", needs.array.by_rule_w},
              {"array_w", needs.array.array_w},
              {"daily_wh", needs.array.daily_wh},
              {"array_to_load", number_json(needs.array.array_to_load)}}},
            {"months", std::move(months)},
            {"battery",
             {{"unadjusted_wh", needs.battery.unadjusted_wh},
              {"by_depth_wh", needs.battery.by_depth_wh},
              {"by_end_of_life_wh", needs.battery.by_end_of_life_wh},
              {"nameplate_wh", needs.battery.nameplate_wh}}}};
}

Json sized_unit_json(const Sizing& sizing, std::size_t at) {
    const SizedUnit& unit = sizing.units[at];
    Json quantities = Json::array();
    for (const Quantity* quantity : {&unit.days, &unit.lasts_h, &unit.run_time_h, &unit.days_left_on}) {
        Json made = {{"key", quantity->key}};
        made.update(quantity_json(*quantity));
        quantities.push_back(std::move(made));
    }
    return {
        {"unit", unit.unit.name},
        {"basis", std::string(sizing_basis_text(unit.basis))},
        {"quantities", std::move(quantities)},
        {"units_needed",
         {{"least", count_or_null(unit.units_needed.least)}, {"sure", count_or_null(unit.units_needed.sure)}, {"reason", unit.units_needed.reason}}},
        {"output", std::string(power_fit_text(unit.output))},
        {"peak", std::string(power_fit_text(unit.peak))},
        {"units_by_rule", count_or_null(unit.units_by_rule)},
        {"remarks", unit.remarks},
        {"needs", needs_json(sizing.needs[at])},
        {"course", course_json(sizing.courses[at])}};
}

Json totals_json(const LoadTotals& totals) {
    return {{"daily_wh", totals.daily_wh},           {"night_wh", totals.night_wh}, {"mean_w", totals.mean_w},
            {"running_w", totals.running_w},         {"peak_w", totals.peak_w},     {"hours_on", totals.hours_on},
            {"hours_on_most", totals.hours_on_most}, {"night_h", totals.night_h},   {"always_connected", totals.always_connected}};
}

Json choices_json(const SizingChoices& choices) {
    Json months = Json::array();
    for (const std::optional<double>& hours : choices.month_sun_hours) months.push_back(number_json(hours));
    return {{"autonomy_days", choices.autonomy_days},
            {"peak_sun_hours", choices.peak_sun_hours},
            {"derating", choices.derating},
            {"array_to_load", choices.array_to_load},
            {"array_w", number_json(choices.array_w)},
            {"month_sun_hours", std::move(months)},
            {"units", choices.units},
            {"daylight_h", choices.daylight_h},
            {"expected_lower", choices.expected_lower},
            {"expected_upper", choices.expected_upper},
            {"inverter_efficiency", choices.inverter_efficiency},
            {"most_depth", choices.most_depth},
            {"end_of_life", choices.end_of_life},
            {"temperature_factor", choices.temperature_factor},
            {"margin", choices.margin}};
}

} // namespace

std::string sizing_text(const Sizing& sizing) {
    const LoadTotals& totals = sizing.totals;
    const std::string head = one_line(say(phrase("results", "Sizing for the load list %1"), sizing.list.name).text());
    std::string text = head + '\n' + std::string(display_width(head), '=') + '\n';
    text += say(phrase("results", "%1 a day, %2 W when all of it runs, %3 W at most"), say_energy(totals.daily_wh), say_number(totals.running_w, 0),
                say_number(totals.peak_w, 0))
                .text() +
            '\n';
    for (std::size_t i = 0; i < sizing.units.size(); ++i) text += unit_text(sizing, i);
    if (sizing.units.empty()) text += '\n' + say(phrase("results", "No unit to size.")).text() + '\n';
    text += '\n' + table_text(sizing_rules_table(sizing), TableFormat::text);
    if (!sizing.list_needs.months.empty()) text += '\n' + table_text(sizing_months_table(sizing), TableFormat::text);
    text += '\n' + say(phrase("results", "Assumed")).text() + '\n';
    for (const Message& line : sizing.remarks) text += "  " + one_line(line.text()) + '\n';
    text += '\n' + say(phrase("results", "Cautions")).text() + '\n';
    for (const auto& line : sizing_cautions()) text += "  " + std::string(line) + '\n';
    return text;
}

std::string sizing_json(const Sizing& sizing) {
    const SpeakingIn for_machines(english());
    Json units = Json::array();
    for (std::size_t i = 0; i < sizing.units.size(); ++i) units.push_back(sized_unit_json(sizing, i));
    return json_text({{"program", "ullage"},
                      {"version", std::string(program_version())},
                      {"format_version", json_format_version},
                      {"load_list", sizing.list.name},
                      {"totals", totals_json(sizing.totals)},
                      {"choices", choices_json(sizing.choices)},
                      {"units", std::move(units)},
                      {"list_needs", needs_json(sizing.list_needs)},
                      {"remarks", sizing.remarks},
                      {"cautions", sizing_cautions()}});
}

} // namespace ullage
