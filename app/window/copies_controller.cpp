// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/copies_controller.h"

#include "base/number.h"
#include "dialogs/copies_form.h"
#include "document/logbook_content.h"
#include "services/background_work.h"
#include "services/backup_keeper.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "style/words.h"
#include "window/message_bar.h"

#include <QDir>
#include <QFileInfo>
#include <QMainWindow>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

const QString copy_suffix = QStringLiteral("ullage-copy");

QString copies_filter() { return CopiesController::tr("Logbooks and their copies (*.ullage *.ullage-copy);;All files (*)"); }

/// The last moment that any run of the logbook tells of.
std::optional<UtcMs> last_moment(const LogbookContent& content) {
    std::optional<UtcMs> last;
    for (const auto& record : content.runs)
        for (const Reading& reading : record->readings)
            if (!reading.withdrawn) last = std::max(last.value_or(reading.values.time_ms), reading.values.time_ms);
    return last;
}

} // namespace

CopiesController::CopiesController(const Workplace& at, bool keep) : Controller(at) {
    if (!keep) return;
    keeper_ = new BackupKeeper(document_, settings_, this);
    connect(keeper_, &BackupKeeper::failed, this,
            [this](const QString& sentence) { messages_->showNote(tr("No automatic copy of the logbook was made. %1").arg(sentence)); });
}

void CopiesController::chooseCopy() {
    if (document_.isOpen()) return showCopies(document_.path());
    const auto files = prompts_.filesToOpen(window_, tr("Copies of which logbook"), startFolder(), copies_filter(), false);
    if (files.isEmpty()) return;
    const QFileInfo chosen(files.constFirst());
    if (chosen.suffix() != copy_suffix) return showCopies(chosen.filePath());
    const QString name = chosen.completeBaseName().section(QLatin1Char('.'), 0, 0);
    saveAsLogbook(chosen.filePath(), tr("%1 of a copy.ullage").arg(name));
}

void CopiesController::showCopies(const QString& logbook) {
    messages_->dismiss();
    if (keeper_) keeper_->finish();
    const QString name = shown_path(QFileInfo(logbook).fileName());
    auto copies = backup_copies(native_path(logbook), BackupKeeper::place(settings_));
    if (copies.empty()) {
        const QString folder = settings_.backupFolder();
        return messages_->showNote(folder.isEmpty() ? tr("There is no copy of %1 beside it.").arg(name)
                                                    : tr("There is no copy of %1 in %2.").arg(name, shown_path(folder)));
    }
    auto* form = new CopiesForm(
        std::move(copies), name, [this](const BackupCopy& copy) { return factsOf(copy); }, window_);
    form->setAttribute(Qt::WA_DeleteOnClose);
    connect(form, &FormDialog::submitted, this, [this, form, base = QFileInfo(logbook).completeBaseName()] {
        const BackupCopy copy = form->chosen();
        form->accept();
        saveAsLogbook(path_text(copy.path.string()), tr("%1 as of %2.ullage").arg(base, text_of(copy.day)));
    });
    form->open();
}

QString CopiesController::factsOf(const BackupCopy& copy) {
    const auto found = result_beside(window_, tr("Looking at the copy"), [&](WorkProgress& progress) {
        return look_at_logbook(path_text(copy.path.string()), document_.clock(), &progress.cancelling());
    });
    if (!found) return tr("Not looked at.");
    if (!*found) return text_of(found->error().sentence());
    const LogbookContent& content = found->value().content;
    const QString units = text_of(say_count(content.units.size(), phrases("copies", "%n units", "%n unit")));
    const QString runs = text_of(say_count(content.runs.size(), phrases("copies", "%n runs", "%n run")));
    const auto last = last_moment(content);
    if (!last) return tr("It holds %1 and %2, without readings.", "units and runs").arg(units, runs);
    return tr("It holds %1 and %2; the last reading is of %3, %4.", "units, runs, day and time")
        .arg(units, runs, text_of(date_text(*last, machine_zone())), text_of(clock_text(*last, machine_zone())));
}

void CopiesController::saveAsLogbook(const QString& copy, const QString& suggested) {
    const auto path = prompts_.fileToSave(window_, tr("Save the copy as a logbook"), QDir(startFolder()).filePath(suggested), logbookFilter(),
                                          QStringLiteral("ullage"), false);
    if (path.isEmpty()) return;
    Result<void> saved;
    work_beside(
        window_, tr("Saving %1").arg(shown_path(QFileInfo(path).fileName())),
        [&](WorkProgress&) { saved = save_as_logbook(copy, path, document_.clock()); }, Cancelling::not_possible);
    tell(saved);
    if (saved) emit openAsked(path);
}

} // namespace ullage
