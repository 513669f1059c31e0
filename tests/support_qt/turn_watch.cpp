// SPDX-License-Identifier: GPL-3.0-or-later
#include "support_qt/turn_watch.h"

#include <QAbstractEventDispatcher>
#include <QCoreApplication>
#include <QElapsedTimer>
#include <QThread>

#include <algorithm>
#include <ctime>

namespace ullage::test {

namespace {

constexpr int turns_after = 20;
constexpr qint64 longest_wait_ms = 60'000;

double processor_ms() {
    timespec spent{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &spent);
    return static_cast<double>(spent.tv_sec) * 1e3 + static_cast<double>(spent.tv_nsec) * 1e-6;
}

} // namespace

TurnWatch::TurnWatch(QObject* parent) : QObject(parent) {
    const auto* dispatcher = QAbstractEventDispatcher::instance();
    connect(dispatcher, &QAbstractEventDispatcher::awake, this, &TurnWatch::turned);
    connect(dispatcher, &QAbstractEventDispatcher::aboutToBlock, this, &TurnWatch::turned);
}

void TurnWatch::turned() {
    const double now_ms = processor_ms();
    longest_ms_ = std::max(longest_ms_, now_ms - since_ms_);
    since_ms_ = now_ms;
}

double TurnWatch::longest_ms(const std::function<void()>& action, const std::function<bool()>& done) {
    since_ms_ = processor_ms();
    longest_ms_ = 0;
    QElapsedTimer wall;
    wall.start();
    action();
    int left = turns_after;
    while (left > 0 && wall.elapsed() < longest_wait_ms) {
        QCoreApplication::processEvents();
        turned();
        if (done()) --left;
        QThread::msleep(1);
    }
    return longest_ms_;
}

} // namespace ullage::test
