// SPDX-License-Identifier: GPL-3.0-or-later
// A logbook of 1,000 units with 10 runs each, opened and compared at one load, against plain SQLite reading the same rows. A benchmark, no test:
// it reports and never fails. `--logbook=FILE` keeps that logbook there, to be used again or opened in the program.
#include "comparison/fair_comparison.h"
#include "store/logbook.h"
#include "support/large_logbook.h"
#include "support/temp_folder.h"

#include <benchmark/benchmark.h>
#include <sqlite3.h>

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace {

using namespace ullage;

constexpr int units = 1000, runs_each = 10;
constexpr double common_load_w = 120;

/// Where the logbook stands; empty: for as long as the program runs.
std::filesystem::path kept_logbook;

/// One file for all benchmarks, made when it is first asked for.
const std::filesystem::path& large_logbook() {
    static const test::TempFolder folder;
    static const std::filesystem::path path = [] {
        const std::filesystem::path made = kept_logbook.empty() ? folder / "large.ullage" : kept_logbook;
        if (std::filesystem::exists(made)) return made;
        if (auto done = test::make_large_logbook(made, units, runs_each); !done) {
            std::fprintf(stderr, "%s\n", done.error().sentence().c_str());
            std::exit(1);
        }
        return made;
    }();
    return path;
}

double seconds_since(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// A reading as a plain program would hold it.
struct PlainReading {
    sqlite3_int64 run = 0, time_ms = 0;
    double gauge_percent = 0, register_wh = 0, meter_w = 0, display_w = 0;
    std::string uuid, remark;
};

/// Every row and column of the query, with SQLite's own interface and nothing else. The number of rows.
std::size_t read_plain(sqlite3* database, const char* sql, std::vector<PlainReading>* readings) {
    sqlite3_stmt* statement = nullptr;
    sqlite3_prepare_v2(database, sql, -1, &statement, nullptr);
    const auto text = [statement](int column) {
        const auto* bytes = reinterpret_cast<const char*>(sqlite3_column_text(statement, column));
        return bytes ? std::string(bytes) : std::string();
    };
    std::size_t rows = 0;
    while (sqlite3_step(statement) == SQLITE_ROW) {
        ++rows;
        if (readings) {
            readings->push_back({sqlite3_column_int64(statement, 0), sqlite3_column_int64(statement, 1), sqlite3_column_double(statement, 2),
                                 sqlite3_column_double(statement, 3), sqlite3_column_double(statement, 4), sqlite3_column_double(statement, 5),
                                 text(6), text(7)});
            continue;
        }
        for (int column = 0; column < sqlite3_column_count(statement); ++column) benchmark::DoNotOptimize(text(column));
    }
    sqlite3_finalize(statement);
    return rows;
}

/// All units, meters, runs and readings in the file, once.
std::size_t read_plainly(const std::filesystem::path& path) {
    sqlite3* database = nullptr;
    sqlite3_open_v2(path.c_str(), &database, SQLITE_OPEN_READONLY, nullptr);
    std::vector<PlainReading> readings;
    std::size_t rows = read_plain(database, "SELECT * FROM units", nullptr);
    rows += read_plain(database, "SELECT * FROM meters", nullptr);
    rows += read_plain(database, "SELECT * FROM runs", nullptr);
    rows += read_plain(database,
                       "SELECT run_id, time_ms, gauge_percent, register_wh, meter_w, display_w, uuid, remark, mark, withdrawn "
                       "FROM readings JOIN reading_versions ON reading_id = id ORDER BY run_id, sequence, version",
                       &readings);
    benchmark::DoNotOptimize(readings);
    sqlite3_close(database);
    return rows;
}

/// The best of several, as others may be at work on the machine.
double plain_seconds() {
    (void)read_plainly(large_logbook());
    double best_s = 1e9;
    for (int i = 0; i < 7; ++i) {
        const auto start = std::chrono::steady_clock::now();
        benchmark::DoNotOptimize(read_plainly(large_logbook()));
        best_s = std::min(best_s, seconds_since(start));
    }
    return best_s;
}

void plain_sqlite(benchmark::State& state) {
    std::size_t rows = 0;
    (void)read_plainly(large_logbook());
    for (auto _ : state) rows = read_plainly(large_logbook());
    state.counters["rows"] = static_cast<double>(rows);
}

void opened_and_compared(benchmark::State& state) {
    const SystemClock clock;
    const double plain_s = plain_seconds();
    double whole_s = 1e9, open_s = 0, records_s = 0, units_s = 0, fair_s = 0;
    std::size_t rows = 0;
    for (auto _ : state) {
        const auto start = std::chrono::steady_clock::now();
        const auto logbook = Logbook::open(large_logbook(), OpenMode::read_only, clock);
        const double opened_s = seconds_since(start);
        const auto records = logbook.value().run_records();
        const double read_s = seconds_since(start);
        const Comparison comparison = compare_as_tested(records.value());
        const double compared_s = seconds_since(start);
        const FairComparison fair = compare_at(comparison, CommonLoad{common_load_w, 1, {}});
        const double seconds = seconds_since(start);
        benchmark::DoNotOptimize(fair);
        rows = fair.rows.size();
        if (seconds >= whole_s) continue;
        whole_s = seconds;
        open_s = opened_s;
        records_s = read_s - opened_s;
        units_s = compared_s - read_s;
        fair_s = seconds - compared_s;
    }
    state.counters["ratio"] = whole_s / plain_s;
    state.counters["plain_ms"] = 1000 * plain_s;
    state.counters["whole_ms"] = 1000 * whole_s;
    state.counters["open_ms"] = 1000 * open_s;
    state.counters["records_ms"] = 1000 * records_s;
    state.counters["units_ms"] = 1000 * units_s;
    state.counters["fair_ms"] = 1000 * fair_s;
    state.counters["units"] = static_cast<double>(rows);
}

/// What the window asks for besides, once the units are compared.
void ranked(benchmark::State& state) {
    const SystemClock clock;
    const auto logbook = Logbook::open(large_logbook(), OpenMode::read_only, clock);
    const auto records = logbook.value().run_records();
    const Comparison comparison = compare_as_tested(records.value());
    const FairComparison fair = compare_at(comparison, CommonLoad{common_load_w, 1, {}});
    for (auto _ : state) benchmark::DoNotOptimize(fair_ranks(comparison, fair));
}

BENCHMARK(plain_sqlite)->Unit(benchmark::kMillisecond);
BENCHMARK(opened_and_compared)->Iterations(5)->UseRealTime()->Unit(benchmark::kMillisecond);
BENCHMARK(ranked)->Unit(benchmark::kMillisecond);

} // namespace

int main(int count, char** words) {
    constexpr std::string_view wanted = "--logbook=";
    for (int i = 1; i < count; ++i)
        if (const std::string_view word = words[i]; word.starts_with(wanted)) kept_logbook = word.substr(wanted.size());
    benchmark::Initialize(&count, words);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
