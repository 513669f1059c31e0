// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace ullage {

/// A new random UUID (RFC 4122 version 4) as 36 lower-case characters.
[[nodiscard]] std::string new_uuid();

} // namespace ullage
