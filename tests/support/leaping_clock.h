// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>

namespace ullage::test {

/// While one lives, the clock by which this program measures how long something takes stands still but for a leap at each look at it, so that what
/// takes long need not be waited for.
class LeapingClock {
public:
    explicit LeapingClock(std::chrono::milliseconds leap);
    ~LeapingClock();
    LeapingClock(const LeapingClock&) = delete;
    LeapingClock& operator=(const LeapingClock&) = delete;
};

} // namespace ullage::test
