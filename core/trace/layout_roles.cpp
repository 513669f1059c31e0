// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/inside/layout_columns.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cctype>

namespace ullage {
namespace {

/// What the words of a header say.
struct HeaderWords {
    std::vector<std::string> words; ///< in lower case, without the unit
    std::optional<LogUnit> unit;
};

HeaderWords words_of(const std::string& title) {
    HeaderWords header;
    std::vector<std::string> parts(1);
    for (const char c : title) {
        // A degree sign and what is beyond ASCII belong to a word.
        if (std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '%' || static_cast<unsigned char>(c) >= 0x80) parts.back() += c;
        else if (!parts.back().empty()) parts.emplace_back();
    }
    if (parts.back().empty()) parts.pop_back();
    for (std::size_t i = parts.size(); i-- > 0;) {
        // "U", "I", "P" and the like are no units; "h" and "min" end titles such as "per h".
        if (header.unit || parts[i] == "a") continue;
        if (i == 0 && parts.size() > 1 && parts[i].size() == 1) continue;
        header.unit = unit_named(parts[i]);
        if (header.unit && parts.size() > 1) parts.erase(parts.begin() + static_cast<std::ptrdiff_t>(i));
    }
    for (std::string& part : parts) {
        std::ranges::transform(part, part.begin(), [](unsigned char c) { return static_cast<char>(c < 0x80 ? std::tolower(c) : c); });
        header.words.push_back(std::move(part));
    }
    return header;
}

/// Words that say that a column is not the quantity itself.
constexpr std::array<std::string_view, 13> other_words = {"factor", "apparent", "reactive", "min",         "max",       "minimum", "maximum",
                                                          "peak",   "average",  "cost",     "temperature", "frequency", "set"};

ColumnRole role_of(const HeaderWords& header, const std::optional<LogUnit>& unit) {
    for (const std::string& word : header.words)
        if (std::ranges::find(other_words, word) != other_words.end()) return ColumnRole::unused;
    if (unit) return role_of(unit->quantity);
    for (const std::string& word : header.words)
        if (const ColumnRole role = role_of_header_word(word); role != ColumnRole::unused) return role;
    return ColumnRole::unused;
}

std::string column_name(const TraceLayout& layout, std::size_t c) {
    return layout.columns[c].title.empty() ? fmt::format("column {}", c + 1) : fmt::format("`{}`", layout.columns[c].title);
}

bool told_unused(const LayoutAnswers& answers, std::size_t c) {
    return std::ranges::any_of(answers.columns,
                               [c](const LayoutAnswers::Column& column) { return column.role == ColumnRole::unused && column.index == c; });
}

Result<void> take_named(const LayoutAnswers& answers, TraceLayout& layout) {
    for (const LayoutAnswers::Column& named : answers.columns) {
        if (named.index >= layout.columns.size())
            return Error{Failure::bad_input,
                         fmt::format("there is no column {} for the {}", named.index + 1, role_text(named.role)),
                         {},
                         fmt::format("the log has {} columns; they count from 1", layout.columns.size())};
        LogColumn& column = layout.columns[named.index];
        column.role = named.role;
        if (named.role == ColumnRole::unused) continue;
        // What the header says of another quantity does not hold for the one that was named.
        if (role_of(column.unit.quantity) != named.role && column.unit.quantity != LogQuantity::time) column.unit = {};
        if (named.unit.empty()) continue;
        const auto unit = unit_named(named.unit);
        const bool fits = unit && (named.role == ColumnRole::time || named.role == ColumnRole::date ? unit->quantity == LogQuantity::time
                                                                                                    : role_of(unit->quantity) == named.role);
        if (!fits)
            return Error{Failure::bad_input,
                         fmt::format("`{}` is no unit of {}", named.unit, role_text(named.role)),
                         {},
                         "use W, kW, Wh, kWh, J, V, mV, A or mA, and s, ms, min or h for times"};
        column.unit = *unit;
    }
    return {};
}

void ask_energy_unit(const LayoutRows& rows, std::size_t c, TraceDetection& detection) {
    detection.questions.push_back(
        {OpenQuestion::energy_unit,
         fmt::format("the register in {} has no unit (it begins with `{}`)", column_name(detection.layout, c), rows.data.front()[c]),
         {"Wh", "kWh"}});
}

} // namespace

Result<void> settle_columns(const LayoutRows& rows, const std::vector<ColumnContent>& contents, const LayoutAnswers& answers,
                            TraceDetection& detection) {
    TraceLayout& layout = detection.layout;
    std::vector<std::optional<LogUnit>> units(layout.columns.size());
    std::vector<ColumnRole> by_header(layout.columns.size(), ColumnRole::unused);
    for (std::size_t c = 0; c < layout.columns.size(); ++c) {
        if (c < rows.header.size()) layout.columns[c].title = rows.header[c];
        std::string title = layout.columns[c].title;
        if (c < rows.units_row.size()) title += " " + rows.units_row[c];
        const HeaderWords header = words_of(title);
        units[c] = header.unit ? header.unit : contents[c].suffix;
        by_header[c] = role_of(header, units[c]);
        if (units[c]) layout.columns[c].unit = *units[c];
    }
    if (auto named = take_named(answers, layout); !named) return named;
    const auto told = [&answers](ColumnRole role) {
        return std::ranges::any_of(answers.columns, [role](const LayoutAnswers::Column& column) { return column.role == role; });
    };
    for (std::size_t c = 0; c < layout.columns.size(); ++c) {
        LogColumn& column = layout.columns[c];
        if (column.role != ColumnRole::unused || told_unused(answers, c)) continue;
        if (units[c] && units[c]->quantity == LogQuantity::charge)
            detection.notes.push_back(column_name(layout, c) + " counts charge (Ah), which is no energy: not used");
        const ColumnRole role = by_header[c];
        if (role == ColumnRole::unused || told(role) || !contents[c].mostly(contents[c].numbers)) continue;
        if (const auto first = layout.column_of(role)) {
            detection.notes.push_back(fmt::format("{} and {} may both be the {}: the first is taken", column_name(layout, *first),
                                                  column_name(layout, c), role_text(role)));
            continue;
        }
        column.role = role;
    }
    for (std::size_t c = 0; c < layout.columns.size(); ++c) {
        LogColumn& column = layout.columns[c];
        const bool value = column.role != ColumnRole::unused && column.role != ColumnRole::time && column.role != ColumnRole::date;
        if (!value || column.unit.quantity != LogQuantity::unknown) continue;
        const auto given = column.role == ColumnRole::energy ? unit_named(answers.energy_unit) : std::nullopt;
        if (given && given->quantity == LogQuantity::energy) column.unit = *given;
        else if (column.role == ColumnRole::energy) ask_energy_unit(rows, c, detection);
        else {
            column.unit = basic_unit(column.role);
            detection.notes.push_back(fmt::format("{} has no unit: read as {}", column_name(layout, c), column.unit.name));
        }
    }
    const bool current_and_voltage = layout.column_of(ColumnRole::current) && layout.column_of(ColumnRole::voltage);
    if (!layout.column_of(ColumnRole::energy) && !layout.column_of(ColumnRole::power) && !current_and_voltage)
        detection.questions.push_back(
            {OpenQuestion::no_values, "no column of register or power (or voltage and current) is recognised: name it", {}});
    return {};
}

} // namespace ullage
