// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "base/quantity.h"
#include "formats/results/sizing_output.h"

#include <fmt/format.h>

#include <array>
#include <cmath>

namespace ullage {

namespace {

using Content = TableColumn::Content;

TableColumn sizing_words(const char* key, const char* title, bool identifies = false) {
    TableColumn column{key, title, {}, Content::text, 0};
    column.identifies = identifies;
    return column;
}

/// A figure that follows from stated ones: no interval.
Quantity sizing_figure(const TableColumn& column, const std::optional<double>& value, const Message& reason) {
    return value ? known(column.key, column.unit, *value, std::nullopt, Kind::measured, reason) : not_known(column.key, column.unit, reason);
}

std::optional<double> as_number(const std::optional<int>& count) { return count ? std::optional<double>(*count) : std::nullopt; }

std::string joined(const std::vector<std::string>& sentences) {
    std::string text;
    for (const std::string& sentence : sentences) text += (text.empty() ? "" : "; ") + sentence;
    return text;
}

/// What a reader must know besides the figures.
std::string remark_of(const SizedUnit& unit) {
    std::vector<std::string> all = texts(unit.remarks);
    if (const std::string reason = unit.units_needed.reason; !reason.empty() && joined(all).find(reason) == std::string::npos) all.push_back(reason);
    return joined(all);
}

/// "empty after 30.2 h without PV", "empty on day 4, after 87.2 h, without PV".
std::string once_empty(const std::optional<double>& hours, const std::string& when) {
    if (!hours) return "never empty " + when;
    const double day = std::floor(*hours / 24) + 1;
    return day < 2 ? fmt::format("empty after {} h {}", fixed_text(*hours, 1), when)
                   : fmt::format("empty on day {}, after {} h, {}", fixed_text(day, 0), fixed_text(*hours, 1), when);
}

/// Calls `tell` with name and needs of one unit, or of each; where there is no unit, of the list alone.
template <class Tell>
void for_needs(const Sizing& sizing, std::optional<std::size_t> unit, const Tell& tell) {
    if (sizing.units.empty()) tell(std::string("the list alone"), sizing.list_needs);
    for (std::size_t i = 0; i < sizing.units.size(); ++i)
        if (!unit || *unit == i) tell(sizing.units[i].unit.name, sizing.needs[i]);
}

std::string own_words(const Sizing& sizing, const DailyNeeds& needs) {
    const std::string of = count_text(sizing.choices.units, "unit", "units");
    if (needs.own_draw_known) return "as measured, " + of;
    return needs.own_wh > 0 ? "not all of it measured, " + of : std::string("not measured");
}

} // namespace

std::string days_text(double days) { return exact_text(days) + (days == 1 ? " day" : " days"); }

std::string month_name(int month) {
    constexpr std::array<const char*, months_of_year> names{"January", "February", "March",     "April",   "May",      "June",
                                                            "July",    "August",   "September", "October", "November", "December"};
    return month >= 1 && month <= months_of_year ? names[static_cast<std::size_t>(month - 1)] : "";
}

Table sizing_table(const Sizing& sizing) {
    Table table;
    table.title = "Units for the load list " + sizing.list.name;
    table.columns = {sizing_words("unit", "unit", true),
                     sizing_words("maker", "maker", true),
                     {"rated_wh", "rated energy", "Wh", Content::number, 0},
                     sizing_words("basis", "based on"),
                     {"days_of_autonomy", "days of autonomy", "d", Content::quantity, 2},
                     {"lasts_h", "hours until empty", "h", Content::quantity, 1},
                     {"run_time_h", "output on in all", "h", Content::quantity, 1},
                     {"days_output_left_on", "days if left on", "d", Content::quantity, 2},
                     {"units_least", "units, at least", "1", Content::number, 0},
                     {"units_sure", "units, enough", "1", Content::number, 0},
                     sizing_words("output", "rated output"),
                     sizing_words("peak", "peak output"),
                     {"units_by_rule", "units by rule", "1", Content::number, 0},
                     sizing_words("remark", "remark")};
    for (const SizedUnit& unit : sizing.units) {
        const Message needed = unit.units_needed.reason.empty() ? "for the days of autonomy asked for" : unit.units_needed.reason;
        table.rows.push_back({unit.unit.name, unit.unit.maker, sizing_figure(table.columns[2], unit.unit.rated_energy_wh, "stated by the maker"),
                              std::string(sizing_basis_text(unit.basis)), unit.days, unit.lasts_h, unit.run_time_h, unit.days_left_on,
                              sizing_figure(table.columns[8], as_number(unit.units_needed.least), needed),
                              sizing_figure(table.columns[9], as_number(unit.units_needed.sure), needed), std::string(power_fit_text(unit.output)),
                              std::string(power_fit_text(unit.peak)),
                              sizing_figure(table.columns[12], as_number(unit.units_by_rule), "nameplate by the rule / rated energy"),
                              remark_of(unit)});
    }
    table.remarks = texts(sizing.remarks);
    table.remarks.push_back(
        fmt::format("Units needed: for {} without sun, side by side with the list shared evenly.", days_text(sizing.choices.autonomy_days)));
    table.method = {{"Days of autonomy", "E* / (daily energy + no-load draw × hours of output on + standby draw × the rest + quadratic loss), from "
                                         "all full drains of the unit together; the "
                                         "interval also holds what the list leaves open: appliances used together or "
                                         "apart, the hour of beginning, the order of use."},
                    {"Expectation", "Where no drain tells it, a stated share of the rated energy at the socket; no measurement."},
                    {"Sources", "Balance: losses of a constant, a linear and a quadratic part seen from the socket, terms of IEC "
                                "61683. Rules of the "
                                "cross-check: rules after IEEE 1013 and IEEE 1562; the program's help states their formulas."}};
    return table;
}

Table sizing_months_table(const Sizing& sizing, std::optional<std::size_t> unit) {
    Table table;
    table.title = "The PV array by month";
    table.columns = {sizing_words("unit", "unit", true),
                     sizing_words("month", "month", true),
                     {"array_w", "PV array", "W", Content::number, 0},
                     {"sun_hours", "peak-sun hours", "h/d", Content::number, 1},
                     {"daily_wh", "to the battery", "Wh/d", Content::number, 0},
                     {"need_wh", "needed", "Wh/d", Content::number, 0},
                     {"margin_wh", "margin", "Wh/d", Content::number, 0},
                     {"array_to_load", "array to load", "1", Content::number, 2}};
    for_needs(sizing, unit, [&](const std::string& name, const DailyNeeds& needs) {
        for (const PvMonth& month : needs.months)
            table.rows.push_back({name, month_name(month.month), sizing_figure(table.columns[2], needs.array.array_w, "stated, or as by rule"),
                                  sizing_figure(table.columns[3], month.sun_hours, "stated"),
                                  sizing_figure(table.columns[4], month.daily_wh, "array × peak-sun hours × derating"),
                                  sizing_figure(table.columns[5], needs.array.daily_need_wh, "list and own draw / inverter efficiency"),
                                  sizing_figure(table.columns[6], month.margin_wh, "below 0 the load is not met"),
                                  sizing_figure(table.columns[7], month.array_to_load, "to the battery / needed")});
    });
    return table;
}

Table sizing_rules_table(const Sizing& sizing, std::optional<std::size_t> unit) {
    const SizingChoices& choices = sizing.choices;
    Table table;
    table.title = "PV array and battery by the published rules";
    table.columns = {sizing_words("unit", "unit", true),
                     sizing_words("step", "step", true),
                     {"value", "value", {}, Content::number, 0},
                     sizing_words("from", "from")};
    for_needs(sizing, unit, [&](const std::string& name, const DailyNeeds& needs) {
        const auto step = [&](const char* what, double value, const char* unit_label, std::string from) {
            table.rows.push_back(
                {name, std::string(what), known("value", unit_label, value, std::nullopt, Kind::measured, "from stated figures"), std::move(from)});
        };
        const BatteryByRule& battery = needs.battery;
        step("daily load", needs.load_wh, "Wh", "the load list");
        step("own draw and losses a day", needs.own_wh, "Wh", own_words(sizing, needs));
        step("needed at the battery", needs.array.daily_need_wh, "Wh",
             fmt::format("(daily load + own) / inverter efficiency {}", exact_text(choices.inverter_efficiency)));
        step("PV array by rule", needs.array.by_rule_w, "W",
             fmt::format("{} × needed / ({} peak-sun hours × derating {}){}", exact_text(choices.array_to_load), exact_text(choices.peak_sun_hours),
                         exact_text(choices.derating), needs.own_draw_known ? "" : "; own draw not all measured"));
        step("PV array", needs.array.array_w, "W", choices.array_w ? "stated" : "as by rule");
        step("PV brings a day", needs.array.daily_wh, "Wh", "array × peak-sun hours × derating");
        step("battery, unadjusted", battery.unadjusted_wh, "Wh", fmt::format("{} × needed at the battery", days_text(choices.autonomy_days)));
        step("by depth", battery.by_depth_wh, "Wh",
             fmt::format("/ deepest discharge {}{}", exact_text(choices.most_depth), battery.depth_governs ? ", which governs" : ""));
        step("by end of life", battery.by_end_of_life_wh, "Wh",
             fmt::format("/ share left at the end of life {}{}", exact_text(choices.end_of_life), battery.depth_governs ? "" : ", which governs"));
        step("battery, nameplate", battery.nameplate_wh, "Wh",
             fmt::format("× temperature factor {} × margin {}", exact_text(choices.temperature_factor), exact_text(choices.margin)));
    });
    table.remarks = {"Rules after IEEE 1013 (battery) and IEEE 1562 (array), with each unit's own draw as a load of its own: a "
                     "cross-check. IEEE 1562 limits its battery part to lead-acid; for lithium the deepest discharge is the user's own figure."};
    return table;
}

Table sizing_course_table(const Sizing& sizing) {
    Table table;
    table.title = "State of charge by the hour for the load list " + sizing.list.name;
    table.columns = {sizing_words("unit", "unit", true),
                     {"hour", "hour", "h", Content::number, 0},
                     {"with_pv_percent", "with PV", "%", Content::quantity, 1},
                     {"without_pv_percent", "without PV", "%", Content::quantity, 1}};
    table.columns[1].identifies = true;
    for (std::size_t i = 0; i < sizing.units.size(); ++i) {
        if (!sizing.courses[i]) continue;
        const std::string reason(sizing_basis_text(sizing.units[i].basis));
        for (const CoursePoint& p : sizing.courses[i]->points)
            table.rows.push_back(
                {sizing.units[i].unit.name, sizing_figure(table.columns[1], p.hour, "since midnight"),
                 Quantity{"with_pv_percent", "%", p.with_pv_percent, p.with_pv_lower_percent, p.with_pv_upper_percent, Kind::projected, reason},
                 Quantity{"without_pv_percent", "%", p.without_pv_percent, p.without_pv_lower_percent, p.without_pv_upper_percent, Kind::projected,
                          reason}});
    }
    table.remarks = {fmt::format("{} side by side, full at midnight; PV as a half sine over {} h of daylight.",
                                 count_text(sizing.choices.units, "unit", "units"), exact_text(sizing.choices.daylight_h))};
    return table;
}

std::string course_sentence(const Sizing& sizing, std::size_t unit) {
    if (unit >= sizing.courses.size() || !sizing.courses[unit]) return {};
    const ChargeCourse& course = *sizing.courses[unit];
    const std::string several = course.units > 1 ? fmt::format(", {} side by side", course.units) : std::string();
    const std::string with_pv = fmt::format("with PV of {} W", fixed_text(sizing.needs[unit].array.array_w, 0));
    std::string text = fmt::format("{}{}, full at midnight: {}, {}", sizing.units[unit].unit.name, several,
                                   once_empty(course.empty_without_pv_h, "without PV"), once_empty(course.empty_with_pv_h, with_pv));
    if (!course.empty_with_pv_h && course.lower_empty_with_pv_h)
        text += fmt::format(" (at the lower end of its energy {})", once_empty(course.lower_empty_with_pv_h, "all the same"));
    text += fmt::format("; from day {} on each day is like the one before", course.alike_from_day);
    std::vector<std::string> daily;
    if (course.unserved_wh >= 0.5) daily.push_back(energy_text(course.unserved_wh) + " of the list not served");
    if (course.surplus_wh >= 0.5) daily.push_back(energy_text(course.surplus_wh) + " of PV unused, as the unit is full");
    if (course.clipped_wh >= 0.5) daily.push_back(energy_text(course.clipped_wh) + " of PV above what its PV input takes");
    for (std::size_t i = 0; i < daily.size(); ++i) text += (i == 0 ? ", with " : ", ") + daily[i];
    if (!sizing.units[unit].content->own_draw_known) text += "; its own draw is not measured, so this may be too good";
    return text + '.';
}

} // namespace ullage
