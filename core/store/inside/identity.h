// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "base/result.h"

#include <array>
#include <filesystem>
#include <optional>
#include <string>

namespace ullage::store {

/// Which logbook a file holds: the identifiers of its first unit, meter, load list and PV sheet, absent where there is none yet. Nothing is ever
/// removed from a logbook, so that they are the same in each later state of it.
struct Identity {
    std::array<std::optional<std::string>, 4> first;

    [[nodiscard]] bool empty() const { return first == std::array<std::optional<std::string>, 4>(); }
    /// Whether this may be an earlier state of what `later` is.
    [[nodiscard]] bool may_become(const Identity& later) const;
};

/// Of a file that nobody writes to, without its contents being checked. Errors: those of a header or schema that is no logbook's; io.
[[nodiscard]] Result<Identity> identity_of(const std::filesystem::path& path);

} // namespace ullage::store
