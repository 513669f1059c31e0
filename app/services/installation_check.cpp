// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/installation_check.h"

#include "services/inside/installation_parts.h"
#include "style/words.h"

#include <QDir>
#include <QStringList>

#include <algorithm>

namespace ullage {

QString path_from_home(const QString& path) {
    const QString home = QDir::homePath(), clean = QDir::cleanPath(path);
    if (clean == home) return QStringLiteral("~");
    return shown_path(home.size() > 1 && clean.startsWith(home + QLatin1Char('/')) ? QLatin1Char('~') + clean.mid(home.size()) : clean);
}

QList<InstallationRow> check_installation(const Settings& settings, const InstallationSite& site) {
    QList<InstallationRow> rows;
    check_versions(rows);
    check_places(rows, settings, site.logbooks);
    check_desktop(rows, settings);
    check_text_and_pictures(rows, settings, site.paper);
    return rows;
}

QString installation_word(InstallationRow::State state) {
    switch (state) {
    case InstallationRow::State::good: return tr("found");
    case InstallationRow::State::note: return tr("note");
    case InstallationRow::State::fault: return tr("missing");
    }
    return {};
}

QString installation_sentence(const QList<InstallationRow>& rows) {
    const auto those = [&rows](InstallationRow::State state) {
        QStringList subjects;
        for (const auto& row : rows)
            if (row.state == state) subjects << row.subject;
        return subjects.join(QStringLiteral(", "));
    };
    const QString faults = those(InstallationRow::State::fault), notes = those(InstallationRow::State::note);
    if (!faults.isEmpty() && !notes.isEmpty()) return tr("Missing: %1. Notes on: %2.").arg(faults, notes);
    if (!faults.isEmpty()) return tr("Missing: %1.").arg(faults);
    if (!notes.isEmpty()) return tr("Nothing that the program needs is missing. Notes on: %1.").arg(notes);
    return tr("All is there.");
}

QString installation_text(const QList<InstallationRow>& rows) {
    qsizetype widest_subject = 0, widest_word = 0;
    for (const auto& row : rows) {
        widest_subject = std::max(widest_subject, row.subject.size());
        widest_word = std::max(widest_word, installation_word(row.state).size());
    }
    QString text = tr("Check of the installation: %1").arg(installation_sentence(rows)) + QLatin1Char('\n');
    QString group;
    for (const auto& row : rows) {
        if (row.group != group) text += QLatin1Char('\n') + (group = row.group) + QLatin1Char('\n');
        text += QStringLiteral("  %1  %2  %3\n")
                    .arg(installation_word(row.state).leftJustified(widest_word), row.subject.leftJustified(widest_subject),
                         row.follows.isEmpty() ? row.found : tr("%1. %2").arg(row.found, row.follows));
    }
    return text;
}

} // namespace ullage
