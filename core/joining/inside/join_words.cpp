// SPDX-License-Identifier: GPL-3.0-or-later
#include "joining/inside/join_words.h"

#include "base/number.h"
#include "formats/sheets/pv_sheet_text.h"
#include "formats/text/sheet_keys.h"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>

namespace ullage::joining {

namespace {

std::string number_words(const std::optional<double>& value) { return value ? exact_text(*value) : std::string(); }

/// A key of a sheet as words: "rated_energy_wh" is "rated energy (Wh)".
std::string field_words(std::string_view key) {
    for (const std::string_view owner : {"second_meter_", "meter_", "unit_"})
        if (key.starts_with(owner)) {
            key.remove_prefix(owner.size());
            break;
        }
    if (key == "unit" || key == "meter" || key == "pv_sheet") return "name";
    if (key == "run") return "kind";
    if (key.ends_with("_per_c")) { // voc_per_c
        std::string words(key.substr(0, key.find('_')));
        return words + " per °C";
    }
    constexpr std::pair<std::string_view, std::string_view> measures[] = {
        {"_w_m2", " (W/m²)"}, {"_wh", " (Wh)"}, {"_w", " (W)"},     {"_v", " (V)"},       {"_a", " (A)"},        {"_h", " (h)"},
        {"_c", " (°C)"},      {"_kg", " (kg)"}, {"_min", " (min)"}, {"_percent", " (%)"}, {"_years", " (years)"}};
    std::string_view measure;
    for (const auto& [ending, words] : measures)
        if (key.ends_with(ending)) {
            key.remove_suffix(ending.size());
            measure = words;
            break;
        }
    std::string words(key);
    std::ranges::replace(words, '_', ' ');
    return words + std::string(measure);
}

std::string moment_words(UtcMs time_ms, const std::string& zone) { return format_iso8601(time_ms, zone); }

void put(std::vector<JoinField>& fields, std::string name, std::string here, std::string there) {
    if (here != there) fields.push_back({std::move(name), std::move(here), std::move(there)});
}

/// The keys of a run sheet in which two records differ.
std::vector<JoinField> differing_keys(const RunRecord& here, const RunRecord& there) {
    std::vector<JoinField> fields;
    for (const SheetKey& key : sheet_keys()) put(fields, field_words(key.name), key.text(here), key.text(there));
    return fields;
}

std::string extra_words(const Run& run) {
    std::string words;
    for (const auto& [key, value] : run.extra) words += (words.empty() ? "" : "; ") + key + ": " + value;
    return words;
}

std::string appliance_words(const Appliance& appliance) {
    std::string words = fmt::format("{} × {}", appliance.count, appliance.name);
    if (appliance.power_w) words += ", " + exact_text(*appliance.power_w) + " W";
    if (appliance.measured) words += fmt::format(", {} Wh in {} h", exact_text(appliance.measured->energy_wh), exact_text(appliance.measured->hours));
    if (appliance.duty != 1) words += ", duty " + exact_text(appliance.duty);
    words += ", " + exact_text(appliance.hours_per_day) + " h a day";
    if (appliance.night_hours > 0) words += ", " + exact_text(appliance.night_hours) + " h at night";
    if (appliance.start_peak_w) words += ", " + exact_text(*appliance.start_peak_w) + " W at the start";
    if (appliance.always_connected) words += ", always connected";
    return words;
}

} // namespace

std::string run_title(const KeptRun& kept, const std::string& unit_name) {
    const auto first = std::ranges::find(kept.readings, false, &Reading::withdrawn);
    const UtcMs day_ms = first == kept.readings.end() ? kept.run.created_ms : first->values.time_ms;
    return fmt::format("{} of {}, {}", run_kind_text(kept.run.kind), unit_name, date_text(day_ms, kept.run.time_zone));
}

std::string reading_title(const Reading& reading, const KeptRun& run, const std::string& run_title) {
    const UtcMs time_ms = reading.values.time_ms;
    return fmt::format("reading of {}, {}, in {}", date_text(time_ms, run.run.time_zone), clock_text(time_ms, run.run.time_zone), run_title);
}

std::vector<JoinField> differing_fields(const Unit& here, const Unit& there) {
    RunRecord left, right;
    left.unit = here;
    right.unit = there;
    return differing_keys(left, right);
}

std::vector<JoinField> differing_fields(const Meter& here, const Meter& there) {
    RunRecord left, right;
    left.meter = here;
    right.meter = there;
    return differing_keys(left, right);
}

std::vector<JoinField> differing_fields(const RunRecord& here, const RunRecord& there) {
    std::vector<JoinField> fields;
    if (here.run.unit_uuid != there.run.unit_uuid) put(fields, "unit", here.unit.name, there.unit.name);
    const auto meter_name = [](const std::optional<Meter>& meter) { return meter ? meter->name : std::string(); };
    if (here.run.meter_uuid != there.run.meter_uuid) put(fields, "meter", meter_name(here.meter), meter_name(there.meter));
    if (here.run.second_meter_uuid != there.run.second_meter_uuid)
        put(fields, "second meter", meter_name(here.second_meter), meter_name(there.second_meter));
    RunRecord left, right;
    left.run = here.run;
    right.run = there.run;
    for (JoinField& field : differing_keys(left, right)) fields.push_back(std::move(field));
    put(fields, "further keys", extra_words(here.run), extra_words(there.run));
    return fields;
}

std::vector<JoinField> differing_fields(const ReadingValues& here, const ReadingValues& there, const std::string& zone) {
    const auto mark_words = [](const ReadingValues& values) { return values.mark ? std::string(mark_text(*values.mark)) : std::string(); };
    std::vector<JoinField> fields;
    put(fields, "time", moment_words(here.time_ms, zone), moment_words(there.time_ms, zone));
    put(fields, "gauge (%)", number_words(here.gauge_percent), number_words(there.gauge_percent));
    put(fields, "register (Wh)", number_words(here.register_wh), number_words(there.register_wh));
    put(fields, "second register (Wh)", number_words(here.second_register_wh), number_words(there.second_register_wh));
    put(fields, "meter (W)", number_words(here.meter_w), number_words(there.meter_w));
    put(fields, "display (W)", number_words(here.display_w), number_words(there.display_w));
    put(fields, "mark", mark_words(here), mark_words(there));
    put(fields, "remark", here.remark, there.remark);
    return fields;
}

std::vector<JoinField> differing_fields(const Trace& here, const Trace& there, const std::string& zone) {
    std::vector<JoinField> fields;
    put(fields, "file", here.file_name, there.file_name);
    put(fields, "samples", std::to_string(here.samples), std::to_string(there.samples));
    put(fields, "first sample", moment_words(here.first_ms, zone), moment_words(there.first_ms, zone));
    put(fields, "last sample", moment_words(here.last_ms, zone), moment_words(there.last_ms, zone));
    return fields;
}

std::vector<JoinField> differing_fields(const LoadList& here, const LoadList& there) {
    std::vector<JoinField> fields;
    put(fields, "name", here.name, there.name);
    put(fields, "remark", here.remark, there.remark);
    const std::size_t lines = std::max(here.appliances.size(), there.appliances.size());
    const auto line = [](const LoadList& list, std::size_t i) { return i < list.appliances.size() ? appliance_words(list.appliances[i]) : ""; };
    for (std::size_t i = 0; i < lines; ++i) put(fields, fmt::format("line {}", i + 1), line(here, i), line(there, i));
    return fields;
}

std::vector<JoinField> differing_fields(const PvSheet& here, const std::string& unit_here, const PvSheet& there, const std::string& unit_there) {
    std::vector<JoinField> fields;
    const PvSheetText left{here, unit_here, {}}, right{there, unit_there, {}};
    for (const PvKey& key : pv_keys()) put(fields, key.name == "unit" ? "unit" : field_words(key.name), key.text(left), key.text(right));
    return fields;
}

} // namespace ullage::joining
