// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/inside/compared_energy.h"

#include "unit/repeats.h"

#include <algorithm>
#include <numeric>
#include <optional>
#include <set>
#include <utility>

namespace ullage {

namespace {

/// Why a row has no rank; empty where it has one.
Message why_unranked(const FairComparison& fair, const FairRow& row) {
    if (fair.load && row.standing == Standing::as_tested) return say(phrase("comparison", "it was tested at another load and cannot be converted"));
    if (row.far_beyond) return say(phrase("comparison", "its drains were at loads too far from this one"));
    const Quantity& fraction = row.usable_fraction;
    if (!fraction.value || !fraction.lower || (fraction.kind != Kind::measured && fraction.kind != Kind::projected))
        return say(phrase("comparison", "its usable fraction has no interval to rank it by"));
    return {};
}

/// The usable fractions that have a rank, as compare_pair holds them against each other.
class Ranked {
public:
    Ranked(const Comparison& comparison, const FairComparison& fair, const std::vector<std::size_t>& order) {
        Message why;
        for (const std::size_t row : order) {
            const ComparisonRow& compared = comparison.rows[row];
            Side side{compared_energy_of(comparison, fair, row, why), 0, 0, 0};
            if (side.compared_energy) {
                side.per_wh = 1 / *compared.unit.rated_energy_wh;
                side.fraction = side.compared_energy->energy_wh * side.per_wh;
                side.coverage = comparison.fits[compared.fit].options.coverage;
            }
            sides_.push_back(std::move(side));
        }
    }

    [[nodiscard]] bool resolved(std::size_t one, std::size_t other) {
        const Side &x = sides_[one], &y = sides_[other];
        if (!x.compared_energy || !y.compared_energy) return false;
        if (!beyond_ || beyond_->coverage() != x.coverage) beyond_.emplace(x.coverage);
        return is_beyond_half_width(x.fraction - y.fraction, *x.compared_energy, x.per_wh, *y.compared_energy, y.per_wh, *beyond_);
    }

private:
    struct Side {
        std::optional<ComparedEnergy> compared_energy;
        double per_wh = 0, fraction = 0, coverage = 0; ///< 1 / rated energy; usable fraction; coverage of its interval
    };
    std::vector<Side> sides_;
    std::optional<BeyondHalfWidth> beyond_; ///< there are as many pairs as rows squared
};

bool has_unit_twice(const Comparison& comparison) {
    std::set<UnitId> units;
    return std::ranges::any_of(comparison.rows, [&units](const ComparisonRow& row) { return !units.insert(row.unit.uuid).second; });
}

} // namespace

std::vector<std::size_t> fair_order(const FairComparison& fair) {
    std::vector<std::size_t> order(fair.rows.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&fair](std::size_t row) {
        const bool apart = fair.load && fair.rows[row].standing == Standing::as_tested;
        return std::pair(apart, -fair.rows[row].usable_fraction.value.value_or(-1));
    });
    return order;
}

std::optional<LoadRange> unlike_loads(const Comparison& comparison) {
    LoadRange range;
    for (const ComparisonRow& row : comparison.rows) {
        const double load_w = row.mean_load_w.value.value_or(0);
        if (load_w <= 0) continue;
        range.lowest_w = range.lowest_w == 0 ? load_w : std::min(range.lowest_w, load_w);
        range.highest_w = std::max(range.highest_w, load_w);
    }
    if (range.highest_w <= like_loads_ratio * range.lowest_w) return std::nullopt;
    return range;
}

void put_ranks(const Comparison& comparison, FairComparison& fair) {
    std::vector<Quantity> ranks = fair_ranks(comparison, fair);
    for (std::size_t row = 0; row < ranks.size(); ++row) fair.rows[row].rank = std::move(ranks[row]);
}

void keep_ranked_units(Comparison& comparison, FairComparison& fair, const std::function<bool(const Unit&)>& wanted) {
    const std::vector<Quantity> ranks = fair_ranks(comparison, fair);
    std::vector<Quantity> kept;
    for (std::size_t row = 0; row < ranks.size(); ++row)
        if (wanted(comparison.rows[row].unit)) kept.push_back(ranks[row]);
    keep_units(comparison, wanted);
    fair = compare_at(comparison, fair.load);
    for (std::size_t row = 0; row < kept.size(); ++row) fair.rows[row].rank = std::move(kept[row]);
}

std::vector<Quantity> fair_ranks(const Comparison& comparison, const FairComparison& fair) {
    const bool drains = has_unit_twice(comparison);
    const bool unlike = !fair.load && unlike_loads(comparison);
    std::vector<Quantity> ranks;
    std::vector<std::size_t> order;
    for (const FairRow& row : fair.rows) {
        if (row.rank) {
            ranks.push_back(*row.rank);
            continue;
        }
        Message why = drains   ? say(phrase("comparison", "ranks are those of units, not of single drains"))
                      : unlike ? say(phrase("comparison", "the units were drained at unlike loads: compare them at one load"))
                               : why_unranked(fair, row);
        if (why.empty()) order.push_back(ranks.size());
        ranks.push_back(not_known("rank", "1", std::move(why)));
    }
    const auto fraction = [&fair](std::size_t row) { return *fair.rows[row].usable_fraction.value; };
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) { return fraction(a) > fraction(b); });
    Ranked ranked(comparison, fair, order);
    for (std::size_t first = 0; first < order.size();) {
        // A group ends where no unit up to there is unresolved from a later one.
        std::size_t last = first;
        for (std::size_t one = first; one <= last; ++one)
            for (std::size_t other = order.size() - 1; other > last; --other)
                if (!ranked.resolved(one, other)) last = other;
        const std::size_t alike = last - first + 1;
        for (std::size_t place = first; place <= last; ++place)
            ranks[order[place]] =
                known("rank", "1", static_cast<double>(first + 1), std::nullopt, Kind::measured,
                      alike > 1 ? say(phrase("comparison", "shared by %1 units that these meters do not tell apart"), say_number(alike))
                                : say(phrase("comparison", "told apart from every other unit that has a rank")));
        first = last + 1;
    }
    return ranks;
}

} // namespace ullage
