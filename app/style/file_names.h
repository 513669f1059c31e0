// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSet>
#include <QString>

namespace ullage {

// The one place where a text that somebody typed becomes the name of a file.

constexpr qsizetype most_stem_bytes = 120; ///< leaves room for what is put behind, as no file system takes more than 255 bytes

/// "Osk 1200, run 2" is "osk-1200-run-2": letters, marks and digits of any script in lower case, all else as one hyphen, in Unicode's composed
/// form, at most most_stem_bytes in UTF-8. Never empty, never a name that a system keeps for itself (con, nul, …), never with a point in it.
/// Different texts may give one stem; FileStems tells them apart.
[[nodiscard]] QString file_stem(const QString& text);

/// Stems of files that go into one folder: each is given out once, also for a disk that does not tell capitals from small letters.
class FileStems {
public:
    /// file_stem(text), with "-2", "-3" and so on behind where that is taken.
    [[nodiscard]] QString next(const QString& text);

private:
    QSet<QString> taken_;
};

/// A file's name as it came from elsewhere, made fit for every disk: no folder, no control or direction character, none of <>:"/\|?*, no point or
/// blank at either end, at most 200 bytes; it ends in ".ENDING", or in ".OTHER" where it does so already. `fallback` is the name without ending
/// where nothing is left.
[[nodiscard]] QString safe_file_name(const QString& name, const QString& fallback, const QString& ending, const QString& other_ending = {});

} // namespace ullage
