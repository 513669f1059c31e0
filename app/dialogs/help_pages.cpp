// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/help_pages.h"

#include "base/language.h"
#include "style/words.h"

#include <QFile>

namespace ullage {

QList<HelpPage> help_pages() {
    return {
        {"import.md", "importHelpAction", "Shift+F7", tr("&Bring what you have")},
        {"live.md", "liveHelpAction", "Shift+F8", tr("&Meters read live")},
        {"method.md", "methodDetailsAction", "Shift+F2", tr("&How the figures come about")},
        {"formats.md", "formatsAction", "Shift+F3", tr("&File formats")},
        {"commands.md", "commandsAction", "Shift+F4", tr("C&ommands")},
        {"json.md", "jsonAction", "Shift+F5", tr("&JSON")},
        {"figures.md", "figuresAction", "Shift+F6", tr("&Tested figures")},
    };
}

HelpText help_text(const HelpPage& page) {
    const QString name = QString::fromLatin1(page.file);
    QFile file(QStringLiteral(":/ullage/help/%1/%2").arg(raw_text(language_in_use().code()), name));
    if (!file.exists()) file.setFileName(QStringLiteral(":/ullage/help/%1").arg(name)); // the English ones have no folder of their own
    if (!file.open(QIODevice::ReadOnly)) return {};
    const QString all = QString::fromUtf8(file.readAll());
    const auto end = all.indexOf(QLatin1Char('\n'));
    return {all.left(end).remove(QStringLiteral("# ")), all.mid(end + 1)};
}

} // namespace ullage
