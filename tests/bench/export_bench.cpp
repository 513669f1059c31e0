// SPDX-License-Identifier: GPL-3.0-or-later
// How an export of readings grows: run sheets of 10,000 and of 100,000 readings are brought into a logbook, read back, analysed and written as a
// table in each format. Both stand in the same run: `ratio_to_tenth` is the time for a reading of the long sheet over that for one of the short one,
// about 1 where the work is in proportion, 10 where it is a square. `ratio_to_import` holds the same export against the import of that sheet. A
// benchmark, no test: it reports and never fails.
#include "formats/results/comparison_table.h"
#include "formats/sheets/run_sheet.h"
#include "run_analysis/run_analysis.h"
#include "store/logbook.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"

#include <benchmark/benchmark.h>
#include <fmt/format.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <functional>
#include <map>
#include <string>
#include <vector>

namespace {

using namespace ullage;

constexpr long short_readings = 10'000, long_readings = 100'000;
constexpr UtcMs sheet_begin_ms = 1'810'317'600'000;

/// A drain with a reading a second.
std::string sheet_of(long readings) {
    std::string text = "# unit: Unit\n# rated_energy_wh: 1200\n# meter: plug\n# meter_step_wh: 0.1\n# meter_limit_percent: 1\n# run: drain\n"
                       "# started_full: yes\n# ended: cut-off seen\n# time_zone: UTC\ntime,gauge_percent,register_wh\n";
    const double last = static_cast<double>(readings - 1);
    for (long i = 0; i < readings; ++i)
        text += fmt::format("{},{:.0f},{:.1f}\n", format_iso8601(sheet_begin_ms + 1000 * i, "UTC"), 100 - 99 * static_cast<double>(i) / last,
                            900 * static_cast<double>(i) / last);
    return text;
}

/// The best of several, as others may be at work on the machine.
double best_seconds(const std::function<void()>& work) {
    double best = 1e9;
    for (int i = 0; i < 5; ++i) {
        const auto begin = std::chrono::steady_clock::now();
        work();
        best = std::min(best, std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count());
    }
    return best;
}

/// A logbook with one run of so many readings, and what bringing it in took.
class Bench {
public:
    explicit Bench(long readings) {
        const std::string text = sheet_of(readings);
        int number = 0;
        import_s_ = best_seconds([&] {
            auto logbook = Logbook::create(folder_ / fmt::format("{}.ullage", number++), clock_);
            auto sheet = read_run_sheet(text, {});
            if (!logbook || !sheet || !logbook.value().import_run(sheet.value().record)) std::abort();
        });
    }
    [[nodiscard]] double import_s() const { return import_s_; }
    /// From the file to the last byte of the table, as the command does.
    [[nodiscard]] double export_s(TableFormat format) const {
        const auto target = folder_ / ("table" + std::string(format == TableFormat::xlsx ? ".xlsx" : ".txt"));
        return best_seconds([&] {
            const auto logbook = Logbook::open(folder_ / "0.ullage", OpenMode::read_only, clock_);
            if (!logbook) std::abort();
            const auto records = logbook.value().run_records();
            const RunAnalysis analysis = analyse_run(records.value().front());
            std::filesystem::remove(target);
            if (!write_table(table_of_run(RunTable::readings, records.value().front(), analysis), format, target)) std::abort();
        });
    }

private:
    test::TempFolder folder_;
    test::FakeClock clock_;
    double import_s_ = 0;
};

const Bench& bench_of(long readings) {
    static std::map<long, Bench> benches;
    return benches.try_emplace(readings, readings).first->second;
}

void exported(benchmark::State& state, TableFormat format) {
    const Bench &few = bench_of(short_readings), &many = bench_of(long_readings);
    double few_s = 0, many_s = 0;
    for (auto _ : state) {
        few_s = few.export_s(format);
        many_s = many.export_s(format);
        state.SetIterationTime(many_s);
    }
    constexpr double times = static_cast<double>(long_readings) / static_cast<double>(short_readings);
    state.counters["ratio_to_tenth"] = many_s / few_s / times;
    state.counters["ratio_to_import"] = many_s / many.import_s();
    state.counters["import_ratio_to_tenth"] = many.import_s() / few.import_s() / times;
}

} // namespace

int main(int count, char** words) {
    benchmark::Initialize(&count, words);
    for (const std::string& name : table_format_names())
        benchmark::RegisterBenchmark(("exported/" + name).c_str(), exported, table_format_from(name).value())
            ->UseManualTime()
            ->Iterations(1)
            ->Unit(benchmark::kMillisecond);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
