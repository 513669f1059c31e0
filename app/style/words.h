// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "model/ids.h"

#include <QCoreApplication>
#include <QString>

#include <string>
#include <string_view>

namespace ullage {

/// A text of the program that stands outside any class, in the language in use; `which` tells apart what is said alike in English alone.
[[nodiscard]] inline QString tr(const char* text, const char* which = nullptr) { return QCoreApplication::translate("ullage", text, which); }

/// UTF-8 text of core as the screen shows it: what acts unseen, such as a mark of direction in a name, is shown as an escape (clean_text() in
/// formats/text/table_unicode.h).
[[nodiscard]] QString text_of(std::string_view text);
/// What core says, in the language in use, in the same way.
[[nodiscard]] inline QString text_of(const Message& message) { return text_of(std::string_view(message.text())); }
inline QString text_of(const std::string& text) { return text_of(std::string_view(text)); }
inline QString text_of(const char* text) { return text_of(std::string_view(text)); }

/// The name or path of a file as the screen shows it: text_of(), with the separators of the system.
[[nodiscard]] QString shown_path(const QString& path);

// Between the strings of core, all UTF-8, and those of Qt text passes here alone; what stands on the screen by text_of().

/// The same as it is: for a field in which it is edited, for keys, for names of files, and for words that have been cleaned.
[[nodiscard]] inline QString raw_text(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

/// An identifier as a key: in settings, in the data of items, in names of objects.
template <typename Tag>
[[nodiscard]] QString raw_text(const Id<Tag>& id) {
    return raw_text(id.text());
}
/// The identifier that such a key is of, as `id_of<RunId>(key)`.
template <typename KindOfId>
[[nodiscard]] KindOfId id_of(const QString& key) {
    return KindOfId(key.toStdString());
}

/// A text of the screen for core; the content of a file.
[[nodiscard]] inline std::string utf8_of(const QString& text) { return text.toStdString(); }
[[nodiscard]] inline std::string bytes_of(const QByteArray& bytes) { return bytes.toStdString(); }

/// The path of a file as the file system takes it, and back.
[[nodiscard]] std::string native_path(const QString& path);
[[nodiscard]] QString path_text(std::string_view native);

} // namespace ullage
