// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table.h"

#include <iosfwd>
#include <string>
#include <vector>

namespace ullage {

/// How a command gives a table away.
struct TableOutput {
    std::string format; ///< empty: by the ending of `path`, else text
    std::string path;   ///< empty: standard output
    bool force = false; ///< replaces what it would not otherwise (replacing_of())
};

/// The format asked for. Errors: an unknown name; xlsx without a file.
[[nodiscard]] Result<TableFormat> asked_format(const TableOutput& output);

/// Whether a table may be written where it was asked for, for a command that does something before. Errors: those of check_table_target().
[[nodiscard]] Result<void> check_output(TableFormat format, const TableOutput& output, std::vector<std::string> inputs);

/// Writes the table where it was asked for; returns the exit code. A CSV file gets its description beside it. `inputs`: what the command reads.
/// `but`: what is done also where the table goes nowhere, as of print().
[[nodiscard]] int put_table(const StreamedTable& table, TableFormat format, const TableOutput& output, std::vector<std::string> inputs,
                            std::ostream& out, std::ostream& err, const Message& but = {});

/// The same with a text that is ready.
[[nodiscard]] int put_text(const std::string& text, const TableOutput& output, std::vector<std::string> inputs, std::ostream& out, std::ostream& err);

} // namespace ullage
