// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forecast/accounts.h"

#include <string>

namespace ullage {

/// What a running drain will do, for a terminal: cut-off and next gauge step as ranges with what they rest on, and what to read
/// next.
[[nodiscard]] std::string forecast_text(const RunForecast& forecast, const std::string& zone);

/// Both accounts of a running or stopped drain and what decides, with a heading; empty where they are not told.
[[nodiscard]] std::string accounts_text(const TwoAccounts& accounts, const Run& run);

} // namespace ullage
