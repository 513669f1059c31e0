// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QPair>
#include <QString>

namespace ullage {

/// Keys of the program: what they do, and the keys as shown to people.
using KeyList = QList<QPair<QString, QString>>;

/// What help says of the page in sight before all else; without a title nothing.
struct PageHelp {
    QString title, about;
    KeyList keys;
};

/// What belongs to the page in sight, all keys as a table, then the words of the job in plain English. HTML.
[[nodiscard]] QString keys_and_words_html(const KeyList& keys, const PageHelp& here = {});
/// How figures come about, with sources. HTML.
[[nodiscard]] QString method_html();
/// The cautions as a list. HTML.
[[nodiscard]] QString cautions_html();
/// Name, version, licence. HTML.
[[nodiscard]] QString about_html();

} // namespace ullage
