// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace ullage {

/// What can hurt in this work, a sentence each, as every report carries it. The last says what results are not.
[[nodiscard]] std::vector<std::string> safety_words();

} // namespace ullage
