// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/unit_analysis_json.h"

#include <utility>

namespace ullage {

namespace {

Json quantities_json(const UnitAnalysis& analysis) {
    const UnitFit& fit = analysis.fit;
    Json list = Json::array();
    for (const Quantity* quantity :
         {&fit.no_load_draw_w, &fit.deliverable_at_no_time_cost_wh, &fit.no_load_endurance_h, &fit.curvature_per_w}) {
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

} // namespace

Json unit_analysis_json(const UnitAnalysis& analysis) {
    return {{"unit", analysis.unit.name},
            {"sentence", analysis.fit.sentence},
            {"quantities", quantities_json(analysis)},
            {"drains", drains_json(analysis.fit)},
            {"predictions", predictions_json(analysis.predictions)},
            {"next_run", next_run_json(analysis)},
            {"drift", drift_json(analysis.drift)}};
}

} // namespace ullage
