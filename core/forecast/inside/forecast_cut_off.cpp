// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/inside/forecast_cut_off.h"

#include "base/number.h"
#include "unit/drain_system.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace ullage {
namespace {

constexpr double plausible_share = 0.02; ///< of the posterior: a family of gauges with less is no longer allowed for

std::optional<Spread> hours_until_used(const CutOffSetup& setup, const std::vector<LeftWeight>& lefts) {
    return spread_by(hours_of(setup, lefts), setup.options.coverage, [&](std::size_t i) { return lefts[i].weight; });
}

/// The hull of the range of each family that the readings leave plausible, so that each covers by itself; the median of all together.
std::optional<Spread> hours_by_families(const CutOffSetup& setup, const std::vector<LeftWeight>& lefts) {
    const std::vector<HoursLeft> all = hours_of(setup, lefts);
    std::optional<Spread> range = spread_by(all, setup.options.coverage, [&](std::size_t i) { return lefts[i].weight; });
    if (!range) return range;
    const std::array<double, gauge_families> shares = family_shares(lefts);
    for (std::size_t k = 0; k < gauge_families; ++k) {
        if (shares[k] < plausible_share) continue;
        const auto family = spread_by(all, setup.options.coverage, [&](std::size_t i) { return lefts[i].by_family[k]; });
        if (!family) continue;
        range->lower = std::min(range->lower, family->lower);
        range->upper = std::max(range->upper, family->upper);
    }
    return range;
}

/// Which account the range rests on: an account with less than plausible_share of the posterior is out of it. Told apart as in two_accounts().
ForecastAccount account_of(const TrendSetup& trend, const std::vector<LeftWeight>& lefts) {
    if (trend.points.empty()) return ForecastAccount::whichever;
    double right = 0, wrong = 0;
    for (const LeftWeight& left : lefts) (std::abs(gauge_error_at_last_pt(trend, left)) <= right_within_pt ? right : wrong) += left.weight;
    if (wrong < plausible_share * (right + wrong)) return ForecastAccount::right;
    return right < plausible_share * (right + wrong) ? ForecastAccount::wrong : ForecastAccount::whichever;
}

std::optional<Spread> left_range(const std::vector<LeftWeight>& lefts, double coverage) {
    WeightedValues values;
    for (const LeftWeight& left : lefts) values.emplace_back(left.left_wh, left.weight);
    return spread_of(std::move(values), coverage);
}

/// What is assumed of the load; empty without one.
Message load_clause(const FutureLoads& loads) {
    if (loads.overall_w() <= 0) return {};
    const Message overall = say_number(loads.overall_w(), 0);
    switch (loads.shape()) {
    case FutureLoads::Shape::steady: return say(phrase("forecast", "assumes that the load stays near %1 W"), overall);
    case FutureLoads::Shape::cycling: return say(phrase("forecast", "assumes that the load goes on as it has, %1 W in the mean"), overall);
    case FutureLoads::Shape::stepped: break;
    }
    return say(phrase("forecast", "allows for a load that stays near %1 W and for one that returns to %2 W in the mean; a step yet to come cannot be "
                                  "foreseen"),
               say_number(loads.recent_w(), 0), overall);
}

Message account_clause(const CutOffForecast& made) {
    switch (made.account) {
    case ForecastAccount::right:
        return say(made.basis == ForecastBasis::both
                       ? phrase("forecast", "holds if the gauge is right, as the earlier drains leave less than 2 % for a wrong one")
                       : phrase("forecast", "holds if the gauge is right, as readings and label leave less than 2 % for a wrong one"));
    case ForecastAccount::wrong:
        return say(phrase("forecast", "holds if the gauge is wrong, as readings and label leave less than 2 % for a right one"));
    case ForecastAccount::whichever: break;
    }
    const bool by_gauge = made.basis == ForecastBasis::trend || made.basis == ForecastBasis::disagreeing;
    return say(by_gauge ? phrase("forecast", "holds whether the gauge is right or wrong")
                        : phrase("forecast", "asks no gauge, so it holds whether it is right or wrong"));
}

/// What it rests on where an earlier charge bounds it too.
Message within_charge(const CutOffSetup& setup, ForecastBasis basis) {
    const Message charged = say_energy(setup.unit_fit.full_charge->charged_wh);
    if (basis == ForecastBasis::trend)
        return say(phrase("forecast", "from this run's gauge, within the %1 that an earlier charge from cut-off to full took in"), charged);
    if (setup.record.unit.rated_energy_wh)
        return say(phrase("forecast", "from the unit's label alone, within the %1 that an earlier charge from cut-off to full took in"), charged);
    return say(phrase("forecast", "from what the unit was charged with, within the %1 that an earlier charge from cut-off to full took in"), charged);
}

Message basis_clause(const CutOffSetup& setup, ForecastBasis basis) {
    const bool by_charge = setup.has_register && setup.unit_fit.full_charge;
    if (by_charge && (basis == ForecastBasis::trend || basis == ForecastBasis::label)) return within_charge(setup, basis);
    switch (basis) {
    case ForecastBasis::label:
        return say(setup.record.unit.rated_energy_wh ? phrase("forecast", "from the unit's label alone")
                                                     : phrase("forecast", "from what the unit was charged with"));
    case ForecastBasis::trend:
        return say(setup.has_register ? phrase("forecast", "from this run's gauge")
                                      : phrase("forecast", "from this run's gauge and time alone, without a register: assumes a steady load"));
    case ForecastBasis::earlier_drains: return say(phrase("forecast", "from earlier drains of the unit"));
    case ForecastBasis::both: return say(phrase("forecast", "from earlier drains of the unit, with which this run's gauge agrees"));
    case ForecastBasis::disagreeing: break;
    }
    return say(phrase("forecast", "from earlier drains of the unit and this run's gauge, which disagree"));
}

Message words(const CutOffSetup& setup, const CutOffForecast& made, bool limit_assumed) {
    std::vector<Message> clauses{basis_clause(setup, made.basis)};
    if (const Message load = load_clause(setup.loads); !load.empty()) clauses.push_back(load);
    if (made.basis == ForecastBasis::trend)
        clauses.push_back(say(phrase("forecast", "allows for a gauge that is bent, offset, ends early, falls too fast, lingers, sticks, jumps, or is "
                                                 "blind to the unit's own consumption")));
    if (made.basis == ForecastBasis::disagreeing) clauses.push_back(say(phrase("forecast", "the range holds both")));
    if (limit_assumed)
        clauses.push_back(
            say(phrase("forecast", "±%1 % taken for a meter whose error limit is not stated"), say_digits(exact_text(assumed_limit_percent))));
    clauses.push_back(account_clause(made));
    return say_joined(clauses, "; ");
}

/// From what the earlier drains say, held against this run's gauge where it can tell. A gauge that agrees does not narrow the
/// range: in simulated units with common gauge faults that made the forecast worse.
std::optional<CutOffForecast> with_earlier_drains(const CutOffSetup& setup, const FitLeft& fit, bool gauge_tells) {
    CutOffForecast result;
    result.basis = ForecastBasis::earlier_drains;
    result.hours = hours_until_used(setup, around(fit));
    if (gauge_tells) {
        const std::vector<LeftWeight> trend = lefts_by_trend(setup);
        const auto seen = left_range(trend, setup.options.coverage);
        const bool agree = seen && seen->lower <= fit.wh + 2 * fit.u_wh && seen->upper >= fit.wh - 2 * fit.u_wh;
        if (agree) {
            result.basis = ForecastBasis::both;
            if (account_of(setup.trend, around(fit)) == ForecastAccount::right) result.account = ForecastAccount::right;
        } else if (const auto other = hours_by_families(setup, trend)) {
            result.basis = ForecastBasis::disagreeing;
            if (result.hours)
                result.hours = Spread{std::min(result.hours->lower, other->lower), result.hours->middle, std::max(result.hours->upper, other->upper)};
            else result.hours = other;
        }
    }
    if (!result.hours) return std::nullopt;
    result.reason = words(setup, result, fit.limit_assumed);
    return result;
}

} // namespace

CutOffForecast forecast_cut_off(const CutOffSetup& setup) {
    CutOffForecast result;
    if (setup.record.run.kind == RunKind::drain && setup.has_register && setup.trend.end.delivered_wh <= 0) {
        result.reason = say(phrase("forecast", "nothing has been delivered yet"));
        return result;
    }
    const Message without_trend = no_trend(setup.trend);
    if (const auto fit = by_earlier_drains(setup)) {
        if (auto found = with_earlier_drains(setup, *fit, without_trend.empty())) result = std::move(*found);
    } else if (without_trend.empty() || (setup.has_register && setup.trend.most_wh && !setup.trend.points.empty())) {
        if (!without_trend.empty()) result.basis = ForecastBasis::label;
        const std::vector<LeftWeight> lefts = lefts_by_trend(setup);
        result.hours = hours_by_families(setup, lefts);
        result.account = account_of(setup.trend, lefts);
        if (result.hours) result.reason = words(setup, result, false);
        if (result.hours && !without_trend.empty()) result.reason = say_joined({result.reason, without_trend}, "; ");
    } else {
        result.reason = say(phrase("forecast", "%1, and no earlier drain of the unit tells"), without_trend);
        return result;
    }
    if (!result.hours) {
        result.reason = say(phrase("forecast", "it has already delivered more than the readings and the unit's label allow for; read often now"));
    } else if (result.hours->upper > longest_forecast_h) {
        result.hours.reset();
        result.reason = say(phrase("forecast", "the load is so small that the end may be more than a year away"));
    }
    return result;
}

} // namespace ullage
