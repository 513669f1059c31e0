// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/drawing/drawing_commands.h"

#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "report/report_look.h"
#include "services/installation_check.h"
#include "services/settings.h"
#include "style/words.h"

#include <CLI/CLI.hpp>

#include <QCoreApplication>
#include <QFile>
#include <QFileInfo>
#include <QLocale>

#include <algorithm>
#include <memory>

namespace ullage {

namespace {

int check_command(const std::string& logbook, std::ostream& out, std::ostream& err) {
    const QString path = QFile::decodeName(logbook.c_str());
    if (!path.isEmpty() && !QFileInfo::exists(path))
        return refuse(err, {Failure::not_found, "there is no such file or folder", logbook, "name a logbook, or the folder that it is to stand in"});
    QCoreApplication::setApplicationName(QStringLiteral("Ullage")); // as that of the window, whose places are looked at
    const Settings settings;
    InstallationSite site;
    const QFileInfo named(path);
    if (!path.isEmpty()) site.logbooks = named.isDir() ? named.absoluteFilePath() : named.absolutePath();
    const bool letter = settings.paper().isEmpty() ? paper_of(QLocale()) == Paper::letter : settings.paper() == QLatin1String("letter");
    site.paper = letter ? QStringLiteral("Letter") : QStringLiteral("A4");
    const auto rows = check_installation(settings, site);
    const int printed = print(utf8_of(installation_text(rows)), out, err);
    if (printed != exit_good) return printed;
    return std::ranges::any_of(rows, [](const InstallationRow& row) { return row.state == InstallationRow::State::fault; }) ? exit_bad_input
                                                                                                                            : exit_good;
}

} // namespace

Command::Run read_check(CLI::App& command) {
    const auto logbook = std::make_shared<std::string>();
    command.add_option("LOGBOOK", *logbook, "a logbook, or a folder for one: whether it can be recorded into there");
    return [logbook](std::ostream& out, std::ostream& err) { return check_command(*logbook, out, err); };
}

} // namespace ullage
