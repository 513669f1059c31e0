// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/forecast_text.h"

#include "base/number.h"
#include "formats/text/table_unicode.h"

#include <fmt/format.h>

namespace ullage {

namespace {

std::string range_text(const ExpectedTime& time, const RunForecast& forecast, const std::string& zone) {
    return fmt::format("{} ({})", expected_clock_text(time, forecast.as_of_ms, zone), expected_hours_text(time, forecast.as_of_ms));
}

std::string line(const std::string& text) { return "  " + one_line(text) + '\n'; }

} // namespace

std::string forecast_text(const RunForecast& forecast, const std::string& zone) {
    std::string text = "\nForecast";
    if (forecast.last_reading_ms) text += " as of " + format_iso8601(forecast.as_of_ms, zone);
    text += '\n';
    if (forecast.cut_off)
        text += line(fmt::format("cut-off: {}, in the middle {}; {}", range_text(*forecast.cut_off, forecast, zone),
                                 clock_text(forecast.cut_off->estimate_ms, zone), forecast.cut_off_reason.text()));
    else text += line("cut-off: not known: " + forecast.cut_off_reason);
    if (forecast.next_step)
        text += line(fmt::format("gauge at {} %: {}", exact_text(*forecast.next_step_percent), range_text(*forecast.next_step, forecast, zone)));
    else text += line("next gauge step: not known: " + forecast.gauge_reason);
    if (!forecast.overthrown.empty()) text += line(forecast.overthrown.text());
    for (const ReadingAdvice& advice : forecast.advice) text += line(advice.sentence);
    return text;
}

std::string accounts_text(const TwoAccounts& accounts, const Run& run) {
    std::string text;
    for (const Message& told : account_lines(accounts, run)) text += line(told);
    return text.empty() ? text : "\nTwo accounts\n" + text;
}

} // namespace ullage
