// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <optional>
#include <vector>

namespace ullage {

/// Which colour of the palette a mark takes.
enum class CurveColour { delivered, gauge_implied, error, good, sky, vermilion, accent, ink, soft };
/// Shape of a point, so that curves differ by more than colour.
enum class Marker { none, circle, square, triangle, diamond };
enum class CurveLine { none, solid, dashed };
/// Whether a band is a light area along the curve or an error bar at each of its points.
enum class BandShape { area, bars };

/// x and y in the units of the axes. A y that is not finite interrupts the curve.
struct ChartPoint {
    double x = 0;
    double y = 0;
};

struct ChartBandPoint {
    double x = 0;
    double lower = 0;
    double upper = 0;
};

/// One curve. Points and band are in ascending order of x.
struct ChartSeries {
    QString id = {};    ///< unique in the content
    QString group = {}; ///< series of one group are shown and hidden together; empty: the series alone
    QString name = {};  ///< written at the curve's end; empty: no label
    CurveColour colour = CurveColour::delivered;
    Marker marker = Marker::circle;
    CurveLine line = CurveLine::solid;
    bool steps = false; ///< each value holds until the next point
    std::vector<ChartPoint> points = {};
    std::vector<QString> notes = {}; ///< for the readout; empty or as long as points
    std::vector<ChartBandPoint> band = {};
    BandShape band_shape = BandShape::area;
};

enum class RegionRole { doubt, fault, grey };

/// A span of x shaded over the full height, named at the top.
struct ChartRegion {
    double from = 0;
    double to = 0;
    QString label = {};
    RegionRole role = RegionRole::grey;
};

/// A dotted line across the plot, named at its right end.
struct ChartHorizontalLine {
    double value = 0;
    QString label = {};
};

/// A shaded span of y over the full width.
struct ChartHorizontalBand {
    double lower = 0;
    double upper = 0;
    QString label = {};
};

/// A dotted line from bottom to top, named beside its upper end.
struct ChartVerticalLine {
    double value = 0;
    QString label = {};
    CurveColour colour = CurveColour::accent;
};

struct AxisSpec {
    QString title = {};                 ///< quantity and unit, "energy / Wh"
    QString unit = {};                  ///< for the readout, "Wh"
    std::optional<double> minimum = {}; ///< absent: chosen from the data
    std::optional<double> maximum = {};
    bool logarithmic = false;  ///< values of 0 and below are then not shown
    bool include_zero = false; ///< start at zero where the data allow it
    /// Of a vertical axis with 0 within: what values above and below it mean, in the plot's left corners.
    QString above_zero = {}, below_zero = {};
};

struct ChartContent {
    QString description = {}; ///< one sentence for screen readers and as the title inside a picture file; may be empty
    AxisSpec x = {};
    AxisSpec y = {};
    std::vector<ChartSeries> series = {};
    std::vector<ChartRegion> regions = {};
    std::vector<ChartHorizontalLine> horizontal_lines = {};
    std::vector<ChartHorizontalBand> horizontal_bands = {};
    std::vector<ChartVerticalLine> vertical_lines = {};
    QString empty_text = {}; ///< what to do, shown in the middle while no series has a point
    QString subject = {};    ///< of what it is, for a picture that stands alone: "Osk 1200, drain 14 May, 64 W; Socket meter A, ±1 %"
    QString key = {};        ///< how its lines, points and areas are read, likewise
};

/// One bar with its interval. An absent value is shown as "not known".
struct ChartBar {
    QString name = {};
    std::optional<double> value = {};
    std::optional<double> lower = {};
    std::optional<double> upper = {};
    QString value_text = {}; ///< after the bar; empty: the value in the axis' digits
    QString note = {};       ///< under the name, lighter; may be empty
    CurveColour colour = CurveColour::delivered;
};

struct BarContent {
    QString description = {};
    AxisSpec axis = {}; ///< never logarithmic: a bar's length must be proportional to its value
    std::vector<ChartBar> bars = {};
    std::vector<ChartHorizontalBand> bands = {}; ///< expectation bands along the value axis
    QString empty_text = {};
    QString subject = {}; ///< as those of ChartContent
    QString key = {};
};

} // namespace ullage
