// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/specimens.h"

#include "base/number.h"
#include "numerics/distributions.h"
#include "numerics/pooled_deviation.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace ullage {
namespace {

/// Why a row does not count; empty where it does.
std::string why_left_out(const FairComparison& fair, std::size_t row) {
    const FairRow& at = fair.rows[row];
    if (fair.load && (at.standing == Standing::as_tested || at.far_beyond)) return "not tested near this load";
    if (!at.usable_fraction.value || at.usable_fraction.kind != Kind::measured) {
        if (at.usable_fraction.kind == Kind::projected && fair.load) return {};
        return "no usable fraction from full to cut-off";
    }
    return {};
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

Quantity within(std::string key, double middle, double half, std::string reason) {
    Quantity result = known(std::move(key), "1", middle, half, Kind::projected, std::move(reason));
    result.lower = std::max(0.0, *result.lower);
    return result;
}

void put_figures(const Comparison& comparison, const FairComparison& fair, ModelSample& sample) {
    const std::string count = std::to_string(sample.rows.size()) + " specimens";
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
    sample.usable_fraction = known("usable_fraction", "1", mean, half, Kind::measured, "mean of " + count);
    sample.spread_percent = known("spread_percent", "%", 100 * spread / mean, std::nullopt, Kind::measured, "between " + count);
    sample.next_fraction = within("next_specimen_fraction", mean, t * spread * std::sqrt(1 + 1 / n), "if it is made as these " + count + " were");
    sample.sentence = sample.model + ": " + count + " give " + quantity_text(sample.usable_fraction, 3) + " of their label, spread " +
                      fixed_text(100 * spread / mean, 1) + " %; the next one is expected within " + fixed_text(100 * *sample.next_fraction.lower, 0) +
                      " to " + fixed_text(100 * *sample.next_fraction.upper, 0) + " %.";
}

void put_too_few(const FairComparison& fair, ModelSample& sample, const std::string& why) {
    sample.usable_fraction = sample.rows.empty() ? not_known("usable_fraction", "1", why) : fair.rows[sample.rows.front()].usable_fraction;
    sample.spread_percent = not_known("spread_percent", "%", why);
    sample.next_fraction = not_known("next_specimen_fraction", "1", why);
    sample.sentence = sample.model + ": " + why + ".";
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
        if (why_left_out(fair, row).empty()) sample.rows.push_back(row);
    }
    std::vector<ModelSample> samples;
    for (auto& [key, sample] : models) {
        if (sample.specimens == 1) put_too_few(fair, sample, "one specimen, which says nothing of others");
        else if (sample.rows.size() < 2) put_too_few(fair, sample, "fewer than two of its specimens can be compared here");
        else if (!fair.load && !at_like_loads(comparison, sample.rows))
            put_too_few(fair, sample, "its specimens were drained at unlike loads: compare them at one load");
        else put_figures(comparison, fair, sample);
        samples.push_back(std::move(sample));
    }
    return samples;
}

} // namespace ullage
