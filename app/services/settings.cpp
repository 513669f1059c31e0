// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/settings.h"

#include <QDir>
#include <QFileInfo>

#include <algorithm>
#include <initializer_list>

namespace ullage {

namespace {

const QString recent_key = QStringLiteral("logbooks/recent");
const QString last_key = QStringLiteral("logbooks/last");
const QString folder_key = QStringLiteral("logbooks/folder");
const QString theme_key = QStringLiteral("view/theme");
const QString text_key = QStringLiteral("view/text_step");
const QString charts_key = QStringLiteral("view/charts");
const QString on_desktop_key = QStringLiteral("reminders/desktop");
const QString language_key = QStringLiteral("view/language");
const QString paper_key = QStringLiteral("reports/paper");
const QString sound_key = QStringLiteral("reminders/sound");
const QString backup_key = QStringLiteral("backup/on");
const QString backup_folder_key = QStringLiteral("backup/folder");
const QString backup_days_key = QStringLiteral("backup/days");
constexpr int usual_backup_days = 30;
const QString folder_name = QStringLiteral("ullage");

/// A kept word that is one of these; else none.
QString one_of(const QString& kept, std::initializer_list<const char*> known) {
    return std::ranges::any_of(known, [&](const char* word) { return kept == QLatin1String(word); }) ? kept : QString();
}

/// Only what changes is written, so that a start writes nothing.
void put(QSettings& store, const QString& key, const QVariant& value) {
    QVariant kept = store.value(key); // a file holds texts
    if (!kept.isValid() || !kept.convert(value.metaType()) || kept != value) store.setValue(key, value);
}

QString memory_key(const QString& name) { return QStringLiteral("remembered/%1").arg(name); }
QString layout_key(const QString& object_name) { return QStringLiteral("layout/%1").arg(object_name); }

} // namespace

Settings::Settings() : store_(QSettings::IniFormat, QSettings::UserScope, folder_name, folder_name) {}

Settings::Settings(const QString& file) : store_(file, QSettings::IniFormat) {}

QStringList Settings::recentFiles() const {
    auto files = store_.value(recent_key).toStringList();
    files.removeAll(QString());
    files.removeDuplicates();
    return files.mid(0, most_recent_files);
}

void Settings::addRecentFile(const QString& path) {
    auto files = recentFiles();
    const auto absolute = QFileInfo(path).absoluteFilePath();
    files.removeAll(absolute);
    files.prepend(absolute);
    put(store_, recent_key, files.mid(0, most_recent_files));
}

void Settings::removeRecentFile(const QString& path) {
    auto files = recentFiles();
    files.removeAll(QFileInfo(path).absoluteFilePath());
    put(store_, recent_key, files);
}

QString Settings::lastFile() const { return store_.value(last_key).toString(); }

void Settings::setLastFile(const QString& path) { put(store_, last_key, path.isEmpty() ? QString() : QFileInfo(path).absoluteFilePath()); }

Theme Settings::theme() const {
    const auto name = store_.value(theme_key).toString();
    if (name == QLatin1String("light")) return Theme::light;
    if (name == QLatin1String("dark")) return Theme::dark;
    return Theme::system;
}

void Settings::setTheme(Theme theme) {
    const auto* name = theme == Theme::light ? "light" : theme == Theme::dark ? "dark" : "system";
    put(store_, theme_key, QString::fromLatin1(name));
}

int Settings::textStep() const { return std::clamp(store_.value(text_key, 0).toInt(), least_text_step, most_text_step); }

void Settings::setTextStep(int step) { put(store_, text_key, std::clamp(step, least_text_step, most_text_step)); }

bool Settings::chartsShown() const { return store_.value(charts_key, true).toBool(); }

void Settings::setChartsShown(bool shown) { put(store_, charts_key, shown); }

QByteArray Settings::layout(const QString& object_name) const { return store_.value(layout_key(object_name)).toByteArray(); }

void Settings::setLayout(const QString& object_name, const QByteArray& state) { put(store_, layout_key(object_name), state); }

QString Settings::folder() const { return store_.value(folder_key).toString(); }

void Settings::setFolderOf(const QString& file) { put(store_, folder_key, QFileInfo(file).absolutePath()); }

QString Settings::remembered(const QString& name) const { return store_.value(memory_key(name)).toString(); }

void Settings::remember(const QString& name, const QString& text) { put(store_, memory_key(name), text); }

bool Settings::reminderSound() const { return store_.value(sound_key, false).toBool(); }

void Settings::setReminderSound(bool on) { put(store_, sound_key, on); }

bool Settings::backupOn() const { return store_.value(backup_key, true).toBool(); }

void Settings::setBackupOn(bool on) { store_.setValue(backup_key, on); }

QString Settings::backupFolder() const {
    const auto folder = store_.value(backup_folder_key).toString();
    return QDir::isAbsolutePath(folder) ? folder : QString();
}

void Settings::setBackupFolder(const QString& folder) {
    store_.setValue(backup_folder_key, folder.isEmpty() ? QString() : QFileInfo(folder).absoluteFilePath());
}

int Settings::backupDays() const {
    auto understood = false;
    const auto days = store_.value(backup_days_key).toInt(&understood);
    return understood ? std::clamp(days, least_backup_days, most_backup_days) : usual_backup_days;
}

void Settings::setBackupDays(int days) { store_.setValue(backup_days_key, std::clamp(days, least_backup_days, most_backup_days)); }

bool Settings::reminderOnDesktop() const { return store_.value(on_desktop_key, true).toBool(); }

void Settings::setReminderOnDesktop(bool on) { store_.setValue(on_desktop_key, on); }

QString Settings::language() const { return one_of(store_.value(language_key).toString(), {"en", "de", "fr", "es"}); }

void Settings::setLanguage(const QString& code) { store_.setValue(language_key, code); }

QString Settings::paper() const { return one_of(store_.value(paper_key).toString(), {"a4", "letter"}); }

void Settings::setPaper(const QString& name) { store_.setValue(paper_key, name); }

} // namespace ullage
