// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/sheet_keys.h"

#include "base/number.h"
#include "model/limits.h"
#include "model/tags.h"

#include <fmt/format.h>

#include <algorithm>

namespace ullage {

namespace {

using Number = std::optional<double>;

Error wrong(std::string what, std::string remedy) { return Error{Failure::bad_input, std::move(what), {}, std::move(remedy)}; }

Result<double> number_in(std::string_view text, const NumberRange& range) {
    Result<double> number = parse_number(trimmed(text));
    if (!number) return number;
    if (!check_number({}, number.value(), range)) return wrong(fmt::format("`{}` is out of range", text), fmt::format("give {}", range_text(range)));
    return number;
}

/// Refuses a text that is too long. The key is named by whoever reads it.
Result<void> put(std::string& place, std::string_view text, std::size_t most) {
    if (auto good = check_text({}, text, most); !good) return good;
    place = text;
    return {};
}

Meter& meter_of(RunRecord& record) {
    if (!record.meter) record.meter.emplace();
    return *record.meter;
}

std::string text_of(const Number& number) { return number ? exact_text(*number) : std::string(); }

SheetKey unit_number(std::string_view name, NumberRange range, Number Unit::*member) {
    return {name, [member](const RunRecord& record) { return text_of(record.unit.*member); },
            [member, range](RunRecord& record, std::string_view text) -> Result<void> {
                const Result<double> number = number_in(text, range);
                if (!number) return number.error();
                record.unit.*member = number.value();
                return {};
            }};
}

SheetKey meter_number(std::string_view name, NumberRange range, Number Meter::*member) {
    return {name, [member](const RunRecord& record) { return record.meter ? text_of((*record.meter).*member) : std::string(); },
            [member, range](RunRecord& record, std::string_view text) -> Result<void> {
                const Result<double> number = number_in(text, range);
                if (!number) return number.error();
                meter_of(record).*member = number.value();
                return {};
            }};
}

SheetKey unit_text(std::string_view name, std::size_t most, std::string Unit::*member) {
    return {name, [member](const RunRecord& record) { return record.unit.*member; },
            [member, most](RunRecord& record, std::string_view text) { return put(record.unit.*member, text, most); }};
}

SheetKey meter_text(std::string_view name, std::size_t most, std::string Meter::*member) {
    return {name, [member](const RunRecord& record) { return record.meter ? (*record.meter).*member : std::string(); },
            [member, most](RunRecord& record, std::string_view text) { return put(meter_of(record).*member, text, most); }};
}

/// "`drain`, `no-load drain` or …" for messages.
template <class Values, class Text>
std::string choices(const Values& values, Text text) {
    std::string words;
    for (std::size_t i = 0; i < std::size(values); ++i)
        words += fmt::format("{}`{}`", i == 0 ? "" : i + 1 == std::size(values) ? " or " : ", ", text(values[i]));
    return words;
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

SheetKey correction_key() {
    return {
        "meter_correction",
        [](const RunRecord& record) { return record.meter && record.meter->correction != 1 ? exact_text(record.meter->correction) : std::string(); },
        [](RunRecord& record, std::string_view text) -> Result<void> {
            const Result<double> number = number_in(text, correction_range);
            if (!number) return number.error();
            meter_of(record).correction = number.value();
            return {};
        }};
}

SheetKey run_kind_key() {
    return {"run", [](const RunRecord& record) { return std::string(run_kind_text(record.run.kind)); },
            [](RunRecord& record, std::string_view text) -> Result<void> {
                const auto kind = run_kind_from(lower_case(text));
                if (!kind) return wrong(fmt::format("`{}` is no kind of run", text), "use " + choices(all_run_kinds, run_kind_text));
                record.run.kind = *kind;
                return {};
            }};
}

SheetKey run_end_key() {
    return {"ended", [](const RunRecord& record) { return std::string(run_end_text(record.run.end)); },
            [](RunRecord& record, std::string_view text) -> Result<void> {
                const auto end = run_end_from(lower_case(text));
                if (!end) return wrong(fmt::format("`{}` is no way a run ends", text), "use " + choices(all_run_ends, run_end_text));
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
                    return wrong(fmt::format("`{}` is neither yes nor no", text), "use `yes` or `no`, or leave the key out when it is not known");
                record.run.started_full = answer == "yes";
                return {};
            }};
}

SheetKey time_zone_key() {
    return {"time_zone", [](const RunRecord& record) { return record.run.time_zone; },
            [](RunRecord& record, std::string_view text) -> Result<void> {
                if (!zone_exists(text))
                    return wrong(fmt::format("`{}` is no time zone known to this machine", text), "use an IANA name such as Europe/Vienna, or UTC");
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

SheetKey ambient_key() {
    return {"ambient_c", [](const RunRecord& record) { return text_of(record.run.ambient_c); },
            [](RunRecord& record, std::string_view text) -> Result<void> {
                const Result<double> number = number_in(text, temperature_range);
                if (!number) return number.error();
                record.run.ambient_c = number.value();
                return {};
            }};
}

SheetKey charge_source_key() {
    return {
        "charge_source",
        [](const RunRecord& record) { return record.run.charge_source ? std::string(charge_source_text(*record.run.charge_source)) : std::string(); },
        [](RunRecord& record, std::string_view text) -> Result<void> {
            const auto source = charge_source_from(lower_case(text));
            if (!source) return wrong(fmt::format("`{}` is no source of a charge", text), "use " + choices(all_charge_sources, charge_source_text));
            record.run.charge_source = *source;
            return {};
        }};
}

} // namespace

const std::vector<SheetKey>& sheet_keys() {
    static const std::vector<SheetKey> keys = {
        unit_text("unit", longest_name, &Unit::name),
        unit_text("maker", longest_name, &Unit::maker),
        unit_number("rated_energy_wh", rated_energy_range, &Unit::rated_energy_wh),
        unit_number("rated_output_w", rated_power_range, &Unit::rated_output_w),
        unit_number("peak_output_w", rated_power_range, &Unit::peak_output_w),
        unit_number("pv_max_v", voltage_range, &Unit::pv_max_v),
        unit_number("pv_max_a", current_range, &Unit::pv_max_a),
        unit_number("pv_max_w", rated_power_range, &Unit::pv_max_w),
        unit_number("pv_start_v", voltage_range, &Unit::pv_start_v),
        unit_number("charge_time_h", charge_time_range, &Unit::charge_time_h),
        unit_number("price", price_range, &Unit::price),
        unit_number("paid_price", price_range, &Unit::paid_price),
        unit_text("currency", longest_short_text, &Unit::currency),
        unit_number("mass_kg", mass_range, &Unit::mass_kg),
        unit_number("warranty_years", warranty_range, &Unit::warranty_years),
        gauge_step_key(),
        tags_key(),
        unit_text("unit_remark", longest_remark, &Unit::remark),
        meter_text("meter", longest_name, &Meter::name),
        meter_number("meter_step_wh", register_step_range, &Meter::step_wh),
        meter_number("meter_limit_percent", meter_limit_range, &Meter::limit_percent),
        meter_number("meter_load_part_percent", meter_limit_range, &Meter::load_part_percent),
        meter_number("meter_span_wh", register_span_range, &Meter::span_wh),
        correction_key(),
        meter_text("meter_remark", longest_remark, &Meter::remark),
        run_kind_key(),
        started_full_key(),
        run_end_key(),
        noticed_key(),
        time_zone_key(),
        load_key(),
        ambient_key(),
        charge_source_key(),
    };
    return keys;
}

const SheetKey* find_sheet_key(std::string_view name) {
    const std::string wanted = lower_case(name);
    const auto& keys = sheet_keys();
    const auto found = std::ranges::find(keys, std::string_view(wanted), &SheetKey::name);
    return found == keys.end() ? nullptr : &*found;
}

std::string lower_case(std::string_view text) {
    std::string lower(text);
    for (char& c : lower)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return lower;
}

} // namespace ullage
