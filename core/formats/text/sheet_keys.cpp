// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/sheet_keys.h"

#include "base/number.h"
#include "formats/text/inside/key_values.h"
#include "formats/text/inside/meter_keys.h"
#include "model/limits.h"
#include "model/tags.h"

#include <algorithm>

namespace ullage {

namespace {

using namespace sheet;
using Number = std::optional<double>;

SheetKey unit_number(const char* name, NumberRange range, Number Unit::*member) {
    return {name, [member](const RunRecord& record) { return text_of(record.unit.*member); },
            [member, range](RunRecord& record, std::string_view text) -> Result<void> {
                const Result<double> number = number_in(text, range);
                if (!number) return number.error();
                record.unit.*member = number.value();
                return {};
            }};
}

SheetKey unit_text(const char* name, std::size_t most, std::string Unit::*member) {
    return {name, [member](const RunRecord& record) { return record.unit.*member; },
            [member, most](RunRecord& record, std::string_view text) { return put(record.unit.*member, text, most); }};
}

/// "use `drain`, `no-load drain` or …": as files have them.
template <class Values, class Text>
Message use_one_of(const Values& values, Text text) {
    std::vector<Message> words;
    for (const auto& value : values) words.emplace_back("`" + std::string(text(value)) + "`");
    return say(phrase("text", "use %1"), say_choice(words));
}

SheetKey purchased_key() {
    SheetKey key = unit_text("purchased", longest_short_text, &Unit::purchased);
    key.read = [read = key.read](RunRecord& record, std::string_view text) -> Result<void> {
        if (Result<void> good = check_date({}, trimmed(text)); !good) return good;
        return read(record, text);
    };
    return key;
}

SheetKey gauge_step_key() {
    return {"gauge_step_percent", [](const RunRecord& record) { return exact_text(record.unit.gauge_step_percent); },
            [](RunRecord& record, std::string_view text) -> Result<void> {
                const Result<double> number = number_in(text, gauge_step_range);
                if (!number) return number.error();
                record.unit.gauge_step_percent = number.value();
                return {};
            }};
}

SheetKey tags_key() {
    return {"tags", [](const RunRecord& record) { return tags_text(record.unit.tags, "; "); },
            [](RunRecord& record, std::string_view text) -> Result<void> {
                Result<std::vector<std::string>> tags = tags_from(text);
                if (!tags) return wrong(tags.error().what, tags.error().remedy);
                record.unit.tags = std::move(tags).value();
                return {};
            }};
}

SheetKey run_kind_key() {
    return {"run", [](const RunRecord& record) { return std::string(run_kind_text(record.run.kind)); },
            [](RunRecord& record, std::string_view text) -> Result<void> {
                const auto kind = run_kind_from(lower_case(text));
                if (!kind) return wrong(say(phrase("text", "`%1` is no kind of run"), text), use_one_of(all_run_kinds, run_kind_text));
                record.run.kind = *kind;
                return {};
            }};
}

SheetKey run_end_key() {
    return {"ended", [](const RunRecord& record) { return std::string(run_end_text(record.run.end)); },
            [](RunRecord& record, std::string_view text) -> Result<void> {
                const auto end = run_end_from(lower_case(text));
                if (!end) return wrong(say(phrase("text", "`%1` is no way a run ends"), text), use_one_of(all_run_ends, run_end_text));
                record.run.end = *end;
                return {};
            }};
}

SheetKey started_full_key() {
    return {"started_full",
            [](const RunRecord& record) -> std::string {
                if (!record.run.started_full) return {};
                return *record.run.started_full ? "yes" : "no";
            },
            [](RunRecord& record, std::string_view text) -> Result<void> {
                const std::string answer = lower_case(text);
                if (answer != "yes" && answer != "no")
                    return wrong(say(phrase("text", "`%1` is neither yes nor no"), text),
                                 say(phrase("text", "use `yes` or `no`, or leave the key out when it is not known")));
                record.run.started_full = answer == "yes";
                return {};
            }};
}

SheetKey time_zone_key() {
    return {"time_zone", [](const RunRecord& record) { return record.run.time_zone; },
            [](RunRecord& record, std::string_view text) -> Result<void> {
                if (!zone_exists(text))
                    return wrong(say(phrase("text", "`%1` is no time zone known to this machine"), text),
                                 say(phrase("text", "use an IANA name such as Europe/Vienna, or UTC")));
                record.run.time_zone = text;
                return {};
            }};
}

SheetKey load_key() {
    return {"load", [](const RunRecord& record) { return record.run.load; },
            [](RunRecord& record, std::string_view text) { return put(record.run.load, text, longest_load_text); }};
}

SheetKey noticed_key() {
    return {"end_noticed_within_min", [](const RunRecord& record) { return text_of(record.run.end_noticed_within_min); },
            [](RunRecord& record, std::string_view text) -> Result<void> {
                const Result<double> number = number_in(text, noticed_within_range);
                if (!number) return number.error();
                record.run.end_noticed_within_min = number.value();
                return {};
            }};
}

SheetKey ambient_key(const char* name, Number Run::*member) {
    return {name, [member](const RunRecord& record) { return text_of(record.run.*member); },
            [member](RunRecord& record, std::string_view text) -> Result<void> {
                const Result<double> number = number_in(text, temperature_range);
                if (!number) return number.error();
                record.run.*member = number.value();
                return {};
            }};
}

SheetKey charge_source_key() {
    return {
        "charge_source",
        [](const RunRecord& record) { return record.run.charge_source ? std::string(charge_source_text(*record.run.charge_source)) : std::string(); },
        [](RunRecord& record, std::string_view text) -> Result<void> {
            const auto source = charge_source_from(lower_case(text));
            if (!source) return wrong(say(phrase("text", "`%1` is no source of a charge"), text), use_one_of(all_charge_sources, charge_source_text));
            record.run.charge_source = *source;
            return {};
        }};
}

std::vector<SheetKey> all_keys() {
    std::vector<SheetKey> keys = {
        unit_text("unit", longest_name, &Unit::name),
        unit_text("maker", longest_name, &Unit::maker),
        unit_text("model", longest_name, &Unit::model),
        unit_number("rated_energy_wh", rated_energy_range, &Unit::rated_energy_wh),
        unit_number("rated_output_w", rated_power_range, &Unit::rated_output_w),
        unit_number("peak_output_w", rated_power_range, &Unit::peak_output_w),
        unit_number("pv_max_v", voltage_range, &Unit::pv_max_v),
        unit_number("pv_max_a", current_range, &Unit::pv_max_a),
        unit_number("pv_max_w", rated_power_range, &Unit::pv_max_w),
        unit_number("pv_start_v", voltage_range, &Unit::pv_start_v),
        unit_number("pv_short_circuit_a", current_range, &Unit::pv_short_circuit_a),
        unit_number("charge_time_h", charge_time_range, &Unit::charge_time_h),
        unit_number("price", price_range, &Unit::price),
        unit_number("paid_price", price_range, &Unit::paid_price),
        unit_text("currency", longest_short_text, &Unit::currency),
        unit_number("mass_kg", mass_range, &Unit::mass_kg),
        unit_number("warranty_years", warranty_range, &Unit::warranty_years),
        unit_text("serial_number", longest_name, &Unit::serial_number),
        unit_text("chemistry", longest_name, &Unit::chemistry),
        purchased_key(),
        unit_number("cycles_before", cycles_range, &Unit::cycles_before),
        gauge_step_key(),
        tags_key(),
        unit_text("unit_remark", longest_remark, &Unit::remark),
    };
    for (auto& some : {meter_keys("", &RunRecord::meter), meter_keys("second_", &RunRecord::second_meter)})
        keys.insert(keys.end(), some.begin(), some.end());
    const std::vector<SheetKey> of_run = {
        run_kind_key(),
        started_full_key(),
        run_end_key(),
        noticed_key(),
        time_zone_key(),
        load_key(),
        ambient_key("ambient_c", &Run::ambient_c),
        ambient_key("ambient_end_c", &Run::ambient_end_c),
        charge_source_key(),
    };
    keys.insert(keys.end(), of_run.begin(), of_run.end());
    return keys;
}

} // namespace

const std::vector<SheetKey>& sheet_keys() {
    static const std::vector<SheetKey> keys = all_keys();
    return keys;
}

const SheetKey* find_sheet_key(std::string_view name) {
    const std::string wanted = lower_case(name);
    const auto& keys = sheet_keys();
    const auto found = std::ranges::find(keys, wanted, &SheetKey::name);
    return found == keys.end() ? nullptr : &*found;
}

std::string lower_case(std::string_view text) {
    std::string lower(text);
    for (char& c : lower)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return lower;
}

} // namespace ullage
