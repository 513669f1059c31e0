// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comparison/column_order.h"

#include <algorithm>
#include <set>

namespace ullage {

std::vector<std::string> arranged(const std::vector<std::string>& keys, const std::vector<std::string>& wanted) {
    std::vector<std::string> order;
    for (const std::string& key : wanted)
        if (std::ranges::count(keys, key) && !std::ranges::count(order, key)) order.push_back(key);
    for (std::size_t i = 0; i < keys.size(); ++i) {
        if (std::ranges::count(order, keys[i])) continue;
        const auto before = i == 0 ? order.end() : std::ranges::find(order, keys[i - 1]);
        order.insert(before == order.end() ? order.begin() : before + 1, keys[i]);
    }
    return order;
}

std::string column_choice_text(const ColumnChoice& choice) {
    std::string text;
    const auto add = [&](const std::string& key) {
        const auto shown = choice.shown.find(key);
        text += (text.empty() ? "" : ",") + key + (shown == choice.shown.end() ? "" : shown->second ? "+" : "-");
    };
    for (const std::string& key : choice.order) add(key);
    // Without an order of its own a choice still has to be kept: a leading comma says that the keys are not ordered.
    if (!choice.order.empty() || choice.shown.empty()) return text;
    for (const auto& [key, shown] : choice.shown) add(key);
    return "," + text;
}

ColumnChoice column_choice_from(std::string_view text) {
    ColumnChoice choice;
    const bool ordered = !text.starts_with(',');
    if (!ordered) text.remove_prefix(1);
    std::set<std::string> taken;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find(','), text.size());
        std::string key(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
        const char sign = key.empty() ? '\0' : key.back();
        if (sign == '+' || sign == '-') key.pop_back();
        const bool sound = !key.empty() && key.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789_") == std::string::npos;
        if (!sound || !taken.insert(key).second) continue;
        if (sign == '+' || sign == '-') choice.shown[key] = sign == '+';
        if (ordered) choice.order.push_back(key);
    }
    return choice;
}

} // namespace ullage
