// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>

class QWidget;

namespace ullage::test {

/// The words in sight below `root` that have less room than they need: of buttons, of labels that do not break, of tabs that cannot be scrolled.
[[nodiscard]] QStringList cut_off_on_page(const QWidget& root);

/// The same of a form or dialog, which has to show more: labels that break, all entries of choices, hints in empty fields, heads of tables, every
/// tab, and nothing beside the edge of what scrolls up and down only.
[[nodiscard]] QStringList cut_off_in_form(const QWidget& root);

} // namespace ullage::test
