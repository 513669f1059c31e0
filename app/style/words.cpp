// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/words.h"

#include "formats/text/table_unicode.h"

#include <QDir>
#include <QFile>

#include <algorithm>

namespace ullage {

QString text_of(std::string_view text) {
    // Most text is plain ASCII, and tables ask for it at every painting.
    const auto plain = [](char c) { return c >= 0x20 && c < 0x7F; };
    return std::ranges::all_of(text, plain) ? QString::fromLatin1(text.data(), static_cast<qsizetype>(text.size())) : raw_text(clean_text(text));
}

QString shown_path(const QString& path) { return text_of(utf8_of(QDir::toNativeSeparators(path))); }

std::string native_path(const QString& path) { return bytes_of(QFile::encodeName(path)); }

QString path_text(std::string_view native) { return QFile::decodeName(QByteArray(native.data(), static_cast<qsizetype>(native.size()))); }

} // namespace ullage
