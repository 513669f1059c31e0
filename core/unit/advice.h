// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"

#include <string>
#include <string_view>

namespace ullage {

/// What stands in a reason between why something is not known and what the tester may do about it.
inline constexpr std::string_view advice_mark = ": make ";
/// How advice that has other words begins.
inline constexpr std::string_view drain_advice = "; make a drain", gauge_advice = ": read the gauge more often",
                                  repeat_advice = ": repeat an early drain";

/// The reason without the advice in it, each up to the next full stop or semicolon: it is for the tester and not for readers.
[[nodiscard]] inline std::string without_advice(std::string_view reason) {
    std::string told(reason);
    for (const std::string_view mark : {advice_mark, drain_advice, gauge_advice, repeat_advice})
        for (auto at = told.find(mark); at != std::string::npos; at = told.find(mark, at)) {
            const auto end = told.find_first_of(";.", at + 1);
            told.erase(at, end == std::string::npos ? std::string::npos : end - at);
        }
    return told;
}

/// The same of a message whose advice is said in the context "advice".
[[nodiscard]] inline Message without_advice(const Message& reason) { return without(reason, "advice"); }

} // namespace ullage
