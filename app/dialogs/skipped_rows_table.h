// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "trace/trace_reader.h"

#include <QString>

#include <string>

class QTableWidget;
class QWidget;

namespace ullage {

/// A table for the rows of a log that were left out or taken with a doubt: line, what was done and why, the row as it stands.
[[nodiscard]] QTableWidget* new_skipped_rows_table(QWidget* parent);

/// Fills it: skipped rows, then gaps with their times in `zone`.
void show_skipped_rows(QTableWidget& table, const TraceTally& tally, const std::string& zone);

/// "1,440 rows: 1,438 taken, 2 left out; usually 10 s apart; 1 gap longer than 100 s".
[[nodiscard]] QString tally_words(const TraceTally& tally);

} // namespace ullage
