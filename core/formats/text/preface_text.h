// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <string>
#include <string_view>

namespace ullage {

/// Values of a run sheet's preface, which stand on one line, without quotes, between blanks that do not count
/// and before commas that a spreadsheet adds. What could not stand there is written with a backslash:
///   \\ backslash   \n line feed   \r carriage return   \s blank, \t tab (at either end)   \, comma (at the
///   end)   \c comma, \e semicolon (before what a spreadsheet would take for a formula)
/// Everything else stands for itself; `"`, `#`, `:` and `%` need no escape.

/// `value` in that form. unescaped_preface(escaped_preface(v)) == v for every v.
[[nodiscard]] std::string escaped_preface(std::string_view value);

/// The value written as `text`: commas and blanks at the end and blanks at the start are dropped, escapes
/// replaced. Error: a backslash before any other character or at the end.
[[nodiscard]] Result<std::string> unescaped_preface(std::string_view text);

} // namespace ullage
