// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "foreign_tables/table_reading.h"

#include <string>
#include <string_view>

namespace ullage {

/// How a foreign table is understood, in lines: its columns and why, what was detected, what is open, rows that are not taken, and its runs.
[[nodiscard]] std::string table_reading_text(const TableReading& reading, const std::string& form, const std::string& sheet, const std::string& zone);

/// The option of `import` that answers a question: "--date-order".
[[nodiscard]] std::string_view table_question_option(TableQuestion question);

} // namespace ullage
