// SPDX-License-Identifier: GPL-3.0-or-later
// Foreign tables: a preview of 10,000 rows (read, understood, as runs) against the sqlite3 shell's `.import` of the same file into a table of text,
// and the import of the table, as it is found and with each row as a reading, against that of the same rows as the log of a meter. A benchmark, no
// test: it reports ratios of one run and never fails. Usage: bench_tables [ROWS] (default 10 000).
#include "foreign_tables/table_log.h"
#include "store/logbook.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"
#include "trace/trace_import.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <fstream>
#include <functional>
#include <string>

namespace {

using namespace ullage;

constexpr UtcMs begin_ms = 1'710'317'600'000;
constexpr int attempts = 5;

double best_of(const std::function<void()>& work) {
    double best = 1e9;
    for (int i = 0; i < attempts; ++i) {
        const auto begin = std::chrono::steady_clock::now();
        work();
        best = std::min(best, std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count());
    }
    return best;
}

} // namespace

int main(int count, char** words) {
    const long rows = count > 1 ? std::atol(words[1]) : 10'000;
    const test::TempFolder folder;
    const test::FakeClock clock;
    std::string text = "time,gauge %,register Wh,power W,note\n";
    for (long i = 0; i < rows; ++i)
        text += fmt::format("{},{},{:.1f},{:.1f},{}\n", format_iso8601(begin_ms + 10'000 * i, "UTC"), 100 - 100 * i / rows,
                            0.33 * static_cast<double>(i), 120.5, i % 100 == 0 ? "looked at" : "");
    const std::string path = (folder / "table.csv").string();
    std::ofstream(path, std::ios::binary) << text;

    // As a meter writes it: a gauge beside its values would be asked about.
    std::string log_text = "time,register Wh,power W\n";
    for (long i = 0; i < rows; ++i)
        log_text += fmt::format("{},{:.1f},{:.1f}\n", format_iso8601(begin_ms + 10'000 * i, "UTC"), 0.33 * static_cast<double>(i), 120.5);
    const std::string log_path = (folder / "log.csv").string();
    std::ofstream(log_path, std::ios::binary) << log_text;

    TableReading reading;
    const double preview_s = best_of([&] {
        const Result<TableBook> book = read_table_book(text, "table");
        reading = understand_table(book.value().sheets.front(), {}, "UTC", begin_ms + 1'000'000'000'000);
    });
    const double reference_s = best_of([&] {
        const std::string database = (folder / "reference.db").string();
        const std::string command = fmt::format("rm -f '{0}'; sqlite3 '{0}' '.mode csv' '.import {1} t'", database, path);
        if (std::system(command.c_str()) != 0) std::abort();
    });
    fmt::print("preview of {} rows: {:.3f} s; `.import` of the same file by sqlite3: {:.3f} s; ratio {:.2f}\n", rows, preview_s, reference_s,
               preview_s / reference_s);

    TableFacts facts;
    facts.unit.name = "Unit";
    const auto import_s = [&](bool as_log) {
        return best_of([&] {
            auto logbook = Logbook::create(folder / (std::to_string(std::rand()) + ".ullage"), clock);
            const TableRun run = run_of_table(reading.runs.at(0), facts, as_log);
            if (!logbook || !import_table_runs(logbook.value(), {&run, 1}, "table.csv")) std::abort();
        });
    };
    const double as_found_s = import_s(written_by_device(reading.runs.at(0))), as_readings_s = import_s(false);
    const double log_s = best_of([&] {
        auto logbook = Logbook::create(folder / (std::to_string(std::rand()) + ".ullage"), clock);
        RunRecord record = record_of_table(reading.runs.at(0), facts);
        record.readings.resize(1);
        const auto run = logbook.value().import_run(record);
        const auto preview = preview_trace(log_path, {}, {}, {});
        const auto done = import_trace(logbook.value(), log_path, run.value().run_uuid, std::nullopt, preview.value().detection, {});
        if (!done) std::abort();
    });
    fmt::print("import of its run: {:.3f} s; of the same rows as the log of a meter: {:.3f} s; ratio {:.2f}\n", as_found_s, log_s,
               as_found_s / log_s);
    fmt::print("each row as a reading with its history: {:.3f} s; ratio {:.2f}\n", as_readings_s, as_readings_s / log_s);
    return 0;
}
