// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/inside/forecast_trend.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr double shape_pt = 0.9; ///< of a gauge about the nearest law tried
constexpr double lost_share = 0.02;
constexpr std::size_t most_readings = 16;
constexpr double lowest_percent = 2;
constexpr std::size_t grid = 60;
constexpr double most_times_taken = 30;     ///< E* where no label limits it
constexpr double beyond_what_it_gave = 1.1; ///< E* of a unit that has given more than its label allows
constexpr double all_values_pt = 100;

/// What the label says of E*.
struct LabelPrior {
    double least_wh = 0, most_wh = 0;
    bool soft = false; ///< from a label; else the limit is the grid's own

    [[nodiscard]] double at(double e_wh) const {
        if (e_wh < least_wh || e_wh > end_wh()) return 0;
        return e_wh <= most_wh ? 1 : std::exp(-(e_wh / most_wh - 1) / label_softness);
    }
    [[nodiscard]] double end_wh() const { return soft ? softly_up_to * most_wh : most_wh; }
};

double taken_wh(const TrendPoint& point, const OwnDraw& draw) {
    return point.delivered_wh + draw.no_load_w * point.on_hours + draw.curvature_per_w * point.squared_w2h;
}

std::vector<TrendPoint> thinned(const std::vector<TrendPoint>& points) {
    if (points.size() <= most_readings) return points;
    std::vector<TrendPoint> some;
    for (std::size_t k = 0; k < most_readings; ++k) some.push_back(points[k * (points.size() - 1) / (most_readings - 1)]);
    return some;
}

/// How likely a reading is that shows `off_pt` more than a law gives.
class ReadingLikelihood {
public:
    explicit ReadingLikelihood(double gauge_step_pt)
        : variance_(gauge_step_pt * gauge_step_pt / 12 + shape_pt * shape_pt), peak_((1 - lost_share) / std::sqrt(2 * std::acos(-1.0) * variance_)) {}

    [[nodiscard]] double at(double off_pt) const { return peak_ * std::exp(-0.5 * off_pt * off_pt / variance_) + lost_share / all_values_pt; }
    /// Of a reading that any value of the gauge explains.
    [[nodiscard]] static double of_any() { return 1 / all_values_pt; }

private:
    double variance_, peak_;
};

/// One amount left under one draw, with what its readings say.
class LeftCell {
public:
    LeftCell(const TrendSetup& setup, const std::vector<TrendPoint>& points, const ReadingLikelihood& likelihood, const OwnDraw& draw, double left_wh)
        : setup_(setup), points_(points), likelihood_(likelihood), total_wh_(taken_wh(setup.end, draw) + left_wh) {
        for (const TrendPoint& point : points) taken_.push_back(taken_wh(point, draw));
    }

    /// Prior of the unit's E* times the likelihood of the readings; 0 where no such unit is allowed. `starts_at`: depth by the law's first reading.
    [[nodiscard]] double under(const GaugeLawTried& law, double starts_at, const LabelPrior& label) const {
        if (starts_at >= 1) return 0;
        const double e_wh = total_wh_ / (1 - starts_at);
        double product = label.at(e_wh);
        if (product == 0) return 0;
        const bool blind = law.family == GaugeFamily::blind;
        for (std::size_t i = 0; i < points_.size(); ++i) {
            const double shown = law.shown(std::min(1.0, starts_at + (blind ? points_[i].delivered_wh : taken_[i]) / e_wh));
            // A gauge that has come to its lowest value says no more than that, whether it stays at 0, 1 or 2 %.
            const bool at_bottom = shown <= lowest_percent && points_[i].gauge_percent <= lowest_percent;
            product *= likelihood_.at(at_bottom ? 0 : points_[i].gauge_percent - shown);
        }
        return product;
    }

    [[nodiscard]] double under_any(const LabelPrior& label) const {
        double product = label.at(total_wh_);
        for (std::size_t i = 0; i < points_.size(); ++i)
            product *= i == 0 && setup_.started_full ? likelihood_.at(points_[i].gauge_percent - 100) : ReadingLikelihood::of_any();
        return product;
    }

private:
    const TrendSetup& setup_;
    const std::vector<TrendPoint>& points_;
    const ReadingLikelihood& likelihood_;
    double total_wh_;
    std::vector<double> taken_;
};

} // namespace

std::vector<LeftWeight> left_by_trend(const TrendSetup& setup, const std::vector<OwnDraw>& draws) {
    const ReadingLikelihood likelihood(setup.gauge_step_pt);
    const std::vector<TrendPoint> points = thinned(setup.points);
    std::vector<double> starts;
    for (const GaugeLawTried& law : tried_laws())
        starts.push_back(setup.started_full || points.empty() ? 0 : law.depth_at(points.front().gauge_percent));
    std::vector<LeftWeight> result;
    double sum = 0;
    for (const OwnDraw& draw : draws) {
        const double taken = taken_wh(setup.end, draw);
        if (taken <= 0) continue;
        const LabelPrior label{setup.most_wh ? setup.least_wh.value_or(0) : 0,
                               setup.most_wh ? std::max(*setup.most_wh, beyond_what_it_gave * taken) : taken * most_times_taken,
                               setup.most_wh.has_value()};
        const double from_wh = std::max(taken * 1e-3, setup.started_full ? label.least_wh - taken : 0), to_wh = label.end_wh() - taken;
        if (to_wh <= from_wh) continue;
        const double ratio = std::log(to_wh / from_wh) / static_cast<double>(grid);
        for (std::size_t i = 0; i < grid; ++i) {
            LeftWeight cell{from_wh * std::exp(ratio * (static_cast<double>(i) + 0.5)), draw, 0, {}};
            // The width of the cell in E*, over its range or in log E*.
            const double prior = cell.left_wh * ratio / (setup.most_wh ? label.most_wh - label.least_wh : taken + cell.left_wh);
            const LeftCell left(setup, points, likelihood, draw, cell.left_wh);
            for (std::size_t k = 0; k < tried_laws().size(); ++k) {
                const GaugeLawTried& law = tried_laws()[k];
                cell.by_family[static_cast<std::size_t>(law.family)] += prior * law.weight * left.under(law, starts[k], label);
            }
            constexpr std::size_t any = static_cast<std::size_t>(GaugeFamily::unknown);
            cell.by_family[any] = prior * family_priors[any].share * left.under_any(label);
            for (const double weight : cell.by_family) cell.weight += weight;
            sum += cell.weight;
            result.push_back(cell);
        }
    }
    if (!(sum > 0)) return {};
    for (LeftWeight& cell : result) {
        cell.weight /= sum;
        for (double& weight : cell.by_family) weight /= sum;
    }
    return result;
}

double gauge_error_at_last_pt(const TrendSetup& setup, const LeftWeight& left) {
    const TrendPoint& last = setup.points.back();
    const double taken = setup.end.delivered_wh + left.draw.no_load_w * setup.end.on_hours;
    const double from = setup.started_full ? 1 : setup.points.front().gauge_percent / 100;
    const double e_wh = (taken + left.left_wh) / std::max(from, 1e-9);
    const double since_last_wh = setup.end.delivered_wh - last.delivered_wh + left.draw.no_load_w * (setup.end.on_hours - last.on_hours);
    return last.gauge_percent - 100 * (left.left_wh + since_last_wh) / e_wh;
}

std::array<double, gauge_families> family_shares(const std::vector<LeftWeight>& lefts) {
    std::array<double, gauge_families> shares{};
    for (const LeftWeight& left : lefts)
        for (std::size_t k = 0; k < gauge_families; ++k) shares[k] += left.by_family[k];
    return shares;
}

} // namespace ullage
