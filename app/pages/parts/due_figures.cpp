// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/due_figures.h"

#include "style/numbers.h"
#include "style/words.h"

#include <cmath>

namespace ullage {

namespace {

constexpr double minute_ms = 60'000, minutes_an_hour = 60;

/// Value and rest of a strip's cell.
struct Words {
    QString value, rest;
};

/// Whole minutes as a duration, its unit apart where it is one: "12" and "min", "1 h 05" and nothing.
Words split(double minutes) {
    QString text = shown_duration(minutes / minutes_an_hour);
    if (!text.endsWith(QStringLiteral(" min"))) return {text, {}};
    text.chop(4);
    return {text, QStringLiteral("min")};
}

Words words_of(const DueState& state, UtcMs now_ms) {
    // A call is early rather than late: what is left is rounded up, what has gone is rounded down.
    const double ahead_min = static_cast<double>(*state.at_ms - now_ms) / minute_ms;
    if (ahead_min > 0) {
        const auto left = split(std::ceil(ahead_min));
        return {tr("in %1").arg(left.value), left.rest};
    }
    const double late_min = std::floor(-ahead_min);
    if (late_min < 1) return {tr("due now"), {}};
    const auto late = split(late_min);
    return {tr("overdue"), (late.value + QLatin1Char(' ') + late.rest).trimmed()};
}

} // namespace

QString due_words(const DueState& state, UtcMs now_ms) {
    if (!state.at_ms) return text_of(state.due.why);
    const auto words = words_of(state, now_ms);
    return (words.value + QLatin1Char(' ') + words.rest).trimmed();
}

StripFigure due_figure(const DueState& state, UtcMs now_ms) {
    StripFigure figure{QStringLiteral("due"), tr("next reading"), QString(QChar(0x2013)), {}, text_of(state.due.why)};
    if (!state.at_ms) {
        figure.rest = state.asked ? tr("not yet") : tr("no reminder");
        return figure;
    }
    if (state.snoozed) figure.label = tr("next reading, snoozed");
    const auto words = words_of(state, now_ms);
    figure.value = words.value;
    figure.rest = words.rest;
    figure.alarm = state.overdue() || *state.at_ms <= now_ms;
    return figure;
}

} // namespace ullage
