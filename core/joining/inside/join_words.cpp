// SPDX-License-Identifier: GPL-3.0-or-later
#include "joining/inside/join_words.h"

#include "base/number.h"
#include "formats/sheets/pv_sheet_text.h"
#include "formats/text/sheet_keys.h"
#include "joining/inside/field_words.h"

#include <algorithm>

namespace ullage::joining {

namespace {

Message number_words(const std::optional<double>& value) { return value ? say_digits(exact_text(*value)) : Message(); }

Message moment_words(UtcMs time_ms, const std::string& zone) { return format_iso8601(time_ms, zone); }

void put(std::vector<JoinField>& fields, const Message& name, const Message& here, const Message& there) {
    if (!(here == there)) fields.push_back({name, here, there});
}

/// The same for a key of a sheet, as the sheets of the two have it.
void put_key(std::vector<JoinField>& fields, const std::string& key, const std::string& here, const std::string& there) {
    if (here != there) fields.push_back({say_field(key), say_field_value(key, here), say_field_value(key, there)});
}

/// The keys of a run sheet in which two records differ.
std::vector<JoinField> differing_keys(const RunRecord& here, const RunRecord& there) {
    std::vector<JoinField> fields;
    for (const SheetKey& key : sheet_keys()) put_key(fields, key.name, key.text(here), key.text(there));
    return fields;
}

std::string extra_words(const Run& run) {
    std::string words;
    for (const auto& [key, value] : run.extra) words += (words.empty() ? "" : "; ") + key + ": " + value;
    return words;
}

Message appliance_words(const Appliance& appliance) {
    const auto exact = [](double value) { return say_digits(exact_text(value)); };
    std::vector<Message> parts{say_joined({say_number(appliance.count), appliance.name}, " × ")};
    if (appliance.power_w) parts.push_back(say_joined({exact(*appliance.power_w), "W"}, " "));
    if (appliance.measured)
        parts.push_back(say(phrase("joining", "%1 Wh in %2 h"), exact(appliance.measured->energy_wh), exact(appliance.measured->hours)));
    if (appliance.duty != 1) parts.push_back(say(phrase("joining", "duty %1"), exact(appliance.duty)));
    parts.push_back(say(phrase("joining", "%1 h a day"), exact(appliance.hours_per_day)));
    if (appliance.night_hours > 0) parts.push_back(say(phrase("joining", "%1 h at night"), exact(appliance.night_hours)));
    if (appliance.start_peak_w) parts.push_back(say(phrase("joining", "%1 W at the start"), exact(*appliance.start_peak_w)));
    if (appliance.always_connected) parts.push_back(say(phrase("joining", "always connected")));
    return say_joined(parts, ", ");
}

} // namespace

Message run_title(const KeptRun& kept, const std::string& unit_name) {
    const auto first = std::ranges::find(kept.readings, false, &Reading::withdrawn);
    const UtcMs day_ms = first == kept.readings.end() ? kept.run.created_ms : first->values.time_ms;
    return say(phrase("joining", "%1 of %2, %3"), say_run_kind(kept.run.kind), unit_name, say_date(day_ms, kept.run.time_zone));
}

Message reading_title(const Reading& reading, const KeptRun& run, const Message& run_title) {
    const UtcMs time_ms = reading.values.time_ms;
    return say(phrase("joining", "reading of %1, %2, in %3"), say_date(time_ms, run.run.time_zone), clock_text(time_ms, run.run.time_zone),
               run_title);
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
    if (here.run.unit_uuid != there.run.unit_uuid) put(fields, say(phrase("joining", "unit")), here.unit.name, there.unit.name);
    const auto meter_name = [](const std::optional<Meter>& meter) { return meter ? meter->name : std::string(); };
    if (here.run.meter_uuid != there.run.meter_uuid) put(fields, say(phrase("joining", "meter")), meter_name(here.meter), meter_name(there.meter));
    if (here.run.second_meter_uuid != there.run.second_meter_uuid)
        put(fields, say(phrase("joining", "second meter")), meter_name(here.second_meter), meter_name(there.second_meter));
    RunRecord left, right;
    left.run = here.run;
    right.run = there.run;
    for (JoinField& field : differing_keys(left, right)) fields.push_back(std::move(field));
    put(fields, say(phrase("joining", "further keys")), extra_words(here.run), extra_words(there.run));
    return fields;
}

std::vector<JoinField> differing_fields(const ReadingValues& here, const ReadingValues& there, const std::string& zone) {
    const auto mark_words = [](const ReadingValues& values) { return values.mark ? say_mark(*values.mark) : Message(); };
    std::vector<JoinField> fields;
    put(fields, say(phrase("joining", "time")), moment_words(here.time_ms, zone), moment_words(there.time_ms, zone));
    put(fields, say(phrase("joining", "gauge (%)")), number_words(here.gauge_percent), number_words(there.gauge_percent));
    put(fields, say(phrase("joining", "register (Wh)")), number_words(here.register_wh), number_words(there.register_wh));
    put(fields, say(phrase("joining", "second register (Wh)")), number_words(here.second_register_wh), number_words(there.second_register_wh));
    put(fields, say(phrase("joining", "meter (W)")), number_words(here.meter_w), number_words(there.meter_w));
    put(fields, say(phrase("joining", "display (W)")), number_words(here.display_w), number_words(there.display_w));
    put(fields, say(phrase("joining", "mark")), mark_words(here), mark_words(there));
    put(fields, say(phrase("joining", "remark")), here.remark, there.remark);
    return fields;
}

std::vector<JoinField> differing_fields(const Trace& here, const Trace& there, const std::string& zone) {
    std::vector<JoinField> fields;
    put(fields, say(phrase("joining", "file")), here.file_name, there.file_name);
    put(fields, say(phrase("joining", "samples")), std::to_string(here.samples), std::to_string(there.samples));
    put(fields, say(phrase("joining", "first sample")), moment_words(here.first_ms, zone), moment_words(there.first_ms, zone));
    put(fields, say(phrase("joining", "last sample")), moment_words(here.last_ms, zone), moment_words(there.last_ms, zone));
    return fields;
}

std::vector<JoinField> differing_fields(const LoadList& here, const LoadList& there) {
    std::vector<JoinField> fields;
    put(fields, say(phrase("joining", "name")), here.name, there.name);
    put(fields, say(phrase("joining", "remark")), here.remark, there.remark);
    const std::size_t lines = std::max(here.appliances.size(), there.appliances.size());
    const auto line = [](const LoadList& list, std::size_t i) {
        return i < list.appliances.size() ? appliance_words(list.appliances[i]) : Message();
    };
    for (std::size_t i = 0; i < lines; ++i) put(fields, say(phrase("joining", "line %1"), say_number(i + 1)), line(here, i), line(there, i));
    return fields;
}

std::vector<JoinField> differing_fields(const PvSheet& here, const std::string& unit_here, const PvSheet& there, const std::string& unit_there) {
    std::vector<JoinField> fields;
    const PvSheetText left{here, unit_here, {}}, right{there, unit_there, {}};
    for (const PvKey& key : pv_keys())
        if (key.name == "unit") put(fields, say(phrase("joining", "unit")), key.text(left), key.text(right));
        else put_key(fields, std::string(key.name), key.text(left), key.text(right));
    return fields;
}

} // namespace ullage::joining
