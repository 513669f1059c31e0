// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/quantity.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>

namespace ullage {

using Json = nlohmann::ordered_json;

/// Of everything that is printed as JSON, beside the program's version; within one fields are only added. The schemas stand in resources/schema.
inline constexpr int json_format_version = 1;

/// The number, or null where it is absent or not finite.
[[nodiscard]] Json number_json(std::optional<double> number);

/// {"value", "lower", "upper", "unit", "kind", "reason"}.
[[nodiscard]] Json quantity_json(const Quantity& quantity);

/// Indented UTF-8 text with a line feed at its end; ill-formed UTF-8 in texts becomes U+FFFD.
[[nodiscard]] std::string json_text(const Json& json);

} // namespace ullage
