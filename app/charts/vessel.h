// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_look.h"

#include <QIcon>
#include <QRectF>

#include <optional>

class QPainter;

namespace ullage {

/// What one unit's vessel shows. Its full height is the rated energy.
struct VesselData {
    double rated_wh = 0;
    std::optional<double> delivered_wh = {}; ///< absent: an empty vessel, "not known"
    std::optional<double> lower_wh = {};     ///< ends of the 95 % interval of delivered_wh
    std::optional<double> upper_wh = {};
    std::optional<double> no_load_taken_wh = {};    ///< hatched above the delivered part; absent: not separable
    std::optional<double> band_lower_fraction = {}; ///< commonly seen at the socket, as fractions of rated
    std::optional<double> band_upper_fraction = {};
};

/// Places within a drawn vessel; y grows downwards.
struct VesselGeometry {
    QRectF body = {};                     ///< the outline; its height is the rated energy
    std::optional<double> fill_y = {};    ///< surface of the delivered energy; above body.top() when more than rated
    std::optional<double> no_load_y = {}; ///< upper edge of the hatched part
    std::optional<double> interval_lower_y = {};
    std::optional<double> interval_upper_y = {};
    std::optional<double> band_lower_y = {};
    std::optional<double> band_upper_y = {};
};

/// Highest energy that the drawing of `vessel` needs, for a height scale common to several; at least the rating.
[[nodiscard]] double vessel_top_wh(const VesselData& vessel);

/// Places for `vessel` drawn in `body`. With rated_wh not positive there is no scale: only the body.
[[nodiscard]] VesselGeometry vessel_geometry(const VesselData& vessel, const QRectF& body);

/// How much of a vessel to draw: everything, or only what a picture a few pixels wide can carry.
enum class VesselDetail { full, small };

/// Draws `vessel` with its outline in `body`; the interval's bracket and the expectation lines' ends stick out by up
/// to vessel_margin() at the sides. Draws no text. Vector output needs no clipping.
void paint_vessel(QPainter& painter, const VesselData& vessel, const QRectF& body, const ChartLook& look, VesselDetail detail = VesselDetail::full);

/// Room beside a body that is `width` wide, for bracket and line ends.
[[nodiscard]] double vessel_margin(double width);

/// A 16 by 24 icon of `vessel` for trees and lists, in the theme in force whenever it is painted.
[[nodiscard]] QIcon vessel_icon(const VesselData& vessel);

} // namespace ullage
