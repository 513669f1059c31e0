// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/languages.h"

#include "style/words.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QPointer>
#include <QTranslator>

#include <algorithm>
#include <map>
#include <memory>

// Outside the namespace: the macro declares a function of global scope.
static void load_languages() { Q_INIT_RESOURCE(languages); }

namespace ullage {
namespace {

/// A language other than English, from its compiled translations.
class TranslatedLanguage : public Language {
public:
    explicit TranslatedLanguage(const QString& code) : code_(code), locale_(code) {
        load_languages();
        (void)ours_.load(QStringLiteral(":/ullage/languages/ullage_%1.qm").arg(code));
        // Where Qt's own translations are not installed its few words stay English.
        (void)toolkits_.load(QStringLiteral("qtbase_%1").arg(code), QLibraryInfo::path(QLibraryInfo::TranslationsPath));
    }

    [[nodiscard]] std::string words(const Phrase& phrase, std::optional<long> count) const override {
        const QString said = ours_.translate(phrase.context, phrase.english, phrase.english_one, count ? static_cast<int>(*count) : -1);
        return said.isNull() ? english().words(phrase, count) : utf8_of(said);
    }
    [[nodiscard]] char decimal_sign() const override { return locale_.decimalPoint() == QLatin1String(",") ? ',' : '.'; }
    [[nodiscard]] std::string code() const override { return utf8_of(code_); }

    [[nodiscard]] QString said(const char* context, const char* source, const char* disambiguation, int count) const {
        const QString ours = ours_.translate(context, source, disambiguation, count);
        return ours.isNull() ? toolkits_.translate(context, source, disambiguation, count) : ours;
    }

private:
    QString code_;
    QLocale locale_;
    QTranslator ours_, toolkits_;
};

/// Says what Qt asks for in the language in use on the thread that asks, so that a report can be made in another than the window's.
class FollowingTranslator : public QTranslator {
public:
    using QTranslator::QTranslator;
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source, const char* disambiguation, int count) const override {
        const auto* language = dynamic_cast<const TranslatedLanguage*>(&language_in_use());
        return language ? language->said(context, source, disambiguation, count) : QString();
    }
};

const std::map<QString, std::unique_ptr<const TranslatedLanguage>>& translated_languages() {
    static const auto all = [] {
        std::map<QString, std::unique_ptr<const TranslatedLanguage>> languages;
        for (const SpokenLanguage& each : spoken_languages())
            if (each.code != QLatin1String("en")) languages.emplace(each.code, std::make_unique<const TranslatedLanguage>(each.code));
        return languages;
    }();
    return all;
}

bool is_spoken(const QString& code) { return std::ranges::count(spoken_languages(), code, &SpokenLanguage::code) > 0; }

} // namespace

const std::vector<SpokenLanguage>& spoken_languages() {
    static const std::vector<SpokenLanguage> all{{QStringLiteral("en"), QStringLiteral("English")},
                                                 {QStringLiteral("de"), QStringLiteral("Deutsch")},
                                                 {QStringLiteral("fr"), QStringLiteral("Français")},
                                                 {QStringLiteral("es"), QStringLiteral("Español")}};
    return all;
}

Result<void> check_spoken(const QString& code) {
    if (is_spoken(code)) return {};
    std::vector<Message> codes;
    for (const SpokenLanguage& each : spoken_languages()) codes.emplace_back(utf8_of(each.code));
    if (code.trimmed().isEmpty())
        return Error{Failure::bad_input,
                     say(phrase("commands", "the code of a language is missing behind `--language`")),
                     {},
                     say(phrase("commands", "write %1 there, as in `--language %2`"), say_choice(codes), codes.back())};
    return Error{Failure::bad_input,
                 say(phrase("commands", "%1 is no language of this program"), utf8_of(code)),
                 {},
                 say(phrase("commands", "use `--language` with %1"), say_choice(codes))};
}

QString language_to_speak(const QString& wanted, const QStringList& desktop) {
    if (is_spoken(wanted)) return wanted;
    for (const QString& tag : desktop)
        if (const QString code = tag.section(QLatin1Char('-'), 0, 0).toLower(); is_spoken(code)) return code;
    return QStringLiteral("en");
}

const Language& spoken_language(const QString& code) {
    const auto found = translated_languages().find(code);
    return found == translated_languages().end() ? english() : *found->second;
}

void speak(const QString& code) {
    use_language(spoken_language(code));
    const QLocale machine = QLocale::system();
    const QLocale spoken(code);
    QLocale::setDefault(machine.language() == spoken.language() ? machine : QLocale(spoken.language(), machine.territory()));
    static QPointer<FollowingTranslator> installed;
    if (!QCoreApplication::instance() || installed) return;
    installed = new FollowingTranslator(QCoreApplication::instance());
    QCoreApplication::installTranslator(installed);
}

QLocale shown_locale() {
    const QString code = raw_text(language_in_use().code());
    return QLocale().name().startsWith(code) ? QLocale() : QLocale(code);
}

} // namespace ullage
