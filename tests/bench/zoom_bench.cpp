// SPDX-License-Identifier: GPL-3.0-or-later
// A log of five million samples zoomed and painted in the window's Log tab, against one of two thousand: the same steps of the wheel from the whole
// run down to the narrowest view that there is. A benchmark, no test: it reports and never fails.
#include "charts/line_chart.h"
#include "document/document.h"
#include "pages/run/log_view.h"
#include "support/temp_folder.h"

#include <benchmark/benchmark.h>

#include <QApplication>
#include <QStyleFactory>

#include <algorithm>
#include <chrono>
#include <cmath>
#include <stdexcept>
#include <string>
#include <vector>

namespace {

using namespace ullage;

constexpr UtcMs log_start_ms = 1'810'310'400'000;
constexpr double log_hours = 13;

/// A logbook with one run, whose log has `samples` of a load that cycles, spread over the same hours.
std::string logbook_with(const std::filesystem::path& folder, const Clock& clock, std::int64_t samples) {
    const std::string path = (folder / (std::to_string(samples) + ".ullage")).string();
    auto logbook = Logbook::create(path, clock).value();
    Unit unit;
    unit.name = "Osk 1200";
    unit.rated_energy_wh = 1200;
    Run run;
    run.unit_uuid = logbook.add(unit).value().uuid;
    run = logbook.add(run).value();
    Trace trace;
    trace.run_uuid = run.uuid;
    trace.file_name = "log.csv";
    const double step_ms = log_hours * 3'600'000 / static_cast<double>(samples);
    const auto added = logbook.add_trace(trace, [&](Trace& filled, const SampleTaker& take) -> Result<void> {
        filled.fingerprint = std::to_string(samples);
        for (std::int64_t i = 0; i < samples; ++i) {
            TraceSample sample;
            sample.time_ms = log_start_ms + std::llround(static_cast<double>(i) * step_ms);
            sample.power_w = (sample.time_ms / 1000) % 600 < 260 ? 118 + static_cast<double>(i % 20) / 10 : 22 + static_cast<double>(i % 10) / 10;
            if (const auto taken = take({&sample, 1}); !taken) return taken;
        }
        return {};
    });
    if (!added) throw std::runtime_error(added.error().sentence());
    return path;
}

double seconds_to_zoom(LogView& view) {
    auto& chart = *static_cast<LineChart*>(view.chart());
    chart.resetZoom();
    const auto [from, to] = chart.visibleSpan();
    const double middle = from + 0.37 * (to - from);
    const auto start = std::chrono::steady_clock::now();
    int frames = 0;
    for (double width = to - from; width > 0.0002; width /= 1.2, ++frames) {
        chart.zoomTo(middle - width / 2, middle + width / 2);
        benchmark::DoNotOptimize(chart.grab());
    }
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count() / frames;
}

void zoom(benchmark::State& state) {
    const test::TempFolder folder;
    const SystemClock clock;
    Document few(clock), many(clock);
    (void)few.open(QString::fromStdString(logbook_with(folder.path(), clock, 2'000)));
    (void)many.open(QString::fromStdString(logbook_with(folder.path(), clock, 5'000'000)));
    LogView few_view(few), many_view(many);
    const auto show = [](LogView& view, Document& document) {
        view.resize(900, 760);
        view.setRun(document.runs().front()->run.uuid);
        const auto start = std::chrono::steady_clock::now();
        view.show();
        QApplication::processEvents();
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    };
    (void)show(few_view, few);
    const double open_s = show(many_view, many);
    std::vector<double> few_s, many_s;
    for (auto _ : state) {
        few_s.push_back(seconds_to_zoom(few_view));
        many_s.push_back(seconds_to_zoom(many_view));
    }
    const auto median = [](std::vector<double>& seconds) {
        std::ranges::sort(seconds);
        return seconds[seconds.size() / 2];
    };
    state.counters["open_ms"] = 1000 * open_s;
    state.counters["few_frame_ms"] = 1000 * median(few_s);
    state.counters["many_frame_ms"] = 1000 * median(many_s);
    state.counters["ratio"] = median(many_s) / median(few_s);
}

BENCHMARK(zoom)->Unit(benchmark::kMillisecond)->Iterations(9);

} // namespace

int main(int count, char** words) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(count, words);
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    benchmark::Initialize(&count, words);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
