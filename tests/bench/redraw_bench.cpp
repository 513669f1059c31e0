// SPDX-License-Identifier: GPL-3.0-or-later
// What a reading costs at the bench: the durable commit alone, and the same until the window with the run page of 30 readings has painted what
// changed. The ratio compares the second with twice the first and one frame of 1/60 s. A benchmark, no test: it reports and never fails.
#include "document/document.h"
#include "pages/run/run_page.h"
#include "support/temp_folder.h"

#include <benchmark/benchmark.h>

#include <QApplication>
#include <QEvent>
#include <QStyleFactory>

#include <algorithm>
#include <chrono>
#include <string>
#include <vector>

namespace {

using namespace ullage;

constexpr double frame_s = 1.0 / 60;
constexpr int readings_before = 30;
constexpr UtcMs start_ms = 1'810'310'400'000;

double seconds_since(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

ReadingValues values_at(int i) {
    ReadingValues values;
    values.time_ms = start_ms + i * 1'200'000LL;
    values.gauge_percent = std::max(0, 100 - 2 * i);
    values.register_wh = 4000 + 21 * i;
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
        benchmark::DoNotOptimize(logbook.record(run.uuid, values_at(i)));
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
    run = document.addRun(run).value();
    for (int i = 0; i < readings_before; ++i) (void)document.record(run.uuid, values_at(i));
    RunPage page(document);
    page.resize(1064, 760);
    page.showRun(QString::fromStdString(run.uuid));
    PaintCounter counter;
    page.installEventFilter(&counter);
    page.show();
    while (counter.paints == 0) QApplication::processEvents();

    std::vector<double> seconds;
    for (auto _ : state) {
        const auto start = std::chrono::steady_clock::now();
        const int painted = counter.paints;
        (void)document.record(run.uuid, values_at(readings_before));
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

BENCHMARK(reading_to_picture)->Unit(benchmark::kMillisecond)->Iterations(60);

} // namespace

int main(int count, char** words) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(count, words);
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    benchmark::Initialize(&count, words);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
