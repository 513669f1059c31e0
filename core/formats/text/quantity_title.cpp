// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/quantity_title.h"

#include <algorithm>
#include <iterator>

namespace ullage {

namespace {

/// How a quantity is named and written; without unit where that is another each time, as a currency is.
struct QuantityWords {
    std::string_view key;
    Phrase title;
    std::string_view unit;
    int decimals;
};

constexpr QuantityWords known_quantities[] = {
    {"rated_wh", phrase("quantities", "rated energy"), "Wh", 0},
    {"rank", phrase("quantities", "rank"), "1", 0},
    {"repeats", phrase("quantities", "drains in the mean"), "1", 0},
    {"scatter_percent", phrase("quantities", "scatter of its drains"), "%", 1},
    {"spread_percent", phrase("quantities", "spread between specimens"), "%", 1},
    {"next_specimen_fraction", phrase("quantities", "next specimen"), "1", 3},
    {"delivered_wh", phrase("quantities", "delivered energy"), "Wh", 0},
    {"duration_h", phrase("quantities", "duration"), "h", 2},
    {"mean_load_w", phrase("quantities", "mean load"), "W", 0},
    {"usable_fraction", phrase("quantities", "usable fraction"), "1", 3},
    {"wh_per_gauge_point", phrase("quantities", "energy per gauge point"), "Wh/pt", 2},
    {"gauge_implied_wh", phrase("quantities", "gauge-implied energy"), "Wh", 0},
    {"line_slope", phrase("quantities", "slope, delivered against gauge-implied"), "Wh/Wh", 3},
    {"line_chi_square", phrase("quantities", "chi-square of that line"), "1", 1},
    {"no_load_draw_w", phrase("quantities", "no-load draw"), "W", 1},
    {"zero_time_energy_wh", phrase("quantities", "energy before own consumption"), "Wh", 0},
    {"deliverable_at_no_time_cost_wh", phrase("quantities", "energy before own consumption"), "Wh", 0},
    {"no_load_endurance_h", phrase("quantities", "idle run time"), "h", 1},
    {"curvature_per_w", phrase("quantities", "quadratic loss"), "1/W", 6},
    {"deliverable_wh", phrase("quantities", "deliverable energy"), "Wh", 0},
    {"run_time_h", phrase("quantities", "run time"), "h", 1},
    {"change_wh_per_day", phrase("quantities", "change of energy"), "Wh/d", 2},
    {"undelivered_wh", phrase("quantities", "not delivered"), "Wh", 0},
    {"no_load_taken_wh", phrase("quantities", "taken by the no-load draw"), "Wh", 0},
    {"rest_wh", phrase("quantities", "conversion or missing capacity"), "Wh", 0},
    {"gauge_error_pt", phrase("quantities", "gauge error"), "pt", 0},
    {"to_come_wh", phrase("quantities", "still to come"), "Wh", 0},
    {"hours_left", phrase("quantities", "until empty"), "h", 1},
    {"least_gauge_error_pt", phrase("quantities", "least gauge error"), "pt", 1},
    {"price_per_rated_kwh", phrase("quantities", "price per rated kWh"), "", 2},
    {"price_per_delivered_kwh", phrase("quantities", "price per usable kWh"), "", 2},
    {"paid_per_rated_kwh", phrase("quantities", "paid per rated kWh"), "", 2},
    {"paid_per_delivered_kwh", phrase("quantities", "paid per usable kWh"), "", 2},
    {"usable_fraction_at_load", phrase("quantities", "usable fraction at this load"), "1", 3},
    {"difference", phrase("quantities", "difference"), "", 3},
    {"warranty_years", phrase("quantities", "warranty"), "a", 1},
    {"charged_wh", phrase("quantities", "energy in"), "Wh", 0},
    {"charge_time_h", phrase("quantities", "time to full"), "h", 1},
    {"mean_charge_w", phrase("quantities", "mean power in"), "W", 0},
    {"peak_charge_w", phrase("quantities", "peak power in"), "W", 0},
    {"taper_h", phrase("quantities", "taper before the end"), "h", 1},
    {"round_trip_efficiency", phrase("quantities", "round trip"), "1", 3},
    {"step_load_w", phrase("quantities", "load"), "W", 0},
    {"standby_draw_w", phrase("quantities", "standby draw"), "W", 1},
    {"own_wh_per_day", phrase("quantities", "own draw a day"), "Wh", 0},
    {"own_wh_per_month", phrase("quantities", "own draw a month"), "Wh", 0},
    {"rated_energy_wh", phrase("quantities", "rated energy"), "Wh", 0},
    {"held_output_w", phrase("quantities", "output held"), "W", 0},
    {"held_peak_output_w", phrase("quantities", "peak output held"), "W", 0},
    {"rated_output_w", phrase("quantities", "rated output"), "W", 0},
    {"peak_output_w", phrase("quantities", "peak output"), "W", 0},
    {"pv_max_w", phrase("quantities", "power of the PV input"), "W", 0},
    {"wh_per_kg", phrase("quantities", "delivered energy per mass"), "Wh/kg", 0},
    {"days_of_autonomy", phrase("quantities", "days of autonomy"), "d", 2},
    {"days_output_left_on", phrase("quantities", "days with the output left on"), "d", 2},
    {"lasts_h", phrase("quantities", "hours until empty"), "h", 1},
};

const QuantityWords* words_for(std::string_view key) {
    const auto* const at = std::ranges::find(known_quantities, key, &QuantityWords::key);
    return at == std::end(known_quantities) ? nullptr : at;
}

} // namespace

Message quantity_title(std::string_view key) {
    if (const QuantityWords* known = words_for(key)) return say(known->title);
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
