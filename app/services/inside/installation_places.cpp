// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/inside/installation_parts.h"

#include "services/settings.h"
#include "style/words.h"

#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QStandardPaths>
#include <QStorageInfo>
#include <QTemporaryFile>

#include <fcntl.h>

namespace ullage {

namespace {

constexpr qint64 little_room_bytes = 100 * 1000 * 1000;

/// The folder itself, or the one in which it would be made.
QString existing_folder(const QString& folder) {
    QFileInfo there(folder);
    while (!there.exists() && !there.isRoot()) there = QFileInfo(there.absolutePath());
    return there.absoluteFilePath();
}

/// Whether a file there can be held by a lock of its descriptor, as a logbook is while it is open.
bool can_be_locked(int descriptor) {
    struct flock whole {};
    whole.l_type = F_WRLCK;
    whole.l_whence = SEEK_SET;
    return ::fcntl(descriptor, F_OFD_SETLK, &whole) == 0;
}

bool can_be_leased(int descriptor) {
    if (::fcntl(descriptor, F_SETLEASE, F_WRLCK) != 0) return false;
    ::fcntl(descriptor, F_SETLEASE, F_UNLCK);
    return true;
}

InstallationRow written(const QString& subject, const QString& folder, const QString& needed_for, bool holds_logbooks = false) {
    InstallationRow row{tr("Places"), subject, InstallationRow::State::good, path_from_home(folder), {}};
    const QString there = existing_folder(folder);
    QTemporaryFile trial(QDir(there).filePath(QStringLiteral(".ullage-check-XXXXXX")));
    if (!trial.open() || trial.write("ullage\n") < 0 || !trial.flush()) {
        row.state = InstallationRow::State::fault;
        row.found = tr("%1: nothing can be written there (%2)").arg(row.found, trial.errorString());
        row.follows = needed_for;
        return row;
    }
    const qint64 free_bytes = QStorageInfo(there).bytesAvailable();
    row.found = tr("%1, written, %2 free").arg(row.found, QLocale().formattedDataSize(free_bytes, 1, QLocale::DataSizeSIFormat));
    if (free_bytes < little_room_bytes) {
        row.state = InstallationRow::State::note;
        row.follows = tr("There is little room left. Make some.");
    }
    if (!holds_logbooks) return row;
    if (!can_be_locked(trial.handle())) {
        row.state = InstallationRow::State::fault;
        row.follows = tr("Files there cannot be locked, so a logbook cannot be opened there. Keep it on a disk of this machine.");
    } else if (!can_be_leased(trial.handle())) {
        row.state = InstallationRow::State::note;
        row.follows = tr("Files there cannot be leased: copy a logbook only when it is not recorded into. A disk of this machine offers it.");
    }
    return row;
}

QString state_folder() {
    const QString told = qEnvironmentVariable("XDG_STATE_HOME");
    return QDir(QDir::isAbsolutePath(told) ? told : QDir::home().filePath(QStringLiteral(".local/state"))).filePath(QStringLiteral("ullage"));
}

} // namespace

void check_places(QList<InstallationRow>& rows, const Settings& settings, const QString& logbooks) {
    rows << written(tr("settings"), QFileInfo(settings.path()).absolutePath(), tr("Settings are forgotten at the end of the program."));
    rows << written(tr("notes on files"), state_folder(),
                    tr("The program does not know the files that it wrote, so commands ask for --force to replace them."));
    rows << written(tr("sample logbook"), QStandardPaths::writableLocation(QStandardPaths::AppDataLocation),
                    tr("The sample logbook cannot be made there."));
    rows << written(tr("temporary files"), QDir::tempPath(), tr("Workbooks, imports and checks need room there."));
    if (!logbooks.isEmpty()) rows << written(tr("folder of the logbook"), logbooks, tr("Nothing can be recorded there."), true);
    if (settings.backupOn() && !settings.backupFolder().isEmpty())
        rows << written(tr("copies of logbooks"), settings.backupFolder(), tr("No copies are made. Choose another folder in Settings."));
}

} // namespace ullage
