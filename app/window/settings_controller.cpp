// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/settings_controller.h"

#include "dialogs/settings_dialog.h"
#include "report/report_look.h"
#include "services/appearance.h"
#include "services/prompts.h"
#include "services/reading_rules.h"
#include "services/settings.h"
#include "style/words.h"
#include "window/run_defaults.h"

#include <QApplication>
#include <QLocale>
#include <QMainWindow>

namespace ullage {

void SettingsController::showSettings() {
    ChosenSettings now;
    now.language = settings_.language();
    now.theme = settings_.theme();
    now.text_step = settings_.textStep();
    now.meter = default_meter(settings_, document_);
    for (const RunKind kind : all_run_kinds) now.rules[kind] = default_rule(settings_, kind);
    now.reminder_on_desktop = settings_.reminderOnDesktop();
    now.reminder_sound = settings_.reminderSound();
    now.paper = settings_.paper();
    now.publisher = publisher_of(settings_, document_);
    now.backup_on = settings_.backupOn();
    now.backup_folder = settings_.backupFolder();
    now.backup_days = settings_.backupDays();
    SettingsSurroundings around;
    around.logbook_open = document_.isOpen();
    around.logbook_fixed = document_.isLooking();
    if (document_.isOpen()) around.meters = document_.meters();
    around.desktop_paper = paper_of(QLocale()) == Paper::letter ? tr("Letter") : tr("A4");
    auto* dialog = new SettingsDialog(now, around, window_);
    connect(dialog, &SettingsDialog::lookChosen, this, &SettingsController::look);
    connect(dialog, &QDialog::rejected, this, [this, theme = now.theme, step = now.text_step] { look(theme, step); });
    connect(dialog, &SettingsDialog::backupFolderAsked, this, [this, dialog](const QString& present) {
        const QString folder = prompts_.folderToOpen(window_, tr("Folder for copies of logbooks"), present.isEmpty() ? startFolder() : present);
        if (!folder.isEmpty()) dialog->setBackupFolder(folder);
    });
    connect(dialog, &FormDialog::submitted, this, [this, dialog] { keep(*dialog); });
    dialog->open();
}

void SettingsController::look(Theme theme, int text_step) {
    if (settings_.theme() == theme && settings_.textStep() == text_step) return;
    settings_.setTheme(theme);
    settings_.setTextStep(text_step);
    apply_appearance(*qApp, settings_);
    emit changed();
}

void SettingsController::keep(SettingsDialog& dialog) {
    const ChosenSettings& chosen = dialog.chosen();
    // The logbook's part first: it alone can refuse.
    if (chosen.publisher != publisher_of(settings_, document_))
        if (const auto kept = keep_publisher(settings_, document_, chosen.publisher); !kept) return dialog.refuse(text_of(kept.error().sentence()));
    settings_.setLanguage(chosen.language);
    look(chosen.theme, chosen.text_step);
    if (document_.isOpen()) keep_default_meter(settings_, document_, chosen.meter);
    for (const auto& [kind, rule] : chosen.rules)
        if (kept_rule(rule) != kept_rule(default_rule(settings_, kind))) keep_default_rule(settings_, kind, rule);
    settings_.setReminderOnDesktop(chosen.reminder_on_desktop);
    settings_.setReminderSound(chosen.reminder_sound);
    settings_.setPaper(chosen.paper);
    settings_.setBackupOn(chosen.backup_on);
    settings_.setBackupFolder(chosen.backup_folder);
    settings_.setBackupDays(chosen.backup_days);
    dialog.accept();
    emit changed();
}

} // namespace ullage
