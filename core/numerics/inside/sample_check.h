// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/result.h"

#include <cstddef>
#include <optional>
#include <span>

namespace ullage {

/// What is wrong with the points of a fit, in words; absent when nothing is. Checked in this order: equal lengths (sigma may
/// be empty), at least `least_points`, every value finite, every sigma > 0. `task` names the fit in the message.
[[nodiscard]] std::optional<Error> check_points(const Phrase& task, std::span<const double> x, std::span<const double> y,
                                                std::span<const double> sigma, std::size_t least_points);

/// Absent when two values of x differ; else an error.
[[nodiscard]] std::optional<Error> check_spread(const Phrase& task, std::span<const double> x);

/// The error of a fit whose numbers leave the range of a double.
[[nodiscard]] Error out_of_range(const Phrase& task);

} // namespace ullage
