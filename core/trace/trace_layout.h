// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/result.h"
#include "trace/column_role.h"
#include "trace/log_lines.h"
#include "trace/log_number.h"
#include "trace/log_time.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

struct LogColumn {
    std::string title; ///< as the header has it; empty without header
    ColumnRole role = ColumnRole::unused;
    LogUnit unit; ///< of cells that name none; for time: seconds per count
    bool operator==(const LogColumn& other) const { return title == other.title && role == other.role && unit.name == other.unit.name; }
};

/// How a log is to be read: all that was detected, remembered or told, as plain values.
struct TraceLayout {
    LogEncoding encoding = LogEncoding::plain;
    char delimiter = ',';
    char decimal = '.';
    char grouping = 0; ///< between groups of three digits; 0 for none
    long first_data_line = 1;
    std::vector<LogColumn> columns;
    TimeForm time_form = TimeForm::date_time;
    DateOrder date_order = DateOrder::unknown;

    [[nodiscard]] std::optional<std::size_t> column_of(ColumnRole role) const; ///< the first that has the role
    bool operator==(const TraceLayout&) const = default;
};

/// What the log itself does not settle.
enum class OpenQuestion { date_order, decimal_sign, clock_meaning, energy_unit, no_time, no_values, whose_values, gauge_unit };

struct LayoutQuestion {
    OpenQuestion about;
    Message words;                    ///< what is open, with an example out of the log, and what answers it
    std::vector<std::string> choices; ///< empty where a column has to be named
};

/// What was found in the beginning of a log.
struct TraceDetection {
    TraceLayout layout;
    std::vector<std::string> preface;      ///< lines before the header
    std::string signature;                 ///< of the header, by which answers are remembered; of the number of columns where there is no header
    std::vector<LayoutQuestion> questions; ///< open ones: an import refuses until they are answered
    std::vector<Message> notes;            ///< what was assumed, and which columns were left alone and why
    bool local_times = false;              ///< times without offset, which need a zone
};

/// What the user says, in place of what would be detected; what is absent or empty is detected.
struct LayoutAnswers {
    struct Column {
        ColumnRole role;
        std::size_t index = 0; ///< from 0
        std::string unit;      ///< empty: as detected
        bool operator==(const Column&) const = default;
    };
    std::vector<Column> columns; ///< when any is named for a role, no other has it; one named `unused` is left alone
    std::optional<DateOrder> date_order;
    std::optional<char> decimal, delimiter;
    std::optional<char> grouping; ///< of thousands; absent: as detected
    std::optional<LogEncoding> encoding;
    std::optional<TimeForm> time_form;
    std::string energy_unit;  ///< of a register without unit
    std::string gauge_unit{}; ///< of a gauge without unit: "%" or "share"

    bool operator==(const LayoutAnswers&) const = default;
};

/// Detects how a log is to be read from its beginning (a few hundred lines are plenty). `remembered` gives the answers kept for a signature.
/// Errors (bad_input): no row of data; an answer that does not fit (a column that is not there, an unknown unit).
[[nodiscard]] Result<TraceDetection> detect_layout(std::string_view beginning, const LayoutAnswers& answers,
                                                   const std::map<std::string, LayoutAnswers>& remembered = {});

/// Answers as one line of text and back; unknown words are passed over.
[[nodiscard]] std::string answers_text(const LayoutAnswers& answers);
[[nodiscard]] LayoutAnswers answers_from(std::string_view text);

/// All that a layout fixes, as answers to be remembered.
[[nodiscard]] LayoutAnswers answers_of(const TraceLayout& layout);

} // namespace ullage
