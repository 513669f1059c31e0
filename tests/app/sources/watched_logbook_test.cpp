// SPDX-License-Identifier: GPL-3.0-or-later
// `ullage watch` records without a window, into a logbook that a window and commands look into meanwhile. The recorder is the program as it ships.
#include "base/clock.h"
#include "cli/live/watch_command.h"
#include "document/document.h"
#include "pages/run/run_page.h"
#include "peers.h"
#include "services/settings.h"
#include "style/words.h"
#include "support/temp_folder.h"
#include "support_qt/fake_prompts.h"
#include "window/main_window.h"

#include <QLabel>
#include <QLineEdit>
#include <QProcess>
#include <QPushButton>
#include <QTest>
#include <QTimer>

#include <gtest/gtest.h>

#include <algorithm>
#include <fcntl.h>
#include <filesystem>
#include <memory>
#include <random>
#include <span>
#include <sstream>
#include <string>
#include <unistd.h>
#include <vector>

namespace ullage {
namespace {

using namespace test;

class WatchedLogbook : public testing::Test {
protected:
    void SetUp() override {
        Document making(clock);
        ASSERT_TRUE(making.create(path()));
        Unit unit;
        unit.name = "Lantern 900";
        unit.rated_energy_wh = 900;
        Meter meter;
        meter.name = "Bench plug";
        meter.step_wh = 0.1;
        meter.limit_percent = 2;
        ullage::Run run;
        run.unit_uuid = making.addUnit(unit).value().uuid;
        run.meter_uuid = making.addMeter(meter).value().uuid;
        run_uuid = making.addRun(run).value().uuid;
        ReadingValues full;
        full.time_ms = clock.now_ms() - 60'000;
        full.gauge_percent = 100;
        full.register_wh = DrainTruth::first_wh;
        ASSERT_TRUE(making.record(run_uuid, full));
        ASSERT_TRUE(making.setMeterSource(*run.meter_uuid, source_text(peer.source())));
    }
    void TearDown() override {
        window.reset();
        recorder.kill();
        recorder.waitForFinished();
    }
    [[nodiscard]] QString path() const { return QString::fromStdString((folder / "bench.ullage").string()); }
    void startRecorder() {
        recorder.start(QStringLiteral(ULLAGE_PROGRAM), {QStringLiteral("watch"), path()});
        QByteArray said;
        ASSERT_TRUE(QTest::qWaitFor([&] { return (said += recorder.readAllStandardOutput()).contains("Reading;"); }, 20'000))
            << recorder.readAllStandardError().toStdString();
    }
    void openWindow() {
        window = std::make_unique<MainWindow>(document, settings, prompts);
        window->makeAllPages();
        window->resize(1280, 800);
        window->show();
        ASSERT_TRUE(QTest::qWaitForWindowExposed(window.get()));
        window->openLogbook(path());
        window->showRun(run_uuid);
        QApplication::processEvents();
    }
    template <class Widget>
    Widget* find(const char* name) const {
        return window->findChild<Widget*>(QString::fromLatin1(name));
    }
    [[nodiscard]] bool enabled(const char* name) const { return window->action(QString::fromLatin1(name))->isEnabled(); }
    [[nodiscard]] static long samplesIn(const std::vector<Trace>& traces) {
        long sum = 0;
        for (const Trace& trace : traces) sum += static_cast<long>(trace.samples);
        return sum;
    }
    [[nodiscard]] long samplesShown() const { return samplesIn(document.traces(run_uuid).value()); }
    [[nodiscard]] long samplesInFile() const {
        return samplesIn(Logbook::open(native_path(path()), OpenMode::read_only, clock).value().traces(run_uuid).value());
    }
    /// The program with these words, while events go on.
    int program(const QStringList& words) {
        QProcess command;
        command.setProcessChannelMode(QProcess::MergedChannels);
        command.start(QStringLiteral(ULLAGE_PROGRAM), words);
        EXPECT_TRUE(QTest::qWaitFor([&command] { return command.state() == QProcess::NotRunning; }, 60'000));
        said = command.readAll();
        return command.exitStatus() == QProcess::NormalExit ? command.exitCode() : -1;
    }

    TempFolder folder;
    SystemClock clock;
    DrainTruth truth;
    TerminalPeer peer{truth, TerminalPeer::Kind::lines};
    Settings settings{QString::fromStdString((folder / "settings.ini").string())};
    FakePrompts prompts;
    QProcess recorder;
    QByteArray said;
    RunId run_uuid;
    Document document{clock};
    std::unique_ptr<MainWindow> window;
};

TEST_F(WatchedLogbook, a_window_looks_at_it_follows_it_and_records_once_the_recorder_was_killed) {
    startRecorder();
    openWindow();
    ASSERT_TRUE(document.isLooking());
    auto* bar = find<QWidget>("fileBar");
    auto* words = find<QLabel>("fileBarLabel");
    ASSERT_TRUE(bar->isVisible());
    EXPECT_TRUE(words->text().startsWith(QStringLiteral("`ullage watch` (process %1) records into this logbook").arg(recorder.processId())))
        << words->text().toStdString();
    EXPECT_TRUE(words->text().contains(QStringLiteral("nothing can be entered here")));
    EXPECT_FALSE(find<QPushButton>("recordHereButton")->isVisible());
    EXPECT_TRUE(window->windowTitle().contains(QStringLiteral("looking only")));
    for (const char* action : {"startRunAction", "enterReadingAction", "editRunFormAction", "endStoppedAction", "importSheetAction", "mark1Action"})
        EXPECT_FALSE(enabled(action)) << action;
    for (const char* action : {"runReportAction", "exportReadingsAction", "saveCopyAction", "comparisonAction"})
        EXPECT_TRUE(enabled(action)) << action;
    EXPECT_FALSE(find<QLineEdit>("gaugeEdit")->isEnabled());
    const UnitId unit_uuid = document.run(run_uuid)->unit.uuid;
    window->showUnit(unit_uuid);
    EXPECT_FALSE(find<QPushButton>("startRunButton")->isEnabled());
    EXPECT_FALSE(find<QPushButton>("editUnitButton")->isEnabled());
    window->showRun(run_uuid);
    const auto refused = document.record(run_uuid, {});
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().failure, Failure::read_only);

    // What comes in is shown: samples, and what is worked out from them.
    EXPECT_TRUE(QTest::qWaitFor([&] { return samplesShown() > 0; }, 30'000));
    // How far the window is behind the meter at worst: a figure for those who read the results, no promise.
    UtcMs most_behind_ms = 0;
    QTimer asks;
    QObject::connect(&asks, &QTimer::timeout, &asks, [&] {
        const auto traces = document.traces(run_uuid).value();
        if (!traces.empty()) most_behind_ms = std::max(most_behind_ms, clock.now_ms() - traces.back().last_ms);
    });
    asks.start(100);
    for (int time = 0; time < 3; ++time) {
        const long before = samplesShown(), in_file = samplesInFile();
        EXPECT_TRUE(QTest::qWaitFor([&] { return samplesShown() > std::max(before, in_file - 1); }, 30'000)) << "time " << time;
        EXPECT_TRUE(document.run(run_uuid)->trace.has_value());
    }
    asks.stop();
    RecordProperty("most_behind_ms", static_cast<int>(most_behind_ms));
    EXPECT_EQ(recorder.state(), QProcess::Running);
    EXPECT_TRUE(find<QPushButton>("readLiveButton") == nullptr || !find<QPushButton>("readLiveButton")->isVisible());

    recorder.kill();
    recorder.waitForFinished();
    ASSERT_TRUE(QTest::qWaitFor([&] { return find<QPushButton>("recordHereButton")->isVisible(); }, 20'000)) << words->text().toStdString();
    EXPECT_TRUE(words->text().startsWith(QStringLiteral("Nobody records")));
    const long shown = samplesShown();
    QTest::mouseClick(find<QPushButton>("recordHereButton"), Qt::LeftButton);
    EXPECT_TRUE(QTest::qWaitFor([&] { return !document.isLooking() && !bar->isVisible(); }, 20'000));
    EXPECT_GE(samplesShown(), shown);
    window->showUnit(unit_uuid);
    EXPECT_TRUE(find<QPushButton>("startRunButton")->isEnabled());
    window->showRun(run_uuid);
    EXPECT_TRUE(enabled("enterReadingAction"));
    EXPECT_TRUE(find<QLineEdit>("gaugeEdit")->isEnabled());
    ReadingValues last;
    last.time_ms = clock.now_ms();
    last.gauge_percent = 20;
    EXPECT_TRUE(document.record(run_uuid, last));
}

TEST_F(WatchedLogbook, how_long_the_check_before_took_is_told) {
    const std::string copy = folder / "copy.ullage";
    std::filesystem::copy_file(native_path(path()), copy);
    WatchArguments arguments;
    arguments.logbook = copy;
    arguments.for_s = 0;
    LiveClocks slow = LiveClocks::of_machine();
    slow.steady_ms = [looks = std::int64_t{0}]() mutable { return 3000 * looks++; };
    std::ostringstream out, err;
    EXPECT_EQ(watch_command(arguments, out, err, slow), 0) << err.str();
    EXPECT_EQ(err.str(), "ullage: " + copy + ": checked from end to end, as it comes from elsewhere or was not closed properly; that took 3.0 s\n");
}

TEST_F(WatchedLogbook, a_copy_of_the_one_file_at_any_moment_has_all_that_came_five_seconds_before) {
    const auto seed = std::random_device{}();
    std::mt19937 random(seed);
    const auto between = [&random](int least, int most) { return std::uniform_int_distribution(least, most)(random); };
    struct Copy {
        std::filesystem::path file;
        UtcMs at_ms;
    };
    std::vector<Copy> copies;
    UtcMs late_ms = 0; // of this machine at worst, for whoever waits and writes to the disk
    const auto copy_for = [&](int span_ms) {
        for (const UtcMs until_ms = clock.now_ms() + span_ms; clock.now_ms() < until_ms;) {
            const UtcMs begin_ms = clock.now_ms();
            const int wait_ms = between(20, 300);
            QTest::qWait(wait_ms);
            copies.push_back({folder / ("copy-" + std::to_string(copies.size()) + ".ullage"), clock.now_ms()});
            std::filesystem::copy_file(native_path(path()), copies.back().file);
            const int written = ::open(copies.back().file.c_str(), O_RDONLY | O_CLOEXEC);
            EXPECT_EQ(::fsync(written), 0);
            ::close(written);
            late_ms = std::max(late_ms, clock.now_ms() - begin_ms - wait_ms);
        }
    };
    const auto times_in = [this](const std::filesystem::path& file) {
        std::vector<UtcMs> times;
        const auto logbook = Logbook::open(file, OpenMode::read_only, clock);
        EXPECT_TRUE(logbook) << file;
        if (!logbook) return times;
        const auto traces = logbook.value().traces(run_uuid);
        for (const Trace& trace : traces.value())
            EXPECT_TRUE(logbook.value().read_samples(trace.uuid, trace.first_ms, trace.last_ms, [&times](std::span<const TraceSample> samples) {
                for (const TraceSample& sample : samples) times.push_back(sample.time_ms);
                return true;
            }));
        return times;
    };
    peer.setGone(true);
    startRecorder();
    // While the meter is silent, nothing comes that would take along what came before.
    for (int time = 0; time < 2; ++time) {
        peer.setGone(false);
        copy_for(between(500, 4000));
        peer.setGone(true);
        copy_for(6500);
    }
    recorder.terminate();
    ASSERT_TRUE(recorder.waitForFinished());
    const std::vector<UtcMs> all = times_in(native_path(path()));
    ASSERT_FALSE(all.empty());
    for (const Copy& copy : copies) {
        const auto due = std::ranges::upper_bound(all, copy.at_ms - 5000 - late_ms) - all.begin();
        const std::vector<UtcMs> held = times_in(copy.file);
        EXPECT_GE(std::ssize(held), due) << "after " << copy.at_ms - all.front() << " ms, seed " << seed << ", late by " << late_ms << " ms";
        EXPECT_TRUE(std::ranges::equal(held, std::span(all).first(std::min(held.size(), all.size()))));
    }
}

TEST_F(WatchedLogbook, commands_that_show_it_work_those_that_would_record_are_refused_and_the_recorder_goes_on) {
    startRecorder();
    ASSERT_TRUE(QTest::qWaitFor([&] { return samplesInFile() > 0; }, 30'000));
    const QString into = QString::fromStdString(folder.path().string()) + QLatin1Char('/');
    const QStringList of_run{QStringLiteral("--unit"), QStringLiteral("Lantern 900"), QStringLiteral("--run"), QStringLiteral("1")};
    const std::vector<QStringList> shows{{QStringLiteral("analyse"), path()},
                                         {QStringLiteral("compare"), path()},
                                         QStringList{QStringLiteral("export-readings"), path()} + of_run,
                                         {QStringLiteral("export-folder"), path(), QStringLiteral("--into"), into + QStringLiteral("all")},
                                         {QStringLiteral("pictures"), path(), QStringLiteral("--into"), into + QStringLiteral("pictures")},
                                         {QStringLiteral("report"), path(), QStringLiteral("--run"), QStringLiteral("Lantern 900/1"),
                                          QStringLiteral("--output"), into + QStringLiteral("run.html")}};
    for (const QStringList& words : shows) EXPECT_EQ(program(words), 0) << words.join(QLatin1Char(' ')).toStdString() << ": " << said.toStdString();
    for (int time = 0; time < 20; ++time) ASSERT_EQ(program({QStringLiteral("analyse"), path()}), 0) << said.toStdString();
    EXPECT_EQ(program({QStringLiteral("watch"), path()}), 1);
    EXPECT_TRUE(said.contains("open elsewhere")) << said.toStdString();
    EXPECT_EQ(recorder.state(), QProcess::Running);
    const long before = samplesInFile();
    EXPECT_TRUE(QTest::qWaitFor([&] { return samplesInFile() > before; }, 30'000)) << "nobody who looks keeps it from recording";
}

TEST_F(WatchedLogbook, who_is_killed_while_he_looks_leaves_nothing_and_the_recorder_goes_on) {
    startRecorder();
    ASSERT_TRUE(QTest::qWaitFor([&] { return samplesInFile() > 0; }, 30'000));
    for (int time = 0; time < 30; ++time) {
        QProcess looker;
        looker.start(QStringLiteral(ULLAGE_PROGRAM), {QStringLiteral("analyse"), path()});
        ASSERT_TRUE(looker.waitForStarted());
        QTest::qWait(time * 4); // from its first action to after its last
        looker.kill();
        looker.waitForFinished();
    }
    EXPECT_EQ(recorder.state(), QProcess::Running);
    const long before = samplesInFile();
    EXPECT_TRUE(QTest::qWaitFor([&] { return samplesInFile() > before; }, 30'000));
    recorder.terminate();
    ASSERT_TRUE(recorder.waitForFinished());
    for (const auto& entry : std::filesystem::directory_iterator(folder.path()))
        EXPECT_TRUE(entry.path().filename() == "bench.ullage" || entry.path().filename() == "settings.ini") << entry.path();
    EXPECT_TRUE(Logbook::open(native_path(path()), OpenMode::record, clock));
}

} // namespace
} // namespace ullage
