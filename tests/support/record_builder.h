// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/run_record.h"

#include <cmath>
#include <optional>
#include <string>

namespace ullage::test {

/// Builds a run record by hand, one reading after the other, for tests whose numbers must be seen.
/// Starts as a full drain of a 1000 Wh unit (1500 W output) with a ±1 % meter of 1 Wh step, in UTC, ended by a cut-off noted
/// as it happened.
class RecordBuilder {
public:
    RecordBuilder() {
        record_.unit.uuid = UnitId("unit");
        record_.unit.name = "Specimen";
        record_.unit.rated_energy_wh = 1000;
        record_.unit.rated_output_w = 1500;
        record_.meter = Meter{MeterId("meter"), "Meter", 1.0, 1.0, std::nullopt, 1.0, {}};
        record_.meter->load_part_percent = 0; // calibrated at its loads
        record_.run.uuid = RunId("run");
        record_.run.unit_uuid = UnitId("unit");
        record_.run.meter_uuid = MeterId("meter");
        record_.run.started_full = true;
        record_.run.end = RunEnd::cut_off_seen;
        record_.run.end_noticed_within_min = 0;
    }

    /// A reading at `hours` after the start.
    RecordBuilder& at(double hours, std::optional<double> gauge_percent, std::optional<double> register_wh,
                      std::optional<MarkKind> mark = std::nullopt) {
        Reading reading;
        reading.sequence = static_cast<long>(record_.readings.size()) + 1;
        reading.uuid = ReadingId("r" + std::to_string(reading.sequence));
        reading.values.time_ms = moment_ms(hours);
        reading.values.gauge_percent = gauge_percent;
        reading.values.register_wh = register_wh;
        reading.values.mark = mark;
        record_.readings.push_back(reading);
        return *this;
    }

    RunRecord& record() { return record_; }

    static constexpr UtcMs start_ms = 1'810'000'800'000; ///< 2027-05-11T02:00Z
    static UtcMs moment_ms(double hours) { return start_ms + static_cast<UtcMs>(hours * ms_per_hour); }

private:
    RunRecord record_;
};

/// A full drain of the same unit with so many readings, a day after that of the number before.
inline RunRecord long_drain(int number, int readings) {
    RecordBuilder builder;
    for (int i = 0; i < readings; ++i) {
        const double share = static_cast<double>(i) / (readings - 1);
        builder.at(10 * share, std::round(100 - 100 * share), 850 * share);
    }
    RunRecord record = builder.record();
    record.run.uuid = RunId("run " + std::to_string(number));
    for (Reading& reading : record.readings) {
        reading.uuid = ReadingId(reading.uuid.text() + " of " + std::to_string(number));
        reading.values.time_ms += 86'400'000LL * number;
    }
    return record;
}

} // namespace ullage::test
