// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/inside/key_values.h"

#include "base/number.h"

#include <utility>

namespace ullage::sheet {

Error wrong(const Message& what, const Message& remedy) { return Error{Failure::bad_input, what, {}, remedy}; }

Result<double> number_in(std::string_view text, const NumberRange& range) {
    Result<double> number = parse_number(trimmed(text));
    if (!number) return number;
    if (!check_number({}, number.value(), range))
        return wrong(say(phrase("text", "`%1` is out of range"), text), say(phrase("text", "give %1"), say_range(range)));
    return number;
}

Result<void> put(std::string& place, std::string_view text, std::size_t most) {
    if (auto good = check_text({}, text, most); !good) return good;
    place = text;
    return {};
}

std::string text_of(const std::optional<double>& number) { return number ? exact_text(*number) : std::string(); }

} // namespace ullage::sheet
