// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/quantity_title.h"

#include <algorithm>
#include <iterator>

namespace ullage {

namespace {

/// How a quantity is named and written; without unit where that is another each time, as a currency is.
struct QuantityWords {
    std::string_view key, title, unit;
    int decimals;
};

constexpr QuantityWords known_quantities[] = {
    {"rated_wh", "rated energy", "Wh", 0},
    {"rank", "rank", "1", 0},
    {"repeats", "drains in the mean", "1", 0},
    {"scatter_percent", "scatter of its drains", "%", 1},
    {"spread_percent", "spread between specimens", "%", 1},
    {"next_specimen_fraction", "next specimen", "1", 3},
    {"delivered_wh", "delivered energy", "Wh", 0},
    {"duration_h", "duration", "h", 2},
    {"mean_load_w", "mean load", "W", 0},
    {"usable_fraction", "usable fraction", "1", 3},
    {"wh_per_gauge_point", "energy per gauge point", "Wh/pt", 2},
    {"gauge_implied_wh", "gauge-implied energy", "Wh", 0},
    {"line_slope", "slope, delivered against gauge-implied", "Wh/Wh", 3},
    {"line_chi_square", "chi-square of that line", "1", 1},
    {"no_load_draw_w", "no-load draw", "W", 1},
    {"zero_time_energy_wh", "energy before own consumption", "Wh", 0},
    {"deliverable_at_no_time_cost_wh", "energy before own consumption", "Wh", 0},
    {"no_load_endurance_h", "idle run time", "h", 1},
    {"curvature_per_w", "quadratic loss", "1/W", 6},
    {"deliverable_wh", "deliverable energy", "Wh", 0},
    {"run_time_h", "run time", "h", 1},
    {"change_wh_per_day", "change of energy", "Wh/d", 2},
    {"undelivered_wh", "not delivered", "Wh", 0},
    {"no_load_taken_wh", "taken by the no-load draw", "Wh", 0},
    {"rest_wh", "conversion or missing capacity", "Wh", 0},
    {"gauge_error_pt", "gauge error", "pt", 0},
    {"to_come_wh", "still to come", "Wh", 0},
    {"hours_left", "until empty", "h", 1},
    {"least_gauge_error_pt", "least gauge error", "pt", 1},
    {"price_per_rated_kwh", "price per rated kWh", "", 2},
    {"price_per_delivered_kwh", "price per usable kWh", "", 2},
    {"paid_per_rated_kwh", "paid per rated kWh", "", 2},
    {"paid_per_delivered_kwh", "paid per usable kWh", "", 2},
    {"usable_fraction_at_load", "usable fraction at this load", "1", 3},
    {"difference", "difference", "", 3},
    {"warranty_years", "warranty", "a", 1},
    {"charged_wh", "energy in", "Wh", 0},
    {"charge_time_h", "time to full", "h", 1},
    {"mean_charge_w", "mean power in", "W", 0},
    {"peak_charge_w", "peak power in", "W", 0},
    {"taper_h", "taper before the end", "h", 1},
    {"round_trip_efficiency", "round trip", "1", 3},
    {"step_load_w", "load", "W", 0},
    {"standby_draw_w", "standby draw", "W", 1},
    {"own_wh_per_day", "own draw a day", "Wh", 0},
    {"own_wh_per_month", "own draw a month", "Wh", 0},
    {"rated_energy_wh", "rated energy", "Wh", 0},
    {"held_output_w", "output held", "W", 0},
    {"held_peak_output_w", "peak output held", "W", 0},
    {"rated_output_w", "rated output", "W", 0},
    {"peak_output_w", "peak output", "W", 0},
    {"pv_max_w", "power of the PV input", "W", 0},
    {"wh_per_kg", "delivered energy per mass", "Wh/kg", 0},
    {"days_of_autonomy", "days of autonomy", "d", 2},
    {"days_output_left_on", "days with the output left on", "d", 2},
    {"lasts_h", "hours until empty", "h", 1},
};

const QuantityWords* words_for(std::string_view key) {
    const auto* const at = std::ranges::find(known_quantities, key, &QuantityWords::key);
    return at == std::end(known_quantities) ? nullptr : at;
}

} // namespace

std::string quantity_title(std::string_view key) {
    if (const QuantityWords* known = words_for(key)) return std::string(known->title);
    std::string words(key);
    std::ranges::replace(words, '_', ' ');
    return words;
}

int quantity_decimals(std::string_view key) {
    const QuantityWords* known = words_for(key);
    return known ? known->decimals : 2;
}

std::string_view quantity_unit(std::string_view key) {
    const QuantityWords* known = words_for(key);
    return known ? known->unit : std::string_view();
}

} // namespace ullage
