// SPDX-License-Identifier: GPL-3.0-or-later
// Differences between units: x = f1(D1) − f2(D2), each f proportional to the energy D or, for a price, to 1/D.
#include "base/number.h"
#include "comparison/inside/compared_energy.h"

#include <cmath>
#include <numeric>
#include <utility>

namespace ullage {
namespace {

/// A figure as a function of the deliverable energy: its value and its slope there.
struct Figure {
    double value = 0, slope = 0;
};

std::optional<Figure> figure_of(const Unit& unit, double energy_wh, PairFigure figure, Message& why) {
    switch (figure) {
    case PairFigure::deliverable_wh: return Figure{energy_wh, 1};
    case PairFigure::usable_fraction:
        if (unit.rated_energy_wh.value_or(0) > 0) return Figure{energy_wh / *unit.rated_energy_wh, 1 / *unit.rated_energy_wh};
        why = say(phrase("comparison", "the rated energy of %1 is not stated"), unit.name);
        return std::nullopt;
    case PairFigure::wh_per_kg:
        if (unit.mass_kg.value_or(0) > 0) return Figure{energy_wh / *unit.mass_kg, 1 / *unit.mass_kg};
        why = say(phrase("comparison", "the mass of %1 is not stated"), unit.name);
        return std::nullopt;
    case PairFigure::price_per_delivered_kwh:
        if (unit.price.value_or(0) > 0 && energy_wh > 0) return Figure{1000 * *unit.price / energy_wh, -1000 * *unit.price / (energy_wh * energy_wh)};
        why = say(phrase("comparison", "the price of %1 is not stated"), unit.name);
        return std::nullopt;
    }
    return std::nullopt;
}

std::string unit_of(PairFigure figure, const Unit& unit) {
    switch (figure) {
    case PairFigure::usable_fraction: return "1";
    case PairFigure::deliverable_wh: return "Wh";
    case PairFigure::wh_per_kg: return "Wh/kg";
    case PairFigure::price_per_delivered_kwh: return (unit.currency.empty() ? std::string("price") : unit.currency) + "/kWh";
    }
    return "1";
}

PairVerdict unresolved(PairVerdict verdict, const std::string& unit, const Message& why) {
    verdict.difference = not_known("difference", unit, why);
    verdict.sentence = say(phrase("comparison", "not comparable: %1"), why);
    return verdict;
}

Phrase words_of_difference(bool resolved, bool shared_meter) {
    if (resolved && shared_meter)
        return phrase("comparison", "clearly different: %1 − %2 = %3, the error of the shared meter's gain cancels as far as both are alike");
    if (resolved) return phrase("comparison", "clearly different: %1 − %2 = %3");
    if (shared_meter)
        return phrase("comparison",
                      "too close to call with these meters: %1 − %2 = %3, the error of the shared meter's gain cancels as far as both are alike");
    return phrase("comparison", "too close to call with these meters: %1 − %2 = %3");
}

/// A row that is compared with several others: its energy is taken apart but once.
class Side {
public:
    Side(const Comparison& comparison, const FairComparison& fair, std::size_t row)
        : compared_energy_(compared_energy_of(comparison, fair, row, why_)) {}

    /// Null where it has no interval; `why` then says so.
    [[nodiscard]] const ComparedEnergy* compared_energy(Message& why) const {
        if (!compared_energy_) why = why_;
        return compared_energy_ ? &*compared_energy_ : nullptr;
    }

private:
    Message why_; // before what writes to it
    std::optional<ComparedEnergy> compared_energy_;
};

PairVerdict compare_sides(const Comparison& comparison, const FairComparison& fair, std::size_t first, const Side& one_side, std::size_t second,
                          const Side& other_side, PairFigure figure) {
    PairVerdict verdict;
    verdict.first = first;
    verdict.second = second;
    const Unit &one = comparison.rows[first].unit, &other = comparison.rows[second].unit;
    const std::string unit = unit_of(figure, one);
    if (one.uuid == other.uuid) return unresolved(std::move(verdict), unit, say(phrase("comparison", "both rows are of one unit")));
    if (unit != unit_of(figure, other))
        return unresolved(std::move(verdict), unit, say(phrase("comparison", "the prices are in different currencies")));
    if (fair.load)
        for (const std::size_t row : {first, second}) {
            if (fair.rows[row].standing == Standing::as_tested)
                return unresolved(std::move(verdict), unit,
                                  say(phrase("comparison", "%1 was tested at another load and cannot be converted"), comparison.rows[row].unit.name));
            if (fair.rows[row].far_beyond)
                return unresolved(std::move(verdict), unit,
                                  say(phrase("comparison", "%1 was drained at loads too far from this one"), comparison.rows[row].unit.name));
        }
    Message why;
    const ComparedEnergy* x = one_side.compared_energy(why);
    if (!x) return unresolved(std::move(verdict), unit, why);
    const ComparedEnergy* y = other_side.compared_energy(why);
    if (!y) return unresolved(std::move(verdict), unit, why);
    const auto f = figure_of(one, x->energy_wh, figure, why);
    if (!f) return unresolved(std::move(verdict), unit, why);
    const auto g = figure_of(other, y->energy_wh, figure, why);
    if (!g) return unresolved(std::move(verdict), unit, why);

    const double difference = f->value - g->value;
    const double half = difference_half_width(*x, f->slope, *y, g->slope, comparison.fits[comparison.rows[first].fit].options.coverage);
    const bool projected = fair.rows[first].deliverable_wh.kind == Kind::projected || fair.rows[second].deliverable_wh.kind == Kind::projected;
    verdict.difference = known("difference", unit, difference, half, projected ? Kind::projected : Kind::measured);
    verdict.shared_meter = share_a_meter(*x, *y);
    verdict.resolved = std::abs(difference) > half;
    verdict.sentence = say(words_of_difference(verdict.resolved, verdict.shared_meter), one.name, other.name, say_quantity(verdict.difference, 3));
    return verdict;
}

} // namespace

std::string_view pair_verdict_text(const PairVerdict& pair) {
    if (pair.difference.kind == Kind::not_known) return "not comparable";
    return pair.resolved ? "clearly different" : "too close to call";
}

Message say_pair_verdict(const PairVerdict& pair) {
    if (pair.difference.kind == Kind::not_known) return say(phrase("comparison", "not comparable"));
    return say(pair.resolved ? phrase("comparison", "clearly different") : phrase("comparison", "too close to call"));
}

std::string_view pair_figure_key(PairFigure figure) {
    switch (figure) {
    case PairFigure::usable_fraction: return "usable_fraction";
    case PairFigure::deliverable_wh: return "deliverable_wh";
    case PairFigure::wh_per_kg: return "wh_per_kg";
    case PairFigure::price_per_delivered_kwh: return "price_per_delivered_kwh";
    }
    return "usable_fraction";
}

PairVerdict compare_pair(const Comparison& comparison, const FairComparison& fair, std::size_t first, std::size_t second, PairFigure figure) {
    return compare_sides(comparison, fair, first, Side(comparison, fair, first), second, Side(comparison, fair, second), figure);
}

std::vector<PairVerdict> compare_pairs(const Comparison& comparison, const FairComparison& fair, const std::vector<std::size_t>& rows,
                                       PairFigure figure) {
    std::vector<Side> sides;
    for (const std::size_t row : rows) sides.emplace_back(comparison, fair, row);
    std::vector<PairVerdict> pairs;
    for (std::size_t first = 0; first < rows.size(); ++first)
        for (std::size_t second = first + 1; second < rows.size(); ++second)
            pairs.push_back(compare_sides(comparison, fair, rows[first], sides[first], rows[second], sides[second], figure));
    return pairs;
}

std::vector<PairVerdict> compare_pairs(const Comparison& comparison, const FairComparison& fair, PairFigure figure) {
    std::vector<std::size_t> rows(comparison.rows.size());
    std::iota(rows.begin(), rows.end(), std::size_t{0});
    return compare_pairs(comparison, fair, rows, figure);
}

} // namespace ullage
