// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/sizing.h"

#include "base/number.h"

#include <utility>

namespace ullage {

namespace {

std::vector<Message> assumptions(const Sizing& sizing) {
    if (!sizing.totals.mean_on_w) return {say(phrase("sizing", "The load list takes nothing yet."))};
    std::vector<Message> words;
    words.push_back(
        sizing.totals.always_connected
            ? say(phrase("sizing", "The output stays on day and night, since something is always connected."))
            : say(phrase("sizing", "The output is on for %1 h a day (%2 h if no two appliances were in use together) and switched off for the rest."),
                  say_number(sizing.totals.hours_on, 1), say_number(sizing.totals.hours_on_most, 1)));
    words.push_back(say(
        phrase("sizing", "Days, PV array, months and battery count the unit's own draw for every hour that its output is on, besides the list.")));
    words.push_back(
        say(phrase("sizing", "Use by day is spread evenly over a day of %1 h, use at night over a night of %2 h; a day of autonomy is one "
                             "day's list served."),
            say_number(24 - sizing.totals.night_h, 1), say_number(sizing.totals.night_h, 1)));
    bool expected = false;
    for (const SizedUnit& unit : sizing.units) expected = expected || unit.basis == SizingBasis::expectation;
    if (expected)
        words.push_back(
            say(phrase("sizing", "Units without a drain that says anything stand with an expectation, not a measurement: %1 to %2 % of the "
                                 "rated energy at the socket (common practice, no source)."),
                say_digits(exact_text(100 * sizing.choices.expected_lower)), say_digits(exact_text(100 * sizing.choices.expected_upper))));
    for (std::size_t i = 0; i < sizing.units.size(); ++i) {
        const Unit& unit = sizing.units[i].unit;
        const double array_w = sizing.needs[i].array.array_w, each_w = array_w / sizing.choices.units;
        if (unit.pv_max_w && each_w > *unit.pv_max_w)
            words.push_back(say(sizing.choices.units > 1
                                    ? phrase("sizing", "The PV input of %1 takes at most %2 W of the array's %3 W for each unit.")
                                    : phrase("sizing", "The PV input of %1 takes at most %2 W of the array's %3 W."),
                                unit.name, say_number(*unit.pv_max_w, 0), say_number(each_w, 0)));
    }
    return words;
}

} // namespace

Sizing size_for(const LoadList& list, const std::vector<UnitToSize>& units, const SizingChoices& choices) {
    Sizing sizing;
    sizing.list = list;
    sizing.totals = load_totals(list);
    sizing.choices = choices;
    for (const UnitToSize& each : units) sizing.units.push_back(size_unit(list, *each.unit, *each.fit, choices, each.claims));
    for (const SizedUnit& unit : sizing.units) {
        sizing.needs.push_back(daily_needs(sizing.totals, unit.unit, unit.content, choices));
        sizing.courses.push_back(charge_course(sizing.totals, unit, choices, sizing.needs.back().array.daily_wh));
    }
    sizing.list_needs = daily_needs(sizing.totals, {}, {}, choices);
    sizing.remarks = assumptions(sizing);
    return sizing;
}

std::vector<Message> sizing_cautions() {
    return {say(phrase("sizing",
                       "Never connect the outputs of several units with each other; give each its own appliances, unless the makers say otherwise.")),
            say(phrase("sizing",
                       "Never exceed the ratings of sockets, cords and the unit; motors and compressors start with several times their power.")),
            say(phrase("sizing",
                       "PV strings are live in daylight and can carry dangerous DC voltage; check the string against the unit's PV input first.")),
            say(phrase("sizing", "Feed no building from a unit without the transfer switch that the local code asks for.")),
            say(phrase("sizing", "Local electrical codes and a licensed electrician come first.")),
            say(phrase("sizing", "Do not rest medical equipment or anything that a life depends on upon this forecast."))};
}

} // namespace ullage
