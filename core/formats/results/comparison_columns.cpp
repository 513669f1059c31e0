// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/results/comparison_columns.h"

#include "formats/results/comparison_table.h"
#include "formats/tables/table_printed.h"

#include <algorithm>
#include <set>
#include <utility>

namespace ullage {

namespace {

using Keys = std::vector<std::string>;

/// A figure as tested and its like at one load.
constexpr std::pair<std::string_view, std::string_view> likes[] = {
    {"delivered_wh", "deliverable_wh"}, {"usable_fraction", "usable_fraction_at_load"}, {"duration_h", "run_time_h"}, {"mean_load_w", "based_on"}};

bool has(const Keys& keys, std::string_view key) { return std::ranges::find(keys, key) != keys.end(); }

std::string_view like_of(std::string_view key) {
    for (const auto& [tested, at_load] : likes) {
        if (key == tested) return at_load;
        if (key == at_load) return tested;
    }
    return {};
}

bool is_at_load(std::string_view key) {
    return std::ranges::any_of(likes, [key](const auto& pair) { return pair.second == key; });
}

Keys keys_of(const Table& table) {
    Keys keys;
    for (const TableColumn& column : table.columns) keys.push_back(column.key);
    return keys;
}

/// Whether rows have a text of this column in common with others.
bool repeats(const Table& table, const Keys& keys, std::string_view key) {
    const auto at = static_cast<std::size_t>(std::ranges::find(keys, key) - keys.begin());
    if (at == keys.size()) return false;
    std::set<std::string> seen;
    return !std::ranges::all_of(table.rows, [&](const TableRow& row) {
        const auto* text = std::get_if<Message>(&cell_at(row, at));
        return text && seen.insert(text->text()).second;
    });
}

} // namespace

std::optional<std::vector<std::string>> ready_columns(std::string_view name) {
    if (name == readers_set)
        return Keys{"unit",       "rated_wh",       "delivered_wh",  "usable_fraction",        "mean_load_w",
                    "duration_h", "no_load_draw_w", "gauge_verdict", "price_per_delivered_kwh"};
    if (name != spreadsheet_set) return std::nullopt;
    Keys keys;
    for (const ColumnName& column : comparison_columns()) keys.push_back(column.key);
    return keys;
}

std::vector<std::string> columns_for(const Table& table, const std::vector<std::string>& wanted) {
    const Keys there = keys_of(table);
    const bool at_load = has(there, likes[0].second);
    const bool everything = wanted == ready_columns(spreadsheet_set);
    Keys chosen;
    const auto take = [&](std::string_view key) {
        const auto at = std::ranges::find(there, key);
        if (at == there.end() || has(chosen, key)) return;
        if (everything && is_unused(table, static_cast<std::size_t>(at - there.begin()))) return;
        chosen.emplace_back(key);
    };
    for (const std::string& key : wanted) {
        const std::string_view like = like_of(key);
        const bool stands_for_like = !like.empty() && is_at_load(key) != at_load && !has(wanted, like);
        take(stands_for_like ? like : std::string_view(key));
        if (key != "unit" || everything) continue;
        // Where the name says too little.
        if (has(there, "logbook")) take("logbook");
        if (repeats(table, there, "unit")) take("run");
    }
    return chosen;
}

std::string column_keys_text(const std::vector<std::string>& keys) {
    std::string text;
    for (const std::string& key : keys) text += (text.empty() ? "" : ",") + key;
    return text;
}

std::vector<std::string> column_keys_from(std::string_view text) {
    Keys keys;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(','), text.size());
        std::string key(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        const bool sound = !key.empty() && key.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789_") == std::string::npos;
        if (sound && !has(keys, key)) keys.push_back(std::move(key));
    }
    return keys;
}

} // namespace ullage
