// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QScrollArea;
class QString;

namespace ullage {

/// What a screen reader calls an area that scrolls: its own name, else that of what it holds: of the widget, of the tab that it fills, of the first
/// heading in it. Where that has none, the nearest name or heading around it.
[[nodiscard]] QString area_name(const QScrollArea& area);

/// Has the accessibility tree call all areas that scroll so. May be called often.
void speak_scroll_areas();

} // namespace ullage
