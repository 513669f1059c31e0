// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"
#include "base/message.h"
#include "foreign_tables/table_book.h"
#include "foreign_tables/table_role.h"
#include "model/reading.h"
#include "trace/log_time.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

// How a foreign table of readings is understood. Nothing is guessed: what the table leaves open is a question, and answers are plain values.

/// What the table itself does not settle.
enum class TableQuestion {
    columns,       ///< which column holds the time, or the gauge or register
    date_order,    ///< day or month first
    decimal_sign,  ///< whether the comma is the decimal sign
    register_unit, ///< of a register without unit
    elapsed_unit,  ///< of times counted from the start
    gauge_share,   ///< whether 0.69 means 69 %
    clock_meaning, ///< whether 2:40 is a time of day or counted from the start
    year,          ///< of dates without one
    start,         ///< when a run began whose times name no date
    runs,          ///< whether what follows an empty row is another run
};

struct OpenTableQuestion {
    TableQuestion about;
    Message words;                    ///< what is open, with an example out of the table
    std::vector<std::string> choices; ///< as answers name them; empty where a column, date or year has to be named
};

/// What the user says, in place of what would be detected; what is absent or empty is detected.
struct TableAnswers {
    struct Column {
        std::size_t index = 0; ///< from 0
        TableRole role = TableRole::unused;
        std::string unit{}; ///< of cells without one; empty: as detected
        bool operator==(const Column&) const = default;
    };
    std::vector<Column> columns;
    std::optional<DateOrder> date_order;
    std::optional<char> decimal;
    std::string register_unit; ///< Wh, kWh, …
    std::string elapsed_unit;  ///< h, min or s
    std::optional<bool> gauge_is_share;
    std::optional<bool> times_are_elapsed;
    std::optional<int> year;
    std::optional<bool> gaps_part_runs;
    std::vector<std::string> starts; ///< of the runs in their order: 2027-05-14, or with a time for what counts from the start

    bool operator==(const TableAnswers&) const = default;
};

/// A row of which nothing, or not everything, was taken.
struct RowNotTaken {
    long row = 0; ///< from 1, as its program counts
    bool in_part = false;
    Message reason;
};

/// A run as the table has it.
struct ForeignRun {
    std::string title;     ///< of the rows above it, or of its column; may be empty
    std::string unit_name; ///< of the column `unit`, or of a line above the table; may be empty
    long first_row = 0, last_row = 0;
    std::vector<ReadingValues> readings; ///< in order of time
    bool cut_off = false;                ///< a note says that the unit went off
    bool full = false;                   ///< a note says that it began full
};

/// All that was found in a table.
struct TableReading {
    struct Column {
        std::string title; ///< as the head has it
        TableRole role = TableRole::unused;
        std::string unit{};
        Message why{};
        int block = 0; ///< runs side by side are counted from 0
    };
    long head_row = 0; ///< from 1; 0: there is none
    std::vector<Column> columns;
    std::vector<OpenTableQuestion> questions;
    std::vector<Message> notes; ///< what was detected, and why
    std::vector<RowNotTaken> not_taken;
    std::vector<ForeignRun> runs;               ///< as far as they can be told while questions are open
    std::optional<Message> refusal;             ///< why the table cannot come in whatever is answered, one clause
    std::string signature;                      ///< of the head, by which answers are remembered
    std::map<std::string, std::string> preface; ///< "unit", "rated_wh", "load", "meter", "second_meter": what lines above the table state
};

inline constexpr int earliest_table_year = 1980; ///< an earlier date is one that was never set, or is misread
inline constexpr double most_ahead_h = 24;       ///< so far ahead of now a reading may lie: clocks of other zones

/// Understands a sheet. `zone`: of its times, which name none; `now_ms` bounds them. Never fails: what hinders an import are its questions and its
/// refusal.
[[nodiscard]] TableReading understand_table(const TableSheet& sheet, const TableAnswers& answers, const std::string& zone, UtcMs now_ms);

/// Answers that hold for another table with the same head, as one line of text and back; starts and years are a table's own. Unknown words are passed
/// over.
[[nodiscard]] std::string table_answers_text(const TableAnswers& answers);
[[nodiscard]] TableAnswers table_answers_from(std::string_view text);

} // namespace ullage
