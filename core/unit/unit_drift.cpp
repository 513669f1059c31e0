// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/unit_drift.h"

#include "base/number.h"
#include "numerics/distributions.h"
#include "unit/inside/between_runs_words.h"
#include "unit/usual_draw.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>
#include <vector>

namespace ullage {
namespace {

constexpr std::size_t least_drains = 3;
constexpr double least_days = 1;
constexpr auto key = "change_wh_per_day";

Drift refused(const Message& reason) {
    Drift drift;
    drift.sentence = say(phrase("unit", "Whether the energy moves with time is not known: %1."), reason);
    drift.change_wh_per_day = not_known(key, "Wh/d", reason);
    return drift;
}

double days_spanned(const std::vector<DrainSummary>& used) {
    const auto [first, last] = std::ranges::minmax_element(used, {}, &DrainSummary::start_ms);
    return hours_between(first->start_ms, last->start_ms) / 24;
}

} // namespace

Drift test_drift(const UnitFit& fit, const Unit& unit) {
    std::vector<DrainSummary> all;
    std::ranges::copy_if(fit.drains, std::back_inserter(all), &DrainSummary::used);
    std::vector<DrainSummary> used;
    for (const std::size_t place : most_of_like_temperature(all)) used.push_back(all[place]);
    if (used.size() < all.size() && used.size() < least_drains)
        return refused(say(phrase("unit", "the drains were made at temperatures more than %1 °C apart, where cold looks like age"),
                           say_digits(exact_text(like_temperatures_c))));
    if (used.size() < least_drains)
        return refused(say(phrase("unit", "it takes three drains from full to cut-off; so far: %1"), say_number(used.size())));
    if (days_spanned(used) < least_days) return refused(say(phrase("unit", "all drains were made within a day")));

    BalanceTerms terms{fit.c_bounds, std::nullopt, true};
    if (!run_times_differ(used)) terms.no_load_draw_w = usual_no_load_draw(unit);
    const Result<BalanceFit> solved = fit_balance(used, terms, fit.options);
    if (!solved) return refused(say(phrase("unit", "the loads changed in step with time; repeat an early load")));
    const BalanceFit& balance = solved.value();

    const Disagreement disagreement = disagreement_of(balance);
    const double scatter = disagreement.ratio * disagreement.ratio * balance.scatter[3][3];
    double variance = scatter + balance.bounds[3][3];
    bool limits_known = true;
    for (const GainShift& gain : balance.gains) {
        const double u = gain.half_width[3] / std::sqrt(3.0);
        limits_known = limits_known && (gain.limit_known || u * u < 1e-3 * variance);
        variance += u * u;
    }
    if (!limits_known) return refused(say(phrase("unit", "the drains used different meters, and the error limit of one is not stated")));

    // Only the scatter rests on few drains.
    const UncertaintyPart parts[] = {{std::sqrt(scatter), disagreement.nu}, {std::sqrt(variance - scatter), INFINITY}};
    const double nu = effective_degrees_of_freedom(parts).value_or(disagreement.nu);
    Drift drift;
    const double change = balance.parameters[3], u = std::sqrt(variance);
    drift.statistic = change / u;
    drift.p_value = student_t_two_sided_tail(*drift.statistic, nu);
    drift.significant = *drift.p_value < Drift::threshold;
    std::vector<Message> reasons{say(phrase("unit", "over %1 days, corrected for the loads"), say_number(days_spanned(used), 0))};
    if (used.size() < all.size())
        reasons.push_back(say_count(all.size() - used.size(),
                                    phrases("unit", "%n drains at other temperatures left out", "%n drain at other temperatures left out")));
    drift.change_wh_per_day = known(key, "Wh/d", change, coverage_factor(fit.options.coverage, nu) * u, Kind::measured, say_joined(reasons, "; "));
    const double half = *drift.change_wh_per_day.half_width();
    const int decimals = half > 0 ? decimals_for(half) : 2;
    drift.sentence = say(!drift.significant ? phrase("unit", "No change of energy with time is shown (%1 Wh a day).")
                         : change < 0       ? phrase("unit", "The unit delivers less with time: %1 Wh a day.")
                                            : phrase("unit", "The unit delivers more with time (%1 Wh a day): warmer, or not always charged full."),
                         say_digits(signed_text(change, decimals) + " ± " + fixed_text(half, decimals)));
    return drift;
}

} // namespace ullage
