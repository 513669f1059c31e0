// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ullage::test {

/// How many runs a long simulation draws: under sanitizers, which look at each step and take many times as long, half. All of them run in the
/// other half of the tests (tests/simulated).
constexpr int simulated_runs(int all) {
#if defined(__SANITIZE_ADDRESS__)
    return all / 2;
#elif defined(__has_feature)
#if __has_feature(address_sanitizer)
    return all / 2;
#else
    return all;
#endif
#else
    return all;
#endif
}

} // namespace ullage::test
