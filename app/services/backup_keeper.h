// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/logbook_copies.h"

#include <QElapsedTimer>
#include <QObject>
#include <QString>
#include <QThreadPool>
#include <QTimer>

#include <memory>

namespace ullage {

class Document;
class Settings;

/// Has the open logbook copied as the settings say (store/backup.h): soon after it is opened, when it is closed or the program ends, and once a day
/// while it stays open, where it has changed. The copy is made in a thread of its own from what is on the disk, so that no entry waits for it. One
/// that is open for looking is left to who records into it.
///
/// Document and settings must outlive it. At its end it waits for a copy under way, and makes the last one.
class BackupKeeper final : public QObject {
    Q_OBJECT
public:
    BackupKeeper(Document& document, Settings& settings, QObject* parent = nullptr);
    ~BackupKeeper() override;

    /// Where the copies of a logbook lie, as the settings say.
    [[nodiscard]] static BackupPlace place(const Settings& settings);
    /// Looks whether a copy is due, as the timer does.
    void look(BackupMoment moment);
    /// Waits until no copy is being made.
    void finish();

signals:
    void copied(const QString& path);     ///< a copy was made
    void failed(const QString& sentence); ///< none could be made; said once until one is

private:
    struct Made;
    void restart();
    void copy(const QString& logbook, BackupMoment moment);
    void take(const std::shared_ptr<Made>& made);

    Document& document_;
    Settings& settings_;
    QTimer timer_;
    QString open_; ///< the logbook that is open for recording
    QString told_; ///< the last failure
    QElapsedTimer since_failure_;
    bool busy_ = false;
    QThreadPool thread_;
};

} // namespace ullage
