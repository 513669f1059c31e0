// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/chart_look.h"

#include "style/roles.h"
#include "style/theme.h"

#include <QWidget>

namespace ullage {

ChartLook screen_look(const QWidget& widget) { return {current_palette(), current_palette().panel, tabular(widget.font())}; }

QColor curve_colour(CurveColour colour, const Palette& palette) {
    switch (colour) {
    case CurveColour::delivered: return palette.delivered;
    case CurveColour::gauge_implied: return palette.gauge_implied;
    case CurveColour::error: return palette.error;
    case CurveColour::good: return palette.good;
    case CurveColour::sky: return palette.sky;
    case CurveColour::vermilion: return palette.vermilion;
    case CurveColour::accent: return palette.accent;
    case CurveColour::ink: return palette.ink;
    case CurveColour::soft: return palette.soft;
    }
    return palette.ink;
}

QColor region_colour(RegionRole role, const ChartLook& look) {
    switch (role) {
    case RegionRole::doubt: return blended(look.palette.doubt, look.ground, 0.85);
    case RegionRole::fault: return blended(look.palette.fault, look.ground, 0.85);
    case RegionRole::grey: return blended(look.palette.soft, look.ground, look.palette.dark ? 0.18 : 0.14);
    }
    return look.ground;
}

QColor expectation_colour(const ChartLook& look) { return blended(look.palette.soft, look.ground, look.palette.dark ? 0.18 : 0.16); }

QFont scaled_font(QFont font, double factor) {
    if (font.pointSizeF() > 0) font.setPointSizeF(font.pointSizeF() * factor);
    else font.setPixelSize(qMax(1, qRound(font.pixelSize() * factor)));
    return font;
}

QFont axis_font(const ChartLook& look) { return scaled_font(look.font, 0.86); }

} // namespace ullage
