// SPDX-License-Identifier: GPL-3.0-or-later
// Logbooks as files.
#include "window/file_controller.h"

#include "document/logbook_ahead.h"
#include "document/sample_logbook.h"
#include "pages/run/run_page.h"
#include "services/background_work.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "style/words.h"
#include "window/message_bar.h"
#include "window/page_stack.h"
#include "window/welcome_page.h"

#include <QAction>
#include <QDir>
#include <QFileInfo>
#include <QMenu>
#include <QStandardPaths>

namespace ullage {

void FileController::newLogbook() {
    const auto path = prompts_.fileToSave(window_, tr("New logbook"), QDir(startFolder()).filePath(tr("Bench.ullage")), logbookFilter(),
                                          QStringLiteral("ullage"), false);
    if (!path.isEmpty()) tell(document_.create(path));
}

void FileController::chooseLogbook() {
    const auto files = prompts_.filesToOpen(window_, tr("Open logbook"), startFolder(), logbookFilter(), false);
    if (!files.isEmpty()) openLogbook(files.constFirst());
}

std::optional<Result<void>> FileController::openBeside(const QString& path, const Opening& open) {
    std::optional<Result<OpenedLogbook>> found;
    bool cancelled = false;
    work_beside(
        window_, tr("Opening %1").arg(shown_path(QFileInfo(path).fileName())),
        [&](WorkProgress& progress) {
            found.emplace(open(progress.cancelling()));
            cancelled = progress.cancelled();
        },
        Cancelling::offered);
    if (cancelled) return std::nullopt;
    if (!*found) return Result<void>(found->error());
    document_.adopt(std::move(*found).value());
    return Result<void>();
}

void FileController::openLogbook(const QString& path) {
    // Opening the open one again shows it anew; one open for looking may be free to be recorded into by now.
    if (document_.isOpenAt(path) && !document_.isLooking()) return tellOpened(path, document_.open(path));
    tellOpened(path, openBeside(path, [&](const std::atomic<bool>& cancelled) { return open_logbook(path, document_.clock(), &cancelled); }));
}

void FileController::openAhead(LogbookAhead& ahead) {
    pages_.makeRememberedPage(ahead.path()); // which costs no time while the file is being read
    tellOpened(ahead.path(), openBeside(ahead.path(), [&](const std::atomic<bool>& cancelled) { return ahead.take(cancelled); }));
}

void FileController::tellOpened(const QString& path, const std::optional<Result<void>>& opened) {
    if (!opened) return messages_->showNote(tr("%1 was not opened.").arg(shown_path(QFileInfo(path).fileName())));
    if (!*opened && opened->error().failure == Failure::not_found) {
        settings_.removeRecentFile(path);
        if (pages_.welcome().isMade()) pages_.welcome()->setRecentFiles(settings_.recentFiles());
    }
    // What was said as it opened stays.
    if (!*opened) tell(*opened);
}

void FileController::openSample() {
    const QDir home(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
    const QString path = home.filePath(QStringLiteral("sample.ullage"));
    Result<void> made;
    if (!QFileInfo::exists(path))
        work_beside(
            window_, tr("Making the sample logbook"), [&](WorkProgress&) { made = make_sample_logbook(path, document_.clock()); },
            Cancelling::not_possible);
    if (!made) return tell(made);
    openLogbook(path);
    if (document_.isOpenAt(path)) pages_.showDefaultPage();
}

Result<void> FileController::saveBeside(const QString& path) {
    return document_.saveCopy(path, [&](const std::function<void()>& work) {
        work_beside(
            window_, tr("Saving %1").arg(shown_path(QFileInfo(path).fileName())), [&](WorkProgress&) { work(); }, Cancelling::not_possible);
    });
}

void FileController::saveCopy() {
    const QFileInfo current(document_.path());
    const auto suggested = current.dir().filePath(tr("%1 copy.ullage").arg(current.completeBaseName()));
    const auto path = prompts_.fileToSave(window_, tr("Save a copy"), suggested, logbookFilter(), QStringLiteral("ullage"), false);
    if (path.isEmpty()) return;
    const auto saved = saveBeside(path);
    tell(saved);
    if (saved) messages_->showNote(tr("Copy saved to %1.").arg(shown_path(path)));
}

void FileController::saveElsewhere() {
    const QFileInfo current(document_.path());
    const auto suggested = QDir(startFolder()).filePath(tr("%1 rescued.ullage").arg(current.completeBaseName()));
    const auto path =
        prompts_.fileToSave(window_, tr("Save the open logbook elsewhere"), suggested, logbookFilter(), QStringLiteral("ullage"), false);
    if (path.isEmpty()) return;
    const RunId run = pages_.runUuid();
    const QString draft = pages_.run().isMade() ? pages_.run()->draft() : QString();
    if (const auto saved = saveBeside(path); !saved) return tell(saved);
    if (const auto opened = document_.open(path); !opened) return tell(opened);
    if (document_.run(run)) {
        tell(document_.keepDraft(run, draft));
        pages_.showRun(run);
        pages_.enterReading(run);
    }
    messages_->showNote(tr("You now record in %1.").arg(shown_path(path)));
}

void FileController::tellOpeningCheck() {
    constexpr double worth_telling_s = 1;
    const OpeningCheck& check = document_.openingCheck();
    if (check.full && check.seconds >= worth_telling_s)
        messages_->showNote(
            tr("The logbook was checked from end to end, which took %1 s. It is done when a file was not closed properly or comes from "
               "elsewhere.")
                .arg(text_of(say_number(check.seconds, 1))));
}

void FileController::closeLogbook() {
    settings_.setLastFile({});
    messages_->dismiss();
    document_.close();
}

void FileController::fillRecentMenu(QMenu& menu) {
    menu.clear();
    for (const auto& file : settings_.recentFiles()) {
        auto* entry = menu.addAction(shown_path(QFileInfo(file).fileName()));
        entry->setToolTip(shown_path(file));
        entry->setData(file);
        connect(entry, &QAction::triggered, this, [this, file] { openLogbook(file); });
    }
    if (menu.isEmpty()) menu.addAction(tr("none yet"))->setEnabled(false);
}

} // namespace ullage
