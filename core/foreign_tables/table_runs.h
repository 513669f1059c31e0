// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "foreign_tables/table_reading.h"
#include "model/run_record.h"

#include <optional>
#include <string>
#include <string_view>

namespace ullage {

/// What no table says of a run, as the user states it.
struct TableFacts {
    Unit unit{};                         ///< by its name; as the logbook has it where it knows it
    std::optional<Meter> meter{};        ///< absent: not known
    std::optional<Meter> second_meter{}; ///< of the second register; absent: not known
    RunKind kind = RunKind::drain;
    std::optional<RunEnd> end{}; ///< absent: not known
    std::optional<bool> started_full{};
    std::string load{};
    std::string zone = "UTC";
};

/// The run as a record without uuids, its readings in order of time. An end that is not known is stated as stopped by the tester: what was noted last
/// then counts as a part of the drain, never as its end; a key of the run, `ended_not_known`, keeps that nobody said it.
[[nodiscard]] RunRecord record_of_table(const ForeignRun& run, const TableFacts& facts);

/// Whether bytes are no sheet of this program's own (formats/sheets/run_sheet.h), so that they may be a foreign table: neither a line `# unit:` nor
/// another line with `#` in front, nor a column named `gauge_percent` or `register_wh`; workbooks, web pages and exported tables of readings always.
[[nodiscard]] bool may_be_foreign_table(std::string_view bytes);

} // namespace ullage
