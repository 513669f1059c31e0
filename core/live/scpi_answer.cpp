// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/scpi_answer.h"

#include "live/payload_number.h"

#include <cmath>

namespace ullage {

std::optional<double> number_in_answer(std::string_view answer, const LiveField& field) {
    for (int item = 1; item < field.item; ++item) {
        const auto comma = answer.find(',');
        if (comma == std::string_view::npos) return std::nullopt;
        answer.remove_prefix(comma + 1);
    }
    LiveField plain = field;
    plain.times = 1;
    plain.unit.clear();
    constexpr double least_special = 9.8e37;
    const auto number = number_in_text(answer.substr(0, answer.find(',')), plain);
    if (!number || std::abs(*number) >= least_special) return std::nullopt;
    return number_in_text(answer.substr(0, answer.find(',')), field);
}

} // namespace ullage
