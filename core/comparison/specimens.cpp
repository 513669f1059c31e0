// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/specimens.h"

#include "numerics/distributions.h"
#include "numerics/pooled_deviation.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <utility>

namespace ullage {
namespace {

/// Whether a row was tested near the load and has a usable fraction from full to cut-off, or moved there.
bool counts(const FairComparison& fair, std::size_t row) {
    const FairRow& at = fair.rows[row];
    if (fair.load && (at.standing == Standing::as_tested || at.far_beyond)) return false;
    if (fair.load && at.usable_fraction.kind == Kind::projected) return true;
    return at.usable_fraction.value && at.usable_fraction.kind == Kind::measured;
}

bool at_like_loads(const Comparison& comparison, const std::vector<std::size_t>& rows) {
    double lowest_w = 0, highest_w = 0;
    for (const std::size_t row : rows) {
        const double load_w = comparison.rows[row].mean_load_w.value.value_or(0);
        lowest_w = lowest_w == 0 ? load_w : std::min(lowest_w, load_w);
        highest_w = std::max(highest_w, load_w);
    }
    return highest_w <= like_loads_ratio * lowest_w;
}

double widest_limit(const Comparison& comparison, const std::vector<std::size_t>& rows) {
    double widest = 0;
    for (const std::size_t row : rows)
        for (const DrainSummary& drain : comparison.fits[comparison.rows[row].fit].drains)
            if (drain.used) widest = std::max(widest, drain.gain_limit_percent.value_or(0) / 100);
    return widest;
}

Quantity within(std::string key, double middle, double half, Message reason) {
    Quantity result = known(std::move(key), "1", middle, half, Kind::projected, std::move(reason));
    result.lower = std::max(0.0, *result.lower);
    return result;
}

void put_figures(const Comparison& comparison, const FairComparison& fair, ModelSample& sample) {
    const Message count = say_number(sample.rows.size());
    std::vector<std::vector<double>> fractions(1);
    double mean = 0;
    for (const std::size_t row : sample.rows) {
        fractions.front().push_back(*fair.rows[row].usable_fraction.value);
        mean += fractions.front().back() / static_cast<double>(sample.rows.size());
    }
    const double coverage = comparison.fits.front().options.coverage;
    const double spread = pooled_deviation(fractions).deviation;
    const auto n = static_cast<double>(sample.rows.size());
    const double t = coverage_factor(coverage, n - 1);
    const double half = half_width_with_freedom(widest_limit(comparison, sample.rows) * mean, spread / std::sqrt(n), n - 1, coverage);
    sample.usable_fraction = known("usable_fraction", "1", mean, half, Kind::measured, say(phrase("comparison", "mean of %1 specimens"), count));
    sample.spread_percent =
        known("spread_percent", "%", 100 * spread / mean, std::nullopt, Kind::measured, say(phrase("comparison", "between %1 specimens"), count));
    sample.next_fraction = within("next_specimen_fraction", mean, t * spread * std::sqrt(1 + 1 / n),
                                  say(phrase("comparison", "if it is made as these %1 specimens were"), count));
    sample.sentence = say(phrase("comparison", "%1: %2 specimens give %3 of their label, spread %4 %; the next one is expected within %5 to %6 %."),
                          sample.model, count, say_quantity(sample.usable_fraction, 3), say_number(100 * spread / mean, 1),
                          say_number(100 * *sample.next_fraction.lower, 0), say_number(100 * *sample.next_fraction.upper, 0));
}

void put_too_few(const FairComparison& fair, ModelSample& sample, const Message& why) {
    sample.usable_fraction = sample.rows.empty() ? not_known("usable_fraction", "1", why) : fair.rows[sample.rows.front()].usable_fraction;
    sample.spread_percent = not_known("spread_percent", "%", why);
    sample.next_fraction = not_known("next_specimen_fraction", "1", why);
    sample.sentence = say(phrase("comparison", "%1: %2."), sample.model, why);
}

} // namespace

std::vector<ModelSample> model_samples(const Comparison& comparison, const FairComparison& fair) {
    std::map<std::pair<std::string, std::string>, ModelSample> models;
    std::set<UnitId> known_units;
    for (std::size_t row = 0; row < comparison.rows.size(); ++row) {
        const Unit& unit = comparison.rows[row].unit;
        if (unit.model.empty() || !known_units.insert(unit.uuid).second) continue;
        ModelSample& sample = models[{unit.maker, unit.model}];
        sample.maker = unit.maker;
        sample.model = unit.model;
        ++sample.specimens;
        if (counts(fair, row)) sample.rows.push_back(row);
    }
    std::vector<ModelSample> samples;
    for (auto& [key, sample] : models) {
        if (sample.specimens == 1) put_too_few(fair, sample, say(phrase("comparison", "one specimen, which says nothing of others")));
        else if (sample.rows.size() < 2) put_too_few(fair, sample, say(phrase("comparison", "fewer than two of its specimens can be compared here")));
        else if (!fair.load && !at_like_loads(comparison, sample.rows))
            put_too_few(fair, sample, say(phrase("comparison", "its specimens were drained at unlike loads: compare them at one load")));
        else put_figures(comparison, fair, sample);
        samples.push_back(std::move(sample));
    }
    return samples;
}

} // namespace ullage
