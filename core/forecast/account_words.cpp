// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "forecast/accounts.h"

#include <cmath>

namespace ullage {
namespace {

Message span_of(double low, double high, int decimals) {
    if (fixed_text(low, decimals) == fixed_text(high, decimals)) return say_number(low, decimals);
    return say(phrase("forecast", "%1 to %2"), say_number(low, decimals), say_number(high, decimals));
}

Message span_in(const Quantity& quantity, double factor, int decimals, const char* unit) {
    if (!quantity.lower || !quantity.upper) return "-";
    return say_joined({span_of(factor * *quantity.lower, factor * *quantity.upper, decimals), unit}, " ");
}

AccountFigure error_figure(const Quantity& error_pt) {
    const Message label = say(phrase("forecast", "gauge shows"));
    if (!error_pt.lower || !error_pt.upper) return {label, "-", {}};
    if (*error_pt.upper < 0)
        return {label, say_joined({span_of(-*error_pt.upper, -*error_pt.lower, 0), "pt"}, " "), say(phrase("forecast", "too little"))};
    if (*error_pt.lower > 0)
        return {label, say_joined({span_of(*error_pt.lower, *error_pt.upper, 0), "pt"}, " "), say(phrase("forecast", "too much"))};
    return {label, say(phrase("forecast", "%1 to +%2 pt"), say_number(*error_pt.lower, 0), say_number(*error_pt.upper, 0)),
            say(phrase("forecast", "too little or too much"))};
}

AccountFigure empty_figure(const TwoAccounts& accounts, const Quantity& hours, const Run& run, UtcMs as_of_ms) {
    const Message label = say(phrase("forecast", "empty"));
    if (!hours.lower || !hours.upper) return {label, "-", {}};
    if (run.end != RunEnd::still_running)
        return {label, say(phrase("forecast", "after %1 h more"), span_of(*hours.lower, *hours.upper, *hours.upper < 10 ? 1 : 0)),
                say(phrase("forecast", "at this load"))};
    const auto at = [&](double h) { return accounts.from_ms + static_cast<UtcMs>(std::llround(h * ms_per_hour)); };
    const ExpectedTime time{at(*hours.lower), at(hours.value.value_or(*hours.lower)), at(*hours.upper)};
    return {label, say_expected_hours(time, as_of_ms), say_expected_clock(time, as_of_ms, run.time_zone)};
}

/// "usable of the label 26 %; the unit itself takes 14 to 51 W; empty in 8.0 to 10 h (01:17 to 03:16)".
Message figures_in_line(const TwoAccounts& accounts, const GaugeAccount& account, const Run& run) {
    std::vector<Message> figures;
    for (const AccountFigure& figure : account_figures(accounts, account, run, accounts.from_ms)) {
        std::vector<Message> parts{figure.label, figure.value};
        if (!figure.note.empty()) parts.push_back(Message("(") + figure.note + ")");
        figures.push_back(say_joined(parts, " "));
    }
    return say_joined(figures, "; ");
}

Message line_of_right(const TwoAccounts& accounts, const Run& run) {
    const GaugeAccount& account = accounts.right;
    if (account.ruled_out) return say(phrase("forecast", "If the gauge is right: ruled out by the readings. %1"), account.sentence);
    return say(phrase("forecast", "If the gauge is right: %1. %2"), figures_in_line(accounts, account, run), account.sentence);
}

Message line_of_wrong(const TwoAccounts& accounts, const Run& run) {
    const GaugeAccount& account = accounts.wrong;
    if (account.ruled_out) return say(phrase("forecast", "If the gauge is wrong: ruled out by the readings. %1"), account.sentence);
    return say(phrase("forecast", "If the gauge is wrong: %1. %2"), figures_in_line(accounts, account, run), account.sentence);
}

} // namespace

std::vector<AccountFigure> account_figures(const TwoAccounts& accounts, const GaugeAccount& account, const Run& run, UtcMs as_of_ms) {
    const bool right = &account == &accounts.right;
    return {{say(phrase("forecast", "usable of the label")), span_in(account.usable_fraction, 100, 0, "%"), {}},
            right ? AccountFigure{say(phrase("forecast", "the unit itself takes")), span_in(account.no_load_draw_w, 1, 0, "W"), {}}
                  : error_figure(account.gauge_error_pt),
            empty_figure(accounts, account.hours_left, run, as_of_ms)};
}

std::vector<Message> account_lines(const TwoAccounts& accounts, const Run& run) {
    if (!accounts.told) return {};
    std::vector<Message> lines{line_of_right(accounts, run), line_of_wrong(accounts, run)};
    if (!accounts.decides.empty())
        lines.push_back(accounts.idle_hour.empty() ? say(phrase("forecast", "What decides: %1"), accounts.decides)
                                                   : say(phrase("forecast", "What decides: %1 %2"), accounts.decides, accounts.idle_hour));
    return lines;
}

} // namespace ullage
