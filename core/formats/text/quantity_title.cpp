// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/quantity_title.h"

#include <algorithm>
#include <array>

namespace ullage {

namespace {

struct Title {
    std::string_view key, title;
    int decimals;
};

constexpr std::array<Title, 49> titles{{
    {"rated_wh", "rated energy", 0},
    {"rank", "rank", 0},
    {"delivered_wh", "delivered energy", 0},
    {"duration_h", "duration", 2},
    {"mean_load_w", "mean load", 0},
    {"usable_fraction", "usable fraction", 3},
    {"wh_per_gauge_point", "energy per gauge point", 2},
    {"gauge_implied_wh", "gauge-implied energy", 0},
    {"line_slope", "slope, delivered against gauge-implied", 3},
    {"line_chi_square", "chi-square of that line", 1},
    {"no_load_draw_w", "no-load draw", 1},
    {"zero_time_energy_wh", "energy at no time cost", 0},
    {"deliverable_at_no_time_cost_wh", "energy at no time cost", 0},
    {"no_load_endurance_h", "no-load endurance", 1},
    {"curvature_per_w", "quadratic loss", 6},
    {"deliverable_wh", "deliverable energy", 0},
    {"run_time_h", "run time", 1},
    {"change_wh_per_day", "change of energy", 2},
    {"undelivered_wh", "not delivered", 0},
    {"no_load_taken_wh", "taken by the no-load draw", 0},
    {"rest_wh", "conversion or missing capacity", 0},
    {"least_gauge_error_pt", "least gauge error", 1},
    {"price_per_rated_kwh", "price per rated kWh", 2},
    {"price_per_delivered_kwh", "price per delivered kWh", 2},
    {"paid_per_rated_kwh", "paid per rated kWh", 2},
    {"paid_per_delivered_kwh", "paid per delivered kWh", 2},
    {"usable_fraction_at_load", "usable fraction at this load", 3},
    {"difference", "difference", 3},
    {"warranty_years", "warranty", 1},
    {"charged_wh", "energy in", 0},
    {"charge_time_h", "time to full", 1},
    {"mean_charge_w", "mean power in", 0},
    {"peak_charge_w", "peak power in", 0},
    {"taper_h", "taper before the end", 1},
    {"round_trip_efficiency", "round trip", 3},
    {"step_load_w", "load", 0},
    {"standby_draw_w", "standby draw", 1},
    {"own_wh_per_day", "own draw a day", 0},
    {"own_wh_per_month", "own draw a month", 0},
    {"rated_energy_wh", "rated energy", 0},
    {"held_output_w", "output held", 0},
    {"held_peak_output_w", "peak output held", 0},
    {"rated_output_w", "rated output", 0},
    {"peak_output_w", "peak output", 0},
    {"pv_max_w", "power of the PV input", 0},
    {"wh_per_kg", "delivered energy per mass", 0},
    {"days_of_autonomy", "days of autonomy", 2},
    {"days_output_left_on", "days with the output left on", 2},
    {"lasts_h", "lasts by the clock", 1},
}};

const Title* find(std::string_view key) {
    const auto at = std::ranges::find(titles, key, &Title::key);
    return at == titles.end() ? nullptr : &*at;
}

} // namespace

std::string quantity_title(std::string_view key) {
    if (const Title* title = find(key)) return std::string(title->title);
    std::string words(key);
    std::ranges::replace(words, '_', ' ');
    return words;
}

int quantity_decimals(std::string_view key) {
    const Title* title = find(key);
    return title ? title->decimals : 2;
}

} // namespace ullage
