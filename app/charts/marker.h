// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"

#include <QColor>
#include <QPointF>

class QPainter;

namespace ullage {

/// Size of a point on screen, in device-independent pixels.
inline constexpr double marker_px = 7.5;

/// Draws `marker` around `centre`; shapes of one `size` cover about the same area. Does nothing for Marker::none.
void paint_marker(QPainter& painter, Marker marker, const QPointF& centre, double size, const QColor& outline, const QColor& fill);

} // namespace ullage
