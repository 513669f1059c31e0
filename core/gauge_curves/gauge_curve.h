// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "measure/energy_analysis.h"

#include <span>
#include <vector>

namespace ullage {

/// One point of a gauge curve.
struct GaugeCurvePoint {
    double gauge_percent = 0;
    double delivered_wh = 0; ///< since the first register reading
    double on_hours = 0;     ///< hours of output on since the first reading
    double u_wh = 0;         ///< standard uncertainty of delivered_wh: pairing and one register step, without the gain
};

/// The gauge of one full drain against what was delivered, thinned to points that do not share a rounding.
struct GaugeCurve {
    std::vector<GaugeCurvePoint> points; ///< in order of depth, strictly rising in delivered_wh
    double step_pt = 1;                  ///< of the gauge: as stated, or as found coarser
    double total_wh = 0;                 ///< D_end
    double total_h = 0;                  ///< T, hours of output on to the cut-off
    double u_register_wh = 0;            ///< of the register's start and of its end, each: q/√12 of a register step q

    /// How far the gauge fell from the first to the last point, points.
    [[nodiscard]] double fall_pt() const { return points.front().gauge_percent - points.back().gauge_percent; }
    /// What was delivered between those two points, Wh.
    [[nodiscard]] double fall_wh() const { return points.back().delivered_wh - points.front().delivered_wh; }
    /// Hours of output on between them.
    [[nodiscard]] double fall_h() const { return points.back().on_hours - points.front().on_hours; }
    /// Depth of every point in percent for a unit with this no-load draw: 100 (D + P*·t)/(D_end + P*·T); for 0 W the delivered
    /// depth.
    [[nodiscard]] std::vector<double> depths(double no_load_draw_w) const;
    /// Gauge error s − (100 − share delivered) of a point, points.
    [[nodiscard]] double error_pt(std::size_t point) const;
    /// Half-width of the 95 % band of that error: the gauge's own step (rectangular, half a step) convolved with pairing and
    /// register step.
    [[nodiscard]] double error_half_width_pt(std::size_t point, double coverage) const;
};

/// Reads the gauge curve off a full drain. Points closer than 1.5 gauge steps of depth are left out (they share roundings), of
/// fine gauges all closer than 0.5 % of the depth. Readings after the cut-off are left out. Errors (refused, with the reason as
/// a clause): no drain from full to cut-off with all its energy read; a run time that is not known to 2 %; fewer than six
/// points; a fall below five steps. `total_h` is the run's hours of output on, `u_total_h` their standard uncertainty.
[[nodiscard]] Result<GaugeCurve> read_gauge_curve(const RunRecord& record, const EnergyAnalysis& energy, double total_h, double u_total_h,
                                                  const MeasureOptions& options = {});

/// A gauge curve seen over depth: what lies between its points, and how sure that is.
class CurveOverDepth {
public:
    /// `curve` must outlive this.
    CurveOverDepth(const GaugeCurve& curve, double no_load_draw_w);

    [[nodiscard]] const std::vector<double>& depths() const { return depths_; }
    /// Place of a depth: the point before it and how far on to the next one (0 to 1). Outside the ends: the ends.
    struct Place {
        std::size_t point = 0;
        double share = 0;
    };
    [[nodiscard]] Place place(double depth_percent) const;
    /// Gauge by straight lines between the points, %.
    [[nodiscard]] double gauge_at(const Place& place) const;
    /// By how much the gauge may leave the straight line there, points: twice what the points at either side differ from the
    /// line through their own neighbours, less a step, which rounding makes. 0 for a smooth gauge; a gauge that sticks and
    /// jumps between two readings may jump anywhere between them.
    [[nodiscard]] double leeway_at(const Place& place) const;
    /// Standard deviation of one reading of the gauge: step/√12, or what the middle one of the points' differences from their
    /// neighbours' line asks for where that is more (a noisy gauge).
    [[nodiscard]] double u_reading_pt() const { return u_reading_pt_; }
    /// How uneven the curve is over these depths: the sum of the squares of what leeway_at rests on, points².
    [[nodiscard]] double unevenness() const;

private:
    const GaugeCurve* curve_;
    std::vector<double> depths_;
    std::vector<double> bends_; ///< |difference of a point from its neighbours' line|; 0 at the ends
    double u_reading_pt_ = 0;
};

} // namespace ullage
