// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/live_lines.h"

#include "base/number.h"
#include "live/payload_number.h"
#include "trace/log_lines.h"
#include "trace/trace_import.h"

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr std::size_t lines_to_detect = 5;
constexpr std::size_t most_first_lines = 50;
constexpr long unread_until_anew = 20; ///< a meter that was set otherwise writes other columns

constexpr char delimiters[] = {';', '\t', ',', '|', ' '};

/// The delimiter that stands in most lines; a comma only where no line has it as its decimal sign beside another delimiter.
char likely_delimiter(std::string_view line) {
    for (const char delimiter : delimiters)
        if (line.find(delimiter) != std::string_view::npos &&
            (delimiter != ',' || line.find(' ') == std::string_view::npos || line.find(", ") != std::string_view::npos))
            return delimiter;
    return ';';
}

} // namespace

void LineCutter::take(std::string_view bytes, const std::function<void(std::string_view)>& line) {
    while (!bytes.empty()) {
        const auto end = bytes.find_first_of("\r\n");
        const std::string_view piece = bytes.substr(0, end);
        if (!skipping_) {
            if (begun_.size() + piece.size() > longest) {
                skipping_ = true;
                ++too_long_;
                begun_.clear();
            } else {
                begun_ += piece;
            }
        }
        if (end == std::string_view::npos) return;
        if (!skipping_ && !begun_.empty()) line(begun_);
        begun_.clear();
        skipping_ = false;
        bytes.remove_prefix(end + 1);
    }
}

LiveLines::LiveLines(std::vector<LiveField> fields) : fields_(std::move(fields)) {
    std::vector<Message> lines;
    for (const LiveField& field : fields_) lines.emplace_back(field_line(SourceKind::serial_lines, field));
    words_ = say_joined(lines, ", ");
}

void LiveLines::detect() {
    const char delimiter = likely_delimiter(first_lines_.back());
    std::string text;
    for (std::size_t i = 0; i < first_lines_.size(); ++i) {
        // Seconds apart, so that they read as the rows of a log.
        const std::string second = std::to_string(10 + i % 50);
        text += "2027-01-01T00:00:" + second + "Z" + delimiter + first_lines_[i] + '\n';
    }
    LayoutAnswers answers;
    answers.delimiter = delimiter;
    const Result<TraceDetection> found = detect_layout(text, answers);
    if (!found || !found.value().questions.empty()) return;
    layout_ = found.value().layout;
    // Without the time in front: the columns as the meter writes them.
    std::vector<Message> columns;
    for (std::size_t c = 1; c < layout_->columns.size(); ++c) {
        const LogColumn& column = layout_->columns[c];
        if (column.role == ColumnRole::unused) continue;
        columns.push_back(say(phrase("live", "%1 column %2 in %3"), say_role(column.role), say_number(c), column.unit.name));
    }
    words_ = say_joined(columns, ", ");
    unread_ = 0;
}

TraceSample LiveLines::read(std::string_view line) {
    TraceSample sample;
    std::vector<std::string_view> cells;
    std::vector<std::string> scratch;
    if (!fields_.empty()) {
        (void)split_fields(line, likely_delimiter(line), cells, scratch);
        for (const LiveField& field : fields_) {
            const auto column = static_cast<std::size_t>(std::stoi(field.place));
            if (column > cells.size()) continue;
            for (const RoleEntry& entry : column_roles())
                if (entry.role == field.role && entry.place) sample.*entry.place = number_in_text(cells[column - 1], field);
        }
        return sample;
    }
    if (!layout_) {
        if (first_lines_.size() == most_first_lines) first_lines_.erase(first_lines_.begin());
        first_lines_.emplace_back(line);
        if (first_lines_.size() < lines_to_detect) return sample;
        detect();
        if (!layout_) return sample;
        first_lines_.clear();
    }
    (void)split_fields(line, layout_->delimiter, cells, scratch);
    bool any = false;
    for (std::size_t c = 1; c < layout_->columns.size() && c - 1 < cells.size(); ++c) {
        const LogColumn& column = layout_->columns[c];
        LogNumber number;
        if (says_nothing(cells[c - 1]) || !read_number(cells[c - 1], layout_->decimal, layout_->grouping, number)) continue;
        const auto named = number.suffix.empty() ? std::nullopt : unit_named(number.suffix);
        if (!number.suffix.empty() && !named) continue;
        for (const RoleEntry& entry : column_roles())
            if (entry.role == column.role && entry.place && (!named || named->quantity == entry.quantity)) {
                sample.*entry.place = value_of(number, named.value_or(column.unit));
                any = any || (sample.*entry.place).has_value();
            }
    }
    if (any) unread_ = 0;
    else if (++unread_ >= unread_until_anew) layout_.reset();
    return sample;
}

} // namespace ullage
