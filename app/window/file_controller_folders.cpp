// SPDX-License-Identifier: GPL-3.0-or-later
// The whole logbook as a folder, and back.
#include "formats/folder/logbook_folder.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "style/words.h"
#include "window/file_controller.h"
#include "window/message_bar.h"
#include "window/page_stack.h"

#include <QDir>
#include <QFileInfo>

#include <algorithm>

namespace ullage {

namespace {

/// Work on a folder beside the window, with a bar that its share moves.
template <class Work>
Result<FolderTally> folder_beside(QWidget* window, const QString& words, const Work& work) {
    WorkProgress* showing = nullptr;
    return work(
        [&](const std::function<void()>& inner) {
            work_beside(window, words, [&](WorkProgress& progress) {
                showing = &progress;
                inner();
            });
        },
        [&](double share) {
            constexpr double parts = 1000;
            showing->at(static_cast<std::int64_t>(share * parts), static_cast<std::int64_t>(parts));
            return !showing->cancelled();
        });
}

} // namespace

void FileController::exportFolder() {
    const QFileInfo current(document_.path());
    const auto suggested = current.dir().filePath(current.completeBaseName());
    const auto path = prompts_.fileToSave(window_, tr("Export as folder: name the new folder"), suggested, tr("Folders"), {}, false);
    if (path.isEmpty()) return;
    messages_->dismiss();
    const auto written =
        folder_beside(window_, tr("Writing %1").arg(shown_path(QFileInfo(path).fileName())),
                      [&](const auto& beside, const FolderProgress& goes_on) { return document_.exportFolder(path, beside, goes_on); });
    if (!written) return tell(written.error());
    messages_->showSaved(tr("Folder saved to %1: %2.").arg(shown_path(path), text_of(say_folder_tally(written.value()))), path);
}

void FileController::importFolder() {
    const auto path = prompts_.folderToOpen(window_, tr("Import folder"), startFolder());
    if (path.isEmpty()) return;
    messages_->dismiss();
    importFolder(path);
}

void FileController::importFolder(const QString& path) {
    if (!document_.isOpen()) return messages_->showError(tr("A folder needs a logbook to go into: choose Logbook, New or Open first."));
    if (!is_logbook_folder(native_path(path))) {
        QStringList sheets;
        const QDir folder(path);
        for (const QString& name : folder.entryList({QStringLiteral("*.csv")}, QDir::Files, QDir::Name)) sheets << folder.filePath(name);
        if (!sheets.isEmpty()) return importSheets(sheets);
        return messages_->showError(tr("%1 holds no run sheet. Choose a folder with run sheets (.csv), or one that Logbook, Export as folder wrote.")
                                        .arg(shown_path(QFileInfo(path).fileName())));
    }
    const auto read = folder_beside(window_, tr("Importing %1").arg(shown_path(QFileInfo(path).fileName())),
                                    [&](const auto& beside, const FolderProgress& goes_on) { return document_.importFolder(path, beside, goes_on); });
    if (!read) return tell(read.error());
    settings_.setFolderOf(path);
    constexpr std::size_t most_told = 4;
    const std::vector<Message>& notices = read.value().notices;
    for (std::size_t i = 0; i < std::min(most_told, notices.size()); ++i) messages_->showNote(text_of(notices[i]));
    if (notices.size() > most_told) messages_->showNote(tr("%1 more notices like these.").arg(notices.size() - most_told));
    if (!read.value().run_uuids.empty()) pages_.showRun(read.value().run_uuids.back());
}

} // namespace ullage
