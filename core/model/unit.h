// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/ids.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// A storage unit under test with what its maker claims. A claim carries no uncertainty; absent means "not stated".
struct Unit {
    UnitId uuid;
    std::string name;
    std::string maker;
    std::optional<double> rated_energy_wh;
    std::optional<double> rated_output_w;
    std::optional<double> peak_output_w;
    std::optional<double> pv_max_v, pv_max_a, pv_max_w; ///< limits of the PV input
    std::optional<double> pv_start_v;                   ///< lowest voltage at which the PV input starts and tracks
    std::optional<double> charge_time_h;                ///< from cut-off to full, from the wall
    std::optional<double> price;                        ///< the list price, in `currency`
    std::string currency;                               ///< ISO 4217 code
    std::optional<double> mass_kg;
    std::optional<double> warranty_years;
    double gauge_step_percent = 1.0; ///< smallest step that the gauge shows, percentage points
    std::string remark;
    std::optional<double> paid_price;           ///< what was paid for this specimen, in `currency`
    std::vector<std::string> tags;              ///< the tester's own words to find units by, as sorted_tags() gives them
    std::string model{};                        ///< the name of the model that it is a specimen of; empty: not stated
    std::optional<double> pv_short_circuit_a{}; ///< short-circuit current that the PV input withstands
    // Of the specimen at hand.
    std::string serial_number{};
    std::string chemistry{};               ///< of its cells, in the maker's or the tester's words
    std::string purchased{};               ///< day of purchase, as 2027-05-14; empty: not stated
    std::optional<double> cycles_before{}; ///< full charges that it had seen before its first run here

    bool operator==(const Unit&) const = default;
};

} // namespace ullage
