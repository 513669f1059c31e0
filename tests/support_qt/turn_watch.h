// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include <functional>

namespace ullage::test {

/// Measures how long the event loop of this thread is kept from turning: the longest stretch of work between two moments at which it can take
/// input and paint. A nested event loop turns too.
///
/// What counts is the processor time that this thread spends, not the time by the clock: on a machine that builds beside the test the clock runs
/// while the thread waits for its turn, which says nothing about the program. Work that a thread of its own does is not counted, nor is
/// waiting for the disk.
class TurnWatch final : public QObject {
public:
    explicit TurnWatch(QObject* parent = nullptr);

    /// Does `action` and lets events through until `done` holds and 20 turns after it, or until a minute has gone. The longest stretch, ms.
    [[nodiscard]] double longest_ms(
        const std::function<void()>& action, const std::function<bool()>& done = [] { return true; });

private:
    void turned();

    double since_ms_ = 0, longest_ms_ = 0;
};

} // namespace ullage::test
