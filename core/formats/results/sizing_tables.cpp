// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/instant.h"
#include "base/number.h"
#include "base/quantity.h"
#include "formats/results/sizing_output.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

using Content = TableColumn::Content;

TableColumn sizing_words(const char* key, const Phrase& title, bool identifies = false) {
    TableColumn column{key, say(title), {}, Content::text, 0};
    column.identifies = identifies;
    return column;
}

/// A figure that follows from stated ones: no interval.
Quantity sizing_figure(const TableColumn& column, const std::optional<double>& value, const Message& reason) {
    return value ? known(column.key, column.unit, *value, std::nullopt, Kind::measured, reason) : not_known(column.key, column.unit, reason);
}

std::optional<double> as_number(const std::optional<int>& count) { return count ? std::optional<double>(*count) : std::nullopt; }

Message remark_of(const SizedUnit& unit) {
    std::vector<Message> all = unit.remarks;
    const Message& reason = unit.units_needed.reason;
    const auto told = [&reason](const Message& remark) { return remark.english().find(reason.english()) != std::string::npos; };
    if (!reason.empty() && std::ranges::none_of(all, told)) all.push_back(reason);
    return say_joined(all, "; ");
}

/// A moment of a course: how long after its beginning, and on which day.
struct EmptyAt {
    explicit EmptyAt(double after_h) : hours(say_number(after_h, 1)), day(say_number(std::floor(after_h / 24) + 1, 0)), on_first_day(after_h < 24) {}
    Message hours, day;
    bool on_first_day;
};

Message empty_without_pv(const std::optional<double>& hours) {
    if (!hours) return say(phrase("results", "never empty without PV"));
    const EmptyAt at(*hours);
    return at.on_first_day ? say(phrase("results", "empty after %1 h without PV"), at.hours)
                           : say(phrase("results", "empty on day %1, after %2 h, without PV"), at.day, at.hours);
}

Message empty_with_pv(const std::optional<double>& hours, const Message& array_w) {
    if (!hours) return say(phrase("results", "never empty with PV of %1 W"), array_w);
    const EmptyAt at(*hours);
    return at.on_first_day ? say(phrase("results", "empty after %1 h with PV of %2 W"), at.hours, array_w)
                           : say(phrase("results", "empty on day %1, after %2 h, with PV of %3 W"), at.day, at.hours, array_w);
}

/// Where only the lower end of the energy does not last.
Message empty_all_the_same(double hours) {
    const EmptyAt at(hours);
    return at.on_first_day ? say(phrase("results", "at the lower end of its energy empty after %1 h all the same"), at.hours)
                           : say(phrase("results", "at the lower end of its energy empty on day %1, after %2 h, all the same"), at.day, at.hours);
}

template <class Tell>
void for_needs(const Sizing& sizing, std::optional<std::size_t> unit, const Tell& tell) {
    if (sizing.units.empty()) tell(say(phrase("results", "the list alone")), sizing.list_needs);
    for (std::size_t i = 0; i < sizing.units.size(); ++i)
        if (!unit || *unit == i) tell(Message(sizing.units[i].unit.name), sizing.needs[i]);
}

Message own_words(const Sizing& sizing, const DailyNeeds& needs) {
    if (needs.own_draw_known) return say_count(sizing.choices.units, phrases("results", "as measured, %n units", "as measured, %n unit"));
    if (needs.own_wh > 0)
        return say_count(sizing.choices.units, phrases("results", "not all of it measured, %n units", "not all of it measured, %n unit"));
    return say(phrase("results", "not measured"));
}

Message exact(double value) { return say_digits(exact_text(value)); }

} // namespace

Message say_days(double days) {
    if (days == std::floor(days)) return say_count(std::lround(days), phrases("results", "%n days", "%n day"));
    return say(phrase("results", "%1 days"), exact(days));
}

Table sizing_table(const Sizing& sizing) {
    Table table;
    table.title = say(phrase("results", "Units for the load list %1"), sizing.list.name);
    table.columns = {sizing_words("unit", phrase("results", "unit"), true),
                     sizing_words("maker", phrase("results", "maker"), true),
                     {"rated_wh", say(phrase("results", "rated energy")), "Wh", Content::number, 0},
                     sizing_words("basis", phrase("results", "based on")),
                     {"days_of_autonomy", say(phrase("results", "days of autonomy")), "d", Content::quantity, 2},
                     {"lasts_h", say(phrase("results", "hours until empty")), "h", Content::quantity, 1},
                     {"run_time_h", say(phrase("results", "output on in all")), "h", Content::quantity, 1},
                     {"days_output_left_on", say(phrase("results", "days if left on")), "d", Content::quantity, 2},
                     {"units_least", say(phrase("results", "units, at least")), "1", Content::number, 0},
                     {"units_sure", say(phrase("results", "units, enough")), "1", Content::number, 0},
                     sizing_words("output", phrase("results", "rated output")),
                     sizing_words("peak", phrase("results", "peak output")),
                     {"units_by_rule", say(phrase("results", "units by rule")), "1", Content::number, 0},
                     sizing_words("remark", phrase("results", "remark"))};
    for (const SizedUnit& unit : sizing.units) {
        const Message needed =
            unit.units_needed.reason.empty() ? say(phrase("results", "for the days of autonomy asked for")) : unit.units_needed.reason;
        table.rows.push_back(
            {Message(unit.unit.name), Message(unit.unit.maker),
             sizing_figure(table.columns[2], unit.unit.rated_energy_wh, say(phrase("results", "stated by the maker"))), say_sizing_basis(unit.basis),
             unit.days, unit.lasts_h, unit.run_time_h, unit.days_left_on, sizing_figure(table.columns[8], as_number(unit.units_needed.least), needed),
             sizing_figure(table.columns[9], as_number(unit.units_needed.sure), needed), say_power_fit(unit.output), say_power_fit(unit.peak),
             sizing_figure(table.columns[12], as_number(unit.units_by_rule), say(phrase("results", "nameplate by the rule / rated energy"))),
             remark_of(unit)});
    }
    table.remarks = sizing.remarks;
    table.remarks.push_back(say(phrase("results", "Units needed: for %1 without sun, side by side with the list shared evenly."),
                                say_days(sizing.choices.autonomy_days)));
    table.method = {
        {say(phrase("results", "Days of autonomy")),
         say(phrase("results",
                    "E* / (daily energy + no-load draw × hours of output on + standby draw × the rest + quadratic loss), from all full drains "
                    "of the unit together; the interval also holds what the list leaves open: appliances used together or apart, the "
                    "hour of beginning, the order of use."))},
        {say(phrase("results", "Expectation")),
         say(phrase("results", "Where no drain tells it, a stated share of the rated energy at the socket; no measurement."))},
        {say(phrase("results", "Sources")),
         say(phrase("results", "Balance: losses of a constant, a linear and a quadratic part seen from the socket, terms of IEC 61683. Rules of the "
                               "cross-check: rules after IEEE 1013 and IEEE 1562; the program's help states their formulas."))}};
    return table;
}

Table sizing_months_table(const Sizing& sizing, std::optional<std::size_t> unit) {
    Table table;
    table.title = say(phrase("results", "The PV array by month"));
    table.columns = {sizing_words("unit", phrase("results", "unit"), true),
                     sizing_words("month", phrase("results", "month"), true),
                     {"array_w", say(phrase("results", "PV array")), "W", Content::number, 0},
                     {"sun_hours", say(phrase("results", "peak-sun hours")), "h/d", Content::number, 1},
                     {"daily_wh", say(phrase("results", "to the battery")), "Wh/d", Content::number, 0},
                     {"need_wh", say(phrase("results", "needed")), "Wh/d", Content::number, 0},
                     {"margin_wh", say(phrase("results", "margin")), "Wh/d", Content::number, 0},
                     {"array_to_load", say(phrase("results", "array to load")), "1", Content::number, 2}};
    for_needs(sizing, unit, [&](const Message& name, const DailyNeeds& needs) {
        for (const PvMonth& month : needs.months)
            table.rows.push_back(
                {name, say_month(month.month), sizing_figure(table.columns[2], needs.array.array_w, say(phrase("results", "stated, or as by rule"))),
                 sizing_figure(table.columns[3], month.sun_hours, say(phrase("results", "stated"))),
                 sizing_figure(table.columns[4], month.daily_wh, say(phrase("results", "array × peak-sun hours × derating"))),
                 sizing_figure(table.columns[5], needs.array.daily_need_wh, say(phrase("results", "list and own draw / inverter efficiency"))),
                 sizing_figure(table.columns[6], month.margin_wh, say(phrase("results", "below 0 the load is not met"))),
                 sizing_figure(table.columns[7], month.array_to_load, say(phrase("results", "to the battery / needed")))});
    });
    return table;
}

Table sizing_rules_table(const Sizing& sizing, std::optional<std::size_t> unit) {
    const SizingChoices& choices = sizing.choices;
    Table table;
    table.title = say(phrase("results", "PV array and battery by the published rules"));
    table.columns = {sizing_words("unit", phrase("results", "unit"), true),
                     sizing_words("step", phrase("results", "step"), true),
                     {"value", say(phrase("results", "value")), {}, Content::number, 0},
                     sizing_words("from", phrase("results", "from"))};
    for_needs(sizing, unit, [&](const Message& name, const DailyNeeds& needs) {
        const auto step = [&](const Phrase& what, double value, const char* unit_label, const Message& from) {
            table.rows.push_back({name, say(what),
                                  known("value", unit_label, value, std::nullopt, Kind::measured, say(phrase("results", "from stated figures"))),
                                  from});
        };
        const BatteryByRule& battery = needs.battery;
        step(phrase("results", "daily load"), needs.load_wh, "Wh", say(phrase("results", "the load list")));
        step(phrase("results", "own draw and losses a day"), needs.own_wh, "Wh", own_words(sizing, needs));
        step(phrase("results", "needed at the battery"), needs.array.daily_need_wh, "Wh",
             say(phrase("results", "(daily load + own) / inverter efficiency %1"), exact(choices.inverter_efficiency)));
        step(phrase("results", "PV array by rule"), needs.array.by_rule_w, "W",
             say(needs.own_draw_known ? phrase("results", "%1 × needed / (%2 peak-sun hours × derating %3)")
                                      : phrase("results", "%1 × needed / (%2 peak-sun hours × derating %3); own draw not all measured"),
                 exact(choices.array_to_load), exact(choices.peak_sun_hours), exact(choices.derating)));
        step(phrase("results", "PV array"), needs.array.array_w, "W",
             choices.array_w ? say(phrase("results", "stated")) : say(phrase("results", "as by rule")));
        step(phrase("results", "PV brings a day"), needs.array.daily_wh, "Wh", say(phrase("results", "array × peak-sun hours × derating")));
        step(phrase("results", "battery, unadjusted"), battery.unadjusted_wh, "Wh",
             say(phrase("results", "%1 × needed at the battery"), say_days(choices.autonomy_days)));
        step(phrase("results", "by depth"), battery.by_depth_wh, "Wh",
             say(battery.depth_governs ? phrase("results", "/ deepest discharge %1, which governs") : phrase("results", "/ deepest discharge %1"),
                 exact(choices.most_depth)));
        step(phrase("results", "by end of life"), battery.by_end_of_life_wh, "Wh",
             say(battery.depth_governs ? phrase("results", "/ share left at the end of life %1")
                                       : phrase("results", "/ share left at the end of life %1, which governs"),
                 exact(choices.end_of_life)));
        step(phrase("results", "battery, nameplate"), battery.nameplate_wh, "Wh",
             say(phrase("results", "× temperature factor %1 × margin %2"), exact(choices.temperature_factor), exact(choices.margin)));
    });
    table.remarks = {
        say(phrase("results", "Rules after IEEE 1013 (battery) and IEEE 1562 (array), with each unit's own draw as a load of its own: a "
                              "cross-check. IEEE 1562 limits its battery part to lead-acid; for lithium the deepest discharge is the user's "
                              "own figure."))};
    return table;
}

Table sizing_course_table(const Sizing& sizing) {
    Table table;
    table.title = say(phrase("results", "State of charge by the hour for the load list %1"), sizing.list.name);
    table.columns = {sizing_words("unit", phrase("results", "unit"), true),
                     {"hour", say(phrase("results", "hour")), "h", Content::number, 0},
                     {"with_pv_percent", say(phrase("results", "with PV")), "%", Content::quantity, 1},
                     {"without_pv_percent", say(phrase("results", "without PV")), "%", Content::quantity, 1}};
    table.columns[1].identifies = true;
    for (std::size_t i = 0; i < sizing.units.size(); ++i) {
        if (!sizing.courses[i]) continue;
        const Message reason = say_sizing_basis(sizing.units[i].basis);
        for (const CoursePoint& p : sizing.courses[i]->points)
            table.rows.push_back(
                {Message(sizing.units[i].unit.name), sizing_figure(table.columns[1], p.hour, say(phrase("results", "since midnight"))),
                 Quantity{"with_pv_percent", "%", p.with_pv_percent, p.with_pv_lower_percent, p.with_pv_upper_percent, Kind::projected, reason},
                 Quantity{"without_pv_percent", "%", p.without_pv_percent, p.without_pv_lower_percent, p.without_pv_upper_percent, Kind::projected,
                          reason}});
    }
    table.remarks = {say_count(sizing.choices.units,
                               phrases("results", "%n units side by side, full at midnight; PV as a half sine over %1 h of daylight.",
                                       "%n unit side by side, full at midnight; PV as a half sine over %1 h of daylight."),
                               exact(sizing.choices.daylight_h))};
    return table;
}

Message course_sentence(const Sizing& sizing, std::size_t unit) {
    if (unit >= sizing.courses.size() || !sizing.courses[unit]) return {};
    const ChargeCourse& course = *sizing.courses[unit];
    const Message array_w = say_number(sizing.needs[unit].array.array_w, 0);
    const bool maybe = !course.empty_with_pv_h && course.lower_empty_with_pv_h;
    Message with_pv = empty_with_pv(course.empty_with_pv_h, array_w);
    if (maybe) with_pv = say(phrase("results", "%1 (%2)"), with_pv, empty_all_the_same(*course.lower_empty_with_pv_h));
    const Message without_pv = empty_without_pv(course.empty_without_pv_h);
    const std::string& name = sizing.units[unit].unit.name;
    std::vector<Message> clauses{course.units > 1 ? say(phrase("results", "%1, %2 side by side, full at midnight: %3, %4"), name,
                                                        say_number(course.units), without_pv, with_pv)
                                                  : say(phrase("results", "%1, full at midnight: %2, %3"), name, without_pv, with_pv)};
    std::vector<Message> daily;
    if (course.unserved_wh >= 0.5) daily.push_back(say(phrase("results", "%1 of the list not served"), say_energy(course.unserved_wh)));
    if (course.surplus_wh >= 0.5) daily.push_back(say(phrase("results", "%1 of PV unused, as the unit is full"), say_energy(course.surplus_wh)));
    if (course.clipped_wh >= 0.5) daily.push_back(say(phrase("results", "%1 of PV above what its PV input takes"), say_energy(course.clipped_wh)));
    const Message from_day = say_number(course.alike_from_day);
    clauses.push_back(daily.empty()
                          ? say(phrase("results", "from day %1 on each day is like the one before"), from_day)
                          : say(phrase("results", "from day %1 on each day is like the one before, with %2"), from_day, say_joined(daily, ", ")));
    if (!sizing.units[unit].content->own_draw_known)
        clauses.push_back(say(phrase("results", "its own draw is not measured, so this may be too good")));
    return say(phrase("results", "%1."), say_joined(clauses, "; "));
}

} // namespace ullage
