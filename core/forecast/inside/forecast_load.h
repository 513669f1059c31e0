// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/load_steps.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace ullage {

/// What the load may do from the end of its history on, as paths with weights that add up to 1.
///
/// The history goes on from moments spread evenly over it and starts anew where it ends: right for a steady load and for one that
/// cycles. Its mean is good to the scatter s of the n interval means about it, s·sqrt(1/n), with Student's factor for n − 1
/// degrees of freedom (at most 1.7 times the normal one, as loads that cycle scatter less in the mean than independent ones);
/// intervals shorter than a thirtieth of the run are joined for that. Each path stands at several multiples of it. After a step
/// (the load crossed its own mean, and has not come back to and fro for longer than twice the longest stretch before) 65 % of the
/// weight lies on a load that stays as it has been since, without the interval in which the step fell; known from that single
/// interval only, it is good to 40 %. A history of one interval may hide any step: two fifths of the weight lie on loads spread by a factor of 1.8
/// (standard deviation of the logarithm 0.6), unless two powers noted meanwhile lie within 10 % of its mean. A step yet to come is on no path: no
/// history can tell it. Method: analogues from the run's own history; common practice, no source.
class FutureLoads {
public:
    /// `steps` in order of time, as load_steps gives them; empty: one path without load. `noted_w`: powers noted from the meter meanwhile.
    explicit FutureLoads(const std::vector<LoadStep>& steps, const std::vector<double>& noted_w = {});

    [[nodiscard]] std::size_t paths() const { return paths_.size(); }
    [[nodiscard]] double weight(std::size_t path) const { return paths_[path].weight; }
    /// Hours until D + P*·t + c·Q has grown by `wh` on a path; infinite where nothing is ever taken.
    [[nodiscard]] double hours_to_use(std::size_t path, double wh, double no_load_w, double curvature_per_w) const;
    /// Mean load over the next hours on a path, W. Precondition: hours > 0.
    [[nodiscard]] double mean_w(std::size_t path, double hours) const;
    /// Of all the history, W; 0 without one.
    [[nodiscard]] double overall_w() const { return loop_.hours > 0 ? loop_.wh / loop_.hours : 0; }
    /// Since the load last crossed its mean, W.
    [[nodiscard]] double recent_w() const { return recent_w_; }
    /// Relative standard deviation of the load's means over so many hours: three times that of the interval means since the last
    /// step (a load that cycles within the intervals shows only a part of its scatter), more for a shorter time (as the inverse
    /// root of it), at most 1. 0 for fewer than two intervals.
    [[nodiscard]] double scatter_over(double hours) const;
    /// Whether the load keeps to one side of 15 % about its mean, comes back again and again, or has stepped.
    enum class Shape { steady, cycling, stepped };
    [[nodiscard]] Shape shape() const { return shape_; }

private:
    /// Sums since the start of the history.
    struct Sums {
        double hours = 0, wh = 0, squared_w2h = 0;
        /// Taken where the load is `factor` times what it was.
        [[nodiscard]] double used_wh(double factor, double no_load_w, double curvature_per_w) const {
            return factor * wh + no_load_w * hours + factor * factor * curvature_per_w * squared_w2h;
        }
    };
    struct Path {
        std::optional<double> start_h; ///< of the replay; absent: the load stays
        double factor = 1;
        double weight = 1;
    };
    [[nodiscard]] Sums at_hours(double hours) const;
    void tell_shape(const std::vector<LoadStep>& steps);
    [[nodiscard]] bool confirmed_by(const std::vector<double>& noted_w) const;
    void add_paths(std::optional<double> start_h, double share, double u_relative);

    std::vector<Sums> nodes_; ///< history, from 0 to its end
    Sums loop_;               ///< the whole of it
    std::size_t intervals_ = 0;
    double scatter_ = 0; ///< relative, of interval means
    double recent_w_ = 0, u_recent_ = 0, recent_scatter_ = 0;
    Shape shape_ = Shape::steady;
    std::vector<Path> paths_;
};

} // namespace ullage
