// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace ullage {

/// The program's version, as the build states it.
[[nodiscard]] std::string_view program_version();

} // namespace ullage
