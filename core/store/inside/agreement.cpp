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
    Phrase name;
    Phrase amount; ///< "%1 Wh"; none for a bare number
    std::optional<double> known, incoming;
};

Message not_stated() { return say(phrase("store", "not stated")); }

Message stated(const std::string& text) { return text.empty() ? not_stated() : Message(text); }

Message stated(std::optional<double> value, const Phrase& amount) {
    if (!value) return not_stated();
    const Message number = say_digits(exact_text(*value));
    return amount.english ? say(amount, number) : number;
}

Error difference(const Message& owner, const Phrase& name, const Message& known, const Message& incoming) {
    return {Failure::refused, say(phrase("store", "%1 is %2 here, but %3 in the logbook"), say(name), incoming, known), owner,
            say(phrase("store", "correct one of the two, or give this one another name; nothing was imported"))};
}

Result<void> first_difference(const Message& owner, std::initializer_list<Claim> claims) {
    for (const Claim& claim : claims)
        if (claim.incoming && claim.incoming != claim.known)
            return difference(owner, claim.name, stated(claim.known, claim.amount), stated(claim.incoming, claim.amount));
    return {};
}

} // namespace

Result<void> agrees(const Unit& known, const Unit& incoming) {
    const Message owner = say(phrase("store", "unit %1"), known.name);
    if (!incoming.currency.empty() && incoming.currency != known.currency)
        return difference(owner, phrase("store", "the currency"), stated(known.currency), incoming.currency);
    const std::pair<Phrase, std::string Unit::*> words[] = {{phrase("store", "the model"), &Unit::model},
                                                            {phrase("store", "the serial number"), &Unit::serial_number},
                                                            {phrase("store", "the chemistry"), &Unit::chemistry},
                                                            {phrase("store", "the day of purchase"), &Unit::purchased}};
    for (const auto& [name, text] : words)
        if (!(incoming.*text).empty() && incoming.*text != known.*text) return difference(owner, name, stated(known.*text), incoming.*text);
    return first_difference(
        owner, {{phrase("store", "the rated energy"), phrase("store", "%1 Wh"), known.rated_energy_wh, incoming.rated_energy_wh},
                {phrase("store", "the rated output"), phrase("store", "%1 W"), known.rated_output_w, incoming.rated_output_w},
                {phrase("store", "the peak output"), phrase("store", "%1 W"), known.peak_output_w, incoming.peak_output_w},
                {phrase("store", "the PV voltage limit"), phrase("store", "%1 V"), known.pv_max_v, incoming.pv_max_v},
                {phrase("store", "the PV current limit"), phrase("store", "%1 A"), known.pv_max_a, incoming.pv_max_a},
                {phrase("store", "the PV power limit"), phrase("store", "%1 W"), known.pv_max_w, incoming.pv_max_w},
                {phrase("store", "the PV start voltage"), phrase("store", "%1 V"), known.pv_start_v, incoming.pv_start_v},
                {phrase("store", "the PV short-circuit current"), phrase("store", "%1 A"), known.pv_short_circuit_a, incoming.pv_short_circuit_a},
                {phrase("store", "the charge time"), phrase("store", "%1 h"), known.charge_time_h, incoming.charge_time_h},
                {phrase("store", "the price"), Phrase(), known.price, incoming.price},
                {phrase("store", "the price paid"), Phrase(), known.paid_price, incoming.paid_price},
                {phrase("store", "the mass"), phrase("store", "%1 kg"), known.mass_kg, incoming.mass_kg},
                {phrase("store", "the warranty"), phrase("store", "%1 years"), known.warranty_years, incoming.warranty_years},
                {phrase("store", "the cycles before"), Phrase(), known.cycles_before, incoming.cycles_before},
                {phrase("store", "the gauge step"), phrase("store", "%1 percentage points"), known.gauge_step_percent, incoming.gauge_step_percent}});
}

Result<void> agrees(const Meter& known, const Meter& incoming) {
    const Message owner = say(phrase("store", "meter %1"), known.name);
    const std::pair<Phrase, std::string Meter::*> texts[] = {{phrase("store", "the class"), &Meter::accuracy_class},
                                                             {phrase("store", "the standard"), &Meter::standard}};
    for (const auto& [name, text] : texts)
        if (!(incoming.*text).empty() && incoming.*text != known.*text) return difference(owner, name, stated(known.*text), incoming.*text);
    const std::pair<Phrase, std::string MeterCertificate::*> papers[] = {
        {phrase("store", "the number of the certificate"), &MeterCertificate::number},
        {phrase("store", "the date of the certificate"), &MeterCertificate::date},
        {phrase("store", "the laboratory"), &MeterCertificate::laboratory},
        {phrase("store", "the end of its validity"), &MeterCertificate::valid_until}};
    for (const auto& [name, text] : papers) {
        const std::string &here = incoming.certificate.*text, &there = known.certificate.*text;
        if (!here.empty() && here != there) return difference(owner, name, stated(there), here);
    }
    if (!incoming.points.empty() && incoming.points != known.points)
        return difference(owner, phrase("store", "a point of correction"), known.points.empty() ? not_stated() : say(phrase("store", "another")),
                          say(phrase("store", "stated")));
    const auto correction = incoming.correction == 1.0 ? std::nullopt : std::optional(incoming.correction);
    return first_difference(
        owner,
        {{phrase("store", "the step"), phrase("store", "%1 Wh"), known.step_wh, incoming.step_wh},
         {phrase("store", "the part of the error limit of each load"), phrase("store", "%1 %"), known.load_part_percent, incoming.load_part_percent},
         {phrase("store", "the error limit"), phrase("store", "%1 %"), known.limit_percent, incoming.limit_percent},
         {phrase("store", "the span"), phrase("store", "%1 Wh"), known.span_wh, incoming.span_wh},
         {phrase("store", "the starting current"), phrase("store", "%1 A"), known.starting_current_a, incoming.starting_current_a},
         {phrase("store", "the lowest load of the range"), phrase("store", "%1 W"), known.range_low_w, incoming.range_low_w},
         {phrase("store", "the highest load of the range"), phrase("store", "%1 W"), known.range_high_w, incoming.range_high_w},
         {phrase("store", "the correction"), Phrase(), known.correction, correction}});
}

} // namespace ullage::store
