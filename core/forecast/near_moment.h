// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"

#include <string>
#include <string_view>

namespace ullage {

/// "Tue": the day of the week in local time of `zone`.
[[nodiscard]] Message say_weekday(UtcMs time_ms, std::string_view zone);
/// The same in the language in use.
[[nodiscard]] std::string weekday_text(UtcMs time_ms, std::string_view zone);

/// A moment as one says it at `as_of_ms`: "02:10" of the same day, "Tue 02:10" of another within six days, "16 May 02:10" beyond. Local time of
/// `zone`.
[[nodiscard]] Message say_near_moment(UtcMs time_ms, UtcMs as_of_ms, std::string_view zone);
/// The same in the language in use.
[[nodiscard]] std::string near_moment_text(UtcMs time_ms, UtcMs as_of_ms, std::string_view zone);

} // namespace ullage
