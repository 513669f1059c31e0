// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/gauge_drift.h"

#include "unit/gauge_drift_words.h"
#include "unit/usual_draw.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

constexpr double ratio_threshold = 0.01;

bool like(const DrainSummary& a, const DrainSummary& b) {
    const auto [low_w, high_w] = std::minmax(a.mean_load_w, b.mean_load_w);
    return high_w <= like_load_ratio * low_w && !are_unlike_temperatures(a, b) &&
           time_share_difference(*a.gauge_curve, *b.gauge_curve) <= like_time_share;
}

std::optional<DrainComparison> compare(const UnitFit& fit, const Unit& unit, std::size_t earlier, std::size_t later) {
    const DrainSummary& a = fit.drains[earlier];
    const DrainSummary& b = fit.drains[later];
    // An interval leaves the truth out once in twenty times; that must convict no gauge.
    const double most_draw_w = std::max(fit.no_load_draw_w.upper.value_or(0), usual_no_load_draw(unit).high);
    const std::optional<CurveShift> shift = compare_curves(*a.gauge_curve, *b.gauge_curve, most_draw_w, fit.options.coverage);
    if (!shift) return std::nullopt;
    DrainComparison pair;
    pair.earlier = earlier;
    pair.later = later;
    pair.earlier_wh_per_point = a.gauge_curve->fall_wh() / a.gauge_curve->fall_pt();
    pair.later_wh_per_point = b.gauge_curve->fall_wh() / b.gauge_curve->fall_pt();
    pair.wh_per_point = wh_per_point_change(a, b, fit, unit, ratio_threshold);
    pair.energy = energy_change(a, b, fit, unit, ratio_threshold);
    pair.curve = *shift;
    return pair;
}

std::vector<DrainComparison> compare_all(const UnitFit& fit, const Unit& unit, const std::vector<std::size_t>& in_time, std::size_t& like_pairs) {
    std::vector<DrainComparison> pairs;
    for (std::size_t k = 1; k < in_time.size(); ++k)
        for (std::size_t j = 0; j < k; ++j) {
            if (!like(fit.drains[in_time[j]], fit.drains[in_time[k]])) continue;
            ++like_pairs;
            if (std::optional<DrainComparison> pair = compare(fit, unit, in_time[j], in_time[k])) {
                pairs.push_back(std::move(*pair));
                break;
            }
        }
    for (DrainComparison& pair : pairs) {
        pair.adjusted_p = std::min(1.0, static_cast<double>(pairs.size()) * pair.curve.p_value);
        pair.curve_moved = pair.adjusted_p < GaugeDrift::threshold && std::abs(pair.curve.size_pt) > pair.curve.resolution_pt;
    }
    return pairs;
}

} // namespace

std::string_view drift_verdict_text(DriftVerdict verdict) {
    switch (verdict) {
    case DriftVerdict::not_known: return "not known";
    case DriftVerdict::nothing_moves: return "nothing moves";
    case DriftVerdict::energy_moves: return "energy moves";
    case DriftVerdict::gauge_drifts: return "gauge drifts";
    case DriftVerdict::both_move: return "both move";
    }
    return {};
}

GaugeDrift test_gauge_drift(const UnitFit& fit, const Unit& unit, const Drift& energy) {
    GaugeDrift drift;
    std::vector<std::size_t> in_time;
    for (std::size_t k = 0; k < fit.drains.size(); ++k)
        if (fit.drains[k].used && fit.drains[k].gauge_curve) in_time.push_back(k);
    std::ranges::stable_sort(in_time, {}, [&fit](std::size_t k) { return fit.drains[k].start_ms; });
    drift.comparisons = compare_all(fit, unit, in_time, drift.like_pairs);
    if (!drift.comparisons.empty()) {
        // One whose curve moved comes first; p alone could put a move below the resolution before it.
        const auto lead = std::ranges::min_element(drift.comparisons, {}, [](const DrainComparison& pair) {
            return std::pair{!pair.curve_moved, pair.curve.p_value};
        });
        drift.lead = static_cast<std::size_t>(lead - drift.comparisons.begin());
        const bool energy_moves = energy.statistic ? energy.significant : lead->energy.significant;
        drift.verdict = lead->curve_moved ? (energy_moves ? DriftVerdict::both_move : DriftVerdict::gauge_drifts)
                                          : (energy_moves ? DriftVerdict::energy_moves : DriftVerdict::nothing_moves);
    }
    put_into_words(fit, energy, in_time.size(), drift);
    return drift;
}

} // namespace ullage
