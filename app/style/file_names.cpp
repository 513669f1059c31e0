// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/file_names.h"

#include <QRegularExpression>

namespace ullage {

namespace {

constexpr qsizetype most_name_bytes = 200;

/// The longest beginning of so many bytes that splits no character.
QString beginning(const QString& text, qsizetype most_bytes) {
    qsizetype used = 0, end = 0;
    for (const char32_t letter : text.toStdU32String()) {
        const qsizetype units = letter > 0xFFFF ? 2 : 1;
        used += letter < 0x80 ? 1 : letter < 0x800 ? 2 : letter < 0x10000 ? 3 : 4;
        if (used > most_bytes) break;
        end += units;
    }
    return text.left(end);
}

QString without_hyphens_at_the_ends(QString text) {
    while (text.startsWith(QLatin1Char('-'))) text.remove(0, 1);
    while (text.endsWith(QLatin1Char('-'))) text.chop(1);
    return text;
}

/// What some systems keep for devices, with or without an ending behind.
bool is_reserved(const QString& stem) {
    static const QRegularExpression reserved(QStringLiteral("^(con|prn|aux|nul|(com|lpt)[0-9\u00B9\u00B2\u00B3])$"),
                                             QRegularExpression::CaseInsensitiveOption | QRegularExpression::UseUnicodePropertiesOption);
    return reserved.match(stem).hasMatch();
}

} // namespace

QString file_stem(const QString& text) {
    static const QRegularExpression others(QStringLiteral("[^\\p{L}\\p{M}\\p{N}]+"), QRegularExpression::UseUnicodePropertiesOption);
    QString stem = text.toLower().normalized(QString::NormalizationForm_C).replace(others, QStringLiteral("-"));
    stem = without_hyphens_at_the_ends(beginning(without_hyphens_at_the_ends(stem), most_stem_bytes));
    if (stem.isEmpty()) return QStringLiteral("unnamed");
    return is_reserved(stem) ? stem + QStringLiteral("-file") : stem;
}

QString FileStems::next(const QString& text) {
    const auto key = [](const QString& stem) { return stem.toCaseFolded().normalized(QString::NormalizationForm_KC); };
    const QString first = file_stem(text);
    QString stem = first;
    for (int number = 2; taken_.contains(key(stem)); ++number) {
        const QString ending = QLatin1Char('-') + QString::number(number);
        stem = without_hyphens_at_the_ends(beginning(first, most_stem_bytes - ending.size())) + ending;
    }
    taken_.insert(key(stem));
    return stem;
}

QString safe_file_name(const QString& name, const QString& fallback, const QString& ending, const QString& other_ending) {
    static const QRegularExpression forbidden(QStringLiteral("[<>:\"/\\\\|?*\\p{C}\\p{Zl}\\p{Zp}]+"), QRegularExpression::UseUnicodePropertiesOption);
    static const QRegularExpression ends(QStringLiteral("^[\\s.]+|[\\s.]+$"), QRegularExpression::UseUnicodePropertiesOption);
    QString stem = name.section(QLatin1Char('/'), -1).section(QLatin1Char('\\'), -1);
    QString behind = QLatin1Char('.') + ending;
    for (const QString& known : {ending, other_ending}) {
        if (known.isEmpty() || !stem.endsWith(QLatin1Char('.') + known, Qt::CaseInsensitive)) continue;
        behind = stem.right(known.size() + 1);
        stem.chop(known.size() + 1);
        break;
    }
    stem.replace(forbidden, QStringLiteral("-")).remove(ends);
    stem = beginning(stem, most_name_bytes - behind.size()).remove(ends);
    if (stem.isEmpty() || stem == QLatin1String("-")) stem = fallback;
    if (is_reserved(stem.section(QLatin1Char('.'), 0, 0))) stem.prepend(QLatin1Char('_'));
    return stem + behind;
}

} // namespace ullage
