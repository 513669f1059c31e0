// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "style/theme.h"

#include <QByteArray>
#include <QSettings>
#include <QString>
#include <QStringList>

namespace ullage {

/// What the program remembers between starts, in an INI file. A value that cannot be used is read as its default.
class Settings {
public:
    /// The user's own settings.
    Settings();
    /// Settings in a file of the caller's choice.
    explicit Settings(const QString& file);

    /// Logbooks lately opened, the latest first; at most `most_recent_files`, whether they still exist or not.
    [[nodiscard]] QStringList recentFiles() const;
    void addRecentFile(const QString& path);
    void removeRecentFile(const QString& path);
    static constexpr int most_recent_files = 8;

    /// The logbook that was open when the program last ended; empty when none was.
    [[nodiscard]] QString lastFile() const;
    void setLastFile(const QString& path);

    [[nodiscard]] Theme theme() const;
    void setTheme(Theme theme);

    /// Steps of text size away from the desktop's, each 10 % of it (10 steps double it); within `least_text_step` and `most_text_step`.
    [[nodiscard]] int textStep() const;
    void setTextStep(int step);
    static constexpr int least_text_step = -3;
    static constexpr int most_text_step = 10;

    /// Whether the run page shows its charts beside the readings; it does at first.
    [[nodiscard]] bool chartsShown() const;
    void setChartsShown(bool shown);

    /// Place and size of a window, and positions of a splitter, by object name.
    [[nodiscard]] QByteArray layout(const QString& object_name) const;
    void setLayout(const QString& object_name, const QByteArray& state);

    /// The folder in which a file was last chosen; empty at first.
    [[nodiscard]] QString folder() const;
    void setFolderOf(const QString& file);

    /// A text kept under a name of the caller's choice, such as a default; empty at first.
    [[nodiscard]] QString remembered(const QString& name) const;
    void remember(const QString& name, const QString& text);

    /// Whether a reminder sounds; it does not at first.
    [[nodiscard]] bool reminderSound() const;
    void setReminderSound(bool on);

    /// Whether a reading that is due is also called for by the desktop's means; it is at first.
    [[nodiscard]] bool reminderOnDesktop() const;
    void setReminderOnDesktop(bool on);

    /// Of the words on screen: "en", "de", "fr" or "es"; empty, as at first: that of the desktop. It counts from the next start.
    [[nodiscard]] QString language() const;
    void setLanguage(const QString& code);

    /// Of reports: "a4" or "letter"; empty, as at first: the paper of the desktop's region.
    [[nodiscard]] QString paper() const;
    void setPaper(const QString& name);

    /// The file that all of this is kept in.
    [[nodiscard]] QString path() const { return store_.fileName(); }

    /// Whether logbooks are copied automatically; they are at first.
    [[nodiscard]] bool backupOn() const;
    void setBackupOn(bool on);

    /// The folder that automatic copies go to, as an absolute path; empty for beside each logbook, which it is at first.
    [[nodiscard]] QString backupFolder() const;
    void setBackupFolder(const QString& folder);

    /// How many days an automatic copy is kept, within `least_backup_days` and `most_backup_days`; 30 at first. The newest is always kept.
    [[nodiscard]] int backupDays() const;
    void setBackupDays(int days);
    static constexpr int least_backup_days = 1;
    static constexpr int most_backup_days = 3650;

private:
    QSettings store_;
};

} // namespace ullage
