// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/leaping_clock.h"

#include <atomic>
#include <ctime>
#include <sys/syscall.h>
#include <unistd.h>

namespace {

constexpr long long ns_per_s = 1'000'000'000;
std::atomic<long long> shown_ns = 0, leap_ns = 0; // a leap of 0: the machine's clock

int machine_time(clockid_t clock, timespec* now) { return static_cast<int>(::syscall(SYS_clock_gettime, clock, now)); }

} // namespace

/// Stands before the system's own, also for the library that measures durations.
extern "C" int clock_gettime(clockid_t clock, timespec* now) noexcept {
    if (clock != CLOCK_MONOTONIC || leap_ns == 0) return machine_time(clock, now);
    const long long moment_ns = shown_ns += leap_ns;
    *now = {moment_ns / ns_per_s, moment_ns % ns_per_s};
    return 0;
}

namespace ullage::test {

LeapingClock::LeapingClock(std::chrono::milliseconds leap) {
    timespec now{};
    machine_time(CLOCK_MONOTONIC, &now);
    shown_ns = now.tv_sec * ns_per_s + now.tv_nsec;
    leap_ns = std::chrono::nanoseconds(leap).count();
}

LeapingClock::~LeapingClock() { leap_ns = 0; }

} // namespace ullage::test
