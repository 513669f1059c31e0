// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "measure/options.h"

#include <string>
#include <utility>
#include <vector>

namespace ullage {

/// Heading and text of each part of the method behind a report: comparison_method() with what concerns gauge, losses and the
/// unit's drains together, and all sources.
[[nodiscard]] std::vector<std::pair<Message, Message>> report_method(const MeasureOptions& options);

} // namespace ullage
