// SPDX-License-Identifier: GPL-3.0-or-later
// The register step that the readings themselves show.
#include "measure/budget.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace ullage {

namespace {

constexpr double finest_wh = 1e-3;
constexpr double chance_believed = 0.01;
constexpr std::size_t fewest_readings = 3, few_readings = 4;
constexpr double most_by_few_wh = 10;

bool is_multiple(double value, double step) {
    const double steps = value / step;
    return std::abs(steps - std::round(steps)) < 1e-6 * std::max(1.0, std::abs(steps));
}

/// Register values that say something of the step: not 0, and each unlike the one before.
std::vector<double> telling_values(const RunRecord& record) {
    std::vector<double> values;
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn || !reading.values.register_wh || *reading.values.register_wh == 0) continue;
        if (values.empty() || values.back() != *reading.values.register_wh) values.push_back(*reading.values.register_wh);
    }
    return values;
}

/// The finest decimal place shown, at most 1 Wh.
double shown_place_wh(const std::vector<double>& values) {
    double place_wh = 1.0;
    for (const double value : values)
        while (place_wh > finest_wh && !is_multiple(value, place_wh)) place_wh /= 10;
    return place_wh;
}

} // namespace

RegisterStep register_step(const RunRecord& record) {
    RegisterStep step;
    if (record.meter && record.meter->step_wh && *record.meter->step_wh > 0) {
        step.wh = *record.meter->step_wh;
        step.stated = true;
        return step;
    }
    const std::vector<double> values = telling_values(record);
    const double place_wh = shown_place_wh(values);
    step.wh = place_wh;
    if (values.size() < fewest_readings) return step;
    const double lowest_wh = std::abs(*std::ranges::min_element(values, {}, [](double value) { return std::abs(value); }));
    const auto readings = static_cast<double>(values.size());
    for (double decade = place_wh; decade <= lowest_wh * (1 + 1e-9); decade *= 10)
        for (const double digit : {1.0, 2.0, 5.0}) {
            const double candidate_wh = digit * decade;
            if (candidate_wh > lowest_wh * (1 + 1e-9) || candidate_wh <= place_wh) continue;
            if (values.size() < few_readings && candidate_wh > most_by_few_wh) continue;
            if (std::pow(place_wh / candidate_wh, readings) > chance_believed) continue;
            if (!std::ranges::all_of(values, [candidate_wh](double value) { return is_multiple(value, candidate_wh); })) continue;
            step.wh = candidate_wh;
            step.found = true;
        }
    return step;
}

double register_step_wh(const RunRecord& record) { return register_step(record).wh; }

} // namespace ullage
