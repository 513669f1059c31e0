// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/comparison_answer.h"

#include "base/number.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

namespace ullage {
namespace {

constexpr std::size_t most_groups = 6, most_names = 8; ///< in a sentence

std::string whole_percent(double fraction) { return fixed_text(100 * fraction, 0); }

/// "75 %", "at least 62 %", "60 to 70 %"; empty where it is not known.
std::string share_words(const Quantity& fraction) {
    if (fraction.kind == Kind::not_known) return {};
    if (fraction.kind == Kind::at_least && (fraction.lower || fraction.value))
        return "at least " + whole_percent(fraction.lower ? *fraction.lower : *fraction.value) + " %";
    if (fraction.kind == Kind::bracket && fraction.lower && fraction.upper)
        return whole_percent(*fraction.lower) + " to " + whole_percent(*fraction.upper) + " %";
    return fraction.value ? whole_percent(*fraction.value) + " %" : std::string();
}

std::string gauge_words(const ComparisonRow& row) {
    const bool faultless = row.gauge_verdict.starts_with("no fault found");
    if (row.worst_gauge_error_pt && faultless)
        return "its gauge stays within " + count_text(std::max(1L, std::lround(std::ceil(*row.worst_gauge_error_pt))), "point", "points");
    if (row.worst_gauge_error_pt) return "its gauge is up to " + count_text(std::lround(*row.worst_gauge_error_pt), "point", "points") + " off";
    return "its gauge: " + row.gauge_verdict;
}

std::string own_load(const ComparisonRow& row) {
    return row.mean_load_w.value ? fixed_text(*row.mean_load_w.value, 0) + " W" : std::string("a load that is not known");
}

std::string unit_sentence(const std::string& name, const ComparisonRow& row, const FairRow& at, const FairComparison& fair) {
    const std::string share = share_words(at.usable_fraction);
    const std::string gauge = "; " + gauge_words(row) + '.';
    if (share.empty()) return "How much of its label " + name + " gives is not known: " + at.usable_fraction.reason + gauge;
    const bool elsewhere = fair.load && at.standing == Standing::as_tested;
    const bool part = at.standing == Standing::as_tested && at.usable_fraction.kind == Kind::projected;
    std::string text = name + (part ? " would give " : " gives ") + share + " of its label at ";
    text += fair.load && !elsewhere ? common_load_text(*fair.load) : own_load(row);
    if (part) text += ", projected from part of a drain";
    if (elsewhere) text += ", the only load that it can be judged at";
    return text + gauge;
}

std::string names_text(const std::vector<std::string>& names) {
    std::string text;
    const std::size_t shown = std::min(names.size(), most_names);
    for (std::size_t i = 0; i < shown; ++i) text += (i == 0 ? "" : i + 1 == names.size() ? " and " : ", ") + names[i];
    if (shown < names.size()) text += " and " + std::to_string(names.size() - shown) + " more";
    return text;
}

/// Names by rank, best first.
std::map<double, std::vector<std::string>> places_of(const std::vector<std::string>& names, const FairComparison& fair,
                                                     const std::vector<Quantity>& ranks) {
    std::map<double, std::vector<std::string>> places;
    for (const std::size_t row : fair_order(fair))
        if (ranks[row].value) places[*ranks[row].value].push_back(names[row]);
    return places;
}

std::string order_sentence(const std::map<double, std::vector<std::string>>& places, const std::string& where) {
    const std::vector<std::string>& best = places.begin()->second;
    if (places.size() == 1) return where + " these meters do not tell " + names_text(best) + " apart: none of them may be called better.";
    std::string text = where + ' ' + names_text(best) + (best.size() == 1 ? " gives" : " give") + " the largest share of the label";
    std::vector<std::string> ties;
    if (best.size() > 1) ties.push_back(names_text(best));
    std::size_t told = 1;
    for (auto place = std::next(places.begin()); place != places.end(); ++place, ++told) {
        if (told >= most_groups) {
            text += ", and so on down the table";
            break;
        }
        text += ", then " + names_text(place->second);
        if (place->second.size() > 1) ties.push_back(names_text(place->second));
    }
    text += '.';
    if (ties.empty()) return text + " These meters tell one from the next.";
    for (const std::string& tie : ties) text += " They do not tell " + tie + " apart.";
    text.replace(text.find(" They do"), 5, " These meters");
    return text;
}

/// Whether a unit stands at a load without being moved beyond what it was tested at.
bool stands_at(const UnitFit& fit, double load_w) {
    if (fit.parameters && load_w >= fit.lowest_load_w && load_w <= fit.highest_load_w) return true;
    return std::ranges::any_of(fit.drains, [load_w](const DrainSummary& drain) {
        return drain.used && drain.delivered_wh > 0 && std::abs(drain.mean_load_w / load_w - 1) <= same_load_share;
    });
}

double rounded_load(double load_w) {
    const double step = std::pow(10.0, std::floor(std::log10(load_w)) - 1);
    return std::round(load_w / step) * step;
}

} // namespace

std::string based_on_text(const Comparison& comparison, const FairComparison& fair, std::size_t row) {
    const FairRow& at = fair.rows[row];
    const UnitFit& fit = comparison.fits[comparison.rows[row].fit];
    if (at.standing == Standing::moved) return count_text(static_cast<long>(fit.used_drains), "drain", "drains together");
    if (at.standing == Standing::as_tested) return comparison.rows[row].run_title;
    if (at.mean && at.mean->count() > 1) return "mean of " + std::to_string(at.mean->count()) + " drains";
    const auto drain = std::ranges::find(fit.drains, at.run_uuid, &DrainSummary::run_uuid);
    return drain == fit.drains.end() ? comparison.rows[row].run_title : drain->title;
}

ComparisonAnswer comparison_answer(const Comparison& comparison, const FairComparison& fair) {
    ComparisonAnswer answer;
    std::set<UnitId> units;
    for (const ComparisonRow& row : comparison.rows) units.insert(row.unit.uuid);
    const auto unlike = unlike_loads(comparison);
    if (units.size() < comparison.rows.size()) {
        answer.order = "Each drain stands for itself.";
        if (!fair.load && unlike)
            answer.order += " They were made at loads from " + fixed_text(unlike->lowest_w, 0) + " W to " + fixed_text(unlike->highest_w, 0) +
                            " W, and a slow drain delivers less.";
        return answer;
    }
    const std::vector<std::string> names = row_names(comparison);
    for (const std::size_t row : fair_order(fair)) {
        if (answer.units.size() == most_answered) break;
        answer.units.push_back(unit_sentence(names[row], comparison.rows[row], fair.rows[row], fair));
    }
    if (units.size() < 2) return answer;
    if (!fair.load && unlike) {
        const std::optional<CommonLoad> meeting = suggested_load(comparison);
        answer.order = "As tested there is no order: the units were drained at loads from " + fixed_text(unlike->lowest_w, 0) + " W to " +
                       fixed_text(unlike->highest_w, 0) + " W, and a slow drain delivers less. Compare them at one load" +
                       (meeting ? ", such as " + common_load_text(*meeting) : std::string()) + ".";
        return answer;
    }
    const auto places = places_of(names, fair, fair_ranks(comparison, fair));
    std::size_t placed = 0;
    for (const auto& [rank, tied] : places) placed += tied.size();
    const std::string where = fair.load ? "At " + common_load_text(*fair.load) : std::string("As tested, at like loads,");
    if (placed < 2) {
        answer.order = where + (placed == 0 ? " no unit can be placed." : " only " + places.begin()->second.front() + " can be placed.");
        return answer;
    }
    answer.has_order = true;
    answer.order = order_sentence(places, where);
    if (placed < names.size())
        answer.order += ' ' + count_text(static_cast<long>(names.size() - placed), "unit has", "units have") + " no place in this order.";
    return answer;
}

std::optional<CommonLoad> suggested_load(const Comparison& comparison) {
    if (!unlike_loads(comparison)) return std::nullopt;
    double logs = 0;
    std::size_t known = 0;
    std::vector<double> loads;
    std::set<std::size_t> fits;
    for (const ComparisonRow& row : comparison.rows) {
        fits.insert(row.fit);
        if (row.mean_load_w.value.value_or(0) <= 0) continue;
        logs += std::log(*row.mean_load_w.value);
        ++known;
    }
    for (const std::size_t fit : fits)
        for (const DrainSummary& drain : comparison.fits[fit].drains)
            if (drain.used && drain.delivered_wh > 0 && drain.mean_load_w > 0) loads.push_back(drain.mean_load_w);
    if (known < 2 || loads.empty()) return std::nullopt;
    std::ranges::sort(loads);
    // Of very many drains some between: each is tried on every unit.
    constexpr std::size_t most_tried = 60;
    std::vector<double> tried;
    for (std::size_t i = 0; i < std::min(loads.size(), most_tried); ++i) {
        const double load_w = loads[loads.size() <= most_tried ? i : i * (loads.size() - 1) / (most_tried - 1)];
        tried.insert(tried.end(), {rounded_load(load_w), load_w});
    }
    const double middle_w = std::exp(logs / static_cast<double>(known));
    struct Candidate {
        std::ptrdiff_t standing = 0;
        bool round = false;
        double nearness = 0, load_w = 0;
        auto operator<=>(const Candidate&) const = default;
    };
    Candidate best;
    for (const double load_w : tried) {
        const auto standing = std::ranges::count_if(fits, [&](std::size_t fit) { return stands_at(comparison.fits[fit], load_w); });
        best = std::max(best, {standing, rounded_load(load_w) == load_w, -std::abs(std::log(load_w / middle_w)), load_w},
                        [](const Candidate& one, const Candidate& other) { return one < other; });
    }
    if (best.standing < 2) return std::nullopt;
    return CommonLoad{best.load_w, 1, {}};
}

} // namespace ullage
