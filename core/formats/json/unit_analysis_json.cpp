// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/json/unit_analysis_json.h"

#include "base/language.h"

#include <cmath>
#include <utility>

namespace ullage {

namespace {

Json quantities_json(const UnitAnalysis& analysis) {
    const UnitFit& fit = analysis.fit;
    Json list = Json::array();
    for (const Quantity* quantity : {&fit.no_load_draw_w, &fit.deliverable_at_no_time_cost_wh, &fit.no_load_endurance_h, &fit.curvature_per_w}) {
        Json json{{"key", quantity->key}, {"unit_label", analysis.unit.name}};
        json.update(quantity_json(*quantity));
        list.push_back(std::move(json));
    }
    return list;
}

Json drains_json(const UnitFit& fit) {
    Json list = Json::array();
    for (const DrainSummary& drain : fit.drains) {
        const auto number = [&drain](double value) { return drain.used ? number_json(value) : Json(nullptr); };
        list.push_back({{"run", drain.run_number},
                        {"title", drain.title},
                        {"used", drain.used},
                        {"reason", drain.reason},
                        {"hours", number(drain.hours)},
                        {"delivered_wh", number(drain.delivered_wh)},
                        {"mean_load_w", number(drain.mean_load_w)},
                        {"residual_wh", number_json(drain.residual_wh)}});
    }
    return list;
}

Json repeats_json(const UnitFit& fit) {
    Json list = Json::array();
    for (const RepeatMean& mean : fit.repeats) {
        Json runs = Json::array();
        for (const std::size_t place : mean.drains) runs.push_back(fit.drains[place].run_number);
        list.push_back({{"runs", std::move(runs)},
                        {"mean_load_w", number_json(mean.mean_load_w)},
                        {"delivered_wh", quantity_json(mean.delivered_wh)},
                        {"scatter_wh", mean.count() > 1 ? number_json(mean.scatter_wh) : Json(nullptr)},
                        {"independent_wh", number_json(mean.independent_wh)},
                        {"degrees_of_freedom", std::isfinite(mean.degrees_of_freedom) ? number_json(mean.degrees_of_freedom) : Json(nullptr)},
                        {"by_own_scatter", mean.by_own_scatter}});
    }
    return list;
}

Json repeatability_json(const MeasureOptions& options) {
    constexpr const char* sources[] = {"usual", "stated", "pooled"};
    return {{"percent", number_json(options.repeatability_percent)},
            {"source", sources[static_cast<std::size_t>(options.repeatability_source)]},
            {"degrees_of_freedom", options.repeatability_degrees > 0 ? Json(options.repeatability_degrees) : Json(nullptr)}};
}

Json predictions_json(const std::vector<LoadPrediction>& predictions) {
    Json list = Json::array();
    for (const LoadPrediction& prediction : predictions)
        list.push_back({{"load_w", number_json(prediction.load_w)},
                        {"within_tested_loads", prediction.within_tested_loads},
                        {"deliverable_wh", quantity_json(prediction.deliverable_wh)},
                        {"usable_fraction", quantity_json(prediction.usable_fraction)},
                        {"run_time_h", quantity_json(prediction.run_time_h)}});
    return list;
}

Json next_run_json(const UnitAnalysis& analysis) {
    Json json{{"load_w", nullptr}, {"expected_run_time_h", nullptr}, {"shrink_factor", nullptr}, {"sentence", analysis.next_run_sentence}};
    if (!analysis.next_run) return json;
    json["load_w"] = number_json(analysis.next_run->load_w);
    json["expected_run_time_h"] = number_json(analysis.next_run->expected_run_time_h);
    json["shrink_factor"] = number_json(analysis.next_run->shrink_factor);
    return json;
}

Json drift_json(const Drift& drift) {
    return {{"change_wh_per_day", quantity_json(drift.change_wh_per_day)},
            {"statistic", number_json(drift.statistic)},
            {"p_value", number_json(drift.p_value)},
            {"threshold", Drift::threshold},
            {"significant", drift.significant},
            {"sentence", drift.sentence}};
}

Json ratio_json(const RatioChange& change) {
    return {{"change_percent", quantity_json(change.change_percent)},
            {"statistic", number_json(change.statistic)},
            {"p_value", number_json(change.p_value)},
            {"significant", change.significant}};
}

Json comparison_json(const UnitFit& fit, const DrainComparison& pair) {
    return {{"earlier_run", fit.drains[pair.earlier].run_number},
            {"later_run", fit.drains[pair.later].run_number},
            {"earlier_wh_per_gauge_point", number_json(pair.earlier_wh_per_point)},
            {"later_wh_per_gauge_point", number_json(pair.later_wh_per_point)},
            {"wh_per_gauge_point", ratio_json(pair.wh_per_point)},
            {"energy", ratio_json(pair.energy)},
            {"curve",
             {{"shift_pt", number_json(pair.curve.size_pt)},
              {"half_width_pt", number_json(pair.curve.half_width_pt)},
              {"depth_percent", number_json(pair.curve.depth_percent)},
              {"resolution_pt", number_json(pair.curve.resolution_pt)},
              {"chi_square", number_json(pair.curve.chi_square)},
              {"degrees_of_freedom", number_json(pair.curve.degrees_of_freedom)},
              {"p_value", number_json(pair.curve.p_value)},
              {"adjusted_p_value", number_json(pair.adjusted_p)},
              {"common_depths", pair.curve.common_depths},
              {"moved", pair.curve_moved}}}};
}

Json gauge_drift_json(const UnitAnalysis& analysis) {
    const GaugeDrift& drift = analysis.gauge_drift;
    Json comparisons = Json::array();
    for (const DrainComparison& pair : drift.comparisons) comparisons.push_back(comparison_json(analysis.fit, pair));
    return {{"verdict", std::string(drift_verdict_text(drift.verdict))},
            {"curve_shift_pt", quantity_json(drift.shift_pt)},
            {"lead", drift.lead ? Json(*drift.lead) : Json(nullptr)},
            {"threshold", GaugeDrift::threshold},
            {"comparisons", std::move(comparisons)},
            {"sentence", drift.sentence}};
}

} // namespace

Json unit_analysis_json(const UnitAnalysis& analysis) {
    const SpeakingIn for_machines(english());
    return {{"unit", analysis.unit.name},
            {"sentence", analysis.fit.sentence},
            {"quantities", quantities_json(analysis)},
            {"drains", drains_json(analysis.fit)},
            {"repeats", repeats_json(analysis.fit)},
            {"repeatability", repeatability_json(analysis.fit.options)},
            {"predictions", predictions_json(analysis.predictions)},
            {"next_run", next_run_json(analysis)},
            {"drift", drift_json(analysis.drift)},
            {"gauge_drift", gauge_drift_json(analysis)}};
}

} // namespace ullage
