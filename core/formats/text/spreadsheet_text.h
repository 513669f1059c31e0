// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace ullage {

/// Whether a spreadsheet that opens a CSV file may run this text as a formula: it begins with = + - @, their full-width forms, tab, CR or LF (OWASP,
/// "CSV Injection"), or with the first four after blanks of any script or U+FEFF. Apostrophes before all that do not count, so that the one of
/// guarded_text() can be taken off again.
[[nodiscard]] bool looks_like_formula(std::string_view text);

/// The text, with an apostrophe in front where looks_like_formula().
[[nodiscard]] std::string guarded_text(std::string_view text);

/// unguarded_text(guarded_text(t)) == t for every t.
[[nodiscard]] std::string_view unguarded_text(std::string_view text);

/// A user's text as a spreadsheet may have it in an export: guarded, and as clean_text() shows it.
[[nodiscard]] std::string spreadsheet_text(std::string_view text);

} // namespace ullage
