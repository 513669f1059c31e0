// SPDX-License-Identifier: GPL-3.0-or-later
// Logs of meters: import of a CSV of four columns against the sqlite3 shell's `.import` into an equal typed table, peak memory of an import against
// the size of the file, and the analysis of a run's samples against one pass that sums the same column in SQLite. A benchmark, no test: it reports
// ratios of one run and never fails. Usage: bench_trace [ROWS] (default 1 000 000); it works in a folder of its own under the temporary folder, in
// some 500 MB.
#include "run_analysis/run_analysis.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"
#include "trace/run_load.h"
#include "trace/trace_import.h"

#include <SQLiteCpp/SQLiteCpp.h>
#include <fmt/format.h>
#include <malloc.h>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <string>

namespace {

using namespace ullage;
namespace fs = std::filesystem;

constexpr UtcMs start_ms = 1'810'317'600'000;
constexpr int tries = 3;

/// A row a second: time, register, power, voltage.
void write_log(const fs::path& path, long rows) {
    std::ofstream file(path, std::ios::binary);
    file << "time,register (Wh),power (W),voltage (V)\n";
    double wh = 0;
    for (long i = 0; i < rows; ++i) {
        const double watts = i % 1800 < 600 ? 120.0 + static_cast<double>(i % 13) / 10 : 9.5;
        wh += watts / 3600;
        file << fmt::format("{},{:.1f},{:.1f},{:.1f}\n", format_iso8601(start_ms + 1000 * i, "UTC"), std::floor(10 * wh) / 10, watts,
                            230 + static_cast<double>(i % 17) / 10);
    }
}

double best_seconds(int times, const std::function<void()>& work) {
    double best = 1e9;
    for (int i = 0; i < times; ++i) {
        const auto begin = std::chrono::steady_clock::now();
        work();
        best = std::min(best, std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count());
    }
    return best;
}

/// kB of memory in use ("VmRSS") or at most since the last reset ("VmHWM").
long memory_kb(const std::string& key) {
    std::ifstream status("/proc/self/status");
    for (std::string line; std::getline(status, line);)
        if (line.starts_with(key)) return std::strtol(line.c_str() + key.size() + 1, nullptr, 10);
    return 0;
}

void reset_peak() {
    malloc_trim(0);
    std::ofstream("/proc/self/clear_refs") << "5";
}

/// A run noted each of 40 times from the first to the last second of the log, its gauge only.
struct Bench {
    test::FakeClock clock;
    Logbook logbook;
    RunId run_uuid;

    Bench(const fs::path& path, long rows) : logbook(Logbook::create(path, clock).value()) {
        Unit unit;
        unit.name = "Specimen";
        unit.rated_energy_wh = 20'000;
        Meter meter;
        meter.name = "Meter";
        meter.limit_percent = 1;
        meter.step_wh = 0.1;
        ullage::Run run;
        run.unit_uuid = logbook.add(unit).value().uuid;
        run.meter_uuid = logbook.add(meter).value().uuid;
        run.end = RunEnd::stopped_by_tester;
        run_uuid = logbook.add(run).value().uuid;
        for (long k = 0; k <= 40; ++k) {
            ReadingValues values;
            values.time_ms = start_ms + 1000 * (rows - 1) * k / 40;
            values.gauge_percent = static_cast<double>(100 - 2 * k);
            (void)logbook.record(run_uuid, values).value();
        }
    }

    void import(const fs::path& log) {
        const TracePreview preview = preview_trace(log, {}, {}, {}).value();
        (void)import_trace(logbook, log, run_uuid, logbook.meters().value().front().uuid, preview.detection, {}).value();
    }
};

void import_against_shell(const fs::path& folder, const fs::path& log, long rows) {
    double import_s = 1e9;
    for (int i = 0; i < tries; ++i) {
        const fs::path path = folder / fmt::format("{}.ullage", i);
        Bench bench(path, rows);
        import_s = std::min(import_s, best_seconds(1, [&] { bench.import(log); }));
    }
    double shell_s = 1e9;
    for (int i = 0; i < tries; ++i) {
        const fs::path table = folder / "shell.db";
        fs::remove(table);
        const std::string command = fmt::format("sqlite3 '{}' 'CREATE TABLE log (time TEXT, register_wh REAL, power_w REAL, voltage_v REAL) STRICT' "
                                                "'.import --csv --skip 1 \"{}\" log'",
                                                table.string(), log.string());
        int code = 0;
        const double seconds = best_seconds(1, [&] { code = std::system(command.c_str()); });
        if (code != 0) {
            fmt::print("import of {} rows: {:.2f} s; no sqlite3 shell to hold it against (package sqlite3)\n", rows, import_s);
            return;
        }
        shell_s = std::min(shell_s, seconds);
    }
    fmt::print("import of {} rows, {:.0f} MB: {:.2f} s, sqlite3 shell {:.2f} s, ratio {:.2f}; logbook {:.1f} MB, table {:.1f} MB\n", rows,
               static_cast<double>(fs::file_size(log)) / 1e6, import_s, shell_s, import_s / shell_s,
               static_cast<double>(fs::file_size(folder / "0.ullage")) / 1e6, static_cast<double>(fs::file_size(folder / "shell.db")) / 1e6);
}

void analysis_against_sum(const fs::path& folder) {
    if (!fs::exists(folder / "shell.db")) return;
    const SQLite::Database database(folder / "shell.db");
    double sum = 0;
    const double sum_s = best_seconds(2 * tries, [&] {
        SQLite::Statement query(database, "SELECT sum(power_w) FROM log");
        query.executeStep();
        sum = query.getColumn(0).getDouble();
    });
    const test::FakeClock clock;
    double analysis_s = 1e9, load_s = 1e9, delivered_wh = 0;
    for (int i = 0; i < 2 * tries; ++i) {
        const Logbook logbook = Logbook::open(folder / "0.ullage", OpenMode::read_only, clock).value();
        const RunId run_uuid = logbook.runs().value().front().uuid;
        RunRecord record;
        analysis_s = std::min(analysis_s, best_seconds(1, [&] {
                                  record = logbook.run_record(run_uuid).value();
                                  delivered_wh = analyse_run(record).energy.delivered_wh.value.value_or(0);
                              }));
        load_s = std::min(load_s, best_seconds(1, [&] { (void)load_of_run(logbook, record).value(); }));
    }
    fmt::print(
        "analysis of its samples: {:.0f} ms, one sum of the power column in SQLite {:.0f} ms, ratio {:.2f} ({:.1f} Wh delivered, the sum gives {:.1f} Wh); "
        "duty cycle and load statistics {:.0f} ms\n",
        1000 * analysis_s, 1000 * sum_s, analysis_s / sum_s, delivered_wh, sum / 3600, 1000 * load_s);
}

void memory_of_imports(const fs::path& folder, long rows) {
    for (const long count : {rows / 8, rows, 4 * rows}) {
        const fs::path log = folder / "memory.csv";
        write_log(log, count);
        Bench bench(folder / fmt::format("memory{}.ullage", count), count);
        reset_peak();
        const long idle_kb = memory_kb("VmRSS:");
        bench.import(log);
        fmt::print("import of {:.0f} MB: {:.1f} MB above idle at most\n", static_cast<double>(fs::file_size(log)) / 1e6,
                   static_cast<double>(memory_kb("VmHWM:") - idle_kb) / 1000);
    }
}

} // namespace

int main(int argc, char** argv) {
    const long rows = argc > 1 ? std::max(1000L, std::strtol(argv[1], nullptr, 10)) : 1'000'000;
    const test::TempFolder folder;
    const fs::path log = folder / "log.csv";
    write_log(log, rows);
    import_against_shell(folder.path(), log, rows);
    analysis_against_sum(folder.path());
    memory_of_imports(folder.path(), rows);
    return 0;
}
