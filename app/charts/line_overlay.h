// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/line_layout.h"

#include <QString>

#include <cstddef>
#include <map>
#include <optional>
#include <set>
#include <vector>

class QPainter;

namespace ullage {

/// One point of one series.
struct ChartHit {
    std::size_t series = 0; ///< position in the content
    std::size_t index = 0;  ///< position in its points
};

/// What a line chart shows besides its content.
struct LineState {
    QSet<QString> hidden;
    std::map<QString, std::set<std::size_t>> highlighted; ///< by series id
    std::optional<ChartHit> hovered;
    std::optional<std::pair<double, double>> selecting; ///< pixels of x being dragged over
};

/// Indices in view of each series of a content, as decimated.
using VisibleIndices = std::vector<std::vector<std::size_t>>;

/// Series with more points than this in view are drawn without markers, which would only smear.
inline constexpr std::size_t most_markers = 160;

/// Paints what lies behind the curves: ground, regions, bands, grid, tick labels, titles.
void paint_behind_lines(QPainter& painter, const ChartContent& content, const ChartLook& look, const LineLayout& layout, const QSizeF& size);

/// Paints what lies before the curves: error bars, markers, lines across, names, highlights, readout.
void paint_before_lines(QPainter& painter, const ChartContent& content, const ChartLook& look, const LineLayout& layout,
                        const VisibleIndices& visible, const LineState& state, const QSizeF& size);

/// The readout's text for one point: name, x with unit, y with unit, note.
[[nodiscard]] QString readout_text(const ChartContent& content, const LineLayout& layout, const ChartHit& hit);

} // namespace ullage
