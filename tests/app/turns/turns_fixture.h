// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support_qt/turn_watch.h"
#include "window_fixture.h"

#include <functional>

namespace ullage::test {

inline constexpr int most_tries = 3; ///< of what takes more than half of most_ms(): with other work on the machine the same work costs more time

/// 100 ms where the machine is as fast as that of the figures.
[[nodiscard]] double most_ms();

/// The window on a logbook of 1,000 units, with a watch on its turns.
class TurnTest : public WindowTest {
protected:
    static void SetUpTestSuite();
    void SetUp() override;

    void expect_turning(const char* what, const std::function<void()>& action);
    void expect_turning(const char* action_name);

    TurnWatch watch_;
    static inline QString made_; ///< the logbook that each test takes a copy of
};

} // namespace ullage::test
