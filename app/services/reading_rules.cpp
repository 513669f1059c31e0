// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/reading_rules.h"

#include "base/number.h"
#include "style/words.h"

#include <QLocale>
#include <QRegularExpression>
#include <QStringList>

#include <cmath>

namespace ullage {

namespace {

constexpr double minutes_an_hour = 60;

QString kept(const std::optional<double>& part) { return part ? raw_text(exact_text(*part)) : QString(); }

std::optional<double> part_of(const QStringList& parts, qsizetype at) {
    if (at >= parts.size()) return std::nullopt;
    const auto parsed = parse_number(utf8_of(parts[at]));
    return parsed && parsed.value() >= 0 ? std::optional(parsed.value()) : std::nullopt;
}

double number_of(const QString& digits) { return QLocale::c().toDouble(QString(digits).replace(QLatin1Char(','), QLatin1Char('.'))); }

} // namespace

ReadingRule usual_rule(RunKind kind) {
    switch (kind) {
    case RunKind::drain: return {60, std::nullopt, 20};
    case RunKind::no_load_drain: return {240, std::nullopt, 30};
    case RunKind::charge: return {60, std::nullopt, std::nullopt};
    case RunKind::sustained_output: return {15, std::nullopt, 10};
    case RunKind::peak_output: return {5, std::nullopt, std::nullopt};
    case RunKind::standby: return {1440, std::nullopt, std::nullopt};
    }
    return {};
}

QString kept_rule(const ReadingRule& rule) {
    return QStringLiteral("%1;%2;%3").arg(kept(rule.every_min), kept(rule.gauge_drop_pt), kept(rule.before_cut_off_min));
}

ReadingRule rule_from_kept(const QString& line) {
    const auto parts = line.split(QLatin1Char(';'));
    ReadingRule rule{part_of(parts, 0), part_of(parts, 1), part_of(parts, 2)};
    if (rule.every_min == 0) rule.every_min.reset();
    if (rule.gauge_drop_pt == 0) rule.gauge_drop_pt.reset();
    return rule;
}

QString minutes_text(const std::optional<double>& minutes) {
    if (!minutes) return {};
    const double hours = std::floor(*minutes / minutes_an_hour);
    const double rest = *minutes - hours * minutes_an_hour;
    QStringList parts;
    if (hours > 0) parts << QStringLiteral("%1 h").arg(raw_text(exact_text(hours)));
    if (rest > 0 || hours == 0) parts << QStringLiteral("%1 min").arg(raw_text(exact_text(rest)));
    return parts.join(QLatin1Char(' '));
}

Result<double> parse_minutes(std::string_view text) {
    static const QRegularExpression form(
        QStringLiteral("^(?:(?<h>\\d+(?:[.,]\\d+)?)\\s*(?:h|hours?))?\\s*(?:(?<m>\\d+(?:[.,]\\d+)?)\\s*(?:m|mins?|minutes?)?)?$"));
    static const QRegularExpression clock(QStringLiteral("^(?<h>\\d{1,3}):(?<m>[0-5]\\d)$"));
    const auto typed = raw_text(text).trimmed().toLower();
    auto match = clock.match(typed);
    if (!match.hasMatch()) match = form.match(typed);
    if (typed.isEmpty() || !match.hasMatch())
        return Error{Failure::bad_input,
                     say(phrase("services", "`%1` is not understood"), text),
                     {},
                     say(phrase("services", "enter a time span such as 30 min or 1.5 h"))};
    return number_of(match.captured(QStringLiteral("h"))) * minutes_an_hour + number_of(match.captured(QStringLiteral("m")));
}

Result<double> parse_points(std::string_view text) {
    static const QRegularExpression form(QStringLiteral("^(\\d+(?:[.,]\\d+)?)\\s*(?:%|points?|pt|percent)?$"));
    const auto typed = raw_text(text).trimmed().toLower();
    const auto match = form.match(typed);
    if (!match.hasMatch())
        return Error{Failure::bad_input,
                     say(phrase("services", "`%1` is not understood"), text),
                     {},
                     say(phrase("services", "enter points of the gauge, such as 10"))};
    return number_of(match.captured(1));
}

} // namespace ullage
