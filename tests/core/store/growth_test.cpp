// SPDX-License-Identifier: GPL-3.0-or-later
// How the work of an import grows, counted in instructions of SQLite's virtual machine (https://www.sqlite.org/opcode.html), not in time.
#include "samples.h"

#include <sqlite3.h>

#include <array>

namespace ullage {
namespace {

using namespace test;

std::int64_t instructions = 0;

int count_instruction(void*) {
    ++instructions;
    return 0;
}

/// Called by SQLite for each database that is opened.
int watch(sqlite3* database, char**, const sqlite3_api_routines*) {
    sqlite3_progress_handler(database, 1, count_instruction, nullptr);
    return SQLITE_OK;
}

struct Growth : testing::Test {
    Growth() { sqlite3_auto_extension(reinterpret_cast<void (*)()>(watch)); }
    ~Growth() override { sqlite3_cancel_auto_extension(reinterpret_cast<void (*)()>(watch)); }
    FakeClock clock;

    static RunRecord sheet(int number, int units, int readings) {
        RunRecord record;
        record.unit.name = "Unit " + std::to_string(number % units);
        record.meter.emplace().name = "plug";
        for (int r = 0; r < readings; ++r) {
            Reading& reading = record.readings.emplace_back();
            reading.sequence = r + 1;
            reading.values.time_ms = (number * 1000L + r) * 1000;
            reading.values.register_wh = r;
        }
        return record;
    }

    /// Instructions for so many sheets, each asked for first and then brought in, as the command does.
    std::int64_t importing(int sheets, int units) const {
        Logbook logbook = take(Logbook::in_memory(clock));
        instructions = 0;
        for (int s = 0; s < sheets; ++s) {
            const RunRecord record = sheet(s, units, 3);
            EXPECT_EQ(take(logbook.number_of(record)), std::nullopt);
            EXPECT_EQ(take(logbook.import_run(record)).number, s / units + 1);
        }
        return instructions;
    }
};

/// Twice as much must cost at most this much more than twice; a square would cost four times.
constexpr double in_proportion = 2.2;

TEST_F(Growth, an_import_of_many_sheets_of_one_unit_or_of_many_costs_in_proportion_to_them) {
    for (const bool one_unit : {true, false}) {
        const std::array<std::int64_t, 2> cost{importing(60, one_unit ? 1 : 60), importing(120, one_unit ? 1 : 120)};
        EXPECT_GT(cost[0], 1000);
        EXPECT_LT(static_cast<double>(cost[1]), in_proportion * static_cast<double>(cost[0]));
    }
}

TEST_F(Growth, an_import_and_a_reading_of_a_long_sheet_cost_in_proportion_to_its_readings) {
    std::array<std::int64_t, 2> bringing_in{}, reading{};
    for (const std::size_t i : {0U, 1U}) {
        Logbook logbook = take(Logbook::in_memory(clock));
        instructions = 0;
        take(logbook.import_run(sheet(1, 1, i == 0 ? 400 : 800)));
        bringing_in[i] = std::exchange(instructions, 0);
        EXPECT_EQ(take(logbook.run_records()).front().readings.size(), i == 0 ? 400U : 800U);
        reading[i] = instructions;
    }
    EXPECT_GT(bringing_in[0], 1000);
    EXPECT_LT(static_cast<double>(bringing_in[1]), in_proportion * static_cast<double>(bringing_in[0]));
    EXPECT_GT(reading[0], 1000);
    EXPECT_LT(static_cast<double>(reading[1]), in_proportion * static_cast<double>(reading[0]));
}

TEST_F(Growth, the_first_run_of_a_unit_costs_no_more_than_a_later_one) {
    std::array<std::int64_t, 2> cost{}; // of a unit that is new, and of one whose runs are known
    for (const bool known : {false, true}) {
        Logbook logbook = take(Logbook::in_memory(clock));
        if (known) take(logbook.import_run(sheet(0, 1, 3)));
        const RunRecord run = sheet(1, 1, 800);
        instructions = 0;
        EXPECT_EQ(take(logbook.number_of(run)), std::nullopt);
        take(logbook.import_run(run));
        cost[known] = instructions;
    }
    EXPECT_LT(static_cast<double>(cost[0]), 1.05 * static_cast<double>(cost[1])) << "else its readings are read again as soon as they are there";
}

TEST_F(Growth, what_is_known_of_a_series_of_imports_is_forgotten_when_anything_else_changes) {
    Logbook logbook = take(Logbook::in_memory(clock));
    const RunRecord first = sheet(0, 1, 3), second = sheet(1, 1, 3);
    const ImportedRun added = take(logbook.import_run(first));
    EXPECT_EQ(take(logbook.number_of(first)), 1);
    EXPECT_EQ(take(logbook.import_run(second)).number, 2);
    EXPECT_EQ(take(logbook.number_of(second)), 2);

    take(logbook.set_run_withdrawn(added.run_uuid, true));
    EXPECT_EQ(take(logbook.number_of(first)), std::nullopt);
    EXPECT_EQ(take(logbook.number_of(second)), 1);
    take(logbook.set_run_withdrawn(added.run_uuid, false));

    const auto readings = take(logbook.readings(added.run_uuid));
    take(logbook.set_withdrawn(readings.back().uuid, true, ""));
    EXPECT_EQ(take(logbook.number_of(first)), std::nullopt);
    RunRecord shorter = first;
    shorter.readings.pop_back();
    EXPECT_EQ(take(logbook.number_of(shorter)), 1);
}

TEST_F(Growth, a_sheet_that_is_refused_leaves_the_series_as_it_was) {
    Logbook logbook = take(Logbook::in_memory(clock));
    take(logbook.import_run(sheet(0, 1, 3)));
    RunRecord other = sheet(1, 1, 3);
    other.meter->limit_percent = 2;
    EXPECT_EQ(failure_of(logbook.import_run(other)), Failure::refused);
    EXPECT_EQ(take(logbook.number_of(other)), std::nullopt);
    EXPECT_EQ(take(logbook.import_run(sheet(2, 1, 3))).number, 2);
    EXPECT_EQ(take(logbook.runs()).size(), 2U);
}

} // namespace
} // namespace ullage
