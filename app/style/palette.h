// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>

namespace ullage {

/// The colours of one theme. Curves follow Okabe and Ito's palette for colour-blind readers
/// (M. Okabe, K. Ito: Color Universal Design, 2008), deepened on light grounds for contrast.
struct Palette {
    bool dark = false;
    QColor ground;        ///< behind everything
    QColor panel;         ///< cards, tables, charts
    QColor line;          ///< borders, grid lines
    QColor edge;          ///< around what is typed or chosen in: 3:1 against its grounds (WCAG 2.2, 1.4.11)
    QColor ink;           ///< text
    QColor soft;          ///< secondary text, axes
    QColor accent;        ///< the one accent: primary button, focus, current tab
    QColor on_accent;     ///< text on the accent
    QColor selection;     ///< selected rows, quiet chips
    QColor delivered;     ///< curve: delivered energy (circle)
    QColor gauge_implied; ///< curve: what the gauge implies (square)
    QColor error;         ///< curve: gauge error (triangle)
    QColor good;          ///< running, saved, resolved; fourth curve
    QColor sky;           ///< fifth curve
    QColor vermilion;     ///< sixth curve
    QColor doubt;         ///< ground of doubtful rows and regions
    QColor doubt_ink;     ///< text on doubt
    QColor fault;         ///< ground of faulty rows and regions
    QColor fault_ink;     ///< text on fault
};

/// The palette for bright surroundings.
[[nodiscard]] const Palette& light_palette();
/// The palette for dim surroundings.
[[nodiscard]] const Palette& dark_palette();

/// `top` laid over `bottom` with `share` (0 to 1) of `top`; opaque.
[[nodiscard]] QColor blended(const QColor& top, const QColor& bottom, double share);

} // namespace ullage
