// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"

namespace ullage {

/// A reason, a sentence or a remark without the advice in it: it is for the tester and not for readers. Advice is what is said in the context
/// "advice".
[[nodiscard]] inline Message without_advice(const Message& reason) { return without(reason, "advice"); }

} // namespace ullage
