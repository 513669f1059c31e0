// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QCoreApplication>
#include <QString>

#include <string_view>

namespace ullage {

/// A text of the program that stands outside any class, in the language of the person at the screen.
[[nodiscard]] inline QString tr(const char* text) { return QCoreApplication::translate("Ullage", text); }

/// UTF-8 text of core as the screen takes it.
[[nodiscard]] inline QString text_of(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

} // namespace ullage
