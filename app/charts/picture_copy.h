// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/picture.h"

#include <optional>

class QWidget;

namespace ullage {

/// What a LineChart, BarChart or VesselRow shows now: a line chart's span in view, without its hidden curves. Empty for any other
/// widget, and where nothing is drawn but a hint.
[[nodiscard]] std::optional<PictureContent> shown_picture(const QWidget& drawing);

/// The drawing that a command about pictures means: the one with the keyboard, else the one under the pointer, else the first in sight
/// within `page`. Null where none shows anything.
[[nodiscard]] QWidget* drawing_in_sight(QWidget& page);

/// Puts what `drawing` shows on the clipboard, as an image of twice its size on screen and as SVG, in its colours. Refused (bad_input) where
/// shown_picture() is empty.
Result<void> copy_picture(const QWidget& drawing);

/// As large as `drawing` is on screen, in its colours and font; PNG at twice the scale.
[[nodiscard]] PictureSpec shown_spec(const QWidget& drawing);

/// Adds "Copy picture" (Ctrl+C while `drawing` has the keyboard) to the menu under the right button, after what stands there.
void offer_copy(QWidget& drawing);

} // namespace ullage
