// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace ullage {

/// A text on one line for HTML and XML, in content or between quotes: & < > " ' are entities.
[[nodiscard]] std::string html_text(std::string_view text);

} // namespace ullage
