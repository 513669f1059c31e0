// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/payload_number.h"

#include "base/number.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>
#include <string>

namespace ullage {

namespace {

constexpr int most_exponent = 40; // SCPI says 9.91E37 for no number

/// Documents nested deeper than any meter's are refused before they are read: what is deep costs memory out of all proportion.
bool is_deep(std::string_view text) {
    constexpr int most_depth = 64;
    int depth = 0;
    bool quoted = false, escaped = false;
    for (const char c : text) {
        if (escaped) escaped = false;
        else if (quoted && c == '\\') escaped = true;
        else if (c == '"') quoted = !quoted;
        else if (!quoted && (c == '[' || c == '{')) {
            if (++depth > most_depth) return true;
        } else if (!quoted && (c == ']' || c == '}')) --depth;
    }
    return false;
}

std::optional<double> at_pointer(const nlohmann::json& document, const LiveField& field) {
    // The pointer was checked when it was entered; a reference such as "/-" or "/01" still throws.
    try {
        const nlohmann::json::json_pointer pointer(*field.pointer);
        if (!document.contains(pointer)) return std::nullopt;
        const nlohmann::json& found = document.at(pointer);
        if (found.is_number()) return field.value_of(found.get<double>());
        if (found.is_string()) return number_in_text(found.get_ref<const std::string&>(), field);
    } catch (const nlohmann::json::exception&) {}
    return std::nullopt;
}

} // namespace

std::optional<double> number_in_text(std::string_view text, const LiveField& field) {
    while (!text.empty() && (text.back() == '\r' || text.back() == '\n' || text.back() == '\0')) text.remove_suffix(1);
    text = trimmed(text);
    LogNumber number;
    const char decimal = text.find(',') != std::string_view::npos && text.find('.') == std::string_view::npos ? ',' : '.';
    if (text.size() > 100 || !read_number(text, decimal, 0, number)) return std::nullopt;
    if (!number.suffix.empty() && !unit_named(number.suffix)) return std::nullopt;
    if (std::abs(number.exponent) > most_exponent) return std::nullopt;
    const double power = std::pow(10.0, std::abs(number.exponent));
    const auto mantissa = static_cast<double>(number.mantissa);
    return field.value_of(number.exponent < 0 ? mantissa / power : mantissa * power, number.suffix);
}

std::vector<std::optional<double>> numbers_in(std::string_view payload, std::span<const LiveField* const> fields) {
    std::vector<std::optional<double>> values(fields.size());
    if (payload.size() > most_payload_bytes) return values;
    const bool json = std::ranges::any_of(fields, [](const LiveField* field) { return field->pointer.has_value(); });
    const nlohmann::json document = json && !is_deep(payload) ? nlohmann::json::parse(payload.begin(), payload.end(), nullptr, false)
                                                              : nlohmann::json(nlohmann::json::value_t::discarded);
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (!fields[i]->pointer) values[i] = number_in_text(payload, *fields[i]);
        else if (!document.is_discarded()) values[i] = at_pointer(document, *fields[i]);
    }
    return values;
}

} // namespace ullage
