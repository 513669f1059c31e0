// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/inside/layout_columns.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <span>

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
constexpr std::array<std::string_view, 18> other_words = {"factor",  "apparent", "reactive", "min",    "max",         "minimum",
                                                          "maximum", "peak",     "average",  "cost",   "temperature", "frequency",
                                                          "set",     "limit",    "target",   "health", "soh",         "input"};
/// English, German, French, Spanish: in the header of a percentage they make it the gauge.
constexpr std::array<std::string_view, 11> shares_of_battery = {"gauge",     "soc",      "battery", "batt",    "charge",   "level",
                                                                "ladestand", "batterie", "akku",    "bateria", "remaining"};
/// In the header of a power, beside a gauge: what the unit says of its output.
constexpr std::array<std::string_view, 5> output_words = {"output", "out", "ausgang", "sortie", "salida"};

ColumnRole role_of(const HeaderWords& header, const std::optional<LogUnit>& unit) {
    for (const std::string& word : header.words)
        if (std::ranges::find(other_words, word) != other_words.end()) return ColumnRole::unused;
    const auto named = [&header](std::span<const std::string_view> words) {
        return std::ranges::any_of(header.words, [words](const std::string& word) { return std::ranges::find(words, word) != words.end(); });
    };
    // A percentage is a gauge only where its header says so.
    if (unit && unit->quantity == LogQuantity::share) return named(shares_of_battery) ? ColumnRole::gauge : ColumnRole::unused;
    const auto of_unit = [&](ColumnRole role) { return role == ColumnRole::power && named(output_words) ? ColumnRole::output : role; };
    if (unit) return of_unit(role_of(unit->quantity));
    for (const std::string& word : header.words)
        if (const ColumnRole role = role_of_header_word(word); role != ColumnRole::unused) return of_unit(role);
    return ColumnRole::unused;
}

Message column_name(const TraceLayout& layout, std::size_t c) {
    return layout.columns[c].title.empty() ? say(phrase("trace", "column %1"), say_number(c + 1)) : Message("`" + layout.columns[c].title + "`");
}

bool told_unused(const LayoutAnswers& answers, std::size_t c) {
    return std::ranges::any_of(answers.columns,
                               [c](const LayoutAnswers::Column& column) { return column.role == ColumnRole::unused && column.index == c; });
}

bool fits_role(const LogUnit& unit, ColumnRole role) { return unit.quantity != LogQuantity::unknown && unit.quantity == basic_unit(role).quantity; }

Result<void> take_named(const LayoutAnswers& answers, TraceLayout& layout) {
    for (const LayoutAnswers::Column& named : answers.columns) {
        if (named.index >= layout.columns.size())
            return Error{Failure::bad_input,
                         say(phrase("trace", "there is no column %1 for the %2"), say_number(named.index + 1), say_role(named.role)),
                         {},
                         say_count(layout.columns.size(),
                                   phrases("trace", "the log has %n columns; they count from 1", "the log has %n column; they count from 1"))};
        LogColumn& column = layout.columns[named.index];
        column.role = named.role;
        if (named.role == ColumnRole::unused) continue;
        // What the header says of another quantity does not hold for the one that was named.
        if (!fits_role(column.unit, named.role) && column.unit.quantity != LogQuantity::time) column.unit = {};
        if (named.unit.empty()) continue;
        const auto unit = unit_named(named.unit);
        const bool fits = unit && (named.role == ColumnRole::time || named.role == ColumnRole::date ? unit->quantity == LogQuantity::time
                                                                                                    : fits_role(*unit, named.role));
        if (!fits)
            return Error{Failure::bad_input,
                         say(phrase("trace", "`%1` is no unit of %2"), named.unit, say_role(named.role)),
                         {},
                         say(phrase("trace", "use W, kW, Wh, kWh, J, V, mV, A, mA or %, and s, ms, min or h for times"))};
        column.unit = *unit;
    }
    return {};
}

/// A log that holds the gauge may be the unit's own all along: what else it holds is a meter's only where somebody says so. Without a gauge a meter
/// wrote it.
void part_unit_from_meter(const LayoutAnswers& answers, const std::vector<ColumnContent>& contents, std::vector<ColumnRole>& by_header,
                          TraceDetection& detection) {
    const TraceLayout& layout = detection.layout;
    const auto is_free = [&](std::size_t c) {
        return layout.columns[c].role == ColumnRole::unused && !told_unused(answers, c) && contents[c].mostly(contents[c].numbers);
    };
    std::optional<std::size_t> gauge = layout.column_of(ColumnRole::gauge);
    for (std::size_t c = 0; c < by_header.size() && !gauge; ++c)
        if (by_header[c] == ColumnRole::gauge && is_free(c)) gauge = c;
    for (std::size_t c = 0; c < by_header.size(); ++c) {
        ColumnRole& role = by_header[c];
        if (!gauge && role == ColumnRole::output) role = ColumnRole::power;
        if (!gauge || !is_of_meter(role) || !is_free(c)) continue;
        const bool told = std::ranges::any_of(answers.columns, [role](const LayoutAnswers::Column& column) { return column.role == role; });
        if (told) continue;
        if (role == ColumnRole::voltage || role == ColumnRole::current) {
            detection.notes.push_back(say(phrase("trace", "%1 stands beside the gauge: taken for the unit's own, not used"), column_name(layout, c)));
        } else {
            std::vector<std::string> choices = {std::string(role_text(role))};
            if (role == ColumnRole::power) choices.emplace_back(role_text(ColumnRole::output));
            choices.emplace_back(role_text(ColumnRole::unused));
            detection.questions.push_back(
                {OpenQuestion::whose_values,
                 say(phrase("trace", "%1 stands beside the gauge in %2: did a meter measure it, or does the unit say so of itself? Name column %3"),
                     column_name(layout, c), column_name(layout, *gauge), say_number(c + 1)),
                 std::move(choices)});
        }
        role = ColumnRole::unused;
    }
}

/// Whether every number of a column lies within 0 and 1, and one is neither.
bool may_be_shares_of_one(const LayoutRows& rows, const TraceLayout& layout, std::size_t c) {
    bool between = false;
    for (const auto& row : rows.data) {
        LogNumber number;
        if (!read_number(row[c], layout.decimal, layout.grouping, number)) continue;
        const double value = static_cast<double>(number.mantissa) * std::pow(10.0, number.exponent);
        if (value < 0 || value > 1) return false;
        between = between || (value > 0 && value < 1);
    }
    return between;
}

void ask_energy_unit(const LayoutRows& rows, std::size_t c, TraceDetection& detection) {
    detection.questions.push_back(
        {OpenQuestion::energy_unit,
         say(phrase("trace", "the register in %1 has no unit (it begins with `%2`)"), column_name(detection.layout, c), rows.data.front()[c]),
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
    part_unit_from_meter(answers, contents, by_header, detection);
    const auto told = [&answers](ColumnRole role) {
        return std::ranges::any_of(answers.columns, [role](const LayoutAnswers::Column& column) { return column.role == role; });
    };
    for (std::size_t c = 0; c < layout.columns.size(); ++c) {
        LogColumn& column = layout.columns[c];
        if (column.role != ColumnRole::unused || told_unused(answers, c)) continue;
        if (units[c] && units[c]->quantity == LogQuantity::charge)
            detection.notes.push_back(say(phrase("trace", "%1 counts charge (Ah), which is no energy: not used"), column_name(layout, c)));
        const ColumnRole role = by_header[c];
        if (role == ColumnRole::unused || told(role) || !contents[c].mostly(contents[c].numbers)) continue;
        if (const auto first = layout.column_of(role)) {
            detection.notes.push_back(say(phrase("trace", "%1 and %2 may both be the %3: the first is taken"), column_name(layout, *first),
                                          column_name(layout, c), say_role(role)));
            continue;
        }
        column.role = role;
        if (role == ColumnRole::gauge)
            detection.notes.push_back(say(phrase("trace", "%1 names a share of the battery: taken for the unit's gauge"), column_name(layout, c)));
        if (role == ColumnRole::output)
            detection.notes.push_back(
                say(phrase("trace", "%1 stands beside the gauge: taken for what the unit says of its output, not for a meter's"),
                    column_name(layout, c)));
    }
    for (std::size_t c = 0; c < layout.columns.size(); ++c) {
        LogColumn& column = layout.columns[c];
        const bool value = column.role != ColumnRole::unused && column.role != ColumnRole::time && column.role != ColumnRole::date;
        if (!value || column.unit.quantity != LogQuantity::unknown) continue;
        const auto given = column.role == ColumnRole::energy  ? unit_named(answers.energy_unit)
                           : column.role == ColumnRole::gauge ? unit_named(answers.gauge_unit)
                                                              : std::nullopt;
        if (given && fits_role(*given, column.role)) column.unit = *given;
        else if (column.role == ColumnRole::energy) ask_energy_unit(rows, c, detection);
        else if (column.role == ColumnRole::gauge && may_be_shares_of_one(rows, layout, c))
            detection.questions.push_back(
                {OpenQuestion::gauge_unit,
                 say(phrase("trace", "the gauge in %1 has no unit (it begins with `%2`): name it with gauge=%3:% or gauge=%3:share"),
                     column_name(layout, c), rows.data.front()[c], say_number(c + 1)),
                 {"%", "share"}});
        else {
            column.unit = basic_unit(column.role);
            detection.notes.push_back(say(phrase("trace", "%1 has no unit: read as %2"), column_name(layout, c), column.unit.name));
        }
    }
    const bool of_unit = layout.column_of(ColumnRole::gauge) || layout.column_of(ColumnRole::output);
    const bool asked =
        std::ranges::any_of(detection.questions, [](const LayoutQuestion& question) { return question.about == OpenQuestion::whose_values; });
    const bool current_and_voltage = layout.column_of(ColumnRole::current) && layout.column_of(ColumnRole::voltage);
    if (!layout.column_of(ColumnRole::energy) && !layout.column_of(ColumnRole::power) && !current_and_voltage && !of_unit && !asked)
        detection.questions.push_back({OpenQuestion::no_values,
                                       say(phrase("trace", "no column of register, power (or voltage and current) or gauge is recognised: name it")),
                                       {}});
    return {};
}

} // namespace ullage
