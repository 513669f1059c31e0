// SPDX-License-Identifier: GPL-3.0-or-later
// From the start of a process to its first painted window: the program's window on the sample logbook, for each page that it may open with, against
// a window with one chart alone (start_reference.cpp), in turns. Time by the clock and of the processor, their middle values and ratios. A
// benchmark, no test: it reports and never fails.
#include "base/clock.h"
#include "base/large_pieces.h"
#include "base/late_part.h"
#include "bench/first_paint.h"
#include "document/document.h"
#include "document/sample_logbook.h"
#include "services/appearance.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "support/temp_folder.h"
#include "window/main_window.h"
#include "window/remembered_page.h"

#include <benchmark/benchmark.h>

#include <QApplication>

#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <chrono>
#include <string>
#include <utility>
#include <vector>

namespace {

using namespace ullage;

constexpr int rounds = 15;

struct StartCost {
    double clock_ms = 0, processor_ms = 0;
};

/// As app/main.cpp opens the window, with settings of its own and nobody to notify.
int open_window(int count, char** words, const char* logbook, const char* settings_file) {
    if (!hold_late_part({ULLAGE_LATE_FILE})) return 1;
    take_memory_in_large_pieces();
    QApplication application(count, words);
    const bench::FirstPaint first_paint(application);
    QApplication::setApplicationName(QStringLiteral("Ullage"));
    Settings settings(QString::fromLocal8Bit(settings_file));
    const SystemClock clock;
    const auto ahead = logbook_of_start(settings, clock, QString::fromLocal8Bit(logbook));
    prepare_appearance(application, settings);
    Document document(clock);
    DialogPrompts prompts;
    MainWindow window(document, settings, prompts);
    window.openAhead(*ahead);
    apply_appearance(application, settings);
    window.show();
    return QApplication::exec();
}

StartCost start_of(std::vector<std::string> words_given) {
    std::vector<char*> words;
    for (std::string& word : words_given) words.push_back(word.data());
    words.push_back(nullptr);
    const auto start = std::chrono::steady_clock::now();
    const pid_t child = ::fork();
    if (child == 0) {
        ::execv(words[0], words.data());
        ::_exit(127);
    }
    int status = 0;
    rusage used{};
    ::wait4(child, &status, 0, &used);
    if (status != 0) return {-1, -1};
    const auto ms_of = [](const timeval& time) { return 1000.0 * static_cast<double>(time.tv_sec) + static_cast<double>(time.tv_usec) / 1000; };
    return {std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count(), ms_of(used.ru_utime) + ms_of(used.ru_stime)};
}

double middle(std::vector<StartCost> costs, double StartCost::*what) {
    std::ranges::nth_element(costs, costs.begin() + static_cast<std::ptrdiff_t>(costs.size() / 2), {}, what);
    return costs[costs.size() / 2].*what;
}

/// The sample logbook, and settings that say that it was closed on this page.
void lay_out(const test::TempFolder& folder, void (*show)(MainWindow&, const Document&)) {
    const QString logbook = QString::fromStdString((folder / "sample.ullage").string());
    const SystemClock clock;
    Document document(clock);
    Settings settings(QString::fromStdString((folder / "settings.ini").string()));
    DialogPrompts prompts;
    (void)make_sample_logbook(logbook, clock);
    (void)document.open(logbook);
    MainWindow window(document, settings, prompts);
    if (show) show(window, document);
    document.close();
}

/// Each process ends as soon as it has painted, as if it had crashed, and a logbook that a crash left is checked from end to end at its next opening.
/// A start usually follows a proper end.
void end_properly(const QString& logbook) {
    const SystemClock clock;
    Document document(clock);
    (void)document.open(logbook);
    document.close();
}

void start(benchmark::State& state, void (*show)(MainWindow&, const Document&)) {
    const test::TempFolder folder;
    lay_out(folder, show);
    const std::string self = QCoreApplication::applicationFilePath().toStdString();
    std::vector<StartCost> empty, full;
    for (auto _ : state)
        for (int round = 0; round < rounds; ++round) {
            end_properly(QString::fromStdString((folder / "sample.ullage").string()));
            empty.push_back(start_of({ULLAGE_START_REFERENCE}));
            full.push_back(start_of({self, "--window", (folder / "sample.ullage").string(), (folder / "settings.ini").string()}));
        }
    if (middle(full, &StartCost::clock_ms) < 0 || middle(empty, &StartCost::clock_ms) < 0) return state.SkipWithError("a process failed");
    for (const auto& [name, what] : {std::pair{"clock", &StartCost::clock_ms}, {"processor", &StartCost::processor_ms}}) {
        state.counters[std::string(name) + "_ms"] = middle(full, what);
        state.counters[std::string(name) + "_empty_ms"] = middle(empty, what);
        state.counters[std::string(name) + "_ratio"] = middle(full, what) / middle(empty, what);
    }
}

void first_run(MainWindow& window, const Document& document) { window.showRun(document.runs().front()->run.uuid); }
void comparison(MainWindow& window, const Document&) { window.showComparison(); }

BENCHMARK_CAPTURE(start, sample, nullptr)->Unit(benchmark::kMillisecond)->Iterations(1);
BENCHMARK_CAPTURE(start, run_page, first_run)->Unit(benchmark::kMillisecond)->Iterations(1);
BENCHMARK_CAPTURE(start, comparison_page, comparison)->Unit(benchmark::kMillisecond)->Iterations(1);

} // namespace

int main(int count, char** words) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    if (count == 4 && std::string(words[1]) == "--window") return open_window(count, words, words[2], words[3]);
    const QApplication application(count, words);
    benchmark::Initialize(&count, words);
    benchmark::RunSpecifiedBenchmarks();
    return 0;
}
