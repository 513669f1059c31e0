// SPDX-License-Identifier: GPL-3.0-or-later
#include "joining/inside/field_words.h"

#include "model/run.h"

#include <algorithm>

namespace ullage::joining {

namespace {

enum class Value { text, number, word };

struct FieldWords {
    std::string_view key; ///< without the owner in front: "step_wh" of "meter_step_wh"
    Phrase words;
    Value value;
};

constexpr FieldWords field_words[] = {
    {"name", phrase("joining", "name"), Value::text},
    {"maker", phrase("joining", "maker"), Value::text},
    {"model", phrase("joining", "model"), Value::text},
    {"rated_energy_wh", phrase("joining", "rated energy (Wh)"), Value::number},
    {"rated_output_w", phrase("joining", "rated output (W)"), Value::number},
    {"peak_output_w", phrase("joining", "peak output (W)"), Value::number},
    {"pv_max_v", phrase("joining", "highest PV voltage (V)"), Value::number},
    {"pv_max_a", phrase("joining", "highest PV current (A)"), Value::number},
    {"pv_max_w", phrase("joining", "highest PV power (W)"), Value::number},
    {"pv_start_v", phrase("joining", "PV starts at (V)"), Value::number},
    {"pv_short_circuit_a", phrase("joining", "PV short-circuit current (A)"), Value::number},
    {"charge_time_h", phrase("joining", "charge time (h)"), Value::number},
    {"price", phrase("joining", "price"), Value::number},
    {"paid_price", phrase("joining", "paid price"), Value::number},
    {"currency", phrase("joining", "currency"), Value::text},
    {"mass_kg", phrase("joining", "mass (kg)"), Value::number},
    {"warranty_years", phrase("joining", "warranty (years)"), Value::number},
    {"serial_number", phrase("joining", "serial number"), Value::text},
    {"chemistry", phrase("joining", "chemistry"), Value::text},
    {"purchased", phrase("joining", "purchased"), Value::text},
    {"cycles_before", phrase("joining", "cycles before"), Value::number},
    {"gauge_step_percent", phrase("joining", "gauge step (%)"), Value::number},
    {"tags", phrase("joining", "tags"), Value::text},
    {"remark", phrase("joining", "remark"), Value::text},
    {"step_wh", phrase("joining", "step (Wh)"), Value::number},
    {"limit_percent", phrase("joining", "limit (%)"), Value::number},
    {"load_part_percent", phrase("joining", "part of the load (%)"), Value::number},
    {"span_wh", phrase("joining", "span (Wh)"), Value::number},
    {"correction", phrase("joining", "correction"), Value::number},
    {"points", phrase("joining", "points of the certificate"), Value::text},
    {"class", phrase("joining", "class"), Value::text},
    {"standard", phrase("joining", "standard"), Value::text},
    {"starting_current_a", phrase("joining", "starting current (A)"), Value::number},
    {"range_low_w", phrase("joining", "lowest load of its range (W)"), Value::number},
    {"range_high_w", phrase("joining", "highest load of its range (W)"), Value::number},
    {"certificate", phrase("joining", "certificate"), Value::text},
    {"certificate_date", phrase("joining", "certificate date"), Value::text},
    {"laboratory", phrase("joining", "laboratory"), Value::text},
    {"valid_until", phrase("joining", "valid until"), Value::text},
    {"kind", phrase("joining", "kind"), Value::word},
    {"started_full", phrase("joining", "started full"), Value::word},
    {"ended", phrase("joining", "ended"), Value::word},
    {"end_noticed_within_min", phrase("joining", "end noticed within (min)"), Value::number},
    {"time_zone", phrase("joining", "time zone"), Value::text},
    {"load", phrase("joining", "load"), Value::text},
    {"ambient_c", phrase("joining", "ambient (°C)"), Value::number},
    {"ambient_end_c", phrase("joining", "ambient at the end (°C)"), Value::number},
    {"charge_source", phrase("joining", "charge source"), Value::word},
    {"module", phrase("joining", "module"), Value::text},
    {"voc_v", phrase("joining", "Voc (V)"), Value::number},
    {"vmp_v", phrase("joining", "Vmp (V)"), Value::number},
    {"isc_a", phrase("joining", "Isc (A)"), Value::number},
    {"imp_a", phrase("joining", "Imp (A)"), Value::number},
    {"voc_coefficient", phrase("joining", "coefficient of Voc"), Value::number},
    {"vmp_coefficient", phrase("joining", "coefficient of Vmp"), Value::number},
    {"power_coefficient", phrase("joining", "coefficient of the power"), Value::number},
    {"voc_tolerance_percent", phrase("joining", "tolerance of the voltages (%)"), Value::number},
    {"noct_c", phrase("joining", "NOCT (°C)"), Value::number},
    {"cells", phrase("joining", "cells"), Value::word},
    {"series", phrase("joining", "modules in a string"), Value::number},
    {"parallel", phrase("joining", "strings side by side"), Value::number},
    {"coldest_c", phrase("joining", "coldest (°C)"), Value::number},
    {"hottest_c", phrase("joining", "hottest (°C)"), Value::number},
    {"hottest_cell_c", phrase("joining", "hottest cell (°C)"), Value::number},
    {"irradiance_w_m2", phrase("joining", "irradiance (W/m²)"), Value::number},
};

const FieldWords* words_of(std::string_view key) {
    for (const std::string_view owner : {"second_meter_", "meter_", "unit_"})
        if (key.starts_with(owner)) {
            key.remove_prefix(owner.size());
            break;
        }
    if (key == "unit" || key == "meter" || key == "second_meter") key = "name";
    if (key == "run") key = "kind";
    const auto* found = std::ranges::find(field_words, key, &FieldWords::key);
    return found == std::end(field_words) ? nullptr : found;
}

/// The words that sheets have for kinds, ends, sources, cells and answers.
Message say_word(const std::string& word) {
    if (const auto kind = run_kind_from(word)) return say_run_kind(*kind);
    if (const auto end = run_end_from(word)) return say_run_end(*end);
    if (word == "yes") return say(phrase("joining", "yes"));
    if (word == "no") return say(phrase("joining", "no"));
    if (word == "wall") return say_charge_source(ChargeSource::wall);
    if (word == "crystalline silicon") return say(phrase("joining", "crystalline silicon"));
    if (word == "other") return say(phrase("joining", "other than crystalline silicon"));
    return word;
}

} // namespace

Message say_field(std::string_view key) {
    const FieldWords* known = words_of(key);
    return known ? say(known->words) : Message(key);
}

Message say_field_value(std::string_view key, const std::string& value) {
    const FieldWords* known = words_of(key);
    if (!known || known->value == Value::text) return value;
    return known->value == Value::number ? say_digits(value) : say_word(value);
}

} // namespace ullage::joining
