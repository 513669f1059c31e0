// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room formats/text: what keys of a run sheet's preface share.
#pragma once

#include "base/result.h"
#include "model/limits.h"

#include <optional>
#include <string>
#include <string_view>

namespace ullage::sheet {

/// bad_input without a place: the key is named by whoever reads it.
[[nodiscard]] Error wrong(const Message& what, const Message& remedy);
[[nodiscard]] Result<double> number_in(std::string_view text, const NumberRange& range);
/// Refuses a text that is too long.
[[nodiscard]] Result<void> put(std::string& place, std::string_view text, std::size_t most);
[[nodiscard]] std::string text_of(const std::optional<double>& number); ///< empty when absent

} // namespace ullage::sheet
