// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace ullage {

/// One cell of a strip of figures: what, how much, and the lighter rest.
struct StripFigure {
    QString key; ///< becomes the object name, "gauge" to "gaugeFigureLabel"
    QString label;
    QString value;
    QString rest;       ///< unit and interval
    QString hint;       ///< tool tip
    bool alarm = false; ///< the value calls for action: in the colour of a fault, besides its words
};

} // namespace ullage
