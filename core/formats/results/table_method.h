// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "measure/options.h"

#include <string>
#include <utility>
#include <vector>

namespace ullage {

/// Heading and text of each part of the method behind a comparison, with the figures taken for granted, the sources and what the figures are not.
[[nodiscard]] std::vector<std::pair<Message, Message>> comparison_method(const MeasureOptions& options = {});

/// The same for the readings and the intervals of a run.
[[nodiscard]] std::vector<std::pair<Message, Message>> readings_method();
[[nodiscard]] std::vector<std::pair<Message, Message>> intervals_method();
[[nodiscard]] std::vector<std::pair<Message, Message>> gauge_steps_method();

} // namespace ullage
