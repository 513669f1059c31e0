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

Message whole_percent(double fraction) { return say_number(100 * fraction, 0); }

/// "75 %", "at least 62 %", "60 to 70 %"; empty where it is not known.
Message share_words(const Quantity& fraction) {
    if (fraction.kind == Kind::not_known) return {};
    if (fraction.kind == Kind::at_least && (fraction.lower || fraction.value))
        return say(phrase("comparison", "at least %1 %"), whole_percent(fraction.lower ? *fraction.lower : *fraction.value));
    if (fraction.kind == Kind::bracket && fraction.lower && fraction.upper)
        return say(phrase("comparison", "%1 to %2 %"), whole_percent(*fraction.lower), whole_percent(*fraction.upper));
    return fraction.value ? say_measure(100 * *fraction.value, 0, "%") : Message();
}

Message gauge_clause(const ComparisonRow& row) {
    if (!row.worst_gauge_error_pt) return say(phrase("comparison", "its gauge: %1"), row.gauge_verdict);
    if (row.gauge_verdict.english().starts_with("no fault found"))
        return say_count(std::max(1L, std::lround(std::ceil(*row.worst_gauge_error_pt))),
                         phrases("comparison", "its gauge stays within %n points", "its gauge stays within %n point"));
    return say_count(std::lround(*row.worst_gauge_error_pt),
                     phrases("comparison", "its gauge is up to %n points off", "its gauge is up to %n point off"));
}

/// What a unit gives at a stated load: of its label, at what, and what its gauge does.
Phrase words_at_load(bool part, bool elsewhere) {
    if (part && elsewhere)
        return phrase("comparison",
                      "%1 would give %2 of its label at %3, projected from part of a drain, the only load that it can be judged at; %4.");
    if (part) return phrase("comparison", "%1 would give %2 of its label at %3, projected from part of a drain; %4.");
    if (elsewhere) return phrase("comparison", "%1 gives %2 of its label at %3, the only load that it can be judged at; %4.");
    return phrase("comparison", "%1 gives %2 of its label at %3; %4.");
}

/// The same at a load that nobody knows.
Phrase words_at_unknown_load(bool part, bool elsewhere) {
    if (part && elsewhere)
        return phrase("comparison",
                      "%1 would give %2 of its label at a load that is not known, projected from part of a drain, the only load that it "
                      "can be judged at; %3.");
    if (part) return phrase("comparison", "%1 would give %2 of its label at a load that is not known, projected from part of a drain; %3.");
    if (elsewhere) return phrase("comparison", "%1 gives %2 of its label at a load that is not known, the only load that it can be judged at; %3.");
    return phrase("comparison", "%1 gives %2 of its label at a load that is not known; %3.");
}

Message unit_sentence(const Message& name, const ComparisonRow& row, const FairRow& at, const FairComparison& fair) {
    const Message share = share_words(at.usable_fraction), gauge = gauge_clause(row);
    if (share.empty())
        return say(phrase("comparison", "How much of its label %1 gives is not known: %2; %3."), name, at.usable_fraction.reason, gauge);
    const bool elsewhere = fair.load && at.standing == Standing::as_tested;
    const bool part = at.standing == Standing::as_tested && at.usable_fraction.kind == Kind::projected;
    if (fair.load && !elsewhere) return say(words_at_load(part, elsewhere), name, share, say_common_load(*fair.load), gauge);
    if (!row.mean_load_w.value) return say(words_at_unknown_load(part, elsewhere), name, share, gauge);
    return say(words_at_load(part, elsewhere), name, share, say_measure(*row.mean_load_w.value, 0, "W"), gauge);
}

Message say_names(const std::vector<Message>& names) {
    if (names.size() <= most_names) return say_list(names);
    const std::vector<Message> shown(names.begin(), names.begin() + most_names);
    return say_count(names.size() - most_names, phrases("comparison", "%1 and %n more", "%1 and %n more"), say_joined(shown, ", "));
}

/// Names by rank, best first.
std::map<double, std::vector<Message>> places_of(const std::vector<Message>& names, const FairComparison& fair, const std::vector<Quantity>& ranks) {
    std::map<double, std::vector<Message>> places;
    for (const std::size_t row : fair_order(fair))
        if (ranks[row].value) places[*ranks[row].value].push_back(names[row]);
    return places;
}

/// The best, and where they are: the beginning of the order.
Message best_clause(const std::vector<Message>& best, const std::optional<CommonLoad>& load) {
    if (load)
        return say_count(best.size(),
                         phrases("comparison", "At %1 %2 give the largest share of the label", "At %1 %2 gives the largest share of the label"),
                         say_common_load(*load), say_names(best));
    return say_count(best.size(),
                     phrases("comparison", "As tested, at like loads, %1 give the largest share of the label",
                             "As tested, at like loads, %1 gives the largest share of the label"),
                     say_names(best));
}

Message no_order_sentence(const std::vector<Message>& alike, const std::optional<CommonLoad>& load) {
    if (load)
        return say(phrase("comparison", "At %1 these meters do not tell %2 apart: none of them may be called better."), say_common_load(*load),
                   say_names(alike));
    return say(phrase("comparison", "As tested, at like loads, these meters do not tell %1 apart: none of them may be called better."),
               say_names(alike));
}

Message order_sentence(const std::map<double, std::vector<Message>>& places, const std::optional<CommonLoad>& load) {
    const std::vector<Message>& best = places.begin()->second;
    if (places.size() == 1) return no_order_sentence(best, load);
    Message order = best_clause(best, load);
    std::vector<Message> ties;
    if (best.size() > 1) ties.push_back(say_names(best));
    std::size_t told = 1;
    for (auto place = std::next(places.begin()); place != places.end() && told < most_groups; ++place, ++told) {
        order = say(phrase("comparison", "%1, then %2"), order, say_names(place->second));
        if (place->second.size() > 1) ties.push_back(say_names(place->second));
    }
    std::vector<Message> sentences{told < places.size() ? say(phrase("comparison", "%1, and so on down the table."), order)
                                                        : say(phrase("comparison", "%1."), order)};
    if (ties.empty()) sentences.push_back(say(phrase("comparison", "These meters tell one from the next.")));
    for (const Message& tie : ties)
        sentences.push_back(say(sentences.size() == 1 ? phrase("comparison", "These meters do not tell %1 apart.")
                                                      : phrase("comparison", "They do not tell %1 apart."),
                                tie));
    return say_joined(sentences, " ");
}

/// Where so few units have a place that there is no order.
Message placeless_sentence(const std::map<double, std::vector<Message>>& places, const std::optional<CommonLoad>& load) {
    if (places.empty())
        return load ? say(phrase("comparison", "At %1 no unit can be placed."), say_common_load(*load))
                    : say(phrase("comparison", "As tested, at like loads, no unit can be placed."));
    const Message& only = places.begin()->second.front();
    return load ? say(phrase("comparison", "At %1 only %2 can be placed."), say_common_load(*load), only)
                : say(phrase("comparison", "As tested, at like loads, only %1 can be placed."), only);
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

Message based_on_text(const Comparison& comparison, const FairComparison& fair, std::size_t row) {
    const FairRow& at = fair.rows[row];
    const UnitFit& fit = comparison.fits[comparison.rows[row].fit];
    if (at.standing == Standing::moved) return say_count(fit.used_drains, phrases("comparison", "%n drains together", "%n drain"));
    if (at.standing == Standing::as_tested) return comparison.rows[row].run_title;
    if (at.mean && at.mean->count() > 1) return say(phrase("comparison", "mean of %1 drains"), say_number(at.mean->count()));
    const auto drain = std::ranges::find(fit.drains, at.run_uuid, &DrainSummary::run_uuid);
    return drain == fit.drains.end() ? comparison.rows[row].run_title : drain->title;
}

ComparisonAnswer comparison_answer(const Comparison& comparison, const FairComparison& fair) {
    ComparisonAnswer answer;
    std::set<UnitId> units;
    for (const ComparisonRow& row : comparison.rows) units.insert(row.unit.uuid);
    const auto unlike = unlike_loads(comparison);
    if (units.size() < comparison.rows.size()) {
        Message order = say(phrase("comparison", "Each drain stands for itself."));
        if (!fair.load && unlike)
            order += " " + say(phrase("comparison", "They were made at loads from %1 W to %2 W, and a slow drain delivers less."),
                               say_number(unlike->lowest_w, 0), say_number(unlike->highest_w, 0));
        answer.order = order;
        return answer;
    }
    const std::vector<Message> names = row_names(comparison);
    for (const std::size_t row : fair_order(fair)) {
        if (answer.units.size() == most_answered) break;
        answer.units.push_back(unit_sentence(names[row], comparison.rows[row], fair.rows[row], fair));
    }
    if (units.size() < 2) return answer;
    if (!fair.load && unlike) {
        const std::optional<CommonLoad> meeting = suggested_load(comparison);
        answer.order = say(phrase("comparison", "As tested there is no order: the units were drained at loads from %1 W to %2 W, and a slow drain "
                                                "delivers less."),
                           say_number(unlike->lowest_w, 0), say_number(unlike->highest_w, 0)) +
                       " " +
                       (meeting ? say(phrase("comparison", "Compare them at one load, such as %1."), say_common_load(*meeting))
                                : say(phrase("comparison", "Compare them at one load.")));
        return answer;
    }
    const auto places = places_of(names, fair, fair_ranks(comparison, fair));
    std::size_t placed = 0;
    for (const auto& [rank, tied] : places) placed += tied.size();
    if (placed < 2) {
        answer.order = placeless_sentence(places, fair.load);
        return answer;
    }
    answer.has_order = true;
    Message order = order_sentence(places, fair.load);
    if (placed < names.size())
        order += " " + say_count(names.size() - placed,
                                 phrases("comparison", "%n units have no place in this order.", "%n unit has no place in this order."));
    answer.order = order;
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
