// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/feasibility.h"

#include "gauge/drain_series.h"
#include "gauge/evidence.h"
#include "gauge/loss_fit.h"
#include "gauge/share_bounds.h"
#include "model/meter_gain.h"
#include "numerics/linear_program.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace ullage {
namespace {

constexpr std::size_t most_programme_points = 2000;
constexpr std::size_t least_programme_points = 2;
constexpr double negligible_pt = 1e-6; ///< what the solver's tolerance may leave

double least_pt_per_wh(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options) {
    const std::optional<double> limit_percent = record.meter ? error_limit_percent(*record.meter) : std::nullopt;
    const std::optional<double> most_wh = most_held_wh(record.unit, energy.track.total_wh(), options);
    return limit_percent && most_wh ? 100 / (*most_wh * (1 + *limit_percent / 100)) : 0;
}

/// By how much of charge_for_energy_pt a charge-counting gauge lies above the energy share where it shows this.
double bulge_share(double gauge_percent) {
    const double share = std::clamp(gauge_percent / 100, 0.0, 1.0);
    return 4 * share * (1 - share);
}

/// What the programme holds besides the series.
struct ProgrammeBounds {
    double least_x = 0, step_pt = 1, doubt_h = 0;
    double most_c = 0; ///< quadratic loss, 1/W
};

/// Variables: e, s0 - s_first, x - x_least, y, z, the charge-counting gauge's bulge. Rows 2 i and 2 i + 1 belong to point i of the series, the others
/// to s0, z and the bulge.
LinearProgram programme(const DrainSeries& series, const ProgrammeBounds& bounds) {
    LinearProgram program;
    const auto positive = VariableSign::non_negative;
    program.cost = {1, 0, 0, 0, 0, 0};
    program.signs = {positive, VariableSign::free, positive, positive, positive, positive};
    const double least_x = bounds.least_x, step_pt = bounds.step_pt, doubt_h = bounds.doubt_h;
    for (std::size_t i = 0; i < series.size(); ++i) {
        const double rose_pt = series.gauge_percent[i] - series.gauge_percent.front();
        const double wh = series.delivered_wh[i] - series.delivered_wh.front();
        const double hours = series.on_hours[i] - series.on_hours.front();
        const double squared = series.squared_w2h[i] - series.squared_w2h.front();
        const double bulge = bulge_share(series.gauge_percent[i]) - bulge_share(series.gauge_percent.front());
        const double room_wh = 3 * series.u_wh[i];
        program.add(std::array{-1.0, -1.0, wh - room_wh, hours - doubt_h, squared, -bulge}, step_pt / 2 - rose_pt - least_x * (wh - room_wh));
        program.add(std::array{-1.0, 1.0, -wh - room_wh, -hours - doubt_h, -squared, bulge}, step_pt / 2 + rose_pt + least_x * (wh + room_wh));
    }
    program.add(std::array{0.0, 1.0, 0.0, 0.0, 0.0, 0.0}, step_pt);
    program.add(std::array{0.0, -1.0, 0.0, 0.0, 0.0, 0.0}, step_pt);
    program.add(std::array{0.0, 0.0, -bounds.most_c, 0.0, 1.0, 0.0}, bounds.most_c * least_x);
    program.add(std::array{0.0, 0.0, 0.0, 0.0, 0.0, 1.0}, charge_for_energy_pt);
    return program;
}

GaugeFeasibility refused(const Message& reason) {
    GaugeFeasibility result;
    result.sentence = say(phrase("gauge", "The least error of the gauge is not known: %1."), reason);
    result.least_error_pt = not_known("least_gauge_error_pt", "pt", reason);
    return result;
}

} // namespace

std::optional<double> most_held_wh(const Unit& unit, double delivered_wh, const MeasureOptions& options) {
    const double rated_wh = unit.rated_energy_wh.value_or(0);
    if (rated_wh <= 0) return std::nullopt;
    return options.most_of_label * std::max(rated_wh, delivered_wh);
}

GaugeFeasibility gauge_feasibility(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options) {
    if (record.run.kind != RunKind::drain)
        return refused(say(phrase("gauge", "a %1 run does not test the gauge against delivered energy"), say_run_kind(record.run.kind)));
    if (energy.track.missing_inside) return refused(energy.track.missing_reason);
    if (energy.points.size() < least_programme_points)
        return refused(say(phrase("gauge", "the gauge and the register have not been read together twice")));
    const DrainSeries series = drain_series(record, energy, most_programme_points);
    const double step_pt = std::max(record.unit.gauge_step_percent, 1e-3);
    const double least_x = least_pt_per_wh(record, energy, options);
    const ProgrammeBounds bounds{least_x, step_pt, options.moment_doubt_min / 60, most_curvature_per_w(record, series, options)};
    const Result<LinearProgramSolution> solved = solve_linear_program(programme(series, bounds));
    if (!solved) return refused(solved.error().what);
    const LinearProgramSolution& solution = solved.value();
    if (solution.status != LinearProgramStatus::optimal) return refused(say(phrase("gauge", "the bounds could not be resolved")));

    GaugeFeasibility result;
    const double error_pt = solution.objective > negligible_pt ? solution.objective : 0.0;
    const double x = least_x + solution.point[2];
    result.no_load_draw_w = x > 0 ? solution.point[3] / x : 0.0;
    result.least_error_pt =
        Quantity{"least_gauge_error_pt", "pt", error_pt, error_pt, {}, Kind::at_least, say(phrase("gauge", "whatever the losses are"))};
    if (error_pt == 0) {
        result.sentence = say(phrase("gauge", "An accurate gauge could have shown all of this."));
        return result;
    }
    if (least_x == 0)
        result.least_error_pt.reason =
            say(phrase("gauge", "whatever the losses are; rated energy or the meter's limit is not stated, so any battery was allowed"));
    result.sentence = say(phrase("gauge", "The gauge is wrong by at least %1 somewhere, whatever the losses are."), say_points(error_pt));
    for (const std::size_t row : solution.binding) {
        if (row / 2 >= series.size()) continue;
        const ReadingId& uuid = reading_uuid_at(record, energy.points[series.point[row / 2]]);
        if (result.readings.empty() || result.readings.back() != uuid) result.readings.push_back(uuid);
    }
    return result;
}

} // namespace ullage
