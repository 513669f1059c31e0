// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/clock.h"
#include "base/message.h"
#include "base/result.h"
#include "store/logbook.h"

#include <string>
#include <vector>

namespace ullage {

/// The logbook at `path`, for a command; a notice says so where it was checked from end to end and that took a second or longer. Errors: those of
/// Logbook::open.
[[nodiscard]] Result<Logbook> opened_logbook(const std::string& path, OpenMode mode, const Clock& clock, std::vector<Message>& notices);

/// The same for recording, made where there is no file. Errors: those of Logbook::create and Logbook::open.
[[nodiscard]] Result<Logbook> opened_or_made(const std::string& path, const Clock& clock, std::vector<Message>& notices);

} // namespace ullage
