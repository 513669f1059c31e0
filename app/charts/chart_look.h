// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"
#include "style/palette.h"

#include <QFont>

class QWidget;

namespace ullage {

/// Everything about a drawing's looks that does not follow from its content.
struct ChartLook {
    Palette palette;
    QColor ground; ///< painted behind the drawing, and inside hollow markers; opaque
    QFont font;    ///< of names and values; axes use it a little smaller
};

/// The look on screen: the theme in force, on a panel, in `widget`'s font.
[[nodiscard]] ChartLook screen_look(const QWidget& widget);

[[nodiscard]] QColor curve_colour(CurveColour colour, const Palette& palette);

/// Shading of a region; faint enough for curves and grid to show through.
[[nodiscard]] QColor region_colour(RegionRole role, const ChartLook& look);

/// Shading of an expectation band.
[[nodiscard]] QColor expectation_colour(const ChartLook& look);

/// `font` scaled by `factor`, whether it was set in points or in pixels.
[[nodiscard]] QFont scaled_font(QFont font, double factor);

/// Font of axis labels and of names within the plot.
[[nodiscard]] QFont axis_font(const ChartLook& look);

} // namespace ullage
