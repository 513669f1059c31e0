// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"

namespace ullage {

/// Where the present comes from; tests give a clock of their own.
class Clock {
public:
    virtual ~Clock() = default;
    [[nodiscard]] virtual UtcMs now_ms() const = 0;
    /// Seconds by which to tell how long something took: they run on evenly, from a moment that means nothing, whatever is done to the present.
    [[nodiscard]] virtual double running_s() const;
};

/// The machine's clock.
class SystemClock final : public Clock {
public:
    [[nodiscard]] UtcMs now_ms() const override;
};

} // namespace ullage
