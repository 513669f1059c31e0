// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/backup_keeper.h"

#include "document/document.h"
#include "services/settings.h"
#include "style/words.h"

#include <optional>
#include <utility>

namespace ullage {

namespace {

constexpr int due_every_ms = 60'000;
constexpr int after_opened_ms = 3000;               ///< the window is drawn first
constexpr qint64 rest_after_failure_ms = 3'600'000; ///< a full disk seldom empties within minutes

} // namespace

/// What the thread brings back.
struct BackupKeeper::Made {
    Result<BackupOutcome> outcome = BackupOutcome();
    bool due = false;
};

BackupKeeper::BackupKeeper(Document& document, Settings& settings, QObject* parent) : QObject(parent), document_(document), settings_(settings) {
    thread_.setMaxThreadCount(1);
    timer_.setInterval(due_every_ms);
    connect(&timer_, &QTimer::timeout, this, [this] { look(BackupMoment::while_open); });
    connect(&document_, &Document::opened, this, &BackupKeeper::restart);
    connect(&document_, &Document::closed, this, &BackupKeeper::restart);
    restart();
}

BackupKeeper::~BackupKeeper() {
    document_.disconnect(this);
    thread_.waitForDone();
    // The document is still open, or was closed a moment ago; what is recorded is on the disk either way.
    if (const QString last = std::exchange(open_, QString()); !last.isEmpty()) copy(last, BackupMoment::opened_or_closed);
    thread_.waitForDone();
}

BackupPlace BackupKeeper::place(const Settings& settings) { return {native_path(settings.backupFolder()), settings.backupDays()}; }

void BackupKeeper::restart() {
    const QString left = std::exchange(open_, document_.isOpen() && !document_.isLooking() ? document_.path() : QString());
    if (left != open_) {
        told_.clear();
        since_failure_.invalidate();
        if (!left.isEmpty()) copy(left, BackupMoment::opened_or_closed);
    }
    if (open_.isEmpty()) return timer_.stop();
    timer_.start();
    QTimer::singleShot(after_opened_ms, this, [this, opened = open_] {
        if (opened == open_) look(BackupMoment::opened_or_closed);
    });
}

void BackupKeeper::look(BackupMoment moment) {
    const bool resting = since_failure_.isValid() && since_failure_.elapsed() < rest_after_failure_ms;
    // Of a file that others took away or changed no copy is wanted in the place of a good one.
    if (open_.isEmpty() || busy_ || resting || document_.isImporting() || document_.displaced()) return;
    copy(open_, moment);
}

void BackupKeeper::copy(const QString& logbook, BackupMoment moment) {
    if (!settings_.backupOn()) return;
    busy_ = true;
    auto made = std::make_shared<Made>();
    thread_.start([this, made, moment, path = native_path(logbook), where = place(settings_), &clock = document_.clock()] {
        made->due = backup_due(path, where, clock.now_ms(), moment);
        if (made->due) made->outcome = back_up(path, where, clock);
        QMetaObject::invokeMethod(
            this, [this, made] { take(made); }, Qt::QueuedConnection);
    });
}

void BackupKeeper::finish() { thread_.waitForDone(); }

void BackupKeeper::take(const std::shared_ptr<Made>& made) {
    busy_ = false;
    if (!made->due) return;
    if (made->outcome) {
        told_.clear();
        since_failure_.invalidate();
        if (const auto& copy = made->outcome.value().copy) emit copied(path_text(copy->string()));
        return;
    }
    since_failure_.start();
    const QString sentence = text_of(made->outcome.error().sentence());
    if (std::exchange(told_, sentence) != sentence) emit failed(sentence);
}

} // namespace ullage
