// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace ullage {

/// Moves the keyboard to what is read next in a window, or before: layouts item by item, splitters and tabs part by part, what lies in no layout
/// last. At the end it goes on at the beginning. For focusNextPrevChild() of windows whose parts come and go; the order of Qt is that in which parts
/// were made. False, and nothing moves, where the keyboard is in nothing that Tab comes to.
[[nodiscard]] bool move_as_read(QWidget& window, bool next);
/// Within `part` Tab keeps the order that it was given by setTabOrder().
void keep_tab_order(QWidget& part);

} // namespace ullage
