// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/numbers.h"

#include "base/language.h"
#include "base/number.h"
#include "style/words.h"

#include <QStringList>

#include <cmath>

namespace ullage {
namespace {

constexpr QChar thin_space(0x202F); // narrow and without a line break
constexpr QChar minus_sign(0x2212);

QString grouped(QString digits) {
    const qsizetype point = digits.indexOf(QLatin1Char('.'));
    const qsizetype whole = point < 0 ? digits.size() : point;
    if (point >= 0) digits[point] = QLatin1Char(decimal_sign_in_use());
    if (whole < 5) return digits;
    for (qsizetype at = whole - 3; at > 0; at -= 3) digits.insert(at, thin_space);
    return digits;
}

/// The numbers of a text of the core in the form of shown_number().
QString set_numbers(const std::string& text) {
    const QString raw = raw_text(text);
    QString out;
    for (qsizetype at = 0; at < raw.size();) {
        const bool negative = raw[at] == QLatin1Char('-') && (at == 0 || raw[at - 1] == QLatin1Char(' '));
        if (negative) out += minus_sign;
        if (negative || !raw[at].isDigit()) {
            if (!negative) out += raw[at];
            ++at;
            continue;
        }
        qsizetype end = at;
        while (end < raw.size() && (raw[end].isDigit() || (raw[end] == QLatin1Char('.') && end + 1 < raw.size() && raw[end + 1].isDigit()))) ++end;
        out += grouped(raw.mid(at, end - at));
        at = end;
    }
    return out;
}

ValueText set_parts(const QuantityParts& parts) { return {set_numbers(parts.value), set_numbers(parts.interval), raw_text(parts.unit)}; }

} // namespace

QString ValueText::plain() const {
    QStringList parts{value};
    if (!interval.isEmpty()) parts << interval;
    if (!unit.isEmpty()) parts << unit;
    return parts.join(QLatin1Char(' '));
}

QString shown_number(std::optional<double> value, int decimals) {
    if (!value || !std::isfinite(*value)) return tr("not known");
    const QString text = text_of(say_number(*value, decimals));
    if (text.startsWith(QLatin1Char('-'))) return minus_sign + grouped(text.mid(1));
    return grouped(text);
}

QString shown_difference(std::optional<double> value, int decimals) {
    const QString text = shown_number(value, decimals);
    const bool zero = value && std::isfinite(*value) && fixed_text(*value, decimals) == fixed_text(0.0, decimals);
    if (!value || !std::isfinite(*value) || zero || text.startsWith(minus_sign)) return text;
    return QLatin1Char('+') + text;
}

ValueText shown_quantity(const Quantity& quantity, std::optional<int> fallback_decimals) {
    return set_parts(quantity_parts(quantity, fallback_decimals));
}

ValueText shown_as_it_is(const Quantity& quantity, std::optional<int> fallback_decimals) {
    return set_parts(parts_as_they_are(quantity, fallback_decimals));
}

ValueText shown_value(std::optional<double> value, std::optional<double> half_width, const QString& unit, int fallback_decimals) {
    if (!value || !std::isfinite(*value)) return {tr("not known"), {}, {}};
    if (half_width && (!std::isfinite(*half_width) || *half_width <= 0)) half_width.reset();
    return shown_quantity(known({}, utf8_of(unit), *value, half_width, Kind::measured), fallback_decimals);
}

QString rich_text(const ValueText& text, const Palette& palette) {
    QString rich = text.value.toHtmlEscaped();
    QStringList light;
    if (!text.interval.isEmpty()) light << text.interval.toHtmlEscaped();
    if (!text.unit.isEmpty()) light << text.unit.toHtmlEscaped();
    if (!light.isEmpty())
        rich += QStringLiteral(" <span style=\"color:%1; font-size:small\">%2</span>").arg(palette.soft.name(), light.join(QLatin1Char(' ')));
    return rich;
}

QString shown_duration(double hours) {
    if (!std::isfinite(hours)) return tr("not known");
    const QString sign = hours < 0 ? QString(minus_sign) : QString();
    const long long minutes = std::llround(std::fabs(hours) * 60.0);
    if (minutes < 60) return sign + tr("%1 min").arg(minutes);
    if (minutes < 48 * 60) return sign + tr("%1 h %2").arg(minutes / 60).arg(minutes % 60, 2, 10, QLatin1Char('0'));
    return sign + tr("%1 d %2 h").arg(minutes / (24 * 60)).arg(minutes / 60 % 24);
}

} // namespace ullage
