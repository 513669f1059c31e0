// SPDX-License-Identifier: GPL-3.0-or-later
// Notation: L Wh a day, H hours of output on a day, N units side by side, E*, P*, c as in
// core/unit/between_runs.h.
#include "sizing/sized_unit.h"

#include "base/number.h"
#include "sizing/daily_needs.h"
#include "sizing/inside/order_of_use.h"
#include "unit/between_runs_predict.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <utility>

namespace ullage {

namespace {

constexpr double hours_a_day = 24;

/// Everything that the answers for one unit are made from.
struct Case {
    const LoadList& list;
    const LoadTotals& totals;
    const Unit& unit;
    const SizingChoices& choices;
    UnitFit fit; ///< its parameters those of the basis
    SizingBasis basis;
    std::optional<UnitContent> content;
    Quantity standby; ///< draw while the output is off, W; not known: nothing is counted
};

std::optional<double> stated(const std::optional<double>& claim) { return claim && *claim > 0 ? claim : std::nullopt; }

SizingBasis basis_of(const UnitFit& fit, const Unit& unit) {
    if (fit.parameters && fit.parameters->e_star_wh > 0) return SizingBasis::own_fit;
    if (fit.planning && fit.planning->e_star_wh > 0) return SizingBasis::one_load;
    return stated(unit.rated_energy_wh) ? SizingBasis::expectation : SizingBasis::none;
}

Quantity standby_of(const UnitClaims* claims) {
    if (claims && claims->draws.output_off.draw_w.value) return claims->draws.output_off.draw_w;
    return not_known("standby_draw_w", "W", say(phrase("sizing", "no standby run")));
}

/// An expectation has the own draw of a no-load drain where there is one.
std::optional<UnitContent> content_of(SizingBasis basis, const UnitFit& fit, const Unit& unit, const SizingChoices& choices,
                                      const UnitClaims* claims) {
    if (basis == SizingBasis::none) return std::nullopt;
    UnitContent content;
    if (basis == SizingBasis::expectation) {
        content.deliverable_wh = (choices.expected_lower + choices.expected_upper) / 2 * *unit.rated_energy_wh;
        const std::optional<double> own_w = claims ? claims->draws.output_on.draw_w.value : std::nullopt;
        content.own_w = std::max(0.0, own_w.value_or(0));
        content.own_draw_known = own_w.has_value();
    } else {
        const UnitParameters& p = *fit.parameters;
        content = {p.e_star_wh, std::max(0.0, p.p_star_w), p.c_per_w};
        content.own_draw_known = basis == SizingBasis::own_fit;
    }
    const Quantity standby = standby_of(claims);
    content.standby_w = std::max(0.0, standby.value.value_or(0));
    content.standby_known = standby.value.has_value();
    return content;
}

/// Takes in another way of using the list: the interval of `days` then holds both.
void widen(Quantity& days, const Quantity& other) {
    if (!other.lower || !days.lower) return;
    days.lower = std::min(*days.lower, *other.lower);
    if (!other.upper || !days.upper) {
        days.upper.reset();
        days.kind = Kind::at_least;
    } else {
        days.upper = std::max(*days.upper, *other.upper);
    }
}

/// Shortens days in which `spent_wh` a day leave the content by the standby draw of the hours of output off; a larger draw goes with fewer days.
void count_standby(const Case& of, int units, double hours_on, double spent_wh, Quantity& days) {
    const double off_h = hours_a_day - hours_on;
    if (!of.standby.value || off_h <= 0) return;
    const auto shortened = [&](std::optional<double>& part, const std::optional<double>& draw_w) {
        const double standby_wh = units * off_h * std::max(0.0, draw_w.value_or(*of.standby.value));
        if (part) *part *= spent_wh / (spent_wh + standby_wh);
    };
    shortened(days.value, of.standby.value);
    shortened(days.lower, of.standby.upper);
    shortened(days.upper, of.standby.lower);
}

Quantity one_way(const Case& of, int units, double hours_on, double power_w) {
    const double mean_w = of.totals.daily_wh / hours_on;
    const double on_w = std::max(power_w, mean_w);
    Quantity days = predict_under(of.fit, of.unit, {on_w / units, std::min(1.0, mean_w / on_w), {}}).run_time_h;
    days.key = "days_of_autonomy";
    days.unit = "d";
    for (std::optional<double>* part : {&days.value, &days.lower, &days.upper})
        if (*part) **part /= hours_on;
    const double spent_wh = of.totals.daily_wh * (1 + of.content->curvature_per_w * on_w / units) + units * of.content->own_w * hours_on;
    count_standby(of, units, hours_on, spent_wh, days);
    return days;
}

Quantity expected_days(const Case& of, int units) {
    const double served = units * *of.unit.rated_energy_wh / of.totals.daily_wh;
    Quantity days{"days_of_autonomy", "d", {}, of.choices.expected_lower * served, of.choices.expected_upper * served, Kind::bracket, {}};
    days.reason = say(phrase("sizing", "an expectation, not a measurement: %1 to %2 % of the rated energy at the socket (common practice)"),
                      say_digits(exact_text(100 * of.choices.expected_lower)), say_digits(exact_text(100 * of.choices.expected_upper)));
    count_standby(of, units, of.totals.hours_on, of.totals.daily_wh, days);
    return days;
}

/// Days before the hour of beginning is thought of.
Quantity days_of_content(const Case& of, int units) {
    if (of.basis == SizingBasis::expectation) return expected_days(of, units);
    const double at_once_w = together_w(of.totals, of.unit, units);
    Quantity days = one_way(of, units, of.totals.hours_on, at_once_w);
    for (const double hours_on : {of.totals.hours_on, of.totals.hours_on_most})
        for (const double power_w : {at_once_w, 0.0}) widen(days, one_way(of, units, hours_on, power_w));
    if (of.basis == SizingBasis::one_load && days.value)
        days.reason =
            say_joined({say(phrase("sizing", "an expectation: its drains do not tell its no-load draw, which is taken as usual (0 to 3 % of "
                                             "the rated output, common practice)")),
                        days.reason},
                       "; ");
    return days;
}

/// Least and most of a figure over the hours of the clock at which a full unit may begin.
template <class Figure>
std::pair<double, double> over_beginnings(const Figure& figure) {
    constexpr int beginnings = 48;
    double least = figure(0.0), most = least;
    for (int beginning = 1; beginning < beginnings; ++beginning) {
        const double value = figure(hours_a_day * beginning / beginnings);
        least = std::min(least, value);
        most = std::max(most, value);
    }
    return {least, most};
}

/// The last part of a day is another when the unit begins by night, or when lamps burn early.
Quantity with_beginnings(const Case& of, int units, Quantity days) {
    if (!days.lower || of.basis == SizingBasis::expectation) return days;
    const OrderOfUse use(of.list, of.totals, *of.content, units, together_w(of.totals, of.unit, units));
    const double mean_wh = of.totals.daily_wh * use.content_wh() / use.spent_per_day_wh();
    const auto served = [&](UseOrder order) {
        return over_beginnings([&](double start_h) { return use.until_empty(use.content_wh(), start_h, order).served_wh / mean_wh; });
    };
    const auto soonest = served(UseOrder::soonest), latest = served(UseOrder::latest);
    days.lower = *days.lower * std::min({1.0, soonest.first, latest.first});
    if (days.upper) days.upper = *days.upper * std::max({1.0, soonest.second, latest.second});
    return days;
}

Quantity days_of(const Case& of, int units) { return with_beginnings(of, units, days_of_content(of, units)); }

Quantity lasts(const Case& of) {
    const Quantity days = days_of_content(of, 1);
    if (days.kind == Kind::not_known) return not_known("lasts_h", "h", days.reason);
    Quantity result{"lasts_h", "h", {}, {}, {}, Kind::bracket, {}};
    result.reason =
        say_joined({say(phrase("sizing", "from full to cut-off, by the hour at which it begins and the order of use")), days.reason}, "; ");
    const OrderOfUse use(of.list, of.totals, *of.content, 1, together_w(of.totals, of.unit, 1));
    if (!days.lower) {
        result.value = hours_a_day * days.value.value_or(0);
        result.kind = Kind::projected;
        return result;
    }
    const auto hours_with = [&](double limit_days, UseOrder order) {
        const double content_wh = limit_days * use.spent_per_day_wh();
        return over_beginnings([&](double start_h) { return use.until_empty(content_wh, start_h, order).hours; });
    };
    result.lower = hours_with(*days.lower, UseOrder::soonest).first;
    if (days.upper) result.upper = hours_with(*days.upper, UseOrder::latest).second;
    else result.kind = Kind::at_least;
    return result;
}

double largest_surcharge_w(const LoadTotals& totals) { return totals.peak_w - totals.running_w; }

/// Whether so many units side by side carry what runs and what starts.
bool power_enough(const Case& of, int units) {
    const std::optional<double> rated_w = stated(of.unit.rated_output_w);
    const std::optional<double> peak_w = stated(of.unit.peak_output_w) ? of.unit.peak_output_w : rated_w;
    const double share_w = of.totals.running_w / units;
    return (!rated_w || share_w <= *rated_w) && (!peak_w || share_w + largest_surcharge_w(of.totals) <= *peak_w);
}

/// The appliance that one unit cannot carry even by itself, in words; empty for none.
Message too_large_appliance(const LoadList& list, const Unit& unit) {
    const std::optional<double> rated_w = stated(unit.rated_output_w);
    const std::optional<double> peak_w = stated(unit.peak_output_w) ? unit.peak_output_w : rated_w;
    for (const Appliance& one : list.appliances) {
        const double start_w = one.start_peak_w.value_or(running_w(one));
        if (rated_w && running_w(one) > *rated_w)
            return say(phrase("sizing", "%1 alone takes %2 W, above the rated output of %3 W"), one.name, say_number(running_w(one), 0),
                       say_number(*rated_w, 0));
        if (peak_w && start_w > *peak_w)
            return say(phrase("sizing", "%1 alone starts with %2 W, above the highest output of %3 W"), one.name, say_number(start_w, 0),
                       say_number(*peak_w, 0));
    }
    return {};
}

/// The smallest number from `from` on for which `enough` holds, which must hold for every larger one too.
std::optional<int> smallest(int from, const std::function<bool(int)>& enough) {
    int low = from - 1, high = from;
    while (!enough(high)) {
        if (high >= most_units) return std::nullopt;
        low = high;
        high = std::min(2 * high, most_units);
    }
    while (high - low > 1) {
        const int middle = (low + high) / 2;
        (enough(middle) ? high : low) = middle;
    }
    return high;
}

UnitsNeeded units_needed(const Case& of) {
    UnitsNeeded needed;
    needed.reason = too_large_appliance(of.list, of.unit);
    if (!needed.reason.empty()) return needed;
    const std::optional<int> for_power = smallest(1, [&](int units) { return power_enough(of, units); });
    if (!for_power) {
        needed.reason = say(phrase("sizing", "no number of units up to %1 carries the power"), say_number(most_units));
        return needed;
    }
    const auto reaching = [&](std::optional<double> Quantity::*limit) {
        return smallest(*for_power, [&](int units) {
            const Quantity days = days_of(of, units);
            if (days.kind == Kind::at_least && limit == &Quantity::upper) return true;
            return (days.*limit).value_or(0) >= of.choices.autonomy_days;
        });
    };
    const bool interval = days_of(of, *for_power).lower.has_value();
    needed.least = reaching(interval ? &Quantity::upper : &Quantity::value);
    if (interval) needed.sure = reaching(&Quantity::lower);
    if (!needed.least)
        needed.reason = say(of.choices.autonomy_days == 1
                                ? phrase("sizing", "no number of units up to %1 carries it for %2 day: their own draw empties them before")
                                : phrase("sizing", "no number of units up to %1 carries it for %2 days: their own draw empties them before"),
                            say_number(most_units), say_digits(exact_text(of.choices.autonomy_days)));
    else if (*needed.least == *for_power && *for_power > 1) needed.reason = say(phrase("sizing", "the power decides"));
    else if (!interval) needed.reason = say(phrase("sizing", "no interval: the error limit of a meter is not stated"));
    else if (!needed.sure)
        needed.reason = say(phrase("sizing", "no number of units is sure to carry it for so long: their own draw may empty them before"));
    return needed;
}

PowerFit output_fit(const LoadTotals& totals, const Unit& unit) {
    const std::optional<double> rated_w = stated(unit.rated_output_w);
    if (!rated_w) return PowerFit::not_stated;
    if (totals.running_w <= *rated_w) return PowerFit::fits;
    return totals.mean_on_w.value_or(0) <= *rated_w ? PowerFit::only_apart : PowerFit::too_small;
}

PowerFit peak_fit(const LoadList& list, const LoadTotals& totals, const Unit& unit) {
    const std::optional<double> peak_w = stated(unit.peak_output_w) ? unit.peak_output_w : stated(unit.rated_output_w);
    if (!peak_w) return PowerFit::not_stated;
    if (totals.peak_w <= *peak_w) return PowerFit::fits;
    for (const Appliance& one : list.appliances)
        if (one.start_peak_w.value_or(running_w(one)) > *peak_w) return PowerFit::too_small;
    return PowerFit::only_apart;
}

/// What array, months and days leave out, or take from elsewhere than a measurement.
void add_draw_remarks(const Case& of, std::vector<Message>& remarks) {
    const UnitContent& content = *of.content;
    if (!content.own_draw_known)
        remarks.push_back(content.own_w > 0
                              ? say(phrase("sizing", "its own draw is not measured: %1 W are taken, as is usual"), say_number(content.own_w, 1))
                              : say(phrase("sizing", "its own draw is not measured and not counted: PV array and battery are the least needed")));
    if (of.totals.hours_on >= hours_a_day) return;
    remarks.push_back(content.standby_known
                          ? say(phrase("sizing", "while its output is off it takes %1 W, which are counted"), say_number(content.standby_w, 1))
                          : say(phrase("sizing", "what it takes while its output is off is not measured and not counted: make a standby run")));
}

std::vector<Message> remarks_of(const Case& of, const UnitClaims* claims) {
    std::vector<Message> remarks;
    add_draw_remarks(of, remarks);
    if (const Message words = too_large_appliance(of.list, of.unit); !words.empty())
        remarks.push_back(say_joined({words, say(phrase("sizing", "more units do not help"))}, "; "));
    if (!stated(of.unit.peak_output_w) && largest_surcharge_w(of.totals) > 0 && stated(of.unit.rated_output_w))
        remarks.push_back(say(phrase("sizing", "no peak output is claimed; starts are held against the rated output")));
    if (claims)
        for (const ClaimCheck& check : claims->checks)
            if ((check.key == "rated_output_w" || check.key == "peak_output_w") && check.verdict == ClaimVerdict::does_not_hold)
                remarks.push_back(say(phrase("sizing", "the claim does not hold: %1"), check.evidence));
    return remarks;
}

/// So many units that their rated energy reaches the rule's battery for the list and their own draws.
std::optional<int> units_by_rule(const Case& of) {
    const std::optional<double> rated_wh = stated(of.unit.rated_energy_wh);
    if (!rated_wh) return std::nullopt;
    return smallest(1, [&](int units) {
        SizingChoices side_by_side = of.choices;
        side_by_side.units = units;
        return daily_needs(of.totals, of.unit, of.content, side_by_side).battery.nameplate_wh <= units * *rated_wh * (1 + 1e-9);
    });
}

/// The same list with the output never switched off.
LoadTotals left_on(LoadTotals totals) {
    totals.always_connected = true;
    totals.hours_on = totals.hours_on_most = hours_a_day;
    totals.night_hours_on = totals.night_h;
    totals.mean_on_w = totals.mean_w;
    if (totals.running_w > 0) totals.duty = std::min(1.0, totals.mean_w / totals.running_w);
    return totals;
}

Quantity renamed(Quantity quantity, const char* key) {
    quantity.key = key;
    return quantity;
}

} // namespace

SizedUnit size_unit(const LoadList& list, const Unit& unit, const UnitFit& fit, const SizingChoices& choices, const UnitClaims* claims) {
    const LoadTotals totals = load_totals(list);
    SizedUnit sized;
    sized.unit = unit;
    sized.output = output_fit(totals, unit);
    sized.peak = peak_fit(list, totals, unit);
    sized.basis = basis_of(fit, unit);
    Message refusal;
    if (!totals.mean_on_w) refusal = say(phrase("sizing", "the load list takes nothing"));
    else if (sized.basis == SizingBasis::none)
        refusal = say(phrase("sizing", "the rated energy of the unit is not stated, and no drain tells its energy"));
    if (!refusal.empty()) {
        sized.days = not_known("days_of_autonomy", "d", refusal);
        sized.run_time_h = not_known("run_time_h", "h", refusal);
        sized.lasts_h = not_known("lasts_h", "h", refusal);
        sized.days_left_on = not_known("days_output_left_on", "d", refusal);
        sized.units_needed.reason = refusal;
        return sized;
    }
    Case of{list, totals, unit, choices, fit, sized.basis, {}, standby_of(claims)};
    if (of.basis == SizingBasis::one_load) of.fit.parameters = fit.planning;
    of.content = sized.content = content_of(of.basis, of.fit, unit, choices, claims);
    sized.days = days_of(of, 1);
    sized.run_time_h = renamed(sized.days, "run_time_h");
    sized.run_time_h.unit = "h";
    for (std::optional<double>* part : {&sized.run_time_h.value, &sized.run_time_h.lower, &sized.run_time_h.upper})
        if (*part) **part *= totals.hours_on;
    sized.lasts_h = lasts(of);
    const LoadTotals all_day = left_on(totals);
    sized.days_left_on = renamed(days_of({list, all_day, unit, choices, of.fit, of.basis, of.content, of.standby}, 1), "days_output_left_on");
    sized.units_needed = units_needed(of);
    sized.units_by_rule = units_by_rule(of);
    sized.remarks = remarks_of(of, claims);
    return sized;
}

} // namespace ullage
