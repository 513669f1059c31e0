// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "style/palette.h"

#include <QFont>
#include <QString>

namespace ullage {

/// The style sheet over BaseStyle for one palette. Roles are dynamic properties; set them with the functions of
/// style/roles.h rather than by name. All text sizes are multiples of `font`'s, so the desktop's text scale stays in force.
[[nodiscard]] QString style_sheet(const Palette& palette, const QFont& font);

} // namespace ullage
