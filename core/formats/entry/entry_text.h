// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"
#include "base/result.h"

#include <optional>
#include <string_view>

namespace ullage {

/// What a tester types into a cell of the entry row. All take a point or a comma as decimal sign, the other one between
/// groups of three digits (`1.234,5 Wh`, `1,234.5 Wh`; one sign alone is the decimal sign), and any case and spacing of the unit: `431`, `431 Wh`,
/// `0,431 kWh`, `1.55MJ` → Wh; `69`, `69 %` → percent; `64`, `64 W`, `0.064 kW` → W. Errors say what was expected. A negative register or power, and
/// a gauge outside 0 to 100, are refused.
[[nodiscard]] Result<double> parse_energy_wh(std::string_view text);
/// As parse_energy_wh, for a register of this step (Wh; absent: not stated). A number without a unit that such a register cannot show in Wh, but can
/// in kWh, is kWh, as on the meter's display: `2.033` on a step of 1 Wh is 2033 Wh, on a step of 0.001 Wh 2.033 Wh.
[[nodiscard]] Result<double> parse_register_wh(std::string_view text, std::optional<double> step_wh);
[[nodiscard]] Result<double> parse_gauge_percent(std::string_view text);
[[nodiscard]] Result<double> parse_power_w(std::string_view text);

/// The moment a tester means, seen from `now_ms` in `zone`. "Past" reaches 10 minutes ahead of now, since clocks
/// differ. Understood are
/// - nothing, or `now`: now, in whole seconds (this word and those below also in the language in use);
/// - `02:40`, `2:40`, `02.40`, `0240`, `02:40:30`, `2:40 am`, `2:40pm`: the latest such time of day that is past;
/// - `-10m`, `-1h30m`, `-2h`, `10 min ago`: so long before now;
/// - `today 02:40`, `yesterday 23:50`;
/// - `14 May 23:50` (without a year the latest that is past), `14 May 2027 23:50`; months of English and of the language in
///   use, from 3 letters, as `14. Mai`, `14 de mayo`;
/// - date and time by ISO 8601.
/// Of a local time that occurs twice the later is taken if it is past, else the earlier. Errors: other text, a
/// time that the zone skips, no such date.
[[nodiscard]] Result<UtcMs> parse_moment(std::string_view text, UtcMs now_ms, std::string_view zone);

} // namespace ullage
