// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/json/forecast_json.h"

#include "base/language.h"

namespace ullage {

namespace {

Json time_json(const std::optional<UtcMs>& time_ms, const std::string& zone) {
    if (!time_ms) return nullptr;
    return format_iso8601(*time_ms, zone);
}

Json range_json(const ExpectedTime& time, const std::string& zone) {
    return {{"lower", format_iso8601(time.lower_ms, zone)},
            {"estimate", format_iso8601(time.estimate_ms, zone)},
            {"upper", format_iso8601(time.upper_ms, zone)}};
}

Json account_json(const GaugeAccount& account) {
    return {{"ruled_out", account.ruled_out},
            {"evidence", account.evidence},
            {"sentence", account.sentence},
            {"usable_fraction", quantity_json(account.usable_fraction)},
            {"no_load_draw_w", quantity_json(account.no_load_draw_w)},
            {"gauge_error_pt", quantity_json(account.gauge_error_pt)},
            {"to_come_wh", quantity_json(account.to_come_wh)},
            {"hours_left", quantity_json(account.hours_left)}};
}

} // namespace

Json accounts_json(const TwoAccounts& accounts, const std::string& zone) {
    const SpeakingIn for_machines(english());
    if (!accounts.told) return {{"reason", accounts.reason}};
    return {{"right", account_json(accounts.right)},
            {"wrong", account_json(accounts.wrong)},
            {"decides", accounts.decides},
            {"decide_from", time_json(accounts.decide_from_ms, zone)},
            {"idle_hour", accounts.idle_hour}};
}

Json forecast_json(const RunForecast& forecast, const std::string& zone) {
    const SpeakingIn for_machines(english());
    Json json{{"as_of", nullptr},
              {"cut_off", nullptr},
              {"basis", nullptr},
              {"account", nullptr},
              {"reason", forecast.cut_off_reason},
              {"next_gauge_step", nullptr},
              {"gauge_reason", forecast.gauge_reason},
              {"overthrown", forecast.overthrown},
              {"advice", Json::array()}};
    if (forecast.last_reading_ms) json["as_of"] = format_iso8601(forecast.as_of_ms, zone);
    if (forecast.cut_off) {
        json["cut_off"] = range_json(*forecast.cut_off, zone);
        json["basis"] = std::string(forecast_basis_text(forecast.basis));
        json["account"] = std::string(forecast_account_text(forecast.account));
    }
    if (forecast.next_step) {
        Json step{{"gauge_percent", number_json(forecast.next_step_percent)}};
        step.update(range_json(*forecast.next_step, zone));
        json["next_gauge_step"] = std::move(step);
    }
    for (const ReadingAdvice& advice : forecast.advice)
        json["advice"].push_back({{"at", time_json(advice.at_ms, zone)}, {"sentence", advice.sentence}});
    return json;
}

} // namespace ullage
