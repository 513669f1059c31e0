// SPDX-License-Identifier: GPL-3.0-or-later
// Two logbooks of one origin, and what a logbook says as text, for the tests of joining.
#pragma once

#include "core/store/samples.h"
#include "joining/join.h"
#include "support/photo_bytes.h"

#include <algorithm>
#include <array>
#include <sstream>

namespace ullage::test {

inline Trace sample_trace(const RunId& run_uuid, const std::string& name) {
    Trace trace;
    trace.run_uuid = run_uuid;
    trace.file_name = name;
    trace.layout = "delimiter ,";
    return trace;
}

/// A log of so many samples, a minute apart.
inline TraceSource log_of(UtcMs first_ms, int count, const std::string& fingerprint) {
    return [=](Trace& trace, const SampleTaker& take_samples) -> Result<void> {
        std::vector<TraceSample> samples;
        for (int i = 0; i < count; ++i) samples.push_back({first_ms + i * 60'000, i * 1.5, 90.0, {}, {}});
        trace.fingerprint = fingerprint;
        trace.size_bytes = 20 * count;
        return take_samples(samples);
    };
}

/// All that a person sees in a logbook, without identifiers.
inline std::string seen(const Logbook& book) {
    std::ostringstream text;
    for (const Unit& unit : take(book.units())) text << "unit " << unit.name << ' ' << unit.rated_energy_wh.value_or(0) << ' ' << unit.remark << '\n';
    for (const Meter& meter : take(book.meters())) text << "meter " << meter.name << ' ' << meter.limit_percent.value_or(0) << '\n';
    for (const RunRecord& record : take(book.run_records())) {
        text << "run " << record.number << " of " << record.unit.name << " with " << (record.meter ? record.meter->name : "none") << ' '
             << record.run.load << ' ' << run_end_text(record.run.end) << '\n';
        for (const Reading& reading : record.readings)
            if (!reading.withdrawn)
                text << "  reading " << reading.values.time_ms << ' ' << reading.values.register_wh.value_or(-1) << ' ' << reading.values.remark
                     << '\n';
        for (const Photo& photo : take(book.photos(record.run.uuid)))
            if (!photo.withdrawn)
                text << "  photo " << photo.file_name << ' ' << take(book.photo_bytes(photo.uuid)).size() << (photo.reading_uuid ? " tied" : "")
                     << '\n';
        for (const Trace& trace : take(book.traces(record.run.uuid))) {
            if (trace.withdrawn) continue;
            std::size_t samples = 0;
            take(book.read_samples(trace.uuid, trace.first_ms, trace.last_ms, [&samples](std::span<const TraceSample> some) {
                samples += some.size();
                return true;
            }));
            text << "  log " << trace.file_name << ' ' << samples << '\n';
        }
    }
    for (const LoadList& list : take(book.load_lists())) text << "list " << list.name << ' ' << list.appliances.size() << '\n';
    for (const PvSheet& sheet : take(book.pv_sheets())) text << "sheet " << sheet.name << (sheet.unit_uuid.empty() ? "" : " of a unit") << '\n';
    return text.str();
}

inline LoadList sample_list(const std::string& name, double power_w = 40) {
    LoadList list;
    list.name = name;
    Appliance lamp;
    lamp.name = "lamp";
    lamp.power_w = power_w;
    lamp.hours_per_day = 4;
    list.appliances = {lamp};
    return list;
}

/// A logbook, and a copy of it that went to another machine.
class TwoLogbooks {
public:
    TwoLogbooks() {
        {
            Logbook book = take(Logbook::create(folder / "here.ullage", clock));
            unit = take(book.add(sample_unit()));
            meter = take(book.add(sample_meter()));
            run = take(book.add(sample_run(unit.uuid, meter.uuid)));
            for (int i = 0; i < 3; ++i) readings.push_back(take(book.record(run.uuid, sample_values(clock.now_ms() + i * 3'600'000))));
            list = take(book.add(sample_list("kitchen")));
            take(book.save_copy(folder / "there.ullage"));
        }
        here.emplace(take(Logbook::open(folder / "here.ullage", OpenMode::record, clock)));
        there.emplace(take(Logbook::open(folder / "there.ullage", OpenMode::record, clock)));
    }

    /// What a name on the list of differences stands for; a test without it fails.
    [[nodiscard]] JoinDifference difference(const std::string& title) const {
        for (const JoinDifference& each : take(plan_join(*here, *there)).differences)
            if (each.title.text().starts_with(title)) return each;
        throw std::runtime_error("no difference in " + title);
    }
    [[nodiscard]] Joined joined(const std::set<std::string>& keys = {}) { return take(join(*here, *there, keys)); }
    [[nodiscard]] Joined joined_taking_all() { return joined(take(plan_join(*here, *there)).all_keys()); }

    TempFolder folder;
    FakeClock clock;
    Unit unit;
    Meter meter;
    Run run;
    std::vector<Reading> readings;
    LoadList list;
    std::optional<Logbook> here, there;
};

/// Name, here and there of each, in the language in use.
using FieldTexts = std::vector<std::array<std::string, 3>>;
inline FieldTexts field_texts(const std::vector<JoinField>& fields) {
    FieldTexts said;
    for (const JoinField& field : fields) said.push_back({field.name.text(), field.here.text(), field.there.text()});
    return said;
}

} // namespace ullage::test
