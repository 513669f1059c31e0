// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"

namespace ullage {

/// The context of what is said to the tester alone: what he may do where a reason says that something is not known. It stands behind the reason, with
/// the sign that parts them: `reason + say(phrase("advice", ": make a drain near %1 W"), …)`.
inline constexpr const char* advice_context = "advice";

/// The message without the advice in it: for readers.
[[nodiscard]] inline Message without_advice(const Message& message) { return without(message, advice_context); }

} // namespace ullage
