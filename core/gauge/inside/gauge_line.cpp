// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/inside/gauge_line.h"

#include "numerics/distributions.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace ullage {
namespace {

constexpr double straight_from_p = 0.01;
constexpr std::size_t most_line_points = 10'000; ///< a gauge has some hundred steps: more hold nothing new

Message too_few_readings(std::size_t count) {
    constexpr Phrase words[] = {phrase("gauge", "a line is tested from four readings of gauge and register on, here there are none"),
                                phrase("gauge", "a line is tested from four readings of gauge and register on, here there is one"),
                                phrase("gauge", "a line is tested from four readings of gauge and register on, here there are two"),
                                phrase("gauge", "a line is tested from four readings of gauge and register on, here there are three")};
    return say(words[std::min(count, std::size(words) - 1)]);
}

Message line_sentence(const GaugeLine& line) {
    const double dof = static_cast<double>(line.fit.degrees_of_freedom);
    const Message test = say(phrase("gauge", "χ² %1 for %2 degrees of freedom, p %3"), say_number(line.fit.residual_sum, 1), say_number(dof, 0),
                             line.p_value < 0.001 ? say_digits("< 0.001") : say_number(line.p_value, 3));
    if (line.straight) return say(phrase("gauge", "A linear gauge explains these readings (%1)."), test);
    return say(phrase("gauge", "No linear gauge explains these readings (%1); a varying load with a no-load draw bends the line too."), test);
}

} // namespace

Result<GaugeLine> fit_gauge_line(const RunRecord& record, const EnergyAnalysis& energy) {
    const double rated_wh = record.unit.rated_energy_wh.value_or(0);
    if (rated_wh <= 0) return Error{Failure::refused, say(phrase("gauge", "the rated energy of the unit is not stated")), {}, {}};
    if (energy.points.size() < 4) return Error{Failure::refused, too_few_readings(energy.points.size()), {}, {}};
    const double first = energy.points.front().gauge_percent;
    const double fall_pt = first - energy.points.back().gauge_percent;
    if (fall_pt < 5 * record.unit.gauge_step_percent)
        return Error{Failure::refused, say(phrase("gauge", "the gauge fell by less than five of its steps")), {}, {}};

    GaugeLine line;
    line.u_gauge_wh = rated_wh * record.unit.gauge_step_percent / (100 * std::sqrt(12.0));
    const double step_wh = energy.register_step_wh;
    std::vector<double> implied, delivered, sigma_implied, sigma_delivered;
    const std::size_t count = std::min(energy.points.size(), most_line_points);
    for (std::size_t k = 0; k < count; ++k) {
        const PairedPoint& point = energy.points[k * (energy.points.size() - 1) / (count - 1)];
        implied.push_back(rated_wh * (first - point.gauge_percent) / 100);
        delivered.push_back(point.delivered_wh);
        sigma_implied.push_back(line.u_gauge_wh);
        sigma_delivered.push_back(std::hypot(point.u_pairing_wh, step_wh / std::sqrt(12.0)));
    }
    Result<LineFit> fit = fit_line_errors_in_both(implied, delivered, sigma_implied, sigma_delivered);
    if (!fit) return fit.error();
    line.fit = fit.value();
    line.p_value = chi_square_tail(line.fit.residual_sum, static_cast<double>(std::max<std::size_t>(1, line.fit.degrees_of_freedom)));
    line.straight = line.p_value >= straight_from_p;
    line.sentence = line_sentence(line);
    return line;
}

} // namespace ullage
