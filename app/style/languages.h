// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/language.h"
#include "base/result.h"

#include <QString>
#include <QStringList>

#include <vector>

class QLocale;

namespace ullage {

/// A language that the program speaks.
struct SpokenLanguage {
    QString code;     ///< ISO 639-1
    QString own_name; ///< what its speakers call it
};

/// All of them, English first.
[[nodiscard]] const std::vector<SpokenLanguage>& spoken_languages();

/// Refuses what is no code of theirs, and says which there are; an empty one too, as of an option that nothing stands behind.
[[nodiscard]] Result<void> check_spoken(const QString& code);

/// The code of the language to speak: `wanted` where the program speaks it, else the first of `desktop` (BCP 47, best first, as
/// QLocale::uiLanguages()) that it speaks, else "en".
[[nodiscard]] QString language_to_speak(const QString& wanted, const QStringList& desktop);

/// A language by its code, for SpeakingIn: core's phrases and, on the same thread, the texts of app and of Qt. English for any other code.
[[nodiscard]] const Language& spoken_language(const QString& code);

/// Makes all threads speak it from now on, and QLocale too, with the region of the machine. Before anything is said; the application object, where
/// there is one, must exist.
void speak(const QString& code);

/// How the language in use writes months and weekdays.
[[nodiscard]] QLocale shown_locale();

} // namespace ullage
