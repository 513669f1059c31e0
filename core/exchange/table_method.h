// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>
#include <vector>

namespace ullage {

/// Heading and text of each part of the method behind a comparison, with the sources and what the figures are not.
[[nodiscard]] std::vector<std::pair<std::string, std::string>> comparison_method();

} // namespace ullage
