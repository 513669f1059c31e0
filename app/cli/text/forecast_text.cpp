// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/forecast_text.h"

#include "base/number.h"
#include "cli/text/command_parts.h"

namespace ullage {

namespace {

Message say_span(const ExpectedTime& time, const RunForecast& forecast, const std::string& zone) {
    return say(phrase("commands", "%1 (%2)"), say_expected_clock(time, forecast.as_of_ms, zone), say_expected_hours(time, forecast.as_of_ms));
}

std::string indented(const Message& words) { return "  " + line_of(words); }

} // namespace

std::string forecast_text(const RunForecast& forecast, const std::string& zone) {
    std::string text = '\n' + line_of(forecast.last_reading_ms ? say(phrase("commands", "Forecast as of %1"), format_iso8601(forecast.as_of_ms, zone))
                                                               : say(phrase("commands", "Forecast")));
    if (forecast.cut_off)
        text += indented(say(phrase("commands", "cut-off: %1, in the middle %2; %3"), say_span(*forecast.cut_off, forecast, zone),
                             clock_text(forecast.cut_off->estimate_ms, zone), forecast.cut_off_reason));
    else text += indented(say(phrase("commands", "cut-off: not known: %1"), forecast.cut_off_reason));
    if (forecast.next_step)
        text += indented(say(phrase("commands", "gauge at %1 %: %2"), say_digits(exact_text(*forecast.next_step_percent)),
                             say_span(*forecast.next_step, forecast, zone)));
    else text += indented(say(phrase("commands", "next gauge step: not known: %1"), forecast.gauge_reason));
    if (!forecast.overthrown.empty()) text += indented(forecast.overthrown);
    for (const ReadingAdvice& advice : forecast.advice) text += indented(advice.sentence);
    return text;
}

std::string accounts_text(const TwoAccounts& accounts, const Run& run) {
    std::string text;
    for (const Message& told : account_lines(accounts, run)) text += indented(told);
    return text.empty() ? text : '\n' + line_of(say(phrase("commands", "Two accounts"))) + text;
}

} // namespace ullage
