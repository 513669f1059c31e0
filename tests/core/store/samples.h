// SPDX-License-Identifier: GPL-3.0-or-later
// Invented records and small helpers for the tests of the store.
#pragma once

#include "store/logbook.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <map>
#include <string>

namespace ullage::test {

/// The value of a result; a test that gets an error instead stops with its sentence.
template <class T>
T take(Result<T> result) {
    if (!result) throw std::runtime_error(result.error().sentence());
    return std::move(result).value();
}
inline void take(const Result<void>& result) {
    if (!result) throw std::runtime_error(result.error().sentence());
}

/// The sort of failure, or nothing for a success.
template <class T>
std::optional<Failure> failure_of(const Result<T>& result) {
    return result ? std::nullopt : std::optional(result.error().failure);
}

inline Unit sample_unit() {
    Unit unit;
    unit.name = "Lantern 900";
    unit.maker = "Hedgerow Works";
    unit.rated_energy_wh = 1000.25;
    unit.rated_output_w = 600;
    unit.peak_output_w = 1100;
    unit.pv_max_v = 48;
    unit.pv_max_a = 10.5;
    unit.pv_max_w = 400;
    unit.price = 799.9;
    unit.currency = "EUR";
    unit.mass_kg = 11.5;
    unit.warranty_years = 2;
    unit.gauge_step_percent = 0.5;
    unit.paid_price = 512.25;
    unit.tags = {"lent", "zelt ≈"};
    unit.model = "Lantern 900 S";
    unit.remark = "bought used; \"as seen\"\nsecond line ≈";
    return unit;
}

inline Meter sample_meter() {
    Meter meter;
    meter.name = "bench meter";
    meter.step_wh = 0.1;
    meter.limit_percent = 2;
    meter.span_wh = 10000;
    meter.correction = 1.013;
    meter.remark = "checked in spring";
    meter.load_part_percent = 0.25;
    meter.certificate = {"K-2027/118", "2027-03-02", "Hillfoot Measures", "2029-03-02"};
    meter.accuracy_class = "B";
    meter.standard = "EN 50470-3";
    meter.starting_current_a = 0.02;
    meter.range_low_w = 5;
    meter.range_high_w = 3600;
    meter.points = {{100, 0.998, 0.3, 2.0}, {500, 1.001, 0.25, std::nullopt}, {2000, 1.002, {}, {}}};
    return meter;
}

inline Run sample_run(const UnitId& unit_uuid, std::optional<MeterId> meter_uuid = std::nullopt) {
    Run run;
    run.unit_uuid = unit_uuid;
    run.meter_uuid = std::move(meter_uuid);
    run.kind = RunKind::no_load_drain;
    run.started_full = true;
    run.end = RunEnd::found_off;
    run.load = "projector and sound";
    run.ambient_c = 19.5;
    run.time_zone = "Europe/Vienna";
    run.ambient_end_c = 22.25;
    run.extra = {{"zebra", "1"}, {"ant", ""}, {"zebra", "again"}};
    return run;
}

inline ReadingValues sample_values(UtcMs time_ms = 1'810'310'400'000) {
    ReadingValues values;
    values.time_ms = time_ms;
    values.gauge_percent = 99.5;
    values.register_wh = 0.1;
    values.meter_w = 62.3;
    values.display_w = 63;
    values.mark = MarkKind::load_changed;
    values.remark = "lamp on";
    values.second_register_wh = 0.3;
    return values;
}

/// Every file of a folder with its bytes.
inline std::map<std::string, std::string> folder_bytes(const std::filesystem::path& folder) {
    std::map<std::string, std::string> bytes;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.is_directory()) {
            bytes[entry.path().filename().string()] = "a folder";
            continue;
        }
        std::ifstream in(entry.path(), std::ios::binary);
        bytes[entry.path().filename().string()] = {std::istreambuf_iterator<char>(in), {}};
    }
    return bytes;
}

inline void write_bytes(const std::filesystem::path& path, const std::string& bytes) { std::ofstream(path, std::ios::binary) << bytes; }

/// A logbook with one unit, one meter, one run and `count` readings, closed again; returns the run's uuid.
inline RunId write_logbook(const std::filesystem::path& path, int count = 3) {
    const FakeClock clock;
    Logbook logbook = take(Logbook::create(path, clock));
    const Unit unit = take(logbook.add(sample_unit()));
    const Meter meter = take(logbook.add(sample_meter()));
    const Run run = take(logbook.add(sample_run(unit.uuid, meter.uuid)));
    for (int i = 0; i < count; ++i) take(logbook.record(run.uuid, sample_values(clock.now_ms() + i * 60'000)));
    return run.uuid;
}

} // namespace ullage::test
