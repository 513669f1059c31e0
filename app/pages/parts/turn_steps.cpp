// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/turn_steps.h"

#include <utility>

namespace ullage {

TurnSteps::TurnSteps(QObject* parent) : QObject(parent) {
    connect(&timer_, &QTimer::timeout, this, [this] {
        if (!isDone()) doNext();
        if (isDone()) timer_.stop();
    });
}

void TurnSteps::start(std::vector<std::function<void()>> steps, bool in_turns) {
    steps_ = std::move(steps);
    next_ = 0;
    if (in_turns) timer_.start(0);
    else finish();
}

void TurnSteps::finish() {
    timer_.stop();
    while (!isDone()) doNext();
}

void TurnSteps::doNext() {
    const auto step = steps_[next_++]; // a copy: the step may start others
    step();
}

} // namespace ullage
