// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/bar_layout.h"

class QPainter;

namespace ullage {

/// Paints what lies behind the bars: ground, expectation bands, grid, names, notes, axis.
void paint_behind_bars(QPainter& painter, const BarContent& content, const ChartLook& look, const BarLayout& layout, const QSizeF& size);

/// Paints what lies before the bars: error bars and values.
void paint_before_bars(QPainter& painter, const BarContent& content, const ChartLook& look, const BarLayout& layout, const QSizeF& size);

} // namespace ullage
