// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>
#include <QTimer>

#include <functional>
#include <vector>

namespace ullage {

/// Work on a page in steps: either at once, or each step in a turn of the event loop of its own, so that the window stays awake meanwhile.
class TurnSteps final : public QObject {
public:
    explicit TurnSteps(QObject* parent);

    /// Takes the place of what was still to be done. `in_turns`: the first step comes in the next turn, else all are done on return.
    void start(std::vector<std::function<void()>> steps, bool in_turns);
    /// Does at once what is still to be done.
    void finish();
    [[nodiscard]] bool isDone() const { return next_ >= steps_.size(); }

private:
    void doNext();

    std::vector<std::function<void()>> steps_;
    std::size_t next_ = 0;
    QTimer timer_;
};

} // namespace ullage
