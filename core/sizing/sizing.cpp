// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/sizing.h"

#include "base/number.h"

#include <utility>

namespace ullage {

namespace {

std::vector<Message> assumptions(const Sizing& sizing) {
    if (!sizing.totals.mean_on_w) return {"The load list takes nothing yet."};
    std::vector<Message> words;
    words.push_back(sizing.totals.always_connected ? std::string("The output stays on day and night, since something is always connected.")
                                                   : "The output is on for " + fixed_text(sizing.totals.hours_on, 1) + " h a day (" +
                                                         fixed_text(sizing.totals.hours_on_most, 1) +
                                                         " h if no two appliances were in use together) and switched off for the rest.");
    words.push_back("Days, PV array, months and battery count the unit's own draw for every hour that its output is on, besides the list.");
    words.push_back("Use by day is spread evenly over a day of " + fixed_text(24 - sizing.totals.night_h, 1) + " h, use at night over a night of " +
                    fixed_text(sizing.totals.night_h, 1) + " h; a day of autonomy is one day's list served.");
    bool expected = false;
    for (const SizedUnit& unit : sizing.units) expected = expected || unit.basis == SizingBasis::expectation;
    if (expected)
        words.push_back("Units without a drain that says anything stand with an expectation, not a measurement: " +
                        exact_text(100 * sizing.choices.expected_lower) + " to " + exact_text(100 * sizing.choices.expected_upper) +
                        " % of the rated energy at the socket (common practice, no source).");
    for (std::size_t i = 0; i < sizing.units.size(); ++i) {
        const Unit& unit = sizing.units[i].unit;
        const double array_w = sizing.needs[i].array.array_w, each_w = array_w / sizing.choices.units;
        if (unit.pv_max_w && each_w > *unit.pv_max_w)
            words.push_back("The PV input of " + unit.name + " takes at most " + fixed_text(*unit.pv_max_w, 0) + " W of the array's " +
                            fixed_text(each_w, 0) + (sizing.choices.units > 1 ? " W for each unit." : " W."));
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

std::vector<std::string> sizing_cautions() {
    return {"Never connect the outputs of several units with each other; give each its own appliances, "
            "unless the makers say otherwise.",
            "Never exceed the ratings of sockets, cords and the unit; motors and compressors start with "
            "several times their power.",
            "PV strings are live in daylight and can carry dangerous DC voltage; check the string against "
            "the unit's PV input first.",
            "Feed no building from a unit without the transfer switch that the local code asks for.",
            "Local electrical codes and a licensed electrician come first.",
            "Do not rest medical equipment or anything that a life depends on upon this forecast."};
}

} // namespace ullage
