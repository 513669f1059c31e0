// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"

#include <chrono>

namespace ullage {

double Clock::running_s() const { return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count(); }

UtcMs SystemClock::now_ms() const {
    using namespace std::chrono;
    return duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count();
}

} // namespace ullage
