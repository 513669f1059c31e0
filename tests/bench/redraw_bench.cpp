// SPDX-License-Identifier: GPL-3.0-or-later
// What a reading costs at the bench: the durable commit alone, and the same until the window with the run page of 30 or 100,000 readings has painted
// what changed. The ratio compares the second with twice the first and one frame of 1/60 s. A benchmark, no test: it reports and never fails.
#include "document/document.h"
#include "pages/run/run_page.h"
#include "services/reminders.h"
#include "services/settings.h"
#include "support/temp_folder.h"

#include <benchmark/benchmark.h>

#include <QApplication>
#include <QEvent>
#include <QStyleFactory>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <string>
#include <vector>

namespace {

using namespace ullage;

constexpr double frame_s = 1.0 / 60;
constexpr UtcMs start_ms = 1'810'310'400'000;

double seconds_since(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

/// The i-th of `count` readings, which follow each other by 20 minutes or, of a long run, by a second, and use up 60 % of the gauge.
ReadingValues values_at(int i, int count) {
    const double share = static_cast<double>(i) / count;
    ReadingValues values;
    values.time_ms = start_ms + i * (count > 1000 ? 1000LL : 1'200'000LL);
    values.gauge_percent = std::round(100 - 60 * share);
    values.register_wh = 4000 + std::round(630 * share);
    return values;
}

Unit bench_unit() {
    Unit unit;
    unit.name = "Osk 1200";
    unit.rated_energy_wh = 1200;
    unit.rated_output_w = 600;
    return unit;
}

double median(std::vector<double> values) {
    std::ranges::nth_element(values, values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2));
    return values[values.size() / 2];
}

/// The middle of several commits of the store alone, in a file of its own on the same disk.
double commit_seconds(const std::filesystem::path& folder, const Clock& clock) {
    auto logbook = Logbook::create(folder / "alone.ullage", clock).value();
    Run run;
    run.unit_uuid = logbook.add(bench_unit()).value().uuid;
    run = logbook.add(run).value();
    std::vector<double> seconds;
    for (int i = 0; i < 100; ++i) {
        const auto start = std::chrono::steady_clock::now();
        benchmark::DoNotOptimize(logbook.record(run.uuid, values_at(i, 100)));
        seconds.push_back(seconds_since(start));
    }
    return median(seconds);
}

/// Counts how often a window was asked to paint what changed, which it then does before the next event.
class PaintCounter : public QObject {
public:
    int paints = 0;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::UpdateRequest) ++paints;
        return QObject::eventFilter(watched, event);
    }
};

void reading_to_picture(benchmark::State& state) {
    const test::TempFolder folder;
    const SystemClock clock;
    const double commit_s = commit_seconds(folder.path(), clock);
    Document document(clock);
    (void)document.create(QString::fromStdString((folder / "bench.ullage").string()));
    Meter meter;
    meter.name = "socket meter A";
    meter.step_wh = 1;
    meter.limit_percent = 1;
    Run run;
    run.unit_uuid = document.addUnit(bench_unit()).value().uuid;
    run.meter_uuid = document.addMeter(meter).value().uuid;
    run.started_full = true;
    RunRecord record;
    record.unit = *document.unit(run.unit_uuid);
    record.meter = *document.meter(*run.meter_uuid);
    record.run = run;
    const int before = static_cast<int>(state.range(0));
    for (int i = 0; i < before; ++i) {
        record.readings.emplace_back().values = values_at(i, before);
        record.readings.back().sequence = i + 1;
    }
    run = document.import(record).value().run;
    Settings settings(QString::fromStdString((folder / "settings.ini").string()));
    Reminders reminders(document, settings, nullptr);
    RunPage page(document, &reminders);
    page.resize(1064, 760);
    page.showRun(run.uuid);
    PaintCounter counter;
    page.installEventFilter(&counter);
    page.show();
    while (counter.paints == 0) QApplication::processEvents();

    std::vector<double> seconds;
    for (auto _ : state) {
        const auto start = std::chrono::steady_clock::now();
        const int painted = counter.paints;
        (void)document.record(run.uuid, values_at(before, before));
        while (counter.paints == painted) QApplication::processEvents();
        seconds.push_back(seconds_since(start));
        state.PauseTiming();
        document.undoStack().undo();
        QApplication::processEvents();
        state.ResumeTiming();
    }
    const double whole_s = median(seconds);
    state.counters["commit_ms"] = 1000 * commit_s;
    state.counters["whole_ms"] = 1000 * whole_s;
    state.counters["share_of_limit"] = whole_s / (2 * commit_s + frame_s);
}

BENCHMARK(reading_to_picture)->Arg(30)->Unit(benchmark::kMillisecond)->Iterations(60);
BENCHMARK(reading_to_picture)->Arg(100'000)->Unit(benchmark::kMillisecond)->Iterations(8);

} // namespace

int main(int count, char** words) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(count, words);
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    benchmark::Initialize(&count, words);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
