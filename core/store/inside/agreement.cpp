// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/agreement.h"

#include "base/number.h"

#include <initializer_list>
#include <optional>
#include <string>
#include <utility>

namespace ullage::store {

namespace {

struct Claim {
    const char* name;
    const char* unit;
    std::optional<double> known, incoming;
};

std::string words(std::optional<double> value, const std::string& unit) {
    if (!value) return "not stated";
    return exact_text(*value) + (unit.empty() ? "" : " " + unit);
}

Error difference(const std::string& owner, const std::string& name, const std::string& known, const std::string& incoming) {
    return {Failure::refused, name + " is " + incoming + " here, but " + known + " in the logbook", owner,
            "correct one of the two, or give this one another name; nothing was imported"};
}

Result<void> first_difference(const std::string& owner, std::initializer_list<Claim> claims) {
    for (const Claim& claim : claims)
        if (claim.incoming && claim.incoming != claim.known)
            return difference(owner, claim.name, words(claim.known, claim.unit), words(claim.incoming, claim.unit));
    return {};
}

} // namespace

Result<void> agrees(const Unit& known, const Unit& incoming) {
    const std::string owner = "unit " + known.name;
    if (!incoming.currency.empty() && incoming.currency != known.currency)
        return difference(owner, "the currency", known.currency.empty() ? "not stated" : known.currency, incoming.currency);
    const std::pair<const char*, std::string Unit::*> words[] = {{"the model", &Unit::model},
                                                                 {"the serial number", &Unit::serial_number},
                                                                 {"the chemistry", &Unit::chemistry},
                                                                 {"the day of purchase", &Unit::purchased}};
    for (const auto& [name, text] : words)
        if (!(incoming.*text).empty() && incoming.*text != known.*text)
            return difference(owner, name, (known.*text).empty() ? "not stated" : known.*text, incoming.*text);
    return first_difference(owner, {{"the rated energy", "Wh", known.rated_energy_wh, incoming.rated_energy_wh},
                                    {"the rated output", "W", known.rated_output_w, incoming.rated_output_w},
                                    {"the peak output", "W", known.peak_output_w, incoming.peak_output_w},
                                    {"the PV voltage limit", "V", known.pv_max_v, incoming.pv_max_v},
                                    {"the PV current limit", "A", known.pv_max_a, incoming.pv_max_a},
                                    {"the PV power limit", "W", known.pv_max_w, incoming.pv_max_w},
                                    {"the PV start voltage", "V", known.pv_start_v, incoming.pv_start_v},
                                    {"the PV short-circuit current", "A", known.pv_short_circuit_a, incoming.pv_short_circuit_a},
                                    {"the charge time", "h", known.charge_time_h, incoming.charge_time_h},
                                    {"the price", "", known.price, incoming.price},
                                    {"the price paid", "", known.paid_price, incoming.paid_price},
                                    {"the mass", "kg", known.mass_kg, incoming.mass_kg},
                                    {"the warranty", "years", known.warranty_years, incoming.warranty_years},
                                    {"the cycles before", "", known.cycles_before, incoming.cycles_before},
                                    {"the gauge step", "percentage points", known.gauge_step_percent, incoming.gauge_step_percent}});
}

Result<void> agrees(const Meter& known, const Meter& incoming) {
    const std::string owner = "meter " + known.name;
    const std::pair<const char*, std::string Meter::*> texts[] = {{"the class", &Meter::accuracy_class}, {"the standard", &Meter::standard}};
    for (const auto& [name, text] : texts)
        if (!(incoming.*text).empty() && incoming.*text != known.*text)
            return difference(owner, name, (known.*text).empty() ? "not stated" : known.*text, incoming.*text);
    const std::pair<const char*, std::string MeterCertificate::*> papers[] = {{"the number of the certificate", &MeterCertificate::number},
                                                                              {"the date of the certificate", &MeterCertificate::date},
                                                                              {"the laboratory", &MeterCertificate::laboratory},
                                                                              {"the end of its validity", &MeterCertificate::valid_until}};
    for (const auto& [name, text] : papers) {
        const std::string &here = incoming.certificate.*text, &there = known.certificate.*text;
        if (!here.empty() && here != there) return difference(owner, name, there.empty() ? "not stated" : there, here);
    }
    if (!incoming.points.empty() && incoming.points != known.points)
        return difference(owner, "a point of correction", known.points.empty() ? "not stated" : "another", "stated");
    const auto correction = incoming.correction == 1.0 ? std::nullopt : std::optional(incoming.correction);
    return first_difference(owner, {{"the step", "Wh", known.step_wh, incoming.step_wh},
                                    {"the part of the error limit of each load", "%", known.load_part_percent, incoming.load_part_percent},
                                    {"the error limit", "%", known.limit_percent, incoming.limit_percent},
                                    {"the span", "Wh", known.span_wh, incoming.span_wh},
                                    {"the starting current", "A", known.starting_current_a, incoming.starting_current_a},
                                    {"the lowest load of the range", "W", known.range_low_w, incoming.range_low_w},
                                    {"the highest load of the range", "W", known.range_high_w, incoming.range_high_w},
                                    {"the correction", "", known.correction, correction}});
}

} // namespace ullage::store
