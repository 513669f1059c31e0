// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ullage::spacing {

/// Everything on a screen sits on this grid, in device-independent pixels.
inline constexpr int grid_px = 8;
inline constexpr int half_px = grid_px / 2;
/// Between the edge of a page and its content.
inline constexpr int page_margin_px = 2 * grid_px;
/// Between groups that belong to different thoughts.
inline constexpr int group_gap_px = 3 * grid_px;
/// Between panels that stand side by side, and the thickness of a splitter's grip between them.
inline constexpr int panel_gap_px = 12;
/// Corner radius of panels and buttons.
inline constexpr int radius_px = 6;
/// Corner radius of entry fields and chips.
inline constexpr int small_radius_px = 4;
/// A page narrower than this stacks its table over its chart.
inline constexpr int stacking_width_px = 1100;

} // namespace ullage::spacing
