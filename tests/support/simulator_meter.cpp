// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/simulator_meter.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <string>
#include <utility>
#include <vector>

namespace ullage::test {

SimulatedMeter::SimulatedMeter(const MeterSetup& setup, double delivered_wh, Random& random) : setup_(setup), origin_delivered_wh_(delivered_wh) {
    const double limit_percent = setup.meter.limit_percent.value_or(0);
    gain_error_percent_ = setup.gain_error_percent ? *setup.gain_error_percent : random.uniform(-limit_percent, limit_percent);
    const double step_wh = setup.meter.step_wh.value_or(0);
    const double within_step = setup.zeroed_at_start ? 0.0 : random.uniform(0, 1);
    // A register that shows `start_wh` stands anywhere in the step that is shown so.
    const double edge_wh = setup.steps == Steps::rounded && !setup.zeroed_at_start ? -0.5 * step_wh : 0.0;
    origin_wh_ = setup.start_wh + edge_wh + within_step * step_wh;
    if (origin_wh_ < 0) origin_wh_ = 0;
}

double SimulatedMeter::register_wh(double delivered_wh) const {
    double exact_wh = origin_wh_ + (delivered_wh - origin_delivered_wh_) * (1 + gain_error_percent_ / 100) / setup_.meter.correction;
    const double step_wh = setup_.meter.step_wh.value_or(0);
    double shown_wh = step_wh > 0 ? in_steps(exact_wh, step_wh, setup_.steps) : exact_wh;
    if (setup_.meter.span_wh) shown_wh = std::fmod(shown_wh, *setup_.meter.span_wh);
    return shown_wh;
}

double SimulatedMeter::power_w(double load_w) const {
    return in_steps(load_w * (1 + gain_error_percent_ / 100) / setup_.meter.correction, setup_.power_step_w, Steps::rounded);
}

void SimulatedMeter::zero(double delivered_wh) {
    origin_wh_ = 0;
    origin_delivered_wh_ = delivered_wh;
}

double mistyped(double value_wh, double least_wh, Random& random) {
    const double whole = std::floor(value_wh);
    const double fraction = value_wh - whole;
    const std::string digits = std::to_string(static_cast<long long>(whole));
    std::vector<double> slips;
    const auto offer = [&](const std::string& text) {
        if (text.empty()) return;
        const double slip = std::stod(text) + fraction;
        if (std::abs(slip - value_wh) >= least_wh) slips.push_back(slip);
    };
    for (std::size_t i = 0; i < digits.size(); ++i) {
        std::string left_out = digits;
        left_out.erase(i, 1);
        offer(left_out);
        std::string twice = digits;
        twice.insert(i, 1, digits[i]);
        offer(twice);
        if (i + 1 == digits.size()) continue;
        std::string changed_over = digits;
        std::swap(changed_over[i], changed_over[i + 1]);
        offer(changed_over);
    }
    // Few digits leave no slip that is large enough; then a stray digit stands before the number.
    if (slips.empty()) return value_wh + std::pow(10.0, std::ceil(std::log10(std::max(least_wh, value_wh) + 1)));
    return slips[random.index(slips.size())];
}

} // namespace ullage::test
