// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/look_refresher.h"

#include "document/document.h"
#include "style/words.h"

#include <algorithm>
#include <memory>
#include <utility>

namespace ullage {

namespace {

constexpr int ask_every_ms = 1000;
constexpr qint64 longest_waiting_ms = 3000; ///< for what is recorded to be in the file, after which it is read from beside it
constexpr qint64 rest_per_look = 20, longest_rest_ms = 60'000;

} // namespace

/// What the thread brings back.
struct LookRefresher::Found {
    int logbook = 0;
    std::optional<Recorder> recorder;
    std::optional<Result<OpenedLogbook>> look; ///< absent where the file says the same as before
    qint64 took_ms = 0;
};

LookRefresher::LookRefresher(Document& document, QObject* parent) : QObject(parent), document_(document) {
    thread_.setMaxThreadCount(1);
    timer_.setInterval(ask_every_ms);
    connect(&timer_, &QTimer::timeout, this, &LookRefresher::tick);
    connect(&document_, &Document::opened, this, &LookRefresher::restart);
    connect(&document_, &Document::closed, this, &LookRefresher::restart);
    restart();
}

LookRefresher::~LookRefresher() {
    ending_ = true;
    thread_.waitForDone();
}

void LookRefresher::restart() {
    ++logbook_;
    recorder_.reset();
    trouble_.clear();
    rest_ms_ = 0;
    waiting_.invalidate();
    looked_ms_ = document_.clock().now_ms();
    if (!document_.isLooking()) return timer_.stop();
    recorder_ = recorder_of(native_path(document_.path()));
    timer_.start();
    emit changed();
}

void LookRefresher::tick() {
    if (busy_ || document_.isImporting()) return;
    const CopyAge age = document_.lookAge();
    if (age != CopyAge::waiting) waiting_.invalidate();
    else if (!waiting_.isValid()) waiting_.start();
    const bool rested = !since_look_.isValid() || since_look_.elapsed() >= rest_ms_;
    const bool look = rested && (age == CopyAge::outdated || (waiting_.isValid() && waiting_.elapsed() >= longest_waiting_ms));
    busy_ = true;
    auto found = std::make_shared<Found>();
    found->logbook = logbook_;
    found->recorder = recorder_;
    thread_.start([this, found, look, path = document_.path(), &clock = document_.clock()] {
        QElapsedTimer taken;
        taken.start();
        // Who it is does not change as long as somebody does.
        if (!is_recorded_into(native_path(path))) found->recorder.reset();
        else if (!found->recorder) found->recorder = recorder_of(native_path(path));
        if (look) found->look.emplace(look_at_logbook(path, clock, &ending_));
        found->took_ms = taken.elapsed();
        QMetaObject::invokeMethod(
            this, [this, found] { take(found); }, Qt::QueuedConnection);
    });
}

void LookRefresher::take(const std::shared_ptr<Found>& found) {
    busy_ = false;
    if (found->logbook != logbook_ || !document_.isLooking()) return;
    const bool another = std::exchange(recorder_, found->recorder) != recorder_;
    if (!found->look) {
        if (another) emit changed();
        return;
    }
    if (document_.isImporting()) return; // it is looked at again
    QElapsedTimer shown;
    shown.start();
    trouble_ = *found->look ? QString() : text_of(found->look->error().sentence());
    if (*found->look) {
        document_.adoptLook(std::move(*found->look).value());
        looked_ms_ = document_.clock().now_ms();
        waiting_.invalidate();
    }
    rest_ms_ = std::min((found->took_ms + shown.elapsed()) * rest_per_look, longest_rest_ms);
    since_look_.start();
    emit changed();
}

} // namespace ullage
