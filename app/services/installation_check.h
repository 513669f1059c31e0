// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QString>

namespace ullage {

class Settings;

/// One thing that was looked at.
struct InstallationRow {
    enum class State {
        good,
        note, ///< not as it could be; the program works without it
        fault ///< something of the program does not work
    };
    QString group, subject; ///< "Places", "folder for temporary files"
    State state = State::good;
    QString found;
    QString follows; ///< what that means for the user; may be empty where it is good
};

/// What the caller knows of where the program stands.
struct InstallationSite {
    QString logbooks; ///< the folder of the open logbook, or of one to come; empty: none
    QString paper;    ///< of reports, as people say it
};

/// Looks at versions, fonts, writable places (each by writing a file of a few bytes, which is removed), desktop services, picture formats, zone and
/// region. Nothing of a logbook is read. Wants a QGuiApplication; waits for desktop services up to a second each.
[[nodiscard]] QList<InstallationRow> check_installation(const Settings& settings, const InstallationSite& site);

/// "found", "note" or "missing": the state as a word.
[[nodiscard]] QString installation_word(InstallationRow::State state);
/// All of it in one sentence: that everything is there, else what is not.
[[nodiscard]] QString installation_sentence(const QList<InstallationRow>& rows);
/// As plain text to send to somebody: a line a row, below the names of the groups. It holds no name of a unit, and paths below the person's own
/// folder begin with ~.
[[nodiscard]] QString installation_text(const QList<InstallationRow>& rows);

} // namespace ullage
