// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QPair>
#include <QString>

namespace ullage {

/// Keys of the program: what they do, and the keys as shown to people.
using KeyList = QList<QPair<QString, QString>>;

/// The keys as a table, then the words of the job in plain English. HTML.
[[nodiscard]] QString keys_and_words_html(const KeyList& keys);
/// How figures come about, with sources. HTML.
[[nodiscard]] QString method_html();
/// The cautions as a list. HTML.
[[nodiscard]] QString cautions_html();
/// Name, version, licence. HTML.
[[nodiscard]] QString about_html();

} // namespace ullage
