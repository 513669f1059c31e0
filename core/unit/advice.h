// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace ullage {

/// What stands in a reason between why something is not known and what the tester may do about it.
inline constexpr std::string_view advice_mark = ": make ";

/// The reason without the advice at its end, which is for the tester and not for readers.
[[nodiscard]] inline std::string without_advice(std::string_view reason) {
    const auto at = reason.find(advice_mark);
    if (at == std::string_view::npos) return std::string(reason);
    const auto end = reason.find_first_of(";.", at);
    return std::string(reason.substr(0, at)) + std::string(end == std::string_view::npos ? std::string_view() : reason.substr(end));
}

} // namespace ullage
