// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "style/palette.h"

#include <QString>

namespace ullage {

/// When the bench display is dimmed.
enum class Dimming { by_hours, dimmed, bright };

constexpr int dim_from_hour = 22, dim_to_hour = 6; ///< local time, for Dimming::by_hours

/// The next in the order of the key that changes it.
[[nodiscard]] Dimming after(Dimming dimming);
/// Whether it is dimmed at this hour, 0 to 23.
[[nodiscard]] bool is_dim(Dimming dimming, int hour);
/// "dimmed 22:00 to 06:00", "dimmed", "not dimmed".
[[nodiscard]] QString dimming_words(Dimming dimming);
/// For the settings, and back; by_hours for any other text.
[[nodiscard]] QString kept_dimming(Dimming dimming);
[[nodiscard]] Dimming dimming_from(const QString& kept);

/// The colours of the display: those of the program's theme, or at night dark ones with amber text, which leave eyes used to the dark as they are.
/// Amber keeps 7:1 against its card, secondary text 4.5:1.
[[nodiscard]] Palette display_palette(bool dim);

} // namespace ullage
