// SPDX-License-Identifier: GPL-3.0-or-later
// Logbooks and run sheets as files.
#include "window/main_window.h"

#include "dialogs/photo_dialog.h"
#include "dialogs/photo_words.h"
#include "document/sample_logbook.h"
#include "document/sheet_file.h"
#include "formats/files/whole_file.h"
#include "pages/comparison/comparison_page.h"
#include "pages/run/run_page.h"
#include "services/background_work.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "style/file_names.h"
#include "style/words.h"
#include "window/message_bar.h"
#include "window/welcome_page.h"

#include <QAction>
#include <QDir>
#include <QDragEnterEvent>
#include <QDropEvent>
#include <QFile>
#include <QFileInfo>
#include <QMenu>
#include <QMimeData>
#include <QStandardPaths>

namespace ullage {

namespace {

QString logbook_filter() { return MainWindow::tr("Logbooks (*.ullage);;All files (*)"); }
QStringList log_suffixes() {
    return {QStringLiteral("csv"), QStringLiteral("txt"), QStringLiteral("log"), QStringLiteral("tsv"), QStringLiteral("dat")};
}
QString sheet_filter() { return MainWindow::tr("Run sheets (*.csv);;All files (*)"); }

/// Run sheets that could be read, place for place, and why others could not.
struct ReadSheets {
    QStringList paths;
    std::vector<RunRecord> records;
    std::vector<std::vector<std::string>> notices;
    QStringList refusals;
};

ReadSheets read_sheets(const QStringList& paths, WorkProgress& progress) {
    ReadSheets read;
    for (qsizetype i = 0; i < paths.size() && !progress.cancelled(); ++i) {
        progress.at(i, paths.size());
        auto sheet = read_sheet_file(paths[i]);
        if (!sheet) {
            read.refusals << text_of(sheet.error().sentence());
            continue;
        }
        read.paths << paths[i];
        read.records.push_back(std::move(sheet.value().record));
        read.notices.push_back(std::move(sheet.value().notices));
    }
    return read;
}

} // namespace

QString MainWindow::startFolder() const {
    const auto known = settings_.folder();
    return !known.isEmpty() && QFileInfo(known).isDir() ? known : QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

void MainWindow::newLogbook() {
    const auto path = prompts_.fileToSave(this, tr("New logbook"), QDir(startFolder()).filePath(tr("Bench.ullage")), logbook_filter(),
                                          QStringLiteral("ullage"), false);
    if (!path.isEmpty()) tell(document_.create(path));
}

void MainWindow::chooseLogbook() {
    const auto files = prompts_.filesToOpen(this, tr("Open logbook"), startFolder(), logbook_filter(), false);
    if (!files.isEmpty()) openLogbook(files.constFirst());
}

std::optional<Result<void>> MainWindow::openBeside(const QString& path, Cancelling cancelling) {
    std::optional<Result<OpenedLogbook>> found;
    bool cancelled = false;
    work_beside(
        this, tr("Opening %1").arg(shown_path(QFileInfo(path).fileName())),
        [&](WorkProgress& progress) {
            found.emplace(ullage::open_logbook(path, document_.clock()));
            cancelled = progress.cancelled();
        },
        cancelling);
    if (cancelled) return std::nullopt;
    if (!*found) return Result<void>(found->error());
    document_.adopt(std::move(*found).value());
    return Result<void>();
}

void MainWindow::openLogbook(const QString& path) {
    // Opening the open one again shows it anew.
    const auto opened = document_.isOpenAt(path) ? std::optional(document_.open(path)) : openBeside(path, Cancelling::offered);
    if (!opened) return messages_->showNote(tr("%1 was not opened.").arg(shown_path(QFileInfo(path).fileName())));
    if (!*opened && opened->error().failure == Failure::not_found) {
        settings_.removeRecentFile(path);
        welcome_page_->setRecentFiles(settings_.recentFiles());
    }
    tell(*opened);
}

void MainWindow::openLastLogbook() {
    const auto last = settings_.lastFile();
    if (!last.isEmpty() && QFileInfo::exists(last)) openLogbook(last);
}

void MainWindow::openSample() {
    const QDir home(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
    const QString path = home.filePath(QStringLiteral("sample.ullage"));
    Result<void> made;
    if (!QFileInfo::exists(path))
        work_beside(
            this, tr("Making the sample logbook"), [&](WorkProgress&) { made = make_sample_logbook(path, document_.clock()); },
            Cancelling::not_possible);
    if (!made) return tell(made);
    openLogbook(path);
    if (document_.isOpenAt(path)) showDefaultPage();
}

Result<void> MainWindow::saveBeside(const QString& path) {
    return document_.saveCopy(path, [&](const std::function<void()>& work) {
        work_beside(
            this, tr("Saving %1").arg(shown_path(QFileInfo(path).fileName())), [&](WorkProgress&) { work(); }, Cancelling::not_possible);
    });
}

void MainWindow::saveCopy() {
    const QFileInfo current(document_.path());
    const auto suggested = current.dir().filePath(tr("%1 copy.ullage").arg(current.completeBaseName()));
    const auto path = prompts_.fileToSave(this, tr("Save a copy"), suggested, logbook_filter(), QStringLiteral("ullage"), false);
    if (path.isEmpty()) return;
    const auto saved = saveBeside(path);
    tell(saved);
    if (saved) messages_->showNote(tr("A copy stands in %1.").arg(shown_path(path)));
}

void MainWindow::saveElsewhere() {
    const QFileInfo current(document_.path());
    const auto suggested = QDir(startFolder()).filePath(tr("%1 rescued.ullage").arg(current.completeBaseName()));
    const auto path = prompts_.fileToSave(this, tr("Save the open logbook elsewhere"), suggested, logbook_filter(), QStringLiteral("ullage"), false);
    if (path.isEmpty()) return;
    const std::string run = run_uuid_;
    const QString draft = run_page_.isMade() ? run_page_->draft() : QString();
    if (const auto saved = saveBeside(path); !saved) return tell(saved);
    if (const auto opened = document_.open(path); !opened) return tell(opened);
    if (document_.run(run)) {
        tell(document_.keepDraft(run, draft));
        showRun(run);
        enterReading(run);
    }
    messages_->showNote(tr("You now record in %1.").arg(shown_path(path)));
}

void MainWindow::tellOpeningCheck() {
    constexpr double worth_telling_s = 1;
    const OpeningCheck& check = document_.openingCheck();
    if (check.full && check.seconds >= worth_telling_s)
        messages_->showNote(
            tr("The logbook was checked from end to end, which took %1 s. It is done when a file was not closed properly or comes from "
               "elsewhere.")
                .arg(check.seconds, 0, 'f', 1));
}

void MainWindow::closeLogbook() {
    settings_.setLastFile({});
    messages_->dismiss();
    document_.close();
}

void MainWindow::addComparedLogbooks() {
    showComparison();
    const auto files = prompts_.filesToOpen(this, tr("Add units of another logbook"), startFolder(), logbook_filter(), true);
    if (files.isEmpty()) return;
    messages_->dismiss();
    settings_.setFolderOf(files.constFirst());
    comparison_page_->addLogbooks(files);
}

void MainWindow::importSheet() {
    const auto files = prompts_.filesToOpen(this, tr("Import run sheet"), startFolder(), sheet_filter(), true);
    if (files.isEmpty()) return;
    messages_->dismiss();
    importSheets(files);
}

void MainWindow::importSheets(const QStringList& paths) {
    if (!document_.isOpen()) {
        messages_->showError(tr("A run sheet needs a logbook to go into: choose Logbook, New or Open first."));
        return;
    }
    ReadSheets sheets;
    const QString words = paths.size() == 1 ? tr("Importing %1").arg(shown_path(QFileInfo(paths.constFirst()).fileName()))
                                            : tr("Importing %1 run sheets").arg(paths.size());
    bool stopped = false;
    work_beside(this, words, [&](WorkProgress& progress) {
        sheets = read_sheets(paths, progress);
        stopped = progress.cancelled();
    });
    if (stopped) return messages_->showNote(tr("Nothing was imported."));
    for (const QString& refusal : sheets.refusals) messages_->showError(refusal);
    if (sheets.records.empty()) return;
    WorkProgress* importing = nullptr;
    const auto imported = document_.importAll(
        sheets.records,
        [&](const std::function<void()>& work) {
            work_beside(this, words, [&](WorkProgress& progress) {
                importing = &progress;
                work();
            });
        },
        [&](std::size_t done) {
            importing->at(static_cast<std::int64_t>(done), static_cast<std::int64_t>(sheets.records.size()));
            return !importing->cancelled();
        });
    std::string shown;
    std::size_t whole = 0;
    for (std::size_t i = 0; i < imported.size(); ++i) {
        if (!imported[i]) {
            messages_->showError(text_of(imported[i].error().sentence()));
            continue;
        }
        ++whole;
        shown = imported[i].value().run_uuid;
        for (const auto& notice : sheets.notices[i])
            messages_->showNote(
                QStringLiteral("%1, %2").arg(shown_path(QFileInfo(sheets.paths[static_cast<qsizetype>(i)]).fileName()), text_of(notice)));
    }
    if (whole > 0) settings_.setFolderOf(paths.constFirst());
    if (imported.size() < sheets.records.size())
        messages_->showNote(
            tr("Stopped: %1 of %2 run sheets are in the logbook, each whole; Edit, Undo takes them out one by one.").arg(whole).arg(paths.size()));
    if (!shown.empty()) showRun(shown);
}

void MainWindow::exportSheet() {
    if (!document_.run(run_uuid_)) return;
    const auto suggested = QDir(startFolder()).filePath(sheet_file_name(document_, run_uuid_));
    const auto path = prompts_.fileToSave(this, tr("Export run sheet"), suggested, sheet_filter(), QStringLiteral("csv"), true);
    if (path.isEmpty()) return;
    const auto written = export_sheet_file(document_, run_uuid_, path);
    tell(written);
    if (written) messages_->showNote(tr("The run sheet stands in %1.").arg(shown_path(path)));
}

void MainWindow::attachPhoto() {
    if (!document_.run(run_uuid_)) return;
    const auto title = tr("Attach photos to %1 (%2)").arg(run_page_->photoTargetWords(), photo_limits_words());
    const auto files = prompts_.filesToOpen(this, title, startFolder(), tr("Photos (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG);;All files (*)"), true);
    if (files.isEmpty()) return;
    settings_.setFolderOf(files.constFirst());
    run_page_->attachPhotos(files);
}

void MainWindow::savePhoto(const Photo& photo, PhotoDialog* dialog) {
    const QString ending = photo.format == PhotoFormat::png ? QStringLiteral("png") : QStringLiteral("jpg");
    const QString filter = photo.format == PhotoFormat::png ? tr("PNG (*.png);;All files (*)") : tr("JPEG (*.jpg *.jpeg);;All files (*)");
    const QString other = photo.format == PhotoFormat::png ? QString() : QStringLiteral("jpeg");
    const QString name = safe_file_name(raw_text(photo.file_name), tr("photo"), ending, other);
    const auto path = prompts_.fileToSave(dialog, tr("Save photo"), QDir(startFolder()).filePath(name), filter, ending, true);
    if (path.isEmpty()) return;
    settings_.setFolderOf(path);
    const auto bytes = document_.photoBytes(photo.uuid);
    const auto written = bytes ? write_whole_file(native_path(path), bytes.value(), {Replacing::Consent::ordinary, {}}) : Result<void>(bytes.error());
    if (!written) dialog->refuse(text_of(written.error().sentence()));
    else dialog->tell(tr("The photo stands in %1.").arg(shown_path(path)));
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (event->mimeData()->hasUrls()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    QStringList sheets;
    QString log;
    messages_->dismiss();
    for (const auto& url : event->mimeData()->urls()) {
        const auto file = url.toLocalFile();
        const auto suffix = QFileInfo(file).suffix().toLower();
        if (suffix == QLatin1String("ullage")) openLogbook(file);
        else if (suffix == QLatin1String("csv") && is_run_sheet_file(file)) sheets << file;
        else if (log_suffixes().contains(suffix) && document_.run(run_uuid_)) log = file; // its form takes one at a time
        else if (suffix == QLatin1String("csv")) sheets << file;
        else
            messages_->showError(
                tr("%1 is neither a logbook (.ullage) nor a run sheet (.csv). The log of a meter goes into a run: show the run first.")
                    .arg(shown_path(url.fileName())));
    }
    if (!sheets.isEmpty()) importSheets(sheets);
    if (!log.isEmpty()) importLog(log);
    event->acceptProposedAction();
}

void MainWindow::fillRecentMenu() {
    recent_menu_->clear();
    for (const auto& file : settings_.recentFiles()) {
        auto* entry = recent_menu_->addAction(shown_path(QFileInfo(file).fileName()));
        entry->setToolTip(shown_path(file));
        entry->setData(file);
        connect(entry, &QAction::triggered, this, [this, file] { openLogbook(file); });
    }
    if (recent_menu_->isEmpty()) recent_menu_->addAction(tr("none yet"))->setEnabled(false);
}

} // namespace ullage
