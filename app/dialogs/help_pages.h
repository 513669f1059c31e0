// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QString>

namespace ullage {

/// A page of help that stands as Markdown in resources/help and is part of the program.
struct HelpPage {
    const char* file;   ///< its name in resources/help
    const char* action; ///< object name of its entry in the menu Help
    const char* keys;   ///< its keys, as QKeySequence reads them
    QString entry;      ///< text of its entry, with the letter that chooses it
};

/// What a page says.
struct HelpText {
    QString title;    ///< its first heading
    QString markdown; ///< all that follows
};

/// The pages in the order of the menu.
[[nodiscard]] QList<HelpPage> help_pages();
/// Reads the page from the program.
[[nodiscard]] HelpText help_text(const HelpPage& page);

} // namespace ullage
