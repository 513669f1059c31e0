// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/logbook_content.h"
#include "window/controller.h"

#include <QList>
#include <QStringList>

#include <atomic>
#include <functional>
#include <optional>

class QMenu;
class QUrl;

namespace ullage {

class LogbookAhead;
class PhotoDialog;

/// Logbooks as files, and what goes into the open one and out of it as a file: run sheets, readings, photos.
class FileController final : public Controller {
    Q_OBJECT
public:
    using Controller::Controller;

    void newLogbook();
    void chooseLogbook();
    /// Opens a logbook; says why not where it cannot be opened, leaving what was open.
    void openLogbook(const QString& path);
    /// Opens the logbook that was open when the program last ended, where it still exists.
    void openAhead(LogbookAhead& ahead); ///< takes over what is being opened
    void openSample();
    void saveCopy();
    /// Saves what is open under another name and opens that, with what is half typed; for a file that others took away.
    void saveElsewhere();
    void closeLogbook();
    /// Says that a logbook was checked as it was opened, where that took long.
    void tellOpeningCheck();
    void fillRecentMenu(QMenu& menu);

    void importSheet(); ///< asks which
    /// Imports run sheets and shows the last of them. Each that cannot be read is named with its reason.
    void importSheets(const QStringList& paths);
    void exportFolder(); ///< the whole logbook; asks where
    void importFolder(); ///< asks which
    /// Imports a folder that a logbook was written to, or else all run sheets of a folder.
    void importFolder(const QString& path);
    void importLoadList(); ///< asks which
    void importLoadLists(const QStringList& paths);
    void importPvSheet(); ///< asks which
    /// Takes PV sheets from files and shows the last; a unit of the logbook that has the name stated there is chosen.
    void importPvSheets(const QStringList& paths);
    void exportSheet();    ///< of the run shown
    void exportReadings(); ///< of the run shown, else of all
    void attachPhoto();
    void savePhoto(const Photo& photo, PhotoDialog* dialog);
    /// What others take of the files that were dropped; empty where there is none.
    struct Dropped {
        QString log;   ///< of a meter, for the run that is shown
        QString table; ///< a foreign table of readings
    };
    /// Opens the logbooks and imports run sheets, load lists and PV sheets among these files.
    [[nodiscard]] Dropped takeDropped(const QList<QUrl>& urls);

private:
    Result<void> saveBeside(const QString& path);
    using Opening = std::function<Result<OpenedLogbook>(const std::atomic<bool>& cancelled)>;
    /// Does `open` beside the window and adopts what it gives; nothing where it was cancelled.
    std::optional<Result<void>> openBeside(const QString& path, const Opening& open);
    void tellOpened(const QString& path, const std::optional<Result<void>>& opened);
};

} // namespace ullage
