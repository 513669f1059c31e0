// SPDX-License-Identifier: GPL-3.0-or-later
// s gauge, t hours with the output on, D delivered energy, Q integral of P squared; alpha pt/h, beta pt/Wh, c = b/a in 1/W.
#include "gauge/loss_fit.h"

#include "base/number.h"
#include "gauge/drain_series.h"
#include "gauge/share_bounds.h"
#include "model/meter_gain.h"
#include "numerics/least_squares.h"
#include "numerics/monte_carlo.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace ullage {
namespace {

constexpr std::size_t most_loss_points = 4000;
constexpr std::size_t least_loss_points = 6;
constexpr double least_steps = 15;
constexpr double most_residual_ratio = 1.7;
constexpr double least_bulge_pt = 0.5;
constexpr double bulge_factor = 3;             ///< standard uncertainties
constexpr double recoveries_h[] = {0.5, 2, 6}; ///< time constants of a gauge that recovers after a load
constexpr double least_sag_pt = 2.5;           ///< what a gauge may follow the load by, unseen
constexpr double sag_factor = 2;               ///< stricter: it biases both, and a refusal costs little
constexpr double end_within_pt = 1.5;          ///< and half a step: a linear gauge shows 100 % at the start and 0 % at the cut-off

/// alpha, beta and what belongs to them.
struct Coefficients {
    double s0 = 0, alpha = 0, beta = 0;
    double v_alpha = 0, v_beta = 0, cov = 0;
    double residual_ratio = 0;

    [[nodiscard]] double draw_w() const { return alpha / beta; }
    [[nodiscard]] double energy_wh() const { return 100 / beta; }
};

/// Standard uncertainty of each gauge value from its step, points. Readings share a rounding where the gauge has not moved for want of a
/// fall (an idle night of a gauge that counts only what is delivered): then they weigh together like one. So do readings far closer than the steps.
std::vector<double> gauge_sigmas(const DrainSeries& series, const Coefficients& slopes, double c_per_w, double step_pt) {
    const std::size_t n = series.size();
    const double fall_pt = series.gauge_percent.front() - series.gauge_percent.back();
    const double readings_a_step = std::max(1.0, static_cast<double>(n) * step_pt / fall_pt);
    std::vector<double> sigmas(n);
    for (std::size_t from = 0, to = 0; from < n; from = to) {
        while (to < n && series.gauge_percent[to] == series.gauge_percent[from]) ++to;
        const double due_pt = slopes.alpha * (series.on_hours[to - 1] - series.on_hours[from]) +
                              slopes.beta * (series.delivered_wh[to - 1] - series.delivered_wh[from] +
                                             c_per_w * (series.squared_w2h[to - 1] - series.squared_w2h[from]));
        const double alike = static_cast<double>(to - from) * (1 - std::clamp(due_pt / step_pt, 0.0, 1.0));
        for (std::size_t i = from; i < to; ++i) sigmas[i] = step_pt / std::sqrt(12.0) * std::sqrt(std::max(readings_a_step, alike));
    }
    return sigmas;
}

Result<Coefficients> fit_with(const DrainSeries& series, double c_per_w, double step_pt, double doubt_h) {
    const std::size_t n = series.size();
    std::vector<double> design, sigma(n);
    design.reserve(3 * n);
    for (std::size_t i = 0; i < n; ++i)
        design.insert(design.end(), {1.0, -series.on_hours[i], -(series.delivered_wh[i] + c_per_w * series.squared_w2h[i])});
    Coefficients fitted;
    fitted.beta = (series.gauge_percent.front() - series.gauge_percent.back()) / (series.delivered_wh.back() - series.delivered_wh.front());
    // sigma needs the slopes: once with the end-to-end ones, then twice with the fitted ones (the third digit no longer moves).
    for (int pass = 0; pass < 3; ++pass) {
        const std::vector<double> gauge_sigma = gauge_sigmas(series, fitted, c_per_w, step_pt);
        const auto sigma_of = [&](std::size_t i, double gauge_part) {
            return std::hypot(gauge_part, fitted.beta * series.u_wh[i], fitted.alpha * doubt_h / std::sqrt(3.0));
        };
        for (std::size_t i = 0; i < n; ++i) sigma[i] = sigma_of(i, gauge_sigma[i]);
        const Result<LeastSquaresFit> fit = solve_least_squares(design, 3, series.gauge_percent, sigma);
        if (!fit) return fit.error();
        const LeastSquaresFit& found = fit.value();
        double chi_square = 0;
        for (std::size_t i = 0; i < n; ++i) chi_square += std::pow(found.residuals[i] / sigma_of(i, step_pt / std::sqrt(12.0)), 2);
        fitted = {found.parameters[0],
                  found.parameters[1],
                  found.parameters[2],
                  found.cov(1, 1),
                  found.cov(2, 2),
                  found.cov(1, 2),
                  std::sqrt(chi_square / static_cast<double>(std::max<std::size_t>(1, found.degrees_of_freedom)))};
    }
    return fitted;
}

/// A further term of the gauge: how far it moves the gauge, points, with its standard uncertainty; absent where the run cannot tell it from the rest.
struct FurtherTerm {
    double value_pt = 0, u_pt = 0;
    [[nodiscard]] bool is_there(double factor = bulge_factor) const { return std::abs(value_pt) > std::max(least_bulge_pt, factor * u_pt); }
};

double depth_of(const DrainSeries& series, const Coefficients& best, double c_per_w, std::size_t i) {
    return (best.alpha * series.on_hours[i] + best.beta * (series.delivered_wh[i] + c_per_w * series.squared_w2h[i])) / 100;
}

std::optional<FurtherTerm> further_term(const DrainSeries& series, const Coefficients& best, double c_per_w, double step_pt,
                                        const std::vector<double>& column) {
    const std::size_t n = series.size();
    std::vector<double> design, sigma(n);
    const std::vector<double> gauge_sigma = gauge_sigmas(series, best, c_per_w, step_pt);
    for (std::size_t i = 0; i < n; ++i) {
        const double wh = series.delivered_wh[i] + c_per_w * series.squared_w2h[i];
        design.insert(design.end(), {1.0, -series.on_hours[i], -wh, column[i]});
        sigma[i] = std::hypot(gauge_sigma[i], best.beta * series.u_wh[i]);
    }
    const Result<LeastSquaresFit> fit = solve_least_squares(design, 4, series.gauge_percent, sigma);
    if (!fit) return std::nullopt;
    return FurtherTerm{fit.value().parameters[3], std::sqrt(fit.value().cov(3, 3))};
}

/// How far a gauge curved over the fitted depth would bulge at half.
std::vector<double> bulge_column(const DrainSeries& series, const Coefficients& best, double c_per_w) {
    std::vector<double> column(series.size());
    for (std::size_t i = 0; i < series.size(); ++i) {
        const double depth = depth_of(series, best, c_per_w, i);
        column[i] = 4 * depth * (1 - depth);
    }
    return column;
}

/// The mean load of the hours before (time constant `fades_h`) less the load before each reading, scaled to a span of 1: what a gauge that sags under
/// load and recovers after it would follow.
std::vector<double> recovery_column(const DrainSeries& series, double fades_h) {
    std::vector<double> column(series.size());
    double before_w = 0;
    for (std::size_t i = 1; i < series.size(); ++i) {
        const double hours = series.on_hours[i] - series.on_hours[i - 1];
        if (hours <= 0) {
            column[i] = column[i - 1];
            continue;
        }
        const double load_w = (series.delivered_wh[i] - series.delivered_wh[i - 1]) / hours;
        if (i == 1) before_w = load_w;
        column[i] = before_w - load_w;
        before_w += (load_w - before_w) * (1 - std::exp(-hours / fades_h));
    }
    const auto [low, high] = std::ranges::minmax(column);
    for (double& watts : column) watts = high > low ? watts / (high - low) : 0;
    return column;
}

/// 1 behind a reading before which the load was lower by a fifth of its range than before that, fading with time constant `fades_h`: what a gauge
/// that rises once a load goes would add.
std::vector<double> rebound_column(const DrainSeries& series, double fades_h) {
    std::vector<double> loads(series.size()), column(series.size());
    for (std::size_t i = 1; i < series.size(); ++i) {
        const double hours = series.on_hours[i] - series.on_hours[i - 1];
        loads[i] = hours > 0 ? (series.delivered_wh[i] - series.delivered_wh[i - 1]) / hours : loads[i - 1];
    }
    if (series.size() < 2) return column;
    loads[0] = loads[1];
    const auto [low, high] = std::ranges::minmax(loads);
    for (std::size_t i = 1; i < series.size(); ++i) {
        const double hours = series.on_hours[i] - series.on_hours[i - 1];
        column[i] = loads[i - 1] - loads[i] > (high - low) / 5 ? 1 : column[i - 1] * std::exp(-hours / fades_h);
    }
    return column;
}

/// The fit to the gauge less so many points of a column.
Result<Coefficients> fit_without(const DrainSeries& series, const std::vector<double>& column, double points, double c_per_w, double step_pt,
                                 double doubt_h) {
    DrainSeries rest = series;
    for (std::size_t i = 0; i < series.size(); ++i) rest.gauge_percent[i] -= points * column[i];
    return fit_with(rest, c_per_w, step_pt, doubt_h);
}

/// Half-width of two rectangles and a normal part: the wider rectangle as it is, the other by its standard uncertainty.
double half_width(double u_fit, double gain, double curvature, double coverage) {
    const double wide = std::max(gain, curvature), narrow = std::min(gain, curvature);
    return half_width_of_sum(wide, std::hypot(u_fit, narrow / std::sqrt(3.0)), coverage);
}

/// Of a full drain: whether the fitted line leads from full to empty; in words what it does not, else empty.
Message not_from_full_to_empty(const EnergyAnalysis& energy, const Coefficients& best, double c_per_w, double step_pt) {
    if (!energy.from_full_to_cut_off || energy.track.energy_may_be_missing) return {};
    const Quantity on_h = output_on_hours(energy);
    if (!on_h.value) return {};
    const double squared = energy.squares.up_to(energy.track, energy.track.points.size() - 1);
    const auto shown_at_end = [&](double hours) { return best.s0 - best.alpha * hours - best.beta * (energy.track.total_wh() + c_per_w * squared); };
    const double within_pt = end_within_pt + step_pt / 2;
    // Of a bracket every moment may be the end: the nearest to 0 % counts.
    const double early_percent = shown_at_end(on_h.lower.value_or(*on_h.value)), late_percent = shown_at_end(on_h.upper.value_or(*on_h.value));
    const double end_percent = early_percent * late_percent < 0 ? 0 : std::abs(early_percent) < std::abs(late_percent) ? early_percent : late_percent;
    if (std::abs(end_percent) > within_pt)
        return say(phrase("gauge", "its readings lead to %1 at the cut-off, not to 0 %"), say_gauge(std::round(end_percent)));
    if (std::abs(best.s0 - 100) > within_pt)
        return say(phrase("gauge", "its readings lead back to %1 at the start, not to 100 %"), say_gauge(std::round(best.s0)));
    return {};
}

/// What speaks against taking the fit's values at their word, and what a gauge that is not quite linear would change.
void judge_shape(const EnergyAnalysis& energy, const DrainSeries& series, const Coefficients& best, double c_per_w, double step_pt, double doubt_h,
                 LossFit& fit) {
    fit.doubt = not_from_full_to_empty(energy, best, c_per_w, step_pt);
    // How fast a gauge recovers is its own affair: the one that would change the most counts.
    double sag_draw_w = 0, sag_energy_wh = 0;
    const auto counts = [&](const Result<Coefficients>& other, double& draw_w, double& energy_wh) {
        if (!other || other.value().beta <= 0) return false;
        draw_w = std::max(draw_w, std::abs(other.value().draw_w() - best.draw_w()));
        energy_wh = std::max(energy_wh, std::abs(other.value().energy_wh() - best.energy_wh()));
        return true;
    };
    bool sound = counts(fit_without(series, bulge_column(series, best, c_per_w), charge_for_energy_pt, c_per_w, step_pt, doubt_h), fit.shape_draw_w,
                        fit.shape_energy_wh);
    std::vector<std::vector<double>> recoveries;
    for (const double fades_h : recoveries_h) {
        recoveries.push_back(recovery_column(series, fades_h));
        recoveries.push_back(rebound_column(series, fades_h));
    }
    for (const std::vector<double>& recovery : recoveries) {
        const auto sag = further_term(series, best, c_per_w, step_pt, recovery);
        if (sag && sag->is_there(sag_factor))
            fit.doubt = say(phrase("gauge", "the gauge follows the load by about %1"), say_points(std::abs(sag->value_pt)));
        const double sag_pt = std::max(least_sag_pt, sag ? std::abs(sag->value_pt) + sag->u_pt : 0);
        sound = counts(fit_without(series, recovery, sag_pt, c_per_w, step_pt, doubt_h), sag_draw_w, sag_energy_wh) && sound;
    }
    if (!sound) fit.doubt = say(phrase("gauge", "a gauge that is not quite linear would change it beyond measure"));
    fit.shape_draw_w = std::hypot(fit.shape_draw_w, sag_draw_w);
    fit.shape_energy_wh = std::hypot(fit.shape_energy_wh, sag_energy_wh);
}

LossFit refused(LossFit fit, const Message& reason) {
    fit.no_load_draw_w = not_known("no_load_draw_w", "W", reason);
    fit.zero_time_energy_wh = not_known("zero_time_energy_wh", "Wh", reason);
    fit.sentence =
        say(phrase("gauge", "If the gauge is linear in stored energy, one run could tell the unit's own draw; here it is not known: %1."), reason);
    return fit;
}

/// Why the run cannot carry the fit, before any fit; empty when it can.
Message reason_against(const RunRecord& record, const EnergyAnalysis& energy) {
    const std::vector<PairedPoint>& points = energy.points;
    const double step_pt = std::max(record.unit.gauge_step_percent, 1e-3);
    if (record.run.kind != RunKind::drain)
        return say(phrase("gauge", "a %1 run does not tell losses from delivered energy"), say_run_kind(record.run.kind)) +
               say(phrase("advice", "; make a drain"));
    if (!record.meter) return say(phrase("gauge", "no meter is stated"));
    if (energy.track.missing_inside) return energy.track.missing_reason;
    if (points.size() < least_loss_points)
        return say_count(points.size(), phrases("gauge", "only %n gauge readings within the register's readings; 6 are needed",
                                                "only %n gauge reading within the register's readings; 6 are needed"));
    // Beside the steps of a log a note may stand half a step high; a note after a note may not.
    const auto allowed_pt = [&](std::size_t i) { return points[i].reading == no_reading || points[i - 1].reading == no_reading ? step_pt : 0.0; };
    for (const std::size_t i : energy.gauge_changes)
        if (points[i].gauge_percent > points[i - 1].gauge_percent + allowed_pt(i))
            return say(phrase("gauge", "the gauge rose from %1 to %2 at %3, so it is not linear in stored energy"),
                       say_gauge(points[i - 1].gauge_percent), say_gauge(points[i].gauge_percent),
                       clock_text(points[i].time_ms, record.run.time_zone));
    const double fall_pt = points.front().gauge_percent - points.back().gauge_percent;
    if (fall_pt < least_steps * step_pt)
        return say(phrase("gauge", "the gauge fell by only %1 points; %2 are needed"), say_digits(exact_text(fall_pt)),
                   say_digits(exact_text(least_steps * step_pt)));
    if (points.back().delivered_wh <= points.front().delivered_wh) return say(phrase("gauge", "no energy was delivered between the gauge readings"));
    return {};
}

} // namespace

double most_curvature_per_w(const RunRecord& record, const DrainSeries& series, const MeasureOptions& options) {
    if (record.unit.rated_output_w.value_or(0) > 0) return options.most_quadratic_loss / *record.unit.rated_output_w;
    double highest_w = 0;
    for (std::size_t i = 1; i < series.size(); ++i) {
        const double hours = series.on_hours[i] - series.on_hours[i - 1];
        if (hours > 0) highest_w = std::max(highest_w, (series.delivered_wh[i] - series.delivered_wh[i - 1]) / hours);
    }
    return highest_w > 0 ? options.most_quadratic_loss / highest_w : 0.0;
}

LossFit fit_losses(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options) {
    LossFit fit;
    if (const Message reason = reason_against(record, energy); !reason.empty()) return refused(fit, reason);
    const DrainSeries series = drain_series(record, energy, most_loss_points);
    fit.points = series.size();
    fit.separable_share = separable_share(series);
    if (fit.separable_share < least_separable_share)
        return refused(
            fit, say(phrase("gauge", "the load was so steady that time and energy cannot be told apart (%1 % of the energy's spread is not linear in "
                                     "time, %2 % are needed); vary the load, or make a second run at another load"),
                     say_number(100 * fit.separable_share, 1), say_number(100 * least_separable_share, 0)));
    const double step_pt = std::max(record.unit.gauge_step_percent, 1e-3);
    const double doubt_h = options.moment_doubt_min / 60;
    const double beyond_wh = spread_beyond_time_wh(series), noise_wh = steady_noise_wh(series, doubt_h);
    if (beyond_wh < least_spread_over_noise * noise_wh)
        return refused(
            fit, say(phrase("gauge", "register steps and noted minutes make a steady load look as uneven as this one (%1 Wh off a straight line in "
                                     "time, %2 Wh by steps and minutes alone); vary the load more"),
                     say_number(beyond_wh, 1), say_number(noise_wh, 1)));
    const double c_per_w = most_curvature_per_w(record, series, options);
    const Result<Coefficients> middle = fit_with(series, c_per_w / 2, step_pt, doubt_h);
    if (!middle) return refused(fit, middle.error().what);
    const Result<Coefficients> most = fit_with(series, c_per_w, step_pt, doubt_h);
    if (!most) return refused(fit, most.error().what);
    const Coefficients& best = middle.value();
    if (best.beta <= 0 || most.value().beta <= 0) return refused(fit, say(phrase("gauge", "the gauge does not fall with delivered energy")));
    fit.residual_ratio = best.residual_ratio;
    if (fit.residual_ratio > most_residual_ratio)
        return refused(
            fit, say(phrase("gauge", "the gauge is not linear: its readings scatter %1 times as far as their steps explain, %2 times are allowed"),
                     say_number(fit.residual_ratio, 1), say_number(most_residual_ratio, 1)));

    if (const auto bulge = further_term(series, best, c_per_w / 2, step_pt, bulge_column(series, best, c_per_w / 2)); bulge && bulge->is_there())
        return refused(fit, say(phrase("gauge", "the gauge is not linear: it bulges by about %1 at half, as a gauge does that counts charge"),
                                say_points(std::abs(bulge->value_pt))));
    const double draw_w = best.draw_w(), energy_wh = best.energy_wh();
    const double scale = std::pow(std::max(1.0, fit.residual_ratio), 2);
    const double v_draw = scale * (best.v_alpha - 2 * draw_w * best.cov + draw_w * draw_w * best.v_beta) / (best.beta * best.beta);
    const double v_energy = scale * best.v_beta * std::pow(energy_wh / best.beta, 2);
    const double cov = -scale * energy_wh / (best.beta * best.beta) * (best.cov - draw_w * best.v_beta);
    const double bent_draw_w = most.value().draw_w() - draw_w, bent_energy_wh = most.value().energy_wh() - energy_wh;
    const double gain = error_limit_percent(*record.meter).value_or(0) / 100;
    fit.start_percent = best.s0;
    judge_shape(energy, series, best, c_per_w / 2, step_pt, doubt_h, fit);
    fit.covariance_w_wh = cov + (gain * gain * draw_w * energy_wh + bent_draw_w * bent_energy_wh) / 3;
    std::optional<double> draw_half_w, energy_half_wh;
    Message reason = say(phrase("gauge", "if the gauge is linear in stored energy"));
    if (error_limit_percent(*record.meter)) {
        draw_half_w = half_width(std::sqrt(std::max(0.0, v_draw)), gain * std::abs(draw_w), std::abs(bent_draw_w), options.coverage);
        energy_half_wh = half_width(std::sqrt(v_energy), gain * energy_wh, std::abs(bent_energy_wh), options.coverage);
    } else {
        reason = say(phrase("gauge", "if the gauge is linear in stored energy; no interval: the error limit of the meter is not stated"));
    }
    fit.no_load_draw_w = known("no_load_draw_w", "W", draw_w, draw_half_w, Kind::projected, reason);
    fit.zero_time_energy_wh = known("zero_time_energy_wh", "Wh", energy_wh, energy_half_wh, Kind::projected, reason);
    fit.sentence =
        say(phrase("gauge", "If the gauge is linear in stored energy, the unit itself draws %1 (seen from the socket) and would deliver %2 before "
                            "its own consumption."),
            say_quantity(fit.no_load_draw_w), say_quantity(fit.zero_time_energy_wh, 0));
    return fit;
}

} // namespace ullage
