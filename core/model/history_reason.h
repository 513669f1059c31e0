// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"

#include <string>

namespace ullage {

/// Why the program itself put a further version into a history, where no person gave a reason.
enum class HistoryReason { undone, redone, not_all_recorded, run_not_ended, joined };

/// As a logbook keeps it: in English in every language. `name`: of the other logbook, where one was joined.
[[nodiscard]] std::string kept_reason(HistoryReason reason, const std::string& name = {});

/// A reason that a history keeps: one of the program's own in the language in use, any other as it was written.
[[nodiscard]] Message say_reason(const std::string& kept);

} // namespace ullage
