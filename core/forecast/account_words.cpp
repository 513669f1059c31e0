// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "forecast/accounts.h"

#include <cmath>

namespace ullage {
namespace {

std::string span_of(double low, double high, int decimals) {
    const std::string from = fixed_text(low, decimals), to = fixed_text(high, decimals);
    return from == to ? from : from + " to " + to;
}

std::string span_text(const Quantity& quantity, double factor, int decimals, const std::string& unit) {
    if (!quantity.lower || !quantity.upper) return "-";
    return span_of(factor * *quantity.lower, factor * *quantity.upper, decimals) + " " + unit;
}

AccountFigure error_figure(const Quantity& error_pt) {
    if (!error_pt.lower || !error_pt.upper) return {"gauge shows", "-", {}};
    if (*error_pt.upper < 0) return {"gauge shows", span_of(-*error_pt.upper, -*error_pt.lower, 0) + " pt", "too little"};
    if (*error_pt.lower > 0) return {"gauge shows", span_of(*error_pt.lower, *error_pt.upper, 0) + " pt", "too much"};
    return {"gauge shows", fixed_text(*error_pt.lower, 0) + " to +" + fixed_text(*error_pt.upper, 0) + " pt", "too little or too much"};
}

AccountFigure empty_figure(const TwoAccounts& accounts, const Quantity& hours, const Run& run, UtcMs as_of_ms) {
    if (!hours.lower || !hours.upper) return {"empty", "-", {}};
    if (run.end != RunEnd::still_running)
        return {"empty", "after " + span_of(*hours.lower, *hours.upper, *hours.upper < 10 ? 1 : 0) + " h more", "at this load"};
    const auto at = [&](double h) { return accounts.from_ms + static_cast<UtcMs>(std::llround(h * ms_per_hour)); };
    const ExpectedTime time{at(*hours.lower), at(hours.value.value_or(*hours.lower)), at(*hours.upper)};
    return {"empty", expected_hours_text(time, as_of_ms), expected_clock_text(time, as_of_ms, run.time_zone)};
}

std::string line_of(const std::string& head, const TwoAccounts& accounts, const GaugeAccount& account, const Run& run) {
    if (account.ruled_out) return head + ": ruled out by the readings. " + account.sentence;
    std::string line = head + ":";
    for (const AccountFigure& figure : account_figures(accounts, account, run, accounts.from_ms))
        line += (line.back() == ':' ? " " : "; ") + figure.label + " " + figure.value + (figure.note.empty() ? "" : " (" + figure.note + ")");
    return line + ". " + account.sentence;
}

} // namespace

std::vector<AccountFigure> account_figures(const TwoAccounts& accounts, const GaugeAccount& account, const Run& run, UtcMs as_of_ms) {
    const bool right = &account == &accounts.right;
    return {{"usable of the label", span_text(account.usable_fraction, 100, 0, "%"), {}},
            right ? AccountFigure{"the unit itself takes", span_text(account.no_load_draw_w, 1, 0, "W"), {}} : error_figure(account.gauge_error_pt),
            empty_figure(accounts, account.hours_left, run, as_of_ms)};
}

std::vector<Message> account_lines(const TwoAccounts& accounts, const Run& run) {
    if (!accounts.told) return {};
    std::vector<Message> lines{line_of("If the gauge is right", accounts, accounts.right, run),
                               line_of("If the gauge is wrong", accounts, accounts.wrong, run)};
    if (!accounts.decides.empty())
        lines.push_back("What decides: " + accounts.decides + (accounts.idle_hour.empty() ? "" : " " + accounts.idle_hour));
    return lines;
}

} // namespace ullage
