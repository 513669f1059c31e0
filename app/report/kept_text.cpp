// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/kept_text.h"

#include "report/report_look.h"

#include <QRegularExpression>

#include <array>

namespace ullage {

namespace {

constexpr QChar no_break_space(0xA0);
constexpr qsizetype most_kept_letters = 24; ///< a longer name may have to be broken in a narrow column

QString with_no_break(QString text) { return text.replace(QLatin1Char(' '), no_break_space); }

/// The spaces of these stay within a line.
const std::array<QRegularExpression, 3>& kept_spaces() {
    static const std::array<QRegularExpression, 3> spaces{
        // 902.1 ± 9.7; 4 to 13
        QRegularExpression(QStringLiteral(" (?=±)|(?<=±) |(?<=\\d)(?: to )(?=[\\d\\x{2212}])")),
        // 54 W; 0.3 Wh/pt
        QRegularExpression(QStringLiteral("(?<=[\\d)]) (?=(?:%|(?:kWh|Wh|W|h|min|s|V|A|mA|pt|points|°C|m|mm|cycles|days|drains|runs)(?![\\w/]))|"
                                          "(?:Wh|W|A|V)/)")),
        // 14 May 2026
        QRegularExpression(QStringLiteral("(?<=\\d) (?=(?:Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)[a-z]*\\b)|"
                                          "(?<=Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec) (?=\\d{4}\\b)")),
    };
    return spaces;
}

} // namespace

KeptText::KeptText(const Report& report) {
    for (const std::string& name : report.names)
        if (const QString text = shown(name); text.contains(QLatin1Char(' ')) && text.size() <= most_kept_letters) names_ << text;
}

QString KeptText::operator()(std::string_view text) const {
    QString kept = shown(text);
    for (const QRegularExpression& spaces : kept_spaces()) {
        qsizetype from = 0;
        for (auto match = spaces.match(kept); match.hasMatch(); match = spaces.match(kept, from)) {
            const QString held = with_no_break(match.captured());
            kept.replace(match.capturedStart(), match.capturedLength(), held);
            from = match.capturedStart() + held.size();
        }
    }
    for (const QString& name : names_) kept.replace(name, with_no_break(name));
    return kept;
}

} // namespace ullage
