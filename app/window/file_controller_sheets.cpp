// SPDX-License-Identifier: GPL-3.0-or-later
// What goes into the open logbook as a file, and out of it: run sheets, readings, photos.
#include "window/file_controller.h"

#include "dialogs/photo_dialog.h"
#include "dialogs/photo_words.h"
#include "document/sheet_file.h"
#include "formats/files/whole_file.h"
#include "pages/run/readings_export.h"
#include "pages/run/run_page.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "style/file_names.h"
#include "style/words.h"
#include "window/message_bar.h"
#include "window/page_stack.h"

#include <QDir>
#include <QFileInfo>
#include <QUrl>

namespace ullage {

namespace {

QStringList log_suffixes() {
    return {QStringLiteral("csv"), QStringLiteral("txt"), QStringLiteral("log"), QStringLiteral("tsv"), QStringLiteral("dat")};
}
QString sheet_filter() { return FileController::tr("Run sheets (*.csv);;All files (*)"); }

/// Run sheets that could be read, place for place, and why others could not.
struct ReadSheets {
    QStringList paths;
    std::vector<RunRecord> records;
    std::vector<std::vector<Message>> notices;
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

void FileController::importSheet() {
    const auto files = prompts_.filesToOpen(window_, tr("Import run sheet"), startFolder(), sheet_filter(), true);
    if (files.isEmpty()) return;
    messages_->dismiss();
    importSheets(files);
}

void FileController::importSheets(const QStringList& paths) {
    if (!document_.isOpen()) {
        messages_->showError(tr("A run sheet needs a logbook to go into: choose Logbook, New or Open first."));
        return;
    }
    ReadSheets sheets;
    const QString words = paths.size() == 1 ? tr("Importing %1").arg(shown_path(QFileInfo(paths.constFirst()).fileName()))
                                            : tr("Importing %1 run sheets").arg(paths.size());
    bool stopped = false;
    work_beside(window_, words, [&](WorkProgress& progress) {
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
            work_beside(window_, words, [&](WorkProgress& progress) {
                importing = &progress;
                work();
            });
        },
        [&](std::size_t done) {
            importing->at(static_cast<std::int64_t>(done), static_cast<std::int64_t>(sheets.records.size()));
            return !importing->cancelled();
        });
    RunId shown;
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
    if (!shown.empty()) pages_.showRun(shown);
}

void FileController::exportSheet() {
    if (!document_.run(pages_.runUuid())) return;
    const auto suggested = QDir(saveFolder()).filePath(sheet_file_name(document_, pages_.runUuid()));
    const auto path = prompts_.fileToSave(window_, tr("Export run sheet"), suggested, sheet_filter(), QStringLiteral("csv"), true);
    if (path.isEmpty()) return;
    const auto written = export_sheet_file(document_, pages_.runUuid(), path);
    tell(written);
    if (written) messages_->showSaved(tr("Run sheet saved to %1.").arg(shown_path(path)), path);
}

void FileController::exportReadings() {
    const bool run_shown = pages_.currentWidget() == pages_.run();
    auto* dialog = new ExportDialog(readings_subjects(document_, run_shown ? pages_.runUuid() : RunId()), prompts_, window_);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

void FileController::attachPhoto() {
    if (!document_.run(pages_.runUuid())) return;
    const auto title = tr("Attach photos to %1 (%2)").arg(pages_.run()->photoTargetWords(), photo_limits_words());
    const auto files = prompts_.filesToOpen(window_, title, startFolder(), tr("Photos (*.jpg *.jpeg *.png *.JPG *.JPEG *.PNG);;All files (*)"), true);
    if (files.isEmpty()) return;
    settings_.setFolderOf(files.constFirst());
    pages_.run()->attachPhotos(files);
}

void FileController::savePhoto(const Photo& photo, PhotoDialog* dialog) {
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
    else dialog->tell(tr("Photo saved to %1.").arg(shown_path(path)));
}

void FileController::importLoadList() {
    const auto files = prompts_.filesToOpen(window_, tr("Import load list"), startFolder(), tr("Load lists (*.csv);;All files (*)"), true);
    if (files.isEmpty()) return;
    messages_->dismiss();
    importLoadLists(files);
}

void FileController::importLoadLists(const QStringList& paths) {
    if (!document_.isOpen()) return messages_->showError(tr("A load list needs a logbook to go into: choose Logbook, New or Open first."));
    LoadListId shown;
    for (const QString& path : paths) {
        const auto imported = import_load_list_file(document_, path);
        if (imported) shown = imported.value().uuid;
        else messages_->showError(text_of(imported.error().sentence()));
    }
    settings_.setFolderOf(paths.constFirst());
    if (!shown.empty()) pages_.showLoadList(shown);
}

void FileController::importPvSheet() {
    const auto files = prompts_.filesToOpen(window_, tr("Import PV sheet"), startFolder(), tr("PV sheets (*.txt);;All files (*)"), true);
    if (files.isEmpty()) return;
    messages_->dismiss();
    importPvSheets(files);
}

void FileController::importPvSheets(const QStringList& paths) {
    if (!document_.isOpen()) return messages_->showError(tr("A PV sheet needs a logbook to go into: choose Logbook, New or Open first."));
    PvSheetId shown;
    for (const QString& path : paths) {
        const Result<ImportedPvSheet> imported = import_pv_sheet_file(document_, path);
        if (!imported) {
            messages_->showError(text_of(imported.error().sentence()));
            continue;
        }
        shown = imported.value().sheet.uuid;
        for (const Message& notice : imported.value().notices)
            messages_->showNote(QStringLiteral("%1: %2").arg(shown_path(QFileInfo(path).fileName()), text_of(notice)));
    }
    settings_.setFolderOf(paths.constFirst());
    if (!shown.empty()) pages_.showPvSheet(shown);
}

FileController::Dropped FileController::takeDropped(const QList<QUrl>& urls) {
    QStringList sheets, load_lists, pv_sheets;
    Dropped dropped;
    messages_->dismiss();
    for (const auto& url : urls) {
        const auto file = url.toLocalFile();
        const auto suffix = QFileInfo(file).suffix().toLower();
        if (QFileInfo(file).isDir()) {
            importFolder(file);
            continue;
        }
        if (suffix == QLatin1String("ullage")) openLogbook(file);
        else if (suffix == QLatin1String("csv") && is_load_list_file(file)) load_lists << file;
        else if (suffix == QLatin1String("txt") && is_pv_sheet_file(file)) pv_sheets << file;
        else if (suffix == QLatin1String("csv") && is_run_sheet_file(file)) sheets << file;
        else if (const bool for_run = log_suffixes().contains(suffix) && document_.run(pages_.runUuid());
                 is_foreign_table_file(file) && (!for_run || names_gauge(file)))
            dropped.table = file;             // its form takes one at a time
        else if (for_run) dropped.log = file; // so does that of a log
        else if (suffix == QLatin1String("csv")) sheets << file;
        else
            messages_->showError(
                tr("%1 is neither a logbook (.ullage), nor a run sheet or load list (.csv), nor a PV sheet (.txt). The log of a meter goes into a run: show the run first.")
                    .arg(shown_path(url.fileName())));
    }
    if (!sheets.isEmpty()) importSheets(sheets);
    if (!load_lists.isEmpty()) importLoadLists(load_lists);
    if (!pv_sheets.isEmpty()) importPvSheets(pv_sheets);
    return dropped;
}

} // namespace ullage
