// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/unit_analysis.h"

#include "base/number.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <string_view>
#include <utility>

namespace ullage {
namespace {

constexpr double lowest_load_w = 10;
constexpr std::size_t most_loads = 5;

Message say_about(double hours) {
    if (hours < 1) return say(phrase("unit", "about %1 min"), say_number(hours * 60, 0));
    if (hours >= 96) return say(phrase("unit", "about %1 days"), say_number(hours / 24, 0));
    return say(phrase("unit", "about %1 h"), say_number(hours, hours < 10 ? 1 : 0));
}

} // namespace

std::vector<double> round_loads(const UnitFit& fit, const Unit& unit) {
    const double rated_w = unit.rated_output_w.value_or(0);
    const double highest_w = rated_w > 0 ? rated_w : std::max(200.0, 2 * fit.highest_load_w);
    std::vector<double> all;
    for (double decade_w = lowest_load_w; decade_w <= highest_w; decade_w *= 10)
        for (const double step : {1.0, 2.0, 5.0})
            if (step * decade_w <= highest_w) all.push_back(step * decade_w);
    if (all.size() <= most_loads) return all;
    std::vector<double> loads;
    for (std::size_t i = 0; i < most_loads; ++i) loads.push_back(all[(i * (all.size() - 1) + (most_loads - 1) / 2) / (most_loads - 1)]);
    return loads;
}

Message next_run_sentence(const UnitFit& fit, const std::optional<NextRun>& next_run) {
    if (fit.used_drains == 0) return say(phrase("unit", "A drain from full to cut-off at any load would be the first to tell."));
    if (!next_run) return say(phrase("unit", "No single further drain would narrow this by much."));
    return say(phrase("unit", "A drain near %1 W (%2) would narrow this most, by a factor of %3."), say_number(next_run->load_w, 0),
               say_about(next_run->expected_run_time_h), say_number(next_run->shrink_factor, 1));
}

UnitAnalysis analyse_unit(const Unit& unit, UnitFit fit) {
    UnitAnalysis analysis;
    analysis.unit = unit;
    analysis.predictions = predict_curve(fit, unit, round_loads(fit, unit));
    analysis.next_run = propose_next_run(fit, unit);
    analysis.next_run_sentence = next_run_sentence(fit, analysis.next_run);
    analysis.drift = test_drift(fit, unit);
    analysis.gauge_drift = test_gauge_drift(fit, unit, analysis.drift);
    analysis.fit = std::move(fit);
    return analysis;
}

std::vector<UnitAnalysis> analyse_units(const std::vector<RunRecord>& records, const MeasureOptions& options) {
    std::vector<std::vector<const RunRecord*>> by_unit;
    std::map<UnitId, std::size_t> place_of_unit;
    for (const RunRecord& record : records) {
        const auto [place, is_new] = place_of_unit.emplace(record.unit.uuid, by_unit.size());
        if (is_new) by_unit.emplace_back();
        by_unit[place->second].push_back(&record);
    }
    std::vector<UnitAnalysis> analyses;
    for (const std::vector<const RunRecord*>& runs : by_unit) {
        std::vector<EnergyAnalysis> energies;
        for (const RunRecord* run : runs) energies.push_back(analyse_energy(*run, options));
        analyses.push_back(analyse_unit(runs.front()->unit, fit_unit(runs, energies, options)));
    }
    return analyses;
}

} // namespace ullage
