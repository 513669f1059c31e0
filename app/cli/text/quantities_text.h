// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/quantity.h"

#include <string>
#include <vector>

namespace ullage {

/// An empty line, then one line for each quantity: title, value with interval, kind, reason.
[[nodiscard]] std::string quantities_text(const std::vector<Quantity>& quantities);

} // namespace ullage
