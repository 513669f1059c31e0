// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/repeats.h"

#include "base/number.h"
#include "measure/usable.h"
#include "numerics/distributions.h"
#include "numerics/monte_carlo.h"
#include "numerics/pooled_deviation.h"

#include <boost/math/distributions/fisher_f.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace ullage {
namespace {

constexpr double scatter_refuted_below = 0.05;
constexpr double unlimited = std::numeric_limits<double>::infinity();

/// The longest run of loads, ascending, within the ratio; of as long ones the first.
std::pair<std::size_t, std::size_t> longest_window(const std::vector<DrainSummary>& drains, const std::vector<std::size_t>& by_load) {
    std::size_t best_from = 0, best_to = 0, from = 0;
    for (std::size_t to = 1; to <= by_load.size(); ++to) {
        while (drains[by_load[to - 1]].mean_load_w > like_loads_ratio * drains[by_load[from]].mean_load_w) ++from;
        if (to - from > best_to - best_from) {
            best_from = from;
            best_to = to;
        }
    }
    return {best_from, best_to};
}

/// Standard uncertainty of the mean with its degrees of freedom.
struct MeanSpread {
    double u_wh = 0, degrees_of_freedom = unlimited;
    bool own = false;
};

/// Whether the drains scatter more than the figure by which they are taken to repeat allows.
bool refutes(double squares_in_u, std::size_t degrees, const MeasureOptions& options) {
    const auto nu = static_cast<double>(degrees);
    if (squares_in_u <= nu) return false;
    if (options.repeatability_source != RepeatabilitySource::pooled || options.repeatability_degrees == 0)
        return chi_square_tail(squares_in_u, nu) < scatter_refuted_below;
    const boost::math::fisher_f law(nu, static_cast<double>(options.repeatability_degrees));
    return boost::math::cdf(boost::math::complement(law, squares_in_u / nu)) < scatter_refuted_below;
}

MeanSpread spread_of_mean(const std::vector<DrainSummary>& drains, const RepeatMean& mean, const MeasureOptions& options) {
    const auto n = static_cast<double>(mean.count());
    const double repeatability = options.repeatability_percent / 100;
    double independent = 0, repeat = 0, squares_in_u = 0;
    for (const std::size_t place : mean.drains) {
        const DrainSummary& drain = drains[place];
        const double of_drain = std::pow(drain.independent_wh, 2), of_repeat = std::pow(repeatability * mean.mean_wh, 2);
        independent += of_drain / (n * n);
        repeat += of_repeat / (n * n);
        if (of_drain + of_repeat > 0) squares_in_u += std::pow(drain.delivered_wh - mean.mean_wh, 2) / (of_drain + of_repeat);
    }
    MeanSpread given{std::sqrt(independent + repeat), unlimited, false};
    if (options.repeatability_source == RepeatabilitySource::pooled && options.repeatability_degrees > 0) {
        const UncertaintyPart parts[] = {{std::sqrt(independent), unlimited},
                                         {std::sqrt(repeat), static_cast<double>(options.repeatability_degrees)}};
        given.degrees_of_freedom = effective_degrees_of_freedom(parts).value_or(unlimited);
    }
    if (mean.count() < 2) return given;
    const MeanSpread own{mean.scatter_wh / std::sqrt(n), n - 1, true};
    const auto expanded = [&](const MeanSpread& spread) { return coverage_factor(options.coverage, spread.degrees_of_freedom) * spread.u_wh; };
    const bool wider = expanded(own) > expanded(given);
    if (options.repeatability_source == RepeatabilitySource::usual) return wider ? own : given;
    return wider && refutes(squares_in_u, mean.count() - 1, options) ? own : given;
}

void add_gains(const std::vector<DrainSummary>& drains, RepeatMean& mean) {
    const auto n = static_cast<double>(mean.count());
    for (const std::size_t place : mean.drains) {
        const DrainSummary& drain = drains[place];
        RepeatMean::Gain& gain = mean.gains[drain.meter_key];
        gain.half_width_wh += drain.gain_limit_percent.value_or(0) / 100 * drain.delivered_wh / n;
        gain.limit_known = gain.limit_known && drain.gain_limit_percent.has_value();
        mean.load_part_wh += drain.load_part_wh / n;
    }
}

Message say_what_of(const RepeatMean& mean) {
    const Message scatter = say_number(100 * mean.scatter_wh / mean.mean_wh, 1);
    if (fixed_text(mean.lowest_load_w, 0) == fixed_text(mean.highest_load_w, 0))
        return say(phrase("unit", "mean of %1 drains at %2 W, which scatter by %3 %"), say_number(mean.count()), say_number(mean.mean_load_w, 0),
                   scatter);
    return say(phrase("unit", "mean of %1 drains from %2 to %3 W, which scatter by %4 %"), say_number(mean.count()),
               say_number(mean.lowest_load_w, 0), say_number(mean.highest_load_w, 0), scatter);
}

Message mean_words(const std::vector<DrainSummary>& drains, const RepeatMean& mean, const MeasureOptions& options) {
    if (mean.count() == 1)
        return say(phrase("unit", "%1 stands alone; drains are taken to repeat within %2"), drains[mean.drains.front()].title,
                   repeatability_words(options));
    if (!mean.by_own_scatter || mean.count() != 2) return say_what_of(mean);
    return say_joined(
        {say_what_of(mean), say(phrase("unit", "two drains say little of how well this unit repeats, a third narrows the interval most"))}, "; ");
}

void put_quantities(const std::vector<DrainSummary>& drains, const MeasureOptions& options, RepeatMean& mean) {
    double largest = 0, others = 0;
    bool limits_known = true;
    for (const auto& [key, gain] : mean.gains) {
        limits_known = limits_known && gain.limit_known;
        const double narrower = std::min(gain.half_width_wh, largest);
        others += narrower * narrower / 3;
        largest = std::max(largest, gain.half_width_wh);
    }
    const Message words = mean_words(drains, mean, options);
    const double rest = std::hypot(mean.independent_wh, std::sqrt(others));
    const UncertaintyPart parts[] = {{mean.independent_wh, mean.degrees_of_freedom}, {std::sqrt(others), unlimited}};
    const double freedom = effective_degrees_of_freedom(parts).value_or(unlimited);
    std::optional<double> half;
    if (limits_known) half = half_width_with_freedom(largest, rest, freedom, options.coverage);
    mean.delivered_wh =
        known("delivered_wh", "Wh", mean.mean_wh, half, Kind::measured,
              limits_known ? words : say_joined({words, say(phrase("unit", "no interval: the error limit of a meter is not stated"))}, "; "));
    if (mean.delivered_wh.lower) mean.delivered_wh.lower = std::max(0.0, *mean.delivered_wh.lower);
    mean.duration_h = known("duration_h", "h", mean.mean_hours, std::nullopt, Kind::measured, words);
}

} // namespace

bool are_unlike_temperatures(const DrainSummary& one, const DrainSummary& other) {
    return one.ambient_c && other.ambient_c && std::abs(*one.ambient_c - *other.ambient_c) > like_temperatures_c;
}

std::vector<std::size_t> most_of_like_temperature(const std::vector<DrainSummary>& drains) {
    std::vector<std::size_t> noted, most;
    for (std::size_t i = 0; i < drains.size(); ++i)
        if (drains[i].ambient_c) noted.push_back(i);
    std::ranges::stable_sort(noted, {}, [&](std::size_t i) { return *drains[i].ambient_c; });
    std::size_t from = 0;
    for (std::size_t to = 1; to <= noted.size(); ++to) {
        while (are_unlike_temperatures(drains[noted[from]], drains[noted[to - 1]])) ++from;
        if (to - from > most.size()) most.assign(noted.begin() + static_cast<std::ptrdiff_t>(from), noted.begin() + static_cast<std::ptrdiff_t>(to));
    }
    for (std::size_t i = 0; i < drains.size(); ++i)
        if (!drains[i].ambient_c) most.push_back(i);
    std::ranges::sort(most);
    return most;
}

std::vector<std::vector<std::size_t>> like_load_groups(const std::vector<DrainSummary>& drains) {
    std::vector<std::size_t> rest;
    for (std::size_t i = 0; i < drains.size(); ++i)
        if (drains[i].used && drains[i].delivered_wh > 0 && drains[i].kind == RunKind::drain) rest.push_back(i);
    std::vector<std::vector<std::size_t>> groups;
    while (!rest.empty()) {
        std::vector<DrainSummary> left;
        for (const std::size_t place : rest) left.push_back(drains[place]);
        std::vector<std::size_t> by_load;
        for (const std::size_t place : most_of_like_temperature(left)) by_load.push_back(rest[place]);
        std::erase_if(rest, [&](std::size_t place) { return std::ranges::binary_search(by_load, place); });
        std::ranges::stable_sort(by_load, {}, [&](std::size_t i) { return std::pair(drains[i].mean_load_w, drains[i].start_ms); });
        while (!by_load.empty()) {
            const auto [from, to] = longest_window(drains, by_load);
            const auto first = by_load.begin() + static_cast<std::ptrdiff_t>(from), last = by_load.begin() + static_cast<std::ptrdiff_t>(to);
            groups.emplace_back(first, last);
            std::ranges::sort(groups.back());
            by_load.erase(first, last);
        }
    }
    return groups;
}

RepeatMean mean_of_drains(const std::vector<DrainSummary>& drains, std::vector<std::size_t> places, const MeasureOptions& options) {
    RepeatMean mean;
    mean.drains = std::move(places);
    const auto n = static_cast<double>(mean.count());
    std::vector<std::vector<double>> energies(1);
    mean.lowest_load_w = unlimited;
    for (const std::size_t place : mean.drains) {
        const DrainSummary& drain = drains[place];
        energies.front().push_back(drain.delivered_wh);
        mean.mean_wh += drain.delivered_wh / n;
        mean.mean_hours += drain.hours / n;
        mean.lowest_load_w = std::min(mean.lowest_load_w, drain.mean_load_w);
        mean.highest_load_w = std::max(mean.highest_load_w, drain.mean_load_w);
    }
    mean.mean_load_w = mean.mean_wh / mean.mean_hours;
    mean.scatter_wh = pooled_deviation(energies).deviation;
    const MeanSpread spread = spread_of_mean(drains, mean, options);
    mean.independent_wh = spread.u_wh;
    mean.degrees_of_freedom = spread.degrees_of_freedom;
    mean.by_own_scatter = spread.own;
    add_gains(drains, mean);
    put_quantities(drains, options, mean);
    return mean;
}

std::vector<RepeatMean> repeat_means(const std::vector<DrainSummary>& drains, const MeasureOptions& options) {
    std::vector<RepeatMean> means;
    for (std::vector<std::size_t>& group : like_load_groups(drains)) means.push_back(mean_of_drains(drains, std::move(group), options));
    const auto seen_and_latest_ms = [&](const RepeatMean& mean) {
        bool seen = false;
        UtcMs latest = 0;
        for (const std::size_t place : mean.drains) {
            seen = seen || !drains[place].found_off;
            latest = std::max(latest, drains[place].start_ms);
        }
        return std::pair(seen, latest);
    };
    std::ranges::stable_sort(means, std::ranges::greater{},
                             [&](const RepeatMean& mean) { return std::pair(mean.count(), seen_and_latest_ms(mean)); });
    return means;
}

double half_width_with_freedom(double rectangular, double rest, double degrees_of_freedom, double coverage) {
    const double widened = rest * coverage_factor(coverage, degrees_of_freedom) / coverage_factor(coverage, unlimited);
    return half_width_of_sum(rectangular, widened, coverage);
}

MeasureOptions with_pooled_repeatability(MeasureOptions options, const std::vector<std::vector<DrainSummary>>& units) {
    if (options.repeatability_source != RepeatabilitySource::usual) return options;
    std::vector<std::vector<double>> relative;
    for (const std::vector<DrainSummary>& drains : units)
        for (const std::vector<std::size_t>& group : like_load_groups(drains)) {
            double mean_wh = 0;
            for (const std::size_t place : group) mean_wh += drains[place].delivered_wh / static_cast<double>(group.size());
            std::vector<double>& values = relative.emplace_back();
            for (const std::size_t place : group) values.push_back(drains[place].delivered_wh / mean_wh);
        }
    const PooledDeviation pooled = pooled_deviation(relative);
    if (pooled.degrees_of_freedom < least_pooled_degrees) return options;
    options.repeatability_percent = 100 * pooled.deviation;
    options.repeatability_degrees = pooled.degrees_of_freedom;
    options.repeatability_source = RepeatabilitySource::pooled;
    return options;
}

MeasureOptions pooled_options(const std::vector<UnitRuns>& units, const MeasureOptions& options) {
    if (options.repeatability_source != RepeatabilitySource::usual) return options;
    std::vector<std::vector<DrainSummary>> drains;
    for (const UnitRuns& runs : units) {
        // Most units are drained but once, and then say nothing of this.
        if (std::ranges::count_if(runs, [](const RunRecord* run) { return is_full_drain(*run); }) < 2) continue;
        std::vector<DrainSummary>& of_unit = drains.emplace_back();
        for (const RunRecord* run : runs)
            if (is_full_drain(*run)) of_unit.push_back(summarise_drain(*run, options));
    }
    return with_pooled_repeatability(options, drains);
}

Message repeats_sentence(const std::vector<RepeatMean>& repeats, const MeasureOptions& options) {
    std::vector<Message> sentences;
    for (const RepeatMean& mean : repeats) {
        if (mean.count() < 2) continue;
        sentences.push_back(say(phrase("unit", "Mean of %1 drains near %2 W: %3; a single one scatters by %4 Wh (%5 %)."), say_number(mean.count()),
                                say_number(mean.mean_load_w, 0), say_quantity(mean.delivered_wh),
                                say_number(mean.scatter_wh, decimals_for(mean.scatter_wh)), say_number(100 * mean.scatter_wh / mean.mean_wh, 1)));
        if (mean.by_own_scatter && mean.count() == 2)
            sentences.push_back(say(phrase("unit", "Two drains say little of how well this unit repeats; a third narrows this most.")));
    }
    if (!sentences.empty() || repeats.empty()) return say_joined(sentences, " ");
    return say(repeats.size() == 1 ? phrase("unit", "The drain stands alone: how well this unit repeats is taken as %1.")
                                   : phrase("unit", "Each drain stands alone at its load: how well this unit repeats is taken as %1."),
               repeatability_words(options));
}

Message repeatability_words(const MeasureOptions& options) {
    switch (options.repeatability_source) {
    case RepeatabilitySource::usual:
        return say(phrase("unit", "%1 % (the usual figure, which nobody has tried on these units)"),
                   say_digits(exact_text(options.repeatability_percent)));
    case RepeatabilitySource::stated:
        return say(phrase("unit", "%1 % (as the tester states)"), say_digits(exact_text(options.repeatability_percent)));
    case RepeatabilitySource::pooled:
        return say_count(options.repeatability_degrees,
                         phrases("unit", "%1 % (from the repeated drains of this logbook, %n degrees of freedom)",
                                 "%1 % (from the repeated drains of this logbook, %n degree of freedom)"),
                         say_number(options.repeatability_percent, 2));
    }
    return {};
}

} // namespace ullage
