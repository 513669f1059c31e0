// SPDX-License-Identifier: GPL-3.0-or-later
// Where the heads stand, and what lines above the table state.
#include "foreign_tables/inside/table_heads.h"
#include "base/number.h"
#include "base/plain_text.h"

#include <algorithm>
#include <cctype>

namespace ullage {

namespace {

constexpr std::size_t longest_head = 80;

bool is_key(std::string_view text) { return text.ends_with(':'); }

/// A second line of a head: units, or how times are written, in brackets or not.
bool is_unit_line(const TableSheet& sheet, std::size_t row) {
    bool any_unit = false;
    if (row >= sheet.rows.size()) return false;
    for (const GridCell& cell : sheet.rows[row]) {
        if (cell.text.empty()) continue;
        std::string_view word = cell.text;
        while (!word.empty() && std::string_view("([").find(word.front()) != std::string_view::npos) word.remove_prefix(1);
        while (!word.empty() && std::string_view(")]").find(word.back()) != std::string_view::npos) word.remove_suffix(1);
        if (looks_numeric(word) || word.size() > 14) return false;
        any_unit = any_unit || known_table_unit(word).has_value();
    }
    return any_unit;
}

/// The key of a line above the table in the words of TableReading::preface; empty for one that no run needs.
std::string preface_key(std::string_view key) {
    std::string low(key);
    std::ranges::transform(low, low.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    const auto has = [&low](std::string_view word) { return low.find(word) != std::string::npos; };
    if (has("rated") || has("capacity") || has("nominal") || has("nenn") || has("kapazit")) return "rated_wh";
    if (has("second meter") || has("2nd meter") || has("zweiter z")) return "second_meter";
    if (has("meter") || has("z\u00E4hler") || has("plug")) return "meter";
    if (has("unit") || has("device") || has("ger\u00E4t") || has("station") || has("specimen")) return "unit";
    if (has("load") || has("last")) return "load";
    return {};
}

void take_preface(std::string_view key, const GridCell& value, TableReading& reading, std::string& rated_text) {
    const std::string name = preface_key(key);
    if (name.empty() || value.text.empty() || reading.preface.contains(name)) return;
    if (name != "rated_wh") {
        reading.preface[name] = value.text;
        return;
    }
    const bool comma = decimal_said_by(value.text) == DecimalSays::comma;
    const auto number = number_in_cell(value, comma ? NumberWriting{',', '.'} : NumberWriting{'.', ','});
    const std::string unit = number && !number->unit.empty() ? number->unit : meaning_of_head(key).unit;
    const auto known = unit_named(unit);
    if (!number || !known || known->quantity != LogQuantity::energy) return;
    if (!value.typed) rated_text = value.text;
    reading.preface[name] = exact_text(number->value * known->factor / known->divisor *
                                       (known->exponent == 3   ? 1000
                                        : known->exponent == 6 ? 1e6
                                                               : 1));
}

} // namespace

bool is_table_head(const TableSheet& sheet, std::size_t row, bool first) {
    std::size_t known = 0, filled = 0, measured = 0;
    for (const GridCell& cell : sheet.rows[row]) {
        if (cell.text.empty()) continue;
        if (cell.typed || looks_numeric(cell.text) || is_key(cell.text)) return false;
        ++filled;
        if (cell.text.size() > longest_head) continue;
        const HeadMeaning meaning = meaning_of_head(cell.text);
        known += meaning.known ? 1 : 0;
        measured += meaning.known && meaning.role != TableRole::remark && meaning.role != TableRole::unused ? 1 : 0;
    }
    if (known >= 2 && measured >= 1) return true;
    if (!first || measured == 0 || filled < 2) return false;
    // One known word alone is a head where the next row has numbers below several of its cells.
    for (std::size_t next = row + 1; next < sheet.rows.size(); ++next) {
        const auto numbers = std::ranges::count_if(sheet.rows[next], [](const GridCell& cell) { return cell.typed || looks_numeric(cell.text); });
        if (!sheet.rows[next].empty()) return numbers >= 2;
    }
    return false;
}

std::vector<std::string> head_titles(const TableSheet& sheet, std::size_t row, std::size_t& data) {
    std::vector<std::string> titles;
    for (const GridCell& cell : sheet.rows[row]) titles.push_back(with_plain_blanks(cell.text));
    data = row + 1;
    if (!is_unit_line(sheet, data)) return titles;
    if (titles.size() < sheet.rows[data].size()) titles.resize(sheet.rows[data].size());
    for (std::size_t c = 0; c < sheet.rows[data].size(); ++c)
        if (const std::string below = with_plain_blanks(sheet.rows[data][c].text); !below.empty())
            titles[c] += (titles[c].empty() ? "" : " ") + below;
    ++data;
    return titles;
}

void read_preface(const TableSheet& sheet, std::size_t end, TableReading& reading, std::string& rated_text) {
    for (std::size_t row = 0; row < std::min(end, sheet.rows.size()); ++row) {
        const auto& cells = sheet.rows[row];
        for (std::size_t c = 0; c < cells.size(); ++c) {
            const std::string_view text = cells[c].text;
            const auto colon = text.find(':');
            if (colon == std::string_view::npos) {
                // A key in one cell and its value in the next, without a colon: only where the row has these two.
                const bool pair = c + 1 < cells.size() && std::ranges::count_if(cells, [](const GridCell& cell) { return !cell.text.empty(); }) == 2;
                if (pair && !text.empty()) take_preface(text, cells[c + 1], reading, rated_text);
            } else if (colon + 1 < text.size()) {
                take_preface(text.substr(0, colon), {std::string(trimmed(text.substr(colon + 1))), false}, reading, rated_text);
            } else if (c + 1 < cells.size()) {
                take_preface(text.substr(0, colon), cells[c + 1], reading, rated_text);
            }
        }
    }
}

} // namespace ullage
