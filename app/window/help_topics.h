// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/help_texts.h"
#include "formats/report/report_content.h"

#include <QList>
#include <QString>

class QAction;
class QObject;

namespace ullage {

/// Keys that belong together, under a title.
struct KeyGroup {
    QString title;
    KeyList keys;
};

/// The keys of the bench in the order in which a night asks for them: entering a reading, events, running tests and their display. What menus offer
/// is taken from the actions of `window`, so that keys and words are theirs.
[[nodiscard]] QList<KeyGroup> bench_keys(const QObject& window);

/// What help says first of a page, by its object name: on pages of the bench its keys.
[[nodiscard]] PageHelp page_help(const QString& page, const QObject& window);

/// The keys of the bench on a sheet, to be printed and hung up there.
[[nodiscard]] Report key_card(const QObject& window, const QString& made);

/// The words of an entry of a menu, and its key.
[[nodiscard]] QPair<QString, QString> key_of(const QAction& entry);

} // namespace ullage
