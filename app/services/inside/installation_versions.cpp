// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/inside/installation_parts.h"

#include "base/late_part.h"
#include "base/version.h"
#include "document/store_version.h"
#include "style/words.h"

#include <QFileInfo>
#include <QStringList>
#include <QSysInfo>
#include <QVersionNumber>

#include <link.h>

namespace ullage {

namespace {

/// Libraries that parts of the program stand on, and what for. Their files have their version in the name.
const std::pair<const char*, const char*> used_libraries[] = {
    {"libQt6Charts", QT_TRANSLATE_NOOP("ullage", "charts")},
    {"libexiv2", QT_TRANSLATE_NOOP("ullage", "times of photos")},
    {"libxlsxwriter", QT_TRANSLATE_NOOP("ullage", "workbooks that are written")},
    {"libzip", QT_TRANSLATE_NOOP("ullage", "workbooks that are read")},
    {"libxml2", QT_TRANSLATE_NOOP("ullage", "tables of pages")},
    {"libQt6SerialBus", QT_TRANSLATE_NOOP("ullage", "meters by Modbus")},
    {"libQt6SerialPort", QT_TRANSLATE_NOOP("ullage", "meters on serial lines")},
    {"libqt6keychain", QT_TRANSLATE_NOOP("ullage", "access to kept passwords")},
};

/// The files of all shared libraries that this process has loaded.
QStringList loaded_libraries() {
    QStringList files;
    ::dl_iterate_phdr(
        [](dl_phdr_info* library, std::size_t, void* into) {
            if (library->dlpi_name && *library->dlpi_name) static_cast<QStringList*>(into)->append(QString::fromLocal8Bit(library->dlpi_name));
            return 0;
        },
        &files);
    return files;
}

InstallationRow compared(const QString& subject, const QString& running, const QString& built_with) {
    InstallationRow row{tr("Versions"), subject, InstallationRow::State::good, running, {}};
    const auto is = QVersionNumber::fromString(running), was = QVersionNumber::fromString(built_with);
    if (is == was) return row;
    row.found = tr("%1, built with %2").arg(running, built_with);
    if (is > was && is.majorVersion() == was.majorVersion()) return row;
    row.state = InstallationRow::State::note;
    row.follows = tr("It is older than the one that the program was built with. Bring the system up to date.");
    return row;
}

} // namespace

void check_versions(QList<InstallationRow>& rows) {
    const QString group = tr("Versions");
    rows << InstallationRow{group, tr("Ullage"), {}, raw_text(program_version()), {}};
    rows << InstallationRow{
        group, tr("system"), {}, QStringLiteral("%1, %2").arg(QSysInfo::prettyProductName(), QSysInfo::currentCpuArchitecture()), {}};
    rows << compared(tr("Qt"), QString::fromLatin1(qVersion()), QStringLiteral(QT_VERSION_STR));
    const StoreVersion sqlite = store_version();
    rows << compared(tr("SQLite"), sqlite.running, sqlite.built_with);
    if (const auto loaded = load_late_part(); !loaded)
        rows << InstallationRow{group, tr("part of the program"), InstallationRow::State::fault, tr("cannot be loaded"),
                                raw_text(loaded.error().sentence())};
    const QStringList files = loaded_libraries();
    for (const auto& [name, purpose] : used_libraries) {
        const QString begin = QString::fromLatin1(name) + QStringLiteral(".so");
        for (const QString& file : files) {
            if (!QFileInfo(file).fileName().startsWith(begin)) continue;
            const QFileInfo real(QFileInfo(file).canonicalFilePath());
            rows << InstallationRow{group, tr(purpose), {}, real.exists() ? real.fileName() : QFileInfo(file).fileName(), {}};
            break;
        }
    }
}

} // namespace ullage
