// SPDX-License-Identifier: GPL-3.0-or-later
// One million paired readings: the whole analysis of a run against GSL's weighted line fit alone over the same arrays, and the memory that
// the analysis needs beyond its input. A benchmark, no test: it reports and never fails. ratio_to_gsl is the best of several analyses in memory that
// the process has touched before, as GSL's arrays are too; ratio_first is the first one, for which the system has to hand out every page.
#include "run_analysis/run_analysis.h"

#include <benchmark/benchmark.h>
#include <gsl/gsl_fit.h>
#include <malloc.h>

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <limits>
#include <new>
#include <optional>
#include <string>
#include <vector>

namespace {

std::atomic<std::size_t> bytes_now{0}, bytes_peak{0};

void note_taken(std::size_t bytes) {
    const std::size_t now = bytes_now.fetch_add(bytes) + bytes;
    std::size_t peak = bytes_peak.load();
    while (now > peak && !bytes_peak.compare_exchange_weak(peak, now)) {}
}

} // namespace

// Every allocation of the program is counted by what the allocator really set aside for it. Not inlined: the compiler would take new and free
// in one place for a mismatch.
[[gnu::noinline]] void* operator new(std::size_t size) {
    void* place = std::malloc(size);
    if (place == nullptr) throw std::bad_alloc();
    note_taken(malloc_usable_size(place));
    return place;
}
[[gnu::noinline]] void operator delete(void* place) noexcept {
    bytes_now.fetch_sub(malloc_usable_size(place));
    std::free(place);
}
[[gnu::noinline]] void operator delete(void* place, std::size_t) noexcept { operator delete(place); }

namespace {

using namespace ullage;

/// A full drain of a 1000 Wh unit under a load that varies, read `count` times: an accurate gauge of 1 % steps, a register of 1 Wh.
RunRecord long_run(std::size_t count) {
    RunRecord record;
    record.unit.uuid = UnitId("unit");
    record.unit.rated_energy_wh = 1050;
    record.unit.rated_output_w = 1200;
    record.meter = Meter{MeterId("meter"), "Meter", 1.0, 1.0, std::nullopt, 1.0, {}};
    record.run.uuid = RunId("run");
    record.run.unit_uuid = UnitId("unit");
    record.run.meter_uuid = MeterId("meter");
    record.run.started_full = true;
    record.run.end = RunEnd::cut_off_seen;
    record.readings.resize(count);
    constexpr double step_ms = 1000, own_w = 10;
    const double hours = static_cast<double>(count - 1) * step_ms / ms_per_hour;
    double delivered_share = 0, stored_share = 0;
    // 4 to 1 load by turns of a twelfth of the run; scaled so that the battery is just empty at the end.
    const auto load_at = [count](std::size_t i) { return (12 * i / count) % 2 == 0 ? 4.0 : 1.0; };
    double load_sum = 0;
    for (std::size_t i = 1; i < count; ++i) load_sum += load_at(i);
    const double whole_wh = std::max(900.0 - own_w * hours, 300.0);
    const double own_wh = 900.0 - whole_wh;
    for (std::size_t i = 0; i < count; ++i) {
        if (i > 0) {
            delivered_share += load_at(i) / load_sum;
            stored_share = (whole_wh * delivered_share + own_wh * static_cast<double>(i) / static_cast<double>(count - 1)) / 900.0;
        }
        Reading& reading = record.readings[i];
        reading.uuid = ReadingId("00000000-0000-4000-8000-" + std::to_string(100'000'000'000 + i));
        reading.sequence = static_cast<long>(i) + 1;
        reading.values.time_ms = 1'810'310'400'000 + static_cast<UtcMs>(static_cast<double>(i) * step_ms);
        reading.values.gauge_percent = std::floor(100 * (1 - stored_share) + 0.5);
        reading.values.register_wh = std::floor(2000.5 + whole_wh * delivered_share);
    }
    return record;
}

/// The arrays that a weighted line of gauge on delivered energy needs.
struct Columns {
    std::vector<double> delivered_wh, weight, gauge_percent;
};

Columns columns_of(const RunRecord& record) {
    Columns columns;
    for (const Reading& reading : record.readings) {
        columns.delivered_wh.push_back(*reading.values.register_wh - *record.readings.front().values.register_wh);
        columns.weight.push_back(12.0);
        columns.gauge_percent.push_back(*reading.values.gauge_percent);
    }
    return columns;
}

double fit_by_gsl(const Columns& c) {
    double c0 = 0, c1 = 0, cov00 = 0, cov01 = 0, cov11 = 0, chi_square = 0;
    gsl_fit_wlinear(c.delivered_wh.data(), 1, c.weight.data(), 1, c.gauge_percent.data(), 1, c.gauge_percent.size(), &c0, &c1, &cov00, &cov01, &cov11,
                    &chi_square);
    return c0 + c1 + chi_square;
}

double seconds_since(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// The best of several, as others may be at work on the machine.
double gsl_seconds(const Columns& columns) {
    double best = 1e9;
    for (int i = 0; i < 15; ++i) {
        const auto start = std::chrono::steady_clock::now();
        benchmark::DoNotOptimize(fit_by_gsl(columns));
        best = std::min(best, seconds_since(start));
    }
    return best;
}

void whole_analysis(benchmark::State& state) {
    const auto count = static_cast<std::size_t>(state.range(0));
    const RunRecord record = long_run(count);
    const double gsl_s = gsl_seconds(columns_of(record));
    double best_s = 1e9;
    std::optional<double> first_s;
    std::size_t peak = 0;
    for (auto _ : state) {
        const std::size_t before = bytes_now.load();
        bytes_peak = before;
        const auto start = std::chrono::steady_clock::now();
        RunAnalysis analysis = analyse_run(record);
        const double seconds = seconds_since(start);
        benchmark::DoNotOptimize(analysis);
        if (!first_s) first_s = seconds;
        best_s = std::min(best_s, seconds);
        peak = std::max(peak, bytes_peak.load() - before);
    }
    state.counters["ratio_to_gsl"] = best_s / gsl_s;
    state.counters["ratio_first"] = *first_s / gsl_s;
    state.counters["gsl_ms"] = 1000 * gsl_s;
    state.counters["bytes_per_reading"] = static_cast<double>(peak) / static_cast<double>(count);
}

void gsl_alone(benchmark::State& state) {
    const Columns columns = columns_of(long_run(static_cast<std::size_t>(state.range(0))));
    for (auto _ : state) benchmark::DoNotOptimize(fit_by_gsl(columns));
}

/// Freed memory is kept and not handed back to the system between two analyses.
void keep_memory(const benchmark::State&) {
    mallopt(M_MMAP_THRESHOLD, 1 << 30);
    mallopt(M_TRIM_THRESHOLD, std::numeric_limits<int>::max());
}

BENCHMARK(whole_analysis)->Arg(1'000'000)->Arg(100'000)->Arg(10'000)->Iterations(20)->Setup(keep_memory)->Unit(benchmark::kMillisecond);
BENCHMARK(gsl_alone)->Arg(1'000'000)->Unit(benchmark::kMillisecond);

} // namespace

BENCHMARK_MAIN();
