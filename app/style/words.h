// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QString>

#include <string_view>

namespace ullage {

/// A text of the program that stands outside any class, in the language of the person at the screen.
[[nodiscard]] inline QString tr(const char* text) { return QCoreApplication::translate("Ullage", text); }

/// UTF-8 text of core as the screen shows it: what acts unseen, such as a mark of direction in a name, is shown as an escape (clean_text() in
/// formats/text/table_unicode.h). A field in which a text is edited takes it as it is instead, by QString::fromStdString().
[[nodiscard]] QString text_of(std::string_view text);

} // namespace ullage
