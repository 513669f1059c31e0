// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/json/quantity_json.h"

#include "formats/text/table_unicode.h"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace ullage {

Json number_json(std::optional<double> number) {
    if (!number || !std::isfinite(*number)) return nullptr;
    return *number;
}

Json quantity_json(const Quantity& quantity) {
    return {{"value", number_json(quantity.value)},          {"lower", number_json(quantity.lower)},
            {"upper", number_json(quantity.upper)},          {"unit", quantity.unit},
            {"kind", std::string(kind_text(quantity.kind))}, {"reason", quantity.reason.english()}};
}

std::string json_text(const Json& json) {
    const std::string dumped = json.dump(2, ' ', false, Json::error_handler_t::replace) + '\n';
    std::string text;
    text.reserve(dumped.size());
    // Such characters stand within strings only, where \u202E is the same text (RFC 8259, 7).
    const auto is_plain = [](char c) { return (c >= ' ' && c < 0x7F) || c == '\n'; };
    for (std::string_view rest = dumped; !rest.empty();) {
        const auto plain = static_cast<std::size_t>(std::ranges::find_if_not(rest, is_plain) - rest.begin());
        text += rest.substr(0, plain);
        rest.remove_prefix(plain);
        if (rest.empty()) break;
        const Letter letter = first_letter(rest);
        if (acts_unseen(letter.code)) text += shown_escape(letter.code);
        else text += letter.bytes;
        rest.remove_prefix(letter.bytes.size());
    }
    return text;
}

} // namespace ullage
